import bold from '@fontsource/barlow-condensed/files/barlow-condensed-latin-700-normal.woff2?url';
import { lightBoard, makeBoard } from '#engine/board/render.ts';
import type { BoardRecipe } from '#engine/model/board.ts';

/** The sizes that posts use, in pixels. */
export const POST_SIZES = {
  square: { says: 'Square, 1080 × 1080', width: 1080, height: 1080, pair: 'across' },
  upright: { says: 'Upright, 1080 × 1350', width: 1080, height: 1350, pair: 'down' },
  wide: { says: 'Wide, 1200 × 630', width: 1200, height: 630, pair: 'across' },
} as const;
export type PostSize = keyof typeof POST_SIZES;

/** Those of the site in light, whatever the screen: a post is seen anywhere. */
type PostColors = {
  readonly paper: string;
  readonly ink: string;
  readonly tape: string;
  readonly cast: string;
};

export type PostPicture = {
  readonly recipe: BoardRecipe;
  readonly light: 'raking' | 'facing';
  /** Written on tape across it; nothing where it says nothing. */
  readonly label: string;
};
export type Post = {
  readonly size: PostSize;
  readonly pictures: readonly PostPicture[];
  readonly line: string;
  readonly link: string;
  readonly colors: PostColors;
};

const EDGE = 48;
const GAP = 24;
/** Room below the boards for the line and the link. */
const FOOT = { square: 260, upright: 270, wide: 190 } as const;
/**
 * The narrow face of the site. A page that has begun without it stays without it, so a canvas has it by a name of its
 * own; what is drawn before it has come would keep another one for good.
 */
const HOUSE = 'House narrow';
let coming: Promise<unknown> | undefined;
export const faceCame = (): Promise<unknown> => {
  coming ??= new FontFace(HOUSE, `url(${bold})`, { weight: '600 800' })
    .load()
    .then((face) => document.fonts.add(face))
    .catch(() => {
      coming = undefined;
    });
  return coming;
};
const FACE = `"${HOUSE}", "Avenir Next Condensed", "Roboto Condensed", "Arial Narrow", "DejaVu Sans Condensed", sans-serif`;

/** A strip of tape with torn ends. */
const tape = (
  on: CanvasRenderingContext2D,
  { tape: strip, cast }: PostColors,
  x: number,
  y: number,
  w: number,
  h: number,
): void => {
  const tear = [0, 7, 2, 9, 4, 6, 0];
  on.save();
  on.shadowColor = cast;
  on.shadowOffsetX = 5;
  on.shadowOffsetY = 3;
  on.shadowBlur = 4;
  on.fillStyle = strip;
  on.beginPath();
  for (const [n, inset] of tear.entries()) on.lineTo(x + w - inset, y + (n * h) / (tear.length - 1));
  for (const [n, inset] of [...tear].reverse().entries())
    on.lineTo(x + inset, y + h - (n * h) / (tear.length - 1));
  on.fill();
  on.restore();
};

/** Lines of words no wider than `most`. */
const broken = (on: CanvasRenderingContext2D, text: string, most: number): string[] => {
  const lines: string[] = [];
  for (const word of text.split(/\s+/)) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && on.measureText(longer).width <= most) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
};

/** The largest letters at which the text takes no more lines than these. */
const fitted = (
  on: CanvasRenderingContext2D,
  text: string,
  wide: number,
  lines: number,
  from: number,
): number => {
  let size = from;
  for (; size > 26; size -= 2) {
    on.font = `700 ${size}px ${FACE}`;
    const found = broken(on, text, wide);
    if (found.length <= lines && found.every((line) => on.measureText(line).width <= wide)) break;
  }
  return size;
};

/** Draws a post into the canvas: boards on paper, what is said of them, and the short link. */
export const drawPost = (canvas: HTMLCanvasElement, { size, pictures, line, link, colors }: Post): void => {
  const { width, height, pair } = POST_SIZES[size];
  canvas.width = width;
  canvas.height = height;
  const on = canvas.getContext('2d');
  if (!on) return;
  on.fillStyle = colors.paper;
  on.fillRect(0, 0, width, height);

  const count = Math.max(1, pictures.length);
  const across = pair === 'across' ? count : 1;
  const down = pair === 'down' ? count : 1;
  const wide = Math.floor((width - 2 * EDGE - (across - 1) * GAP) / across);
  const high = Math.floor((height - EDGE - FOOT[size] - (down - 1) * GAP) / down);
  pictures.forEach(({ recipe, light, label }, index) => {
    const x = EDGE + (across > 1 ? index * (wide + GAP) : 0);
    const y = EDGE + (down > 1 ? index * (high + GAP) : 0);
    on.fillStyle = colors.cast;
    on.fillRect(x + 9, y + 7, wide, high);
    const { data } = lightBoard(makeBoard(recipe, wide, high), light, true);
    const picture = new ImageData(wide, high);
    picture.data.set(data);
    on.putImageData(picture, x, y);
    if (!label) return;
    const letters = fitted(on, label, wide - 90, 1, 40);
    on.font = `700 ${letters}px ${FACE}`;
    const long = Math.min(wide - 20, on.measureText(label).width + 48);
    tape(on, colors, x - 10, y + high - letters - 44, long, letters + 24);
    on.fillStyle = colors.ink;
    on.fillText(label, x + 14, y + high - 32);
  });

  const top = height - FOOT[size];
  const letters = fitted(on, line, width - 2 * EDGE, 2, size === 'wide' ? 52 : 64);
  on.font = `700 ${letters}px ${FACE}`;
  on.fillStyle = colors.ink;
  for (const [n, text] of broken(on, line, width - 2 * EDGE)
    .slice(0, 2)
    .entries())
    on.fillText(text, EDGE, top + 24 + letters * (n + 0.85) * 1.06);
  tape(on, colors, EDGE - 12, height - 88, width - 2 * EDGE + 24, 60);
  on.fillStyle = colors.ink;
  on.font = `600 ${fitted(on, link, width - 2 * EDGE - 40, 1, 38)}px ${FACE}`;
  on.fillText(link, EDGE + 12, height - 45);
};
