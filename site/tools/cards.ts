import { existsSync, readFileSync } from 'node:fs';
import { mkdir, rename, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import satori from 'satori';
import sharp from 'sharp';
import { type Knowledge, visits } from '#engine/index.ts';
import type { BoardRecipe } from '#engine/model/board.ts';
import { renderBoard } from '../../engine/board/render.ts';
import { CARD_HEIGHT, CARD_WIDTH, type Card, layout, PICTURE } from './card-layout.ts';
import { filesBelow, sha256 } from './hash.ts';

/** A card with the place of its file below dist/cards/ and the board that lies on it. */
export type NamedCard = Omit<Card, 'picture'> & { readonly file: string; readonly board?: BoardRecipe };

const CACHE = 'node_modules/.cache/halfdry-cards';
const PNG = { palette: true, colours: 96, effort: 4, dither: 0.4 } as const;

const require = createRequire(import.meta.url);
const face = (weight: 500 | 700) => ({
  name: 'Card',
  weight,
  data: readFileSync(
    require.resolve(`@fontsource/barlow-condensed/files/barlow-condensed-latin-${weight}-normal.woff`),
  ),
});
const FACES = [face(500), face(700)];

/** Changes with every line of the renderer and of this layout, with the fonts and the encoder. */
const drawnBy = (): string =>
  sha256(
    [
      ...filesBelow('engine/board').map((file) => sha256(readFileSync(join('engine/board', file)))),
      ...['cards', 'card-layout'].map((file) => sha256(readFileSync(`site/tools/${file}.ts`))),
      ...FACES.map(({ data }) => sha256(data)),
      JSON.stringify(sharp.versions),
    ].join(),
  );

/** Draws one card as a PNG of 1200 × 630. Letters become paths, so no font of the machine can get in. */
export const drawCard = async ({ kind, title, address, board }: NamedCard): Promise<Buffer> => {
  const tree = layout({ kind, title, address, picture: board !== undefined });
  const svg = await satori(tree as Parameters<typeof satori>[0], {
    width: CARD_WIDTH,
    height: CARD_HEIGHT,
    fonts: FACES.map((one) => ({ ...one, style: 'normal' as const })),
  });
  const card = sharp(Buffer.from(svg));
  if (board) {
    const { data, width, height } = renderBoard(board, {
      light: 'raking',
      width: PICTURE.width,
      height: PICTURE.height,
    });
    const raw = { width, height, channels: 4 as const };
    card.composite([{ input: Buffer.from(data.buffer), raw, left: PICTURE.left, top: PICTURE.top }]);
  }
  return card.png(PNG).toBuffer();
};

/** Every card of the site: the first page, each flaw, repair and lesson. `spoken` gives an address as it is typed. */
export const allCards = (known: Knowledge, spoken: (path: string) => string): readonly NamedCard[] => {
  const shown = known.defects.flatMap(({ id, boards: [board] }) => (board ? [{ id, board }] : []));
  const boardOf = (id: string) => shown.find((one) => one.id === id)?.board;
  const repairs = (defect: string, remedy: string) =>
    [...visits(known.get('defect', defect).tree)].some(
      ({ branch }) => 'remedy' in branch && branch.remedy === remedy,
    );
  const withBoard = (card: NamedCard, board: BoardRecipe | undefined) => (board ? { ...card, board } : card);
  return [
    withBoard(
      {
        file: 'halfdry.png',
        kind: 'Your top coat looks wrong',
        title: 'Touch it, or not yet?',
        address: spoken('/'),
      },
      boardOf(known.defects.find(({ often, boards }) => often === 'common' && boards.length)?.id ?? ''),
    ),
    ...known.defects.map(({ id, name }) =>
      withBoard(
        { file: `defects/${id}.png`, kind: 'Not dry? Hands off', title: name, address: spoken(`/r/${id}`) },
        boardOf(id),
      ),
    ),
    ...known.remedies.map(({ id, name }) =>
      withBoard(
        { file: `remedies/${id}.png`, kind: 'The repair', title: name, address: spoken(`/r/${id}`) },
        shown.find((one) => repairs(one.id, id))?.board,
      ),
    ),
    ...known.lessons.map(({ id, title, defects: [first = ''] }) =>
      withBoard(
        { file: `lessons/${id}.png`, kind: 'A lesson', title, address: spoken(`/learn/${id}`) },
        boardOf(first),
      ),
    ),
  ];
};

/** Writes all cards below `dist/cards/`; what was drawn before comes from the cache. */
export const writeCards = async (dist: string, cards: readonly NamedCard[]): Promise<void> => {
  await mkdir(CACHE, { recursive: true });
  const by = drawnBy();
  for (const { file, ...card } of cards) {
    const cached = join(CACHE, `${sha256(JSON.stringify(card) + by).slice(0, 40)}.png`);
    if (!existsSync(cached)) {
      await writeFile(`${cached}.part`, await drawCard({ file, ...card }));
      await rename(`${cached}.part`, cached);
    }
    const target = join(dist, 'cards', file);
    await mkdir(dirname(target), { recursive: true });
    await writeFile(target, readFileSync(cached));
  }
};
