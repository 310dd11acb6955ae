import { describe, expect, it } from 'vitest';
import { blankBoard } from '#engine/board/field.ts';
import { lightFrom } from '#engine/board/light.ts';
import { shade } from '#engine/board/shade.ts';
import { castShadows } from '#engine/board/shadow.ts';
import layers from './kubelka-munk.table.json' with { type: 'json' };

/** sRGB to linear light (IEC 61966-2-1). */
const linear = (byte: number): number => {
  const v = byte / 255;
  return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
};

const gray = (ground: number, haze: number, film = 40) => {
  const board = blankBoard(60, 48, 36);
  for (const map of [board.red, board.green, board.blue]) map.fill(ground);
  board.film.fill(film);
  board.haze.fill(haze);
  board.roughness.fill(0.01);
  return board;
};

/** Linear green of the far corner, where nothing is mirrored but the room. */
const seen = (board: ReturnType<typeof gray>): number => {
  const out = new Uint8ClampedArray(48 * 36 * 4);
  shade(board, lightFrom('facing'), out);
  return linear(out[out.length - 3] ?? 0);
};

describe('shading', () => {
  it('lifts a dark base by haze in the proportion of Kubelka and Munk', () => {
    const rows = layers.hazeOverDark.filter((row) => row.y_ground === 0.01);
    const clear = seen(gray(0.01, 0));
    const most = rows.at(-1);
    if (!most) throw new Error('no rows');
    const whole = seen(gray(0.01, most.sx)) - clear;
    for (const row of rows.slice(3)) {
      const part = (seen(gray(0.01, row.sx)) - clear) / whole;
      expect(part).toBeCloseTo((row.y - 0.01) / (most.y - 0.01), 1);
    }
  });

  it('darkens an amber film with its thickness, blue before red (Beer–Lambert)', () => {
    const at = (um: number) => {
      const board = gray(0.8, 0, um);
      board.amber = 0.6;
      const out = new Uint8ClampedArray(48 * 36 * 4);
      shade(board, lightFrom('facing'), out);
      return [...out.slice(-4, -1)].map(linear);
    };
    const [thin, thick] = [at(30), at(90)];
    expect(thick[2]).toBeLessThan((thin[2] ?? 0) * 0.75);
    expect((thin[0] ?? 0) - (thick[0] ?? 0)).toBeLessThan((thin[2] ?? 0) - (thick[2] ?? 0));
  });

  it('throws a shadow as long as height over the tangent of the light', () => {
    const board = blankBoard(60, 480, 360);
    const wall = 1000;
    for (let row = 0; row < 360; row++) board.height[row * 480 + 200] = wall;
    const light = lightFrom({ azimuthDegrees: 180, elevationDegrees: 20 });
    const shadow = castShadows(board, light);
    const line = shadow.slice(180 * 480, 181 * 480);
    const long = line.filter((dark) => dark > 0).length * board.pitch;
    expect(Math.abs(long - wall / 1000 / Math.tan((20 * Math.PI) / 180))).toBeLessThan(2 * board.pitch);
    expect(line.slice(0, 200).every((dark) => dark === 0)).toBe(true);
  });
});
