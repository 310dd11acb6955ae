import type { Fault, Issue } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import type { BoardRecipe } from '../model/board.ts';
import type { LineOf } from '../model/knowledge.ts';

/** Pixels across a picture: what is narrower than one is not seen. */
const PIXELS_ACROSS = 480;
/** What a board may be wide, in mm: the bounds of its recipe. */
const [NARROWEST, WIDEST] = [8, 300];
/** Height of a board over its width. */
const HEIGHT = 0.75;

/** Which fields of a feature a measure in a text speaks of, by the words behind it. */
const SPOKEN_OF: readonly (readonly [after: RegExp, fields: readonly string[]])[] = [
  [/^\)? (?:apart|from each other)/, ['spacing-mm', 'pitch-mm']],
  [/^\)? long/, ['length-mm']],
  [/^\)? (?:wide|across|in diameter)/, ['diameter-mm', 'width-mm', 'size-mm', 'spacing-mm', 'length-mm']],
  [/^\)? in from/, ['inset-mm']],
];
const MEASURE = /(?<![/\d.])(\d+(?:\.\d+)?)(?:\s*(?:–|-|to)\s*(\d+(?:\.\d+)?))?\s*(mm|cm)\b/g;

type Said = {
  readonly text: string;
  /** The field whose words say it. */
  readonly in: 'looks' | 'alt';
  readonly least: number;
  readonly most: number;
  readonly fields: readonly string[];
};

/** The measures that a text gives in millimeters or centimeters; bounds in mm. "Up to 3 mm" begins at nothing. */
const measuresIn = (text: string, field: Said['in']): readonly Said[] =>
  [...text.matchAll(MEASURE)].flatMap((found): Said[] => {
    const [whole, first = '', second, unit] = found;
    const scale = unit === 'cm' ? 10 : 1;
    const upTo = /\b(?:up to|no (?:more|bigger|wider) than|under|below) $/.test(text.slice(0, found.index));
    const fields = SPOKEN_OF.find(([after]) => after.test(text.slice(found.index + whole.length)))?.[1];
    const most = Number(second ?? first) * scale;
    return fields ? [{ text: whole, in: field, least: upTo ? 0 : Number(first) * scale, most, fields }] : [];
  });

type Size = {
  readonly feature: number;
  readonly field: string;
  readonly least: number;
  readonly most: number;
};

/** Every length in mm that the features of a board have. */
const sizesOf = ({ features }: BoardRecipe): readonly Size[] =>
  features.flatMap((feature, index) =>
    Object.entries(feature).flatMap(([field, value]): Size[] => {
      if (!field.endsWith('-mm')) return [];
      const [least, most] = (Array.isArray(value) ? value : [value, value]) as [number, number];
      return [{ feature: index, field, least, most }];
    }),
  );

/**
 * What a board can not show as it is written: a place off the piece, a size larger than it or finer than its pixels.
 */
function* onThePiece(recipe: BoardRecipe): Generator<[Fault, readonly PropertyKey[]]> {
  const wide = recipe['width-mm'];
  for (const [index, feature] of recipe.features.entries()) {
    const [x, y] = ('at' in feature && feature.at) || [0, 0];
    if (x > wide || y > wide * HEIGHT)
      yield [
        { code: 'off-the-board', kind: feature.kind, at: [x, y], wide, high: wide * HEIGHT },
        ['features', index, 'at'],
      ];
  }
  for (const { feature, field, least, most } of sizesOf(recipe)) {
    const kind = recipe.features[feature]?.kind ?? 'none';
    const path = ['features', feature, field];
    const told = { code: 'not-shown', kind, field, wide } as const;
    if (least > wide) {
      const board = least > WIDEST ? undefined : least;
      yield [{ ...told, mm: least, why: 'large', bound: wide, board }, path];
    }
    if (most > 0 && most < wide / PIXELS_ACROSS) {
      const board = Math.floor(most * PIXELS_ACROSS);
      const bound = Math.ceil((wide / PIXELS_ACROSS) * 100) / 100;
      yield [{ ...told, mm: most, why: 'fine', bound, board: board < NARROWEST ? undefined : board }, path];
    }
  }
}

/** A measure that a text gives and that the board contradicts. */
function* asSaid(recipe: BoardRecipe, said: readonly Said[]): Generator<[Fault, readonly PropertyKey[]]> {
  const sizes = sizesOf(recipe);
  for (const { text, in: field, least, most, fields } of said) {
    const spoken = sizes.filter((size) => fields.includes(size.field));
    const [first] = spoken;
    if (first && !spoken.some((size) => size.least <= most && size.most >= least))
      yield [
        { code: 'size-differs', said: text, in: field, field: first.field, drawn: [first.least, first.most] },
        ['features', first.feature, first.field],
      ];
  }
}

type Placed = {
  readonly file: string;
  readonly lineOf: LineOf;
  readonly recipe: BoardRecipe;
  readonly path: readonly PropertyKey[];
  /** What is said of the flaw beside the board's own words. */
  readonly text: string;
};

const placed = (known: Knowledge): readonly Placed[] => [
  ...known.defects.flatMap(({ file, lineOf, boards, looks }) =>
    boards.map((recipe, index) => ({ file, lineOf, recipe, path: ['boards', index], text: looks })),
  ),
  ...known.questions.flatMap(({ file, lineOf, boards }) =>
    boards
      ? (['yes', 'no'] as const).map((answer) => ({
          file,
          lineOf,
          recipe: boards[answer],
          path: ['boards', answer],
          text: '',
        }))
      : [],
  ),
];

/** All that a board shows otherwise than its own words and `text`, what is said of the flaw beside them. */
export function* boardFaults(recipe: BoardRecipe, text: string): Generator<[Fault, readonly PropertyKey[]]> {
  yield* onThePiece(recipe);
  yield* asSaid(recipe, [...measuresIn(text, 'looks'), ...measuresIn(recipe.alt, 'alt')]);
}

/**
 * Every board shows what it says: in its place, large enough to see, and of the size that the flaw's own text names.
 */
export function* boardsFit(known: Knowledge): Generator<Issue> {
  for (const { file, lineOf, recipe, path, text } of placed(known))
    for (const [fault, place] of boardFaults(recipe, text))
      yield { file, line: lineOf([...path, ...place]), ...fault };
}
