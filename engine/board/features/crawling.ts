import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, pour, raise, roughen } from '../field.ts';
import { between, ease, noise, random, rough } from '../noise.ts';
import { disc, type Point } from '../stamp.ts';
import { traceOf, wipesOver } from '../wipes.ts';

/** Every so manyth pixel is looked at. */
const SAMPLED = 13;
const BEADS_PER_CM2 = 9;
/** Light spreads in what stands thick: so much film a µm of its height leaves what lies below evenly lit. */
const CLEAR = 3;

/** A wet shore is drawn smooth over about this much, mm. */
const SMOOTH_MM = 0.55;

/** Evens a map out as the pull of its skin does a wet film: the mean of a square, twice over. */
const drawSmooth = ({ columns, rows, pitch }: Board, map: Float32Array, reach: number): void => {
  const half = Math.max(1, Math.round(reach / pitch));
  const line = new Float32Array(Math.max(columns, rows));
  const along = (start: number, step: number, count: number) => {
    let sum = 0;
    for (let n = -half; n <= half; n++) sum += map[start + Math.min(count - 1, Math.max(0, n)) * step]!;
    for (let n = 0; n < count; n++) {
      line[n] = sum / (2 * half + 1);
      sum += map[start + Math.min(count - 1, n + half + 1) * step]!;
      sum -= map[start + Math.max(0, n - half) * step]!;
    }
    for (let n = 0; n < count; n++) map[start + n * step] = line[n]!;
  };
  for (let pass = 0; pass < 2; pass++) {
    for (let row = 0; row < rows; row++) along(row * columns, 1, columns);
    for (let column = 0; column < columns; column++) along(column, columns, rows);
  }
};

/**
 * Film that drew together: islands with a round heavy shore, drops of all sizes left behind, a breath of film or none
 * between them.
 */
export const crawling = (b: Board, f: FeatureOf<'crawling'>, from: number): void => {
  const size = f['size-mm'];
  const next = random(from);
  const land = new Float32Array(b.height.length);
  const wiped = (
    f.follows === 'cloth'
      ? wipesOver(b, next, { count: 6, width: size * 1.7, radius: [b.widthMm * 0.5, b.widthMm * 1.2] })
      : []
  ).map(traceOf);
  // On wax it draws back where the cloth went; elsewhere it lies as it should.
  const own = f.follows === 'cloth' ? 0.4 : 1;
  everywhere(b, (i, x, y) => {
    const u = x + 0.3 * size * noise(x / (size * 0.8), y / (size * 0.8), from + 4);
    const v = y + 0.3 * size * noise(x / (size * 0.8), y / (size * 0.8), from + 5);
    const bays =
      0.14 * noise(u / (size * 0.4), v / (size * 0.4), from + 1) +
      (f.follows === 'cloth'
        ? 0
        : 0.035 * noise(x / (size * 0.15), y / (size * 0.13), from + 2) +
          0.008 * noise(x / (size * 0.2), y / 0.6, from + 3));
    let level = (rough(u / (size * 1.1), v / (size * 0.95), from, 1) + bays) * own;
    // The wax lies in bent, uneven lanes.
    const [wx, wy] =
      wiped.length > 0
        ? [x + 2.2 * noise(x / 13, y / 11, from + 11), y + 2.2 * noise(x / 11, y / 13, from + 12)]
        : [x, y];
    // There it breaks into rounded holes first, which run together.
    const broke = wiped.length > 0 ? noise(wx / (size * 0.42), wy / (size * 0.36), from + 13) : 0;
    for (const at of wiped) {
      const { share, thread } = at(wx, wy);
      if (share > 0) level -= share * (0.62 + 0.06 * thread + 0.8 * broke);
    }
    land[i] = level;
  });
  drawSmooth(b, land, SMOOTH_MM);
  // A sample tells the level below which the wanted share lies.
  const sample = land.filter((_, n) => n % SAMPLED === 0).sort();
  const level = sample[Math.floor(f.bare * (sample.length - 1))]!;
  const scale = size * (f.follows === 'cloth' ? 0.5 : 0.85);
  everywhere(b, (i, x, y) => {
    const inland = (land[i]! - level) * scale;
    const wet = ease(-0.1, 0.12, inland);
    // Heavy where a bay was emptied into it, low elsewhere.
    const heavy =
      (0.1 + 1.05 * ease(-0.35, 0.55, noise(x / (size * 0.55), y / (size * 0.55), from + 7))) *
      (1 + 0.3 * noise(x / (size * 0.34), y / (size * 0.34), from + 9));
    const reach = (0.8 + 1.1 * heavy) * Math.min(1, size / 13);
    const ridge =
      f['ridge-um'] *
      heavy *
      Math.exp(-(((inland - reach) / reach) ** 2)) *
      ease(0, reach, inland) *
      ease(3 * reach, 1.2 * reach, inland);
    const film = b.film[i]!;
    // So thick a film fills the pores.
    raise(b, i, -0.85 * wet * Math.min(0, b.height[i]!));
    roughen(b, i, 0.012, 0.9 * wet);
    const residue = 0.09 * ease(-0.2, 0.7, noise(x / 4, y / 3, from + 8)) * (1 - wet);
    raise(
      b,
      i,
      wet * (film * ease(-0.1, 0.9 * Math.min(1, size / 13), inland) + ridge) +
        film * residue -
        film * (1 - wet),
    );
    b.film[i] = wet * (film + CLEAR * ridge) + film * residue;
    // Over wax the bare places shine as the wax does.
    roughen(b, i, b.bareRoughness, (1 - wet) * (1 - 3 * residue) * (f.follows === 'cloth' ? 0.4 : 1));
  });
  for (let n = Math.round((BEADS_PER_CM2 * b.widthMm * b.heightMm) / 100); n > 0; n--) {
    const at: Point = [next() * b.widthMm, next() * b.heightMm];
    const radius = between(next, 0.1, 1.5, 4);
    const i0 = Math.floor(at[1] / b.pitch) * b.columns + Math.floor(at[0] / b.pitch);
    const inland = ((land[i0] ?? level) - level) * scale;
    if (inland > -radius * 0.8) continue;
    const [long, turn, id] = [between(next, 1, 1.6, 2), next() * 3.14, Math.floor(next() * 1e6)];
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    // Some stand round, others were left flat and out of shape.
    const full = between(next, 30, 95);
    const out = between(next, 0.1, 0.5);
    disc(b, at, radius * long * 1.5, (i, _d, dx, dy) => {
      const t =
        Math.hypot((dx * c + dy * s) / long, dy * c - dx * s) /
        (radius * (1 + out * noise((dx / radius) * 0.7, (dy / radius) * 0.7, id)));
      if (t >= 1) return;
      const dome = radius * full * (1 - t * t);
      raise(b, i, dome);
      pour(b, i, CLEAR * dome * ease(1, 0.8, t) + 8);
      roughen(b, i, 0.012, ease(1, 0.85, t));
    });
  }
};
