/**
 * What every board looks like today: the picture in both lights, drawn small and cut into cells, of each cell its mean
 * lightness, its grain and its cast. `node test/engine/board/kept-boards.ts` writes `kept-boards.table.json` anew;
 * `kept-boards.test.ts` holds the drawing to it, so that no board changes unseen. Drawn are all boards of the flaws, and
 * for each option of a feature, ground or sheen that none of them has, one more.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { deflateRawSync, inflateRawSync } from 'node:zlib';
import { lightBoard, makeBoard } from '#engine/board/render.ts';
import { BoardFeature, type BoardRecipe } from '#engine/model/board/recipe.ts';
import { PAINTS, SHEEN_NAMES, WOODS } from '#engine/model/board.ts';
import { linkedKnowledge } from '../../../content/tools/knowledge.ts';
import { ON_WHITE, recipeOf } from './board.ts';

/** Pixels of the picture, and of a side of a cell. */
const [COLUMNS, ROWS] = [96, 72];
const CELL = 6;
const ACROSS = COLUMNS / CELL;
const CELLS = ACROSS * (ROWS / CELL);
/** Planes of bytes, one after the other; grain is small, so it counts three times. */
const PLANES = [
  'lightness in raking light',
  'grain in raking light',
  'lightness in facing light',
  'warm or cold in facing light',
  'red or green in facing light',
] as const;
const GRAIN = 3;

export type KeptBoard = { readonly name: string; readonly recipe: BoardRecipe };

const ofFlaws = (): KeptBoard[] => {
  const { known } = linkedKnowledge(fileURLToPath(new URL('../../..', import.meta.url)));
  if (!known) throw new Error('the content does not link: npm run check');
  return known.defects.flatMap(({ id, boards }) =>
    boards.map((recipe, at) => ({ name: `${id} ${at + 1}`, recipe })),
  );
};

type Option = { readonly kind: BoardFeature['kind']; readonly field?: string; readonly value?: unknown };

/** Every kind of feature, and of its fields each name and each yes or no that may stand there. */
const options = (): Option[] =>
  BoardFeature.options.flatMap(({ shape }) => {
    const kind = shape.kind.value;
    const fields = Object.entries(shape).flatMap(([field, type]) => {
      const inner = 'unwrap' in type ? type.unwrap() : type;
      if (field === 'kind') return [];
      if ('options' in inner) return [...inner.options].map((value: unknown) => ({ kind, field, value }));
      return inner.type === 'boolean' ? [true, false].map((value) => ({ kind, field, value })) : [];
    });
    return [{ kind }, ...fields];
  });

const ofOptions = (boards: readonly KeptBoard[]): KeptBoard[] => {
  const shown = boards.map(({ recipe }) => recipe);
  const features = shown.flatMap((recipe) => recipe.features);
  const isShown = ({ kind, field, value }: Option) =>
    features.some((one) => one.kind === kind && (!field || (one as never)[field] === value));
  const drawn = options().filter((one) => one.kind !== 'none' && !isShown(one));
  return drawn.map(({ kind, field, value }) => ({
    name: [kind, field, value].filter((one) => one !== undefined).join(' '),
    recipe: recipeOf({
      base: { paint: ON_WHITE.includes(kind) ? 'white' : 'navy' },
      features: [field ? { kind, [field]: value } : { kind }],
    }),
  }));
};

const ofGrounds = (boards: readonly KeptBoard[]): KeptBoard[] => {
  const shown = boards.map(({ recipe }) => recipe);
  return [
    ...PAINTS.filter((paint) => !shown.some(({ base }) => base.paint === paint)).map((paint) => ({
      name: `${paint} paint`,
      recipe: recipeOf({ base: { paint } }),
    })),
    ...WOODS.filter((wood) => !shown.some(({ base }) => base.wood === wood)).map((wood) => ({
      name: `${wood} wood`,
      recipe: recipeOf({ base: { wood } }),
    })),
    ...SHEEN_NAMES.filter((sheen) => !shown.some((one) => one.sheen === sheen)).map((sheen) => ({
      name: `${sheen} sheen`,
      recipe: recipeOf({ sheen }),
    })),
    ...(shown.some(({ base }) => base.knot)
      ? []
      : [{ name: 'knot', recipe: recipeOf({ base: { wood: 'pine', knot: [30, 22] } }) }]),
  ];
};

const flaws = ofFlaws();
export const KEPT_BOARDS: readonly KeptBoard[] = [...flaws, ...ofOptions(flaws), ...ofGrounds(flaws)];

/** Mean and spread of each cell of a plane. */
const cellsOf = (values: Float64Array): { readonly mean: Float64Array; readonly spread: Float64Array } => {
  const mean = new Float64Array(CELLS);
  const square = new Float64Array(CELLS);
  for (const [pixel, value] of values.entries()) {
    const [column, row] = [pixel % COLUMNS, Math.floor(pixel / COLUMNS)];
    const cell = Math.floor(row / CELL) * ACROSS + Math.floor(column / CELL);
    mean[cell] = (mean[cell] ?? 0) + value / CELL ** 2;
    square[cell] = (square[cell] ?? 0) + value ** 2 / CELL ** 2;
  }
  return { mean, spread: mean.map((one, cell) => Math.sqrt(Math.max(0, (square[cell] ?? 0) - one ** 2))) };
};

/** What is seen of a board, plane after plane. */
export const seenOf = (recipe: BoardRecipe): Uint8Array => {
  const board = makeBoard(recipe, COLUMNS, ROWS);
  const of = (light: 'raking' | 'facing', value: (red: number, green: number, blue: number) => number) => {
    const { data } = lightBoard(board, light);
    return cellsOf(
      Float64Array.from({ length: COLUMNS * ROWS }, (_, pixel) => {
        const [red = 0, green = 0, blue = 0] = data.subarray(pixel * 4, pixel * 4 + 3);
        return value(red, green, blue);
      }),
    );
  };
  const light = (red: number, green: number, blue: number) => (red + 2 * green + blue) / 4;
  const raking = of('raking', light);
  const planes = [
    raking.mean,
    raking.spread.map((one) => one * GRAIN),
    of('facing', light).mean,
    of('facing', (red, _, blue) => 128 + (red - blue) / 2).mean,
    of('facing', (red, green, blue) => 128 + (red + blue) / 4 - green / 2).mean,
  ];
  return Uint8Array.from(
    planes.flatMap((plane) => [...plane].map((one) => Math.min(255, Math.max(0, Math.round(one))))),
  );
};

/** Sines and powers may be rounded another way in their last place, which moves a mean across a border by one. */
const ROOM = 1;

/** What is not as it was, in words; nothing where a board looks as before. */
export const changedCells = (was: Uint8Array, is: Uint8Array): string | undefined => {
  const changed = [...was.keys()].filter((at) => Math.abs((is[at] ?? 0) - (was[at] ?? 0)) > ROOM);
  const by = (at: number) => Math.abs((is[at] ?? 0) - (was[at] ?? 0));
  const [most] = changed.toSorted((one, two) => by(two) - by(one));
  if (most === undefined) return undefined;
  const cell = most % CELLS;
  const place = `row ${Math.floor(cell / ACROSS) + 1}, column ${(cell % ACROSS) + 1}`;
  return `${changed.length} cells changed; most of all ${PLANES[Math.floor(most / CELLS)]} in ${place}: it was ${was[most]} and is ${is[most]}`;
};

const FILE = new URL('kept-boards.table.json', import.meta.url);

/** Neighbors are alike, so that steps from one to the next pack better. */
const packed = (seen: Uint8Array): string =>
  deflateRawSync(
    seen.map((one, at) => one - (seen[at - 1] ?? 0)),
    { level: 9 },
  ).toString('base64');
const unpacked = (text: string): Uint8Array => {
  let last = 0;
  return Uint8Array.from(inflateRawSync(Buffer.from(text, 'base64')), (step) => {
    last = (last + step) & 255;
    return last;
  });
};

export const readKeptBoards = (): ReadonlyMap<string, Uint8Array> =>
  new Map(
    Object.entries(JSON.parse(readFileSync(FILE, 'utf8')) as Record<string, string>).map(([name, text]) => [
      name,
      unpacked(text),
    ]),
  );

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const rows = KEPT_BOARDS.map(({ name, recipe }) => [name, packed(seenOf(recipe))] as const);
  const table = `${JSON.stringify(Object.fromEntries(rows), null, 1)}\n`;
  writeFileSync(FILE, table);
  console.log(`${rows.length} boards, ${Math.round(table.length / 1000)} kB`);
}
