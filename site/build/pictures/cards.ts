import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import sharp from 'sharp';
import type { Pixels } from '#engine/board/pixels.ts';
import { renderBoard } from '#engine/board/render.ts';
import { type Knowledge, visits } from '#engine/index.ts';
import type { BoardRecipe } from '#engine/model/board.ts';
import { LIGHT } from '../colors.ts';
import { sha256 } from '../hash.ts';
import { CARD_HEIGHT, CARD_WIDTH, layout, type NamedCard, PICTURE } from './card-layout.ts';
import type { Drawing } from './drawing.ts';
import { copyPicture, isDrawn, keepPicture, pictureKey } from './picture-cache.ts';

/** A quarter smaller than the encoder’s usual way at 84, and an eye sees no difference at twice the size. */
const JPEG = { quality: 80, chromaSubsampling: '4:4:4', mozjpeg: true } as const;

const require = createRequire(import.meta.url);
const face = (weight: 500 | 700) => ({
  name: 'Card',
  weight,
  style: 'normal' as const,
  data: readFileSync(
    require.resolve(`@fontsource/barlow-condensed/files/barlow-condensed-latin-${weight}-normal.woff`),
  ),
});
const FACES = [face(500), face(700)];

/** Changes with every line of this layout, with its colors, the fonts and the encoding. */
const LAID_OUT_BY = sha256(
  [
    ...['cards', 'card-layout'].map((file) => sha256(readFileSync(new URL(`./${file}.ts`, import.meta.url)))),
    ...FACES.map(({ data }) => sha256(data)),
    JSON.stringify(LIGHT),
  ].join(),
);

const fileOf = (key: string): string => `${key}.jpg`;
const keyOf = ({ file: _, ...card }: NamedCard): string => pictureKey(card, LAID_OUT_BY);

/** The board of a card as it is seen in raking light. */
const pictureOf = (board: BoardRecipe): Pixels =>
  renderBoard(board, { light: 'raking', width: PICTURE.width, height: PICTURE.height });

/** Draws one card of 1200 × 630. Letters become paths, so no font of the machine can get in. */
export const drawCard = async (
  { kind, title, address, board }: NamedCard,
  picture = board && pictureOf(board),
): Promise<Buffer> => {
  const tree = layout({ kind, title, address, picture: picture !== undefined });
  // The package is large, and a build that finds all cards in the cache does without.
  const { default: satori } = await import('satori');
  const svg = await satori(tree as Parameters<typeof satori>[0], {
    width: CARD_WIDTH,
    height: CARD_HEIGHT,
    fonts: FACES,
  });
  const card = sharp(Buffer.from(svg));
  if (picture) {
    const { data, width, height } = picture;
    const raw = { width, height, channels: 4 as const };
    card.composite([{ input: Buffer.from(data.buffer), raw, left: PICTURE.left, top: PICTURE.top }]);
  }
  return card.jpeg(JPEG).toBuffer();
};

/** Every card of the site: the first page, each flaw, repair and lesson. `spoken` gives an address as it is typed. */
export const allCards = (known: Knowledge, spoken: (path: string) => string): readonly NamedCard[] => {
  const shown = known.defects.flatMap(({ id, boards: [board] }) => (board ? [{ id, board }] : []));
  const boardOf = (id: string) => shown.find((one) => one.id === id)?.board;
  const boardOfRepair = new Map<string, BoardRecipe>();
  for (const { id, board } of shown)
    for (const { branch } of visits(known.get('defect', id).tree))
      if ('remedy' in branch && !boardOfRepair.has(branch.remedy)) boardOfRepair.set(branch.remedy, board);
  const withBoard = (card: NamedCard, board: BoardRecipe | undefined) => (board ? { ...card, board } : card);
  return [
    withBoard(
      {
        file: 'halfdry.jpg',
        kind: 'Your top coat looks wrong',
        title: 'Touch it, or not yet?',
        address: spoken('/'),
      },
      boardOf(known.defects.find(({ often, boards }) => often === 'common' && boards.length)?.id ?? ''),
    ),
    ...known.defects.map(({ id, name }) =>
      withBoard(
        { file: `defects/${id}.jpg`, kind: 'Not dry? Hands off', title: name, address: spoken(`/r/${id}`) },
        boardOf(id),
      ),
    ),
    ...known.remedies.map(({ id, name }) =>
      withBoard(
        { file: `remedies/${id}.jpg`, kind: 'The repair', title: name, address: spoken(`/r/${id}`) },
        boardOfRepair.get(id),
      ),
    ),
    ...known.lessons.map(({ id, title, defects: [first = ''] }) =>
      withBoard(
        { file: `lessons/${id}.jpg`, kind: 'A lesson', title, address: spoken(`/learn/${id}`) },
        boardOf(first),
      ),
    ),
  ];
};

/** What the cache lacks of these cards; cards of one board are drawn together, so that it is drawn once. */
export const missingCards = (cards: readonly NamedCard[]): readonly Drawing[] => {
  const missing = cards
    .map((card) => ({ key: keyOf(card), card }))
    .filter(({ key }) => !isDrawn(fileOf(key)));
  return [...Map.groupBy(missing, ({ card }) => card.board)].map(([board, group]) => ({
    kind: 'cards',
    board,
    cards: group,
  }));
};

/** Draws cards of one board into the cache. */
export const drawCards = async ({ board, cards }: Extract<Drawing, { kind: 'cards' }>): Promise<void> => {
  const picture = board && pictureOf(board);
  for (const { key, card } of cards) await keepPicture(fileOf(key), await drawCard(card, picture));
};

/** Copies all cards from the cache to `dist/cards/`. */
export const copyCards = async (cards: readonly NamedCard[], dist: string): Promise<void> => {
  for (const card of cards) await copyPicture(fileOf(keyOf(card)), join(dist, 'cards', card.file));
};
