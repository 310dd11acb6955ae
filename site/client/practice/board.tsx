import type { ComponentChildren } from 'preact';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import type { BoardRecipe } from '#engine/model/board.ts';
import { plainId } from '../shared/plain-id.ts';
import { lightSaid, practiceSize, shadeOf } from './draw.ts';

type Props = {
  readonly recipe: BoardRecipe;
  readonly turn: number;
  /** What it is, once that may be told. */
  readonly called?: string | undefined;
  readonly width?: number;
  readonly height?: number;
  readonly children?: ComponentChildren;
};

/** What is said of a picture before it is answered: its size and its light, and never what is on it. */
const sizeSaid = (recipe: BoardRecipe, turn: number): string => {
  const base = recipe.base.paint ?? recipe.base.wood ?? '';
  return `${recipe.wet ? 'Wet' : 'Dry'} board over ${plainId(base)}, ${recipe['width-mm']} mm wide, in ${lightSaid(turn)}`;
};

/** A board, drawn here and lit as told. */
export const PracticeBoard = ({
  recipe,
  turn,
  called,
  width = practiceSize().width,
  height = practiceSize().height,
  children,
}: Props) => {
  const canvas = useRef<HTMLCanvasElement>(null);
  const shade = useMemo(() => shadeOf(recipe, width, height), [recipe, width, height]);
  useEffect(() => {
    // After the words are painted: they can be read while it is drawn.
    let timer: ReturnType<typeof setTimeout> | undefined;
    const step = () => {
      if (!canvas.current) return;
      if (shade(canvas.current, turn)) canvas.current.dataset['drawn'] = '';
      else timer = setTimeout(step);
    };
    const frame = requestAnimationFrame(() => {
      timer = setTimeout(step);
    });
    return () => {
      cancelAnimationFrame(frame);
      clearTimeout(timer);
    };
  }, [shade, turn]);
  return (
    <figure class="board">
      <canvas
        ref={canvas}
        width={width}
        height={height}
        role="img"
        aria-label={called ? `${called}. ${sizeSaid(recipe, turn)}` : sizeSaid(recipe, turn)}
      />
      {children}
    </figure>
  );
};

/** Turns the light on every board beside it. */
export const TurnLight = ({
  turn,
  onTurn,
}: {
  readonly turn: number;
  readonly onTurn: (turn: number) => void;
}) => (
  <label class="turn">
    Turn the light{' '}
    <input
      type="range"
      min="0"
      max="100"
      value={Math.round(turn * 100)}
      aria-valuetext={lightSaid(turn)}
      onInput={({ currentTarget }) => onTurn(Number(currentTarget.value) / 100)}
    />
  </label>
);
