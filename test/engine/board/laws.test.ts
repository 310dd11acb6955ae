/**
 * What the fields of a flaw mean, held to their units: twice the height is twice the relief, twice as many on a square
 * centimeter cover about twice the place, a wider one covers more, a stronger one changes more; and a board is the same
 * patch of surface however finely it is cut. Laws of geometry, no source needed; the factors leave room for overlap, for
 * what is cut off at the rim, and for chance.
 */
import { describe, expect, it } from 'vitest';
import type { Board } from '#engine/board/field.ts';
import { makeBoard } from '#engine/board/render.ts';
import { BoardFeature, FEATURE_KINDS, type FeatureKind } from '#engine/model/board/recipe.ts';
import { THOROUGH } from '../../thorough.ts';
import { ON_WHITE, recipeOf } from './board.ts';

const [COLUMNS, ROWS] = [80, 60];
/** So much of each map counts as one: µm of relief and film, and hundredths of the others. */
const UNITS = { height: 1, film: 1, haze: 50, roughness: 50, red: 100, green: 100, blue: 100 } as const;
const MAPS = Object.keys(UNITS) as (keyof typeof UNITS)[];

const baseOf = (kind: FeatureKind) => ({ paint: ON_WHITE.includes(kind) ? 'white' : 'navy' });
const draw = (kind: FeatureKind, features: readonly object[], fine = 1): Board =>
  makeBoard(recipeOf({ base: baseOf(kind), features }), COLUMNS * fine, ROWS * fine);

/** How much of a board a flaw changes (pixels), by how much in all, and how high it stands or how deep it goes. */
const changeOf = (kind: FeatureKind, more: object) => {
  const [good, flawed] = [draw(kind, []), draw(kind, [{ kind, ...more }])];
  let [area, sum, relief] = [0, 0, 0];
  for (let at = 0; at < COLUMNS * ROWS; at++) {
    const here = MAPS.reduce(
      (all, map) => all + Math.abs((flawed[map][at] ?? 0) - (good[map][at] ?? 0)) * UNITS[map],
      0,
    );
    if (here > 0.5) area++;
    sum += here;
    relief = Math.max(relief, Math.abs((flawed.height[at] ?? 0) - (good.height[at] ?? 0)));
  }
  return { area, sum, relief };
};

type Change = ReturnType<typeof changeOf>;
type Law = readonly [of: keyof Change, least: number, most: number];

const HEIGHTS = ['height-um', 'ridge-um', 'depth-um', 'emboss-um', 'lift-um', 'thickness-um', 'grain-um'];
const NUMBERS = ['per-cm2', 'count'];
const WIDTHS = ['diameter-mm', 'size-mm', 'width-mm', 'length-mm'];

/** What twice of a field does, by what the field is. */
const lawOf = (field: string): Law | undefined => {
  if (HEIGHTS.includes(field)) return ['relief', 1.9, 2.5];
  if (NUMBERS.includes(field)) return ['area', 1.5, 2.6];
  if (field === 'diameter-mm') return ['area', 1.6, 5];
  if (WIDTHS.includes(field)) return ['area', 1.05, 4];
  return undefined;
};

/** Where a flaw is all over, touches what stands beside it, or leaves the board, twice is not twice. */
const OTHERWISE: Readonly<Record<string, Law | undefined>> = {
  // All over the board whatever its pattern measures.
  'haze size-mm': undefined,
  'clouds size-mm': undefined,
  'blush size-mm': undefined,
  'bleed size-mm': undefined,
  'dark-blotch size-mm': undefined,
  'color-drag width-mm': undefined,
  'oil-pools size-mm': undefined,
  'crawling size-mm': undefined,
  'lap width-mm': undefined,
  'spray-bands width-mm': undefined,
  'sheen-patches size-mm': undefined,
  'wax-in-grain length-mm': undefined,
  'wax-in-grain per-cm2': undefined,
  // A ring twice as wide runs over the rim of the board.
  'white-ring diameter-mm': ['area', 0.3, 0.9],
  'white-ring width-mm': ['area', 1.02, 2],
  // Film flows together: what stands higher is narrower.
  'oil-pools height-um': ['relief', 1.2, 2],
  'crawling ridge-um': ['relief', 1.3, 2],
  'fat-edge height-um': ['relief', 1.1, 2],
  // Runs hang one beside the other, and a hair lies across another.
  'runs count': ['area', 1.1, 2],
  'hair count': ['area', 1.4, 2],
  'runs length-mm': ['area', 1.05, 2],
};

const twice = (value: number | readonly number[]) =>
  typeof value === 'number' ? value * 2 : value.map((one) => one * 2);

/** Every third in the short run, as in features.test.ts. */
const drawn = FEATURE_KINDS.filter((kind) => kind !== 'none').filter((_, at) => THOROUGH || at % 3 === 1);

describe.each(drawn)('%s', (kind) => {
  const fields = BoardFeature.parse({ kind }) as unknown as Record<string, number | readonly number[]>;
  const once = changeOf(kind, {});

  it('changes with each of its measures as the measure says', () => {
    for (const [field, value] of Object.entries(fields)) {
      const name = `${kind} ${field}`;
      const law = name in OTHERWISE ? OTHERWISE[name] : lawOf(field);
      const more = { kind, [field]: law && twice(value) };
      if (!law || value === 0 || !BoardFeature.safeParse(more).success) continue;
      const [of, least, most] = law;
      const ratio = changeOf(kind, more)[of] / once[of];
      expect(ratio, name).toBeGreaterThanOrEqual(least);
      expect(ratio, name).toBeLessThanOrEqual(most);
    }
  });

  it('changes more where it is stronger, and by no more than that', () => {
    const strength = fields['strength'];
    if (typeof strength !== 'number') return;
    const [half, whole] = [changeOf(kind, { strength: strength / 2 }), once];
    expect(half.sum).toBeLessThanOrEqual(whole.sum * 1.15);
    expect(half.sum).toBeGreaterThan(whole.sum * 0.15);
  });

  it('is the same patch of surface however finely it is cut', () => {
    const mean = (board: Board, map: keyof typeof UNITS, of: (value: number) => number) => {
      let sum = 0;
      for (const value of board[map]) sum += of(value);
      return sum / board[map].length;
    };
    const [coarse, fine] = [draw(kind, [{ kind }]), draw(kind, [{ kind }], 2)];
    for (const map of MAPS) {
      const own = mean(fine, map, Math.abs);
      // A hairline is narrower than a pixel.
      const room = Math.max(own * 0.3, 3 / UNITS[map]);
      expect(Math.abs(mean(coarse, map, Math.abs) - own), `${kind} ${map}`).toBeLessThanOrEqual(room);
    }
  });
});

describe('relief is as high as its field says, to a third', () => {
  it.each<[FeatureKind, string, number]>([
    ['brush-marks', 'height-um', 14],
    ['stipple', 'height-um', 28],
    ['orange-peel', 'height-um', 28],
    ['wrinkles', 'height-um', 160],
    ['telegraphing', 'height-um', 55],
    ['print', 'depth-um', 20],
    ['drag', 'height-um', 45],
    ['pool', 'depth-um', 900],
    ['swipe', 'ridge-um', 8],
    ['lap', 'ridge-um', 13],
  ])('%s: %s', (kind, field, about) => {
    for (const times of [1, 1.5]) {
      const { relief } = changeOf(kind, { [field]: about * times });
      expect(relief).toBeGreaterThan(about * times * 0.66);
      expect(relief).toBeLessThan(about * times * 1.33);
    }
  });
});
