import type { FeatureOf } from '../../model/board.ts';
import { type Board, inBands, pour, raise, roughen, stain } from '../field.ts';
import { between, drawnOut, ease, noise, random, rough } from '../noise.ts';
import type { Steps } from '../steps.ts';

const HONEY = [0.2, 0.55, 1.2] as const;
/** Light that goes through a thick skin spreads about so far, mm: what lies under it is seen without sharp borders. */
const SPREADS_MM = 0.32;

/** The ground as it is seen through a thick skin. */
const blurred = (b: Board, map: Float32Array): Float32Array => {
  const reach = Math.max(1, Math.round(SPREADS_MM / b.pitch));
  const pass = (from: Float32Array, step: number, length: number, lines: number, stride: number) => {
    const out = new Float32Array(from.length);
    for (let line = 0; line < lines; line++) {
      let sum = 0;
      const at = (n: number) => line * stride + Math.min(length - 1, Math.max(0, n)) * step;
      for (let n = -reach; n <= reach; n++) sum += from[at(n)]!;
      for (let n = 0; n < length; n++) {
        out[at(n)] = sum / (2 * reach + 1);
        sum += from[at(n + reach + 1)]! - from[at(n - reach)]!;
      }
    }
    return out;
  };
  return pass(pass(map, 1, b.columns, b.rows, b.columns), b.columns, b.rows, b.columns, 1);
};

/** A pool of oil under a skin: amber and clear, thick enough to fill pores, with a border that stands up. */
const pooled = (b: Board, i: number, lies: number, soft: readonly Float32Array[]): void => {
  const seen = 0.7 * lies;
  for (const [n, map] of [b.red, b.green, b.blue].entries())
    map[i] = map[i]! + (soft[n]![i]! - map[i]!) * seen;
  raise(b, i, -lies * b.height[i]!);
};

/** Waves of one length in so many directions, each from a start of its own, add up to ridges that wind. */
const WAVES = 7;
const windingFolds = (spacing: number, from: number) => {
  const next = random(from);
  const waves = Array.from({ length: WAVES }, (_, n) => {
    const way = ((n + 0.7 * next()) * Math.PI) / WAVES;
    const k = (Math.PI / spacing) * between(next, 0.85, 1.18);
    return [k * Math.cos(way), k * Math.sin(way), next() * 2 * Math.PI] as const;
  });
  return (x: number, y: number): number => {
    let sum = 0;
    for (const [kx, ky, phase] of waves) sum += Math.cos(kx * x + ky * y + phase);
    return sum / Math.sqrt(WAVES / 2);
  };
};

/** A skin too large for what lies below: rounded folds that wind and fork. */
export function* wrinkles(b: Board, f: FeatureOf<'wrinkles'>, from: number): Steps {
  const s = f['spacing-mm'];
  const oil = f.color === 'honey';
  const winding = windingFolds(s * 0.85, from + 30);
  const lesser = windingFolds(s * (oil ? 0.36 : 0.4), from + 31);
  const soft = oil ? [b.red, b.green, b.blue].map((map) => blurred(b, map)) : [];
  yield* inBands(b, (i, x, y) => {
    // A pool has bays and tongues along the grain.
    const px = oil ? x + 7 * noise(x / 17, y / 11, from + 11) + 1.6 * noise(x / 5, y / 2.2, from + 12) : x;
    const py = oil ? y + 5 * noise(x / 16, y / 12, from + 13) + 0.8 * noise(x / 6, y / 2.4, from + 14) : y;
    const edge = rough(px / 26, py / 26, from + 5, 2) + (f.cover - 0.5) * 1.4;
    if (f.cover < 1 && edge < -0.6) return;
    // Folds of one width that wind and meet, as on a brain; finer ones lie across them, as it shrank later.
    const bx = x + s * 0.55 * rough(x / (s * 2.2), y / (s * 2.2), from + 1, 2);
    const by = y + s * 0.55 * rough(x / (s * 2.2), y / (s * 2.2), from + 2, 2);
    const large = winding(bx, by);
    const fine =
      rough((bx + 0.16 * s * large) / (s * 0.34), (by - 0.16 * s * large) / (s * 0.3), from + 4, 1) * 1.6;
    let fold: number;
    if (oil) {
      // A thin skin: each fold is one long narrow ridge, and between two large ones lie smaller ones.
      const small = lesser(bx + 0.2 * s * large, by - 0.2 * s * large);
      fold = 0.55 * Math.exp(-((large / 0.5) ** 2)) + 0.45 * Math.exp(-((small / 0.6) ** 2));
    } else {
      // A lifted coat: round ridges side by side, sharp where two meet.
      fold = ease(-1.25, 1, lesser(bx, by)) ** 0.75;
    }
    const tiny = ease(-0.9, 0.9, fine);
    // Crowded and high here, low and loose there.
    const crowd = 0.5 + 0.5 * ease(-0.45, 0.45, noise(x / (s * 4.5), y / (s * 3.6), from + 16));
    // Each fold runs out by itself, the crests of the larger ones last.
    const shrunk =
      f.cover >= 1
        ? 1
        : ease(-0.12, 0.3, edge + 0.16 * fold + 0.1 * noise(x / (s * 3), y / (s * 3), from + 6));
    const wet = oil ? ease(-0.13, -0.05, edge + 0.05 * drawnOut(x, y, 3, 0.7, from + 8)) : 0;
    // Oil wrinkles only where it stood; there its skin is oldest in the middle.
    const lies = oil ? shrunk * wet * ease(-0.1, 0.22, edge) : shrunk;
    if (lies === 0 && wet === 0) return;
    const rise = f['height-um'] * lies * crowd * (0.92 * fold + 0.1 * tiny);
    if (oil) {
      pooled(b, i, wet, soft);
      raise(b, i, 70 * ease(-0.1, 0.1, edge) * wet);
      stain(b, i, HONEY, wet * (0.2 + 0.85 * ease(-0.13, 0.22, edge) + 0.4 * lies * ease(0, 1, fold)));
      // The skin has gone leathery: it shines unevenly.
      roughen(b, i, 0.05 + 0.07 * lies * ease(-0.4, 0.6, noise(x / 6, y / 5, from + 15)), wet);
    }
    // Stretched over a crest the skin has lost its shine.
    roughen(b, i, 0.11, 0.75 * lies * ease(0.1, 1, fold) * crowd);
    raise(b, i, rise);
    pour(b, i, rise * 0.3);
  });
}
