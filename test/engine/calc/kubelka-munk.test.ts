import { describe, expect, it } from 'vitest';
import { kubelkaMunk } from '#engine/calc/kubelka-munk.ts';
import layers from '../board/kubelka-munk.table.json' with { type: 'json' };

const lightness = (y: number): number => (y > 216 / 24389 ? 116 * Math.cbrt(y) - 16 : (y * 24389) / 27);

describe('a layer over a ground (Kubelka and Munk)', () => {
  it.each(layers.published)('K $K, S $S, X $X over $rg gives $r', ({ K, S, X, rg, r, abs_tol }) => {
    expect(Math.abs(kubelkaMunk(K * X, S * X, rg) - r)).toBeLessThan(abs_tol);
  });
  it.each(layers.layers)('K $K, S $S, X $X over black, 4 % and 80 %', ({ K, S, X, ...row }) => {
    expect(kubelkaMunk(K * X, S * X, 0)).toBeCloseTo(row.r_black, 5);
    expect(kubelkaMunk(K * X, S * X, 0.04)).toBeCloseTo(row.r_over_4pct, 5);
    expect(kubelkaMunk(K * X, S * X, 0.8)).toBeCloseTo(row.r_over_80pct, 5);
  });
  it.each(layers.hazeOverDark)('haze $sx over $y_ground lifts L* to $l_star', ({ y_ground, sx, l_star }) => {
    expect(lightness(kubelkaMunk(0, sx, y_ground))).toBeCloseTo(l_star, 2);
  });
});
