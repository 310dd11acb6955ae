/** What stands on a card image, as satori takes it. Sizes are pixels of the card. */
import type { BoardRecipe } from '#engine/model/board.ts';
import { LIGHT } from '../colors.ts';

export const CARD_WIDTH = 1200;
export const CARD_HEIGHT = 630;

/** Where the picture of the board lies. */
export const PICTURE = { left: 48, top: 52, width: 560, height: 420 } as const;

export type Card = {
  /** What kind of page it is, in a word or two. */
  readonly kind: string;
  /** The name or the verdict, as large as it fits. */
  readonly title: string;
  /** The address, as it is typed. */
  readonly address: string;
  readonly picture: boolean;
};

/** A card with the place of its file below dist/cards/ and the board that lies on it. */
export type NamedCard = Omit<Card, 'picture'> & { readonly file: string; readonly board?: BoardRecipe };

type Node = { type: string; props: { style: Record<string, unknown>; children?: unknown } };
const box = (style: Record<string, unknown>, children?: unknown): Node => ({
  type: 'div',
  props: { style: { display: 'flex', ...style }, ...(children === undefined ? {} : { children }) },
});

/** A strip of tape, torn at both ends by fixed steps. */
const torn = (width: number, height: number): string => {
  const steps = [0, 9, 3, 11, 5, 8, 1];
  const right = steps.map((x, n) => `${width - x}px ${(n * height) / (steps.length - 1)}px`);
  const left = [...steps]
    .reverse()
    .map((x, n) => `${11 - x}px ${height - (n * height) / (steps.length - 1)}px`);
  return `polygon(${[...right, ...left].join(', ')})`;
};

const tape = (left: number, top: number, width: number, height: number, size: number, text: string) => [
  box({
    position: 'absolute',
    left: left + 7,
    top: top + 5,
    width,
    height,
    backgroundColor: LIGHT.cast,
    clipPath: torn(width, height),
  }),
  box({
    position: 'absolute',
    left,
    top,
    width,
    height,
    backgroundColor: LIGHT.tape,
    clipPath: torn(width, height),
  }),
  // Beside the strip and not in it: what is torn cuts its content too, and that cut takes most of the time of a card.
  box(
    {
      position: 'absolute',
      left,
      top,
      width,
      height,
      alignItems: 'center',
      paddingLeft: 34,
      fontSize: size,
      color: LIGHT.ink,
    },
    text,
  ),
];

/** Letters of the condensed face are about 0.44 of its size wide; a word never breaks. */
const LETTER = 0.44;
/** The largest size at which the title fills no more than these lines and no word is wider than its place. */
const fit = (title: string, width: number, lines: number, most: number): number => {
  const longest = Math.max(...title.split(' ').map((word) => word.length));
  const byWord = width / (longest * LETTER);
  const byLines = (width * lines * 0.82) / (title.length * LETTER);
  return Math.round(Math.max(64, Math.min(most, byWord, byLines)));
};

export const layout = ({ kind, title, address, picture }: Card): Node => {
  const left = picture ? PICTURE.left + PICTURE.width + 48 : 72;
  const width = CARD_WIDTH - left - 48;
  const tall = picture ? 420 : 400;
  return box(
    {
      width: CARD_WIDTH,
      height: CARD_HEIGHT,
      backgroundColor: LIGHT.paper,
      fontFamily: 'Card',
      position: 'relative',
    },
    [
      ...(picture
        ? [
            box({
              position: 'absolute',
              left: PICTURE.left + 12,
              top: PICTURE.top + 9,
              width: PICTURE.width,
              height: PICTURE.height,
              backgroundColor: LIGHT.cast,
            }),
          ]
        : []),
      box(
        {
          position: 'absolute',
          left,
          top: 48,
          width,
          height: tall,
          flexDirection: 'column',
          justifyContent: 'center',
        },
        [
          box({ fontSize: 44, color: LIGHT.ink, fontWeight: 500, marginBottom: 10 }, kind),
          box(
            {
              fontSize: picture ? fit(title, width, 3, 120) : fit(title, width, 2, 150),
              lineHeight: 1,
              color: LIGHT.ink,
              fontWeight: 700,
            },
            title,
          ),
        ],
      ),
      ...tape(36, 506, CARD_WIDTH - 72, 92, 56, address),
    ],
  );
};
