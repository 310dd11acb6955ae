/** What layers do to the maps of a board: laws of mixing and of absorption (Beer–Lambert), on one pixel beside another. */
import { describe, expect, it } from 'vitest';
import { groundBelow, layBase } from '#engine/board/base.ts';
import {
  type Board,
  blankBoard,
  dim,
  everywhere,
  pour,
  raise,
  roughen,
  scaleFilm,
  scatter,
  stain,
  tint,
  uncover,
} from '#engine/board/field.ts';
import { layFilm } from '#engine/board/film.ts';
import { kept } from '#engine/board/kept.ts';
import { PAINTS, SHEEN_NAMES } from '#engine/model/board.ts';

const board = () => {
  const on = blankBoard(60, 8, 6);
  on.red.fill(0.5);
  on.green.fill(0.25);
  on.blue.fill(0.125);
  on.film.fill(40);
  on.roughness.fill(0.1);
  return on;
};
const color = (on: Board, i: number) => [on.red[i], on.green[i], on.blue[i]];
const near = (all: readonly (number | undefined)[], wanted: readonly number[]) => {
  for (const [at, one] of wanted.entries()) expect(all[at]).toBeCloseTo(one, 5);
};

describe('a board', () => {
  it('is cut into pixels as wide as high, each visited once with its middle', () => {
    const on = board();
    expect([on.pitch, on.widthMm, on.heightMm]).toEqual([7.5, 60, 45]);
    const met: number[] = [];
    everywhere(on, (i, x, y) => {
      met.push(i);
      expect([x, y]).toEqual([((i % 8) + 0.5) * 7.5, (Math.floor(i / 8) + 0.5) * 7.5]);
    });
    expect(met).toEqual([...Array(48).keys()]);
  });
});

describe('a layer on one pixel', () => {
  it('adds relief, film and haze to what is there, and leaves the next alone', () => {
    const on = board();
    for (let times = 0; times < 2; times++) {
      raise(on, 3, -2.5);
      pour(on, 3, 10);
      scatter(on, 3, 0.25);
    }
    scaleFilm(on, 3, 0.5);
    expect([on.height[3], on.film[3], on.haze[3]]).toEqual([-5, 30, 0.5]);
    expect([on.height[4], on.film[4], on.haze[4]]).toEqual([0, 40, 0]);
  });

  it('draws a color over another as a mixture of both: none, a quarter, all', () => {
    const on = board();
    for (const [i, share] of [0, 0.25, 1].entries()) tint(on, i, [0.9, 0.45, 0.025], share);
    near(color(on, 0), [0.5, 0.25, 0.125]);
    near(color(on, 1), [0.6, 0.3, 0.1]);
    near(color(on, 2), [0.9, 0.45, 0.025]);
  });

  it('shows another ground in the same shares, pixel by pixel', () => {
    const [on, below] = [board(), board()];
    below.red.fill(0.9);
    below.green.fill(0.45);
    below.blue.fill(0.025);
    below.red[1] = 0.1;
    for (const [i, share] of [0, 0.25, 1].entries()) uncover(on, i, below, share);
    near(color(on, 0), [0.5, 0.25, 0.125]);
    near(color(on, 1), [0.4, 0.3, 0.1]);
    near(color(on, 2), [0.9, 0.45, 0.025]);
  });

  it('dims each color by its factor; a stain twice as deep takes the same share once more', () => {
    const on = board();
    dim(on, 0, [0.5, 1, 0.8]);
    near(color(on, 0), [0.25, 0.25, 0.1]);
    stain(on, 1, [0.3, 0.8, 1.6], 0);
    near(color(on, 1), [0.5, 0.25, 0.125]);
    stain(on, 2, [0.3, 0.8, 1.6], 0.5);
    stain(on, 2, [0.3, 0.8, 1.6], 0.5);
    stain(on, 3, [0.3, 0.8, 1.6], 1);
    near(color(on, 2), color(on, 3) as number[]);
    near(color(on, 3), [0.5 * Math.exp(-0.3), 0.25 * Math.exp(-0.8), 0.125 * Math.exp(-1.6)]);
  });

  it('moves roughness to another by a share of the way', () => {
    const on = board();
    roughen(on, 0, 0.3, 0.5);
    roughen(on, 1, 0.02, 1);
    roughen(on, 2, 0.9, 0);
    near([...on.roughness.slice(0, 3)], [0.2, 0.02, 0.1]);
  });
});

describe('what a board is made of', () => {
  it('is kept for the last six keys asked for, and made anew for others', () => {
    const made: string[] = [];
    const of = kept(
      (name: string) => name,
      (name: string) => {
        made.push(name);
        return { name };
      },
    );
    const one = of('a');
    expect(of('a')).toBe(one);
    for (const name of ['b', 'c', 'd', 'e', 'f']) of(name);
    expect(of('a')).toBe(one);
    // Now b was not asked for longest.
    of('g');
    expect(of('a')).toBe(one);
    expect(made).toEqual(['a', 'b', 'c', 'd', 'e', 'f', 'g']);
    of('b');
    expect(made.at(-1)).toBe('b');
    expect(of('b').name).toBe('b');
    expect(made).toHaveLength(8);
  });

  it('is a paint of one color, paler or darker by less than a third, the same below as above', () => {
    for (const paint of PAINTS)
      for (const seed of [1, 2, 3]) {
        const on = blankBoard(60, 40, 30);
        layBase(on, { paint }, seed);
        expect(on.height.every((um) => um === 0)).toBe(true);
        expect(on.bareRoughness).toBe(0.28);
        const mean = (map: Float32Array) => map.reduce((sum, one) => sum + one, 0) / map.length;
        for (const map of [on.red, on.green, on.blue]) {
          expect(Math.min(...map)).toBeGreaterThan(mean(map) * 0.92);
          expect(Math.max(...map)).toBeLessThan(Math.min(1, mean(map) * 1.08));
        }
        expect(groundBelow(on, { paint }, seed).red).toEqual(on.red);
        const other = groundBelow(on, { paint }, seed + 10);
        const ratio = mean(other.green) / mean(on.green);
        expect(ratio).not.toBe(1);
        expect(ratio).toBeGreaterThan(0.45);
        expect(ratio).toBeLessThan(2.2);
      }
    const gray = (paint: 'gray' | 'black') => {
      const on = blankBoard(60, 40, 30);
      layBase(on, { paint }, 5);
      return [on.red[0] ?? 0, on.green[0] ?? 0, on.blue[0] ?? 0];
    };
    // A cast shows in a gray at once, so it has next to none.
    for (const paint of ['gray', 'black'] as const)
      expect(Math.max(...gray(paint)) / Math.min(...gray(paint))).toBeLessThan(1.2);
  });

  it('is wood that is rougher bare than paint, and open in its pores', () => {
    const on = blankBoard(60, 160, 120);
    layBase(on, { wood: 'oak' }, 4);
    expect(on.bareRoughness).toBe(0.34);
    expect(Math.min(...on.height)).toBeLessThan(-6);
  });
});

describe('a film', () => {
  const laid = (um: number, sheen: (typeof SHEEN_NAMES)[number], wet = false, holes = 0) => {
    const on = blankBoard(60, 60, 45);
    on.height.fill(holes);
    layFilm(on, um, sheen, wet, 7);
    return on;
  };
  const mean = (map: Float32Array) => map.reduce((sum, one) => sum + one, 0) / map.length;

  it('lies as thick as told, a little more here than there', () => {
    const on = laid(80, 'satin');
    expect(Math.abs(mean(on.film) / 80 - 1)).toBeLessThan(0.03);
    expect(Math.max(...on.film)).toBeLessThan(80 * 1.1);
    expect(Math.min(...on.film)).toBeGreaterThan(80 * 0.9);
    expect(laid(0, 'satin').film.every((um) => um === 0)).toBe(true);
  });

  it('is as rough as its sheen, bare wood as rough as it is, a wet film smooth whatever its sheen', () => {
    const rough = SHEEN_NAMES.map((sheen) => mean(laid(40, sheen).roughness));
    expect(rough).toEqual([...rough].sort((a, b) => b - a));
    expect(mean(laid(0, 'gloss').roughness)).toBeCloseTo(0.28, 1);
    expect(mean(laid(40, 'matte', true).roughness)).toBeCloseTo(0.01, 2);
    // Its grain is low: a few µm, lower where it flowed out longer.
    const relief = (sheen: 'matte' | 'gloss') => {
      const { height } = laid(40, sheen);
      return Math.max(...height) - Math.min(...height);
    };
    expect(relief('gloss')).toBeLessThan(12);
    expect(relief('matte')).toBeGreaterThan(relief('gloss'));
  });

  it('fills a hole by half where it is as thick as 50 µm, and is broken where it sinks in', () => {
    const holes = (um: number) => mean(laid(um, 'satin', false, -10).height) - mean(laid(um, 'satin').height);
    expect(holes(50)).toBeCloseTo(-5, 3);
    expect(holes(150)).toBeCloseTo(-2.5, 3);
    expect(holes(0)).toBeCloseTo(-10, 3);
    expect(mean(laid(50, 'satin', false, -10).roughness)).toBeGreaterThan(
      10 * mean(laid(50, 'satin').roughness),
    );
    expect(mean(laid(50, 'satin', false, 10).roughness)).toBeCloseTo(mean(laid(50, 'satin').roughness), 6);
  });
});
