import { describe, expect, it } from 'vitest';
import { SHEEN_ROUGHNESS } from '#engine/board/film.ts';
import { doublePass, FILM_INDEX, fresnel, gloss60, slopesBetween } from '#engine/board/optics.ts';
import { SHEEN_NAMES } from '#engine/model/board.ts';
import gloss from './gloss.table.json' with { type: 'json' };
import layers from './kubelka-munk.table.json' with { type: 'json' };

describe('a clear colored film (Beer–Lambert)', () => {
  it.each(layers.beerLambert)(
    'lets $t_single_pass_at_1 through once: $double_pass there and back at $thickness',
    (row) => {
      expect(doublePass(-Math.log(row.t_single_pass_at_1), row.thickness)).toBeCloseTo(row.double_pass, 5);
    },
  );
});

describe('the surface of the film (Fresnel)', () => {
  it('throws back ((n − 1)/(n + 1))², 4 % at n = 1.5, when met straight on', () => {
    expect(fresnel(1, 1.5)).toBeCloseTo(0.04, 10);
    expect(FILM_INDEX).toBe(1.5);
  });
  it('throws back everything at a grazing angle', () => expect(fresnel(0, 1.5)).toBeCloseTo(1, 10));
  it('loses only half of the light at Brewster’s angle, where one polarization passes whole', () => {
    const brewster = Math.atan(1.5);
    // What is left is the other polarization: sin²(i − t) / 2 with i + t = 90° (Fresnel's sine law).
    const sine = Math.sin(brewster - (Math.PI / 2 - brewster));
    expect(fresnel(Math.cos(brewster), 1.5)).toBeCloseTo((sine * sine) / 2, 10);
  });
});

describe('sheen', () => {
  const level = { matte: 1, eggshell: 3, satin: 4, 'semi-gloss': 5, gloss: 6 } as const;
  it.each(Object.entries(level))('%s reads inside the published 60° class', (name, number) => {
    const row = gloss.rows.find((r) => r.level === number);
    const read = gloss60(SHEEN_ROUGHNESS[name as keyof typeof level]);
    expect(read).toBeGreaterThan(row?.g60[0] ?? Number.NaN);
    expect(read).toBeLessThan(row?.g60[1] ?? Number.NaN);
  });
  it('rises from matte to high gloss', () => {
    const read = SHEEN_NAMES.map((name) => gloss60(SHEEN_ROUGHNESS[name]));
    expect(read).toEqual([...read].sort((a, b) => a - b));
    expect(new Set(read).size).toBe(SHEEN_NAMES.length);
  });
  it('spreads the same light: all slopes together make one', () => {
    for (const name of SHEEN_NAMES)
      expect(slopesBetween(-1e4, 1e4, SHEEN_ROUGHNESS[name] ** 2)).toBeCloseTo(1, 6);
  });
});
