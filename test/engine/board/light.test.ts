/**
 * Light on a board: where it stands, what a byte of the picture is (IEC 61966-2-1), and where shadow falls. Laws of
 * optics; a board seen in a mirror has the shadows of the mirror.
 */
import { describe, expect, it } from 'vitest';
import { blankBoard } from '#engine/board/field.ts';
import { layFrom, lightFrom, STRAIGHT } from '#engine/board/light.ts';
import { between, random } from '#engine/board/noise.ts';
import { shade } from '#engine/board/shade.ts';
import { castShadows } from '#engine/board/shadow.ts';
import { toByte } from '#engine/board/tone.ts';
import { traceOf, wipesOver } from '#engine/board/wipes.ts';
import { growth } from '#engine/board/wood/grain.ts';

const light = (azimuthDegrees: number, elevationDegrees: number) =>
  lightFrom({ azimuthDegrees, elevationDegrees });

describe('the window', () => {
  it('stands where its angles say: 0° to the right, 90° behind the board, 180° to the left', () => {
    for (const [azimuth, x, y] of [
      [0, 1, 0],
      [90, 0, -1],
      [180, -1, 0],
      [270, 0, 1],
    ] as const) {
      expect(light(azimuth, 20).towardX).toBeCloseTo(x, 9);
      expect(light(azimuth, 20).towardY).toBeCloseTo(y, 9);
    }
    const { sine, cosine, tangent } = light(30, 30);
    expect([sine, cosine, tangent]).toEqual([
      expect.closeTo(0.5, 9),
      expect.closeTo(Math.sqrt(3) / 2, 9),
      expect.closeTo(1 / Math.sqrt(3), 9),
    ]);
  });

  it('neither sets nor stands straight above', () => {
    expect(light(30, 0).tangent).toBeCloseTo(Math.tan((6 * Math.PI) / 180), 9);
    expect(light(30, 90).tangent).toBeCloseTo(Math.tan((85 * Math.PI) / 180), 9);
  });

  it('has two named places, raking the lower one, and all between them is between', () => {
    const [low, high] = [lightFrom('raking'), lightFrom('facing')];
    expect(low.sine).toBeCloseTo(Math.sin((11 * Math.PI) / 180), 9);
    expect(high.sine).toBeCloseTo(Math.sin((58 * Math.PI) / 180), 9);
    const half = light(130, 34.5);
    for (const key of [
      'window',
      'room',
      'wall',
      'ambient',
      'level',
      'fall',
      'incidence',
      'halfAcross',
    ] as const)
      expect(half[key]).toBeCloseTo((low[key] + high[key]) / 2, 9);
    expect(light(130, 80).window).toBe(high.window);
    expect(light(130, 8).window).toBe(low.window);
    // From the upper left, so that what is raised looks raised.
    for (const named of [low, high]) expect([named.towardX < 0, named.towardY < 0]).toEqual([true, true]);
  });

  it('is turned as the board lies, and no two boards lie alike', () => {
    const turned = lightFrom(
      { azimuthDegrees: 100, elevationDegrees: 20 },
      { ...STRAIGHT, turn: 20, near: 0.01 },
    );
    expect(turned.towardX).toBeCloseTo(light(120, 20).towardX, 9);
    expect(turned.nearTilt).toBeCloseTo(light(120, 20).nearTilt + 0.01, 9);
    const lays = Array.from({ length: 200 }, (_, from) => layFrom(from));
    expect(new Set(lays.map(({ turn }) => turn)).size).toBe(200);
    for (const { turn, near, aside, edges } of lays) {
      expect(turn).toBeGreaterThanOrEqual(-24);
      expect(turn).toBeLessThanOrEqual(16);
      expect(Math.max(Math.abs(near), Math.abs(aside))).toBeLessThanOrEqual(0.07);
      for (let e = 0; e < edges.length; e += 4) {
        expect(Math.hypot(edges[e] ?? 0, edges[e + 1] ?? 0)).toBeCloseTo(1, 9);
        expect(Math.abs(edges[e + 2] ?? 9)).toBeLessThanOrEqual(0.24);
        expect(Math.abs(edges[e + 3] ?? 9)).toBeLessThanOrEqual(0.65);
        // The first stands upright, the others level, a little askew.
        const upright = Math.abs(edges[e] ?? 0) > Math.abs(edges[e + 1] ?? 0);
        expect(upright).toBe(e === 0);
      }
    }
  });
});

describe('a byte of the picture', () => {
  it('is by the standard’s own curve up to where highlights roll off, and never over 255', () => {
    const encode = (v: number) => 255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055);
    for (let n = 0; n < 62; n++) expect(Math.abs(toByte(n / 100) - encode(n / 100))).toBeLessThanOrEqual(1);
    expect([toByte(-1), toByte(0), toByte(50)]).toEqual([0, 0, toByte(1.9995)]);
    const rise = Array.from({ length: 400 }, (_, n) => toByte(n / 200));
    expect(rise).toEqual([...rise].sort((a, b) => a - b));
    expect(rise.at(-1)).toBeGreaterThan(245);
    expect(toByte(1)).toBeLessThan(245);
    // It rolls off without a step.
    for (let n = 1; n < 400; n++)
      if (n > 20) expect((rise[n] ?? 0) - (rise[n - 1] ?? 0)).toBeLessThanOrEqual(3);
  });
});

describe('shadow', () => {
  const bumps = (mirror: { x?: boolean; y?: boolean; turned?: boolean } = {}) => {
    const size = 48;
    const on = blankBoard(48, size, size);
    const next = random(3);
    for (let n = 0; n < 12; n++) {
      const [x, y] = [Math.floor(between(next, 4, 44)), Math.floor(between(next, 4, 44))];
      const um = between(next, 300, 2500);
      for (let dx = 0; dx < 3; dx++) {
        const [u, v] = [mirror.x ? size - 1 - x - dx : x + dx, mirror.y ? size - 1 - y : y];
        on.height[mirror.turned ? u * size + v : v * size + u] = um;
      }
    }
    return on;
  };
  const at = (shadow: Float32Array, x: number, y: number) => shadow[y * 48 + x] ?? Number.NaN;

  it('is none on a flat board, and between none and full on any', () => {
    expect(castShadows(blankBoard(48, 48, 48), light(130, 14)).every((dark) => dark === 0)).toBe(true);
    for (const azimuth of [10, 130, 200, 300]) {
      const shadow = castShadows(bumps(), light(azimuth, 14));
      expect(shadow.every((dark) => dark >= 0 && dark <= 1)).toBe(true);
      expect(Math.max(...shadow)).toBe(1);
    }
  });

  it('in a mirror is the mirror’s shadow, left for right, up for down, and across', () => {
    for (const azimuth of [20, 70, 110, 160]) {
      const here = castShadows(bumps(), light(azimuth, 14));
      const [leftRight, upDown, across] = [
        castShadows(bumps({ x: true }), light(180 - azimuth, 14)),
        castShadows(bumps({ y: true }), light(-azimuth, 14)),
        castShadows(bumps({ turned: true }), light(-90 - azimuth, 14)),
      ];
      for (let y = 0; y < 48; y++)
        for (let x = 0; x < 48; x++) {
          expect(at(leftRight, 47 - x, y)).toBeCloseTo(at(here, x, y), 4);
          expect(at(upDown, x, 47 - y)).toBeCloseTo(at(here, x, y), 4);
          expect(at(across, y, x)).toBeCloseTo(at(here, x, y), 4);
        }
    }
  });

  it('is deeper and longer the lower the light and the higher what throws it', () => {
    const dark = (elevation: number, more = 1) => {
      const on = bumps();
      on.height = on.height.map((um) => um * more);
      return castShadows(on, light(130, elevation)).reduce((sum, one) => sum + one, 0);
    };
    expect(dark(10)).toBeGreaterThan(dark(20));
    expect(dark(20)).toBeGreaterThan(dark(50));
    expect(dark(20, 2)).toBeGreaterThan(dark(20));
  });
});

describe('what is seen', () => {
  const seen = (change: (on: ReturnType<typeof blankBoard>) => void, elevation = 20) => {
    const on = blankBoard(60, 60, 45);
    for (const map of [on.red, on.green, on.blue]) map.fill(0.2);
    on.film.fill(40);
    on.roughness.fill(0.1);
    change(on);
    const out = new Uint8ClampedArray(60 * 45 * 4);
    shade(on, light(130, elevation), out);
    return out;
  };
  const mean = (out: Uint8ClampedArray, channel = 1) => {
    let sum = 0;
    for (let o = channel; o < out.length; o += 4) sum += out[o] ?? 0;
    return sum / (out.length / 4);
  };

  it('does not hang on how high the whole board lies, and has no hole', () => {
    expect(seen((on) => on.height.fill(500))).toEqual(seen(() => undefined));
    expect(
      seen(() => undefined)
        .filter((_, o) => o % 4 === 3)
        .every((alpha) => alpha === 255),
    ).toBe(true);
  });

  it('is lighter over a lighter ground, paler with haze, and dry wood paler than wetted', () => {
    expect(mean(seen((on) => on.green.fill(0.4)))).toBeGreaterThan(mean(seen(() => undefined)) + 20);
    expect(mean(seen((on) => on.haze.fill(0.2)))).toBeGreaterThan(mean(seen(() => undefined)) + 5);
    expect(mean(seen((on) => on.film.fill(0)))).toBeGreaterThan(mean(seen((on) => on.film.fill(4))) + 5);
    expect(mean(seen((on) => on.film.fill(2)))).toBeLessThan(mean(seen((on) => on.film.fill(0))));
  });

  it('of a slope is lighter where it leans to the window and darker where it leans away', () => {
    const lean = (toward: number) =>
      mean(
        seen((on) => {
          for (let i = 0; i < on.height.length; i++) on.height[i] = -toward * (i % 60) * 60;
          on.roughness.fill(0.9);
        }),
      );
    // The window stands to the left, so what falls to the left leans to it.
    expect(lean(-1)).toBeGreaterThan(lean(0) + 2);
    expect(lean(1)).toBeLessThan(lean(0) - 2);
  });
});

describe('passes of a cloth', () => {
  const on = blankBoard(60, 80, 60);
  const passes = wipesOver(on, random(8), { count: 300, width: 12, radius: [40, 90] });

  it('lie over the whole board, as wide and as curved as told', () => {
    expect(passes).toHaveLength(300);
    for (const { middle, radius, half, wide, drift } of passes) {
      expect(Math.abs(middle[0] / 60 - 0.5)).toBeLessThanOrEqual(0.55);
      expect(Math.abs(middle[1] / 45 - 0.5)).toBeLessThanOrEqual(0.55);
      expect(Math.abs(radius)).toBeGreaterThanOrEqual(40);
      expect(Math.abs(radius)).toBeLessThanOrEqual(90);
      expect(half / 60).toBeGreaterThanOrEqual(0.22);
      expect(half / 60).toBeLessThanOrEqual(0.5);
      expect(wide).toBeGreaterThanOrEqual(3);
      expect(wide).toBeLessThanOrEqual(7.2);
      expect(Math.abs(drift)).toBeLessThanOrEqual(0.16);
    }
    const bent = passes.filter(({ radius }) => radius < 0).length / 300;
    expect(Math.abs(bent - 0.2)).toBeLessThan(0.1);
  });

  it('leave something along an arc through their middle, less to the sides and the ends, nothing beyond', () => {
    for (const pass of passes.slice(0, 60)) {
      const plain = { ...pass, drift: 0 };
      const trace = traceOf(plain);
      const at = (run: number, off: number) => {
        // On the arc, so far from its middle, so far outside it.
        const turn = pass.heading + run / pass.radius;
        const cx = pass.middle[0] - Math.sin(pass.heading) * pass.radius;
        const cy = pass.middle[1] + Math.cos(pass.heading) * pass.radius;
        const far = pass.radius + off;
        return trace(cx + Math.sin(turn) * far, cy - Math.cos(turn) * far);
      };
      const sign = Math.sign(pass.radius);
      for (const run of [-0.6, -0.2, 0, 0.3, 0.7].map((part) => part * pass.half)) {
        const here = at(run, 0);
        expect(here.share).toBeGreaterThanOrEqual(0);
        expect(here.share).toBeLessThanOrEqual(1);
        if (here.share > 0) expect(here.run * sign).toBeCloseTo(run * sign * Math.sign(pass.radius), 6);
        expect(at(run, 2.4 * pass.wide).share).toBe(0);
        expect(at(run, -2.4 * pass.wide).share).toBe(0);
      }
      expect(at(1.35 * pass.half, 0).share).toBe(0);
      expect(at(-1.35 * pass.half, 0).share).toBe(0);
    }
    const meanAt = (part: number, side: number) => {
      const all = passes.map((pass) => {
        const [dx, dy] = [Math.cos(pass.heading), Math.sin(pass.heading)];
        const [along, aside] = [part * pass.half, side * pass.wide];
        return traceOf(pass)(
          pass.middle[0] + along * dx - aside * dy,
          pass.middle[1] + along * dy + aside * dx,
        ).share;
      });
      return all.reduce((sum, one) => sum + one, 0) / all.length;
    };
    expect(meanAt(0, 0)).toBeGreaterThan(0.45);
    expect(meanAt(0, 0.6)).toBeLessThan(meanAt(0, 0));
    expect(meanAt(0, -0.6)).toBeLessThan(meanAt(0, 0));
    expect(meanAt(0.7, 0)).toBeLessThan(meanAt(0, 0) * 0.7);
    expect(meanAt(-0.7, 0)).toBeLessThan(meanAt(0, 0) * 0.7);
  });
});

describe('a year’s ring', () => {
  it('darkens from early wood to late wood and ends at once', () => {
    const ring = Array.from({ length: 91 }, (_, n) => growth(n / 100, 2));
    expect(ring).toEqual([...ring].sort((a, b) => a - b));
    expect([growth(0, 2), growth(0.45, 2), growth(0.9, 2), growth(0.95, 2)]).toEqual([
      0,
      expect.closeTo(0.25, 9),
      expect.closeTo(1, 9),
      expect.closeTo(0.5, 9),
    ]);
    expect(growth(0.5, 6)).toBeLessThan(growth(0.5, 1.4));
  });
});
