import type { FeatureOf } from '../../model/board.ts';
import { groundBelow } from '../base.ts';
import { type Board, dim, inBands, type Rgb, raise, roughen, scatter, tint, uncover } from '../field.ts';
import { stray, turned } from '../mask.ts';
import { drawnOut, ease, noise, random, rough } from '../noise.ts';
import type { Steps } from '../steps.ts';
import { traceOf, wipesOver } from '../wipes.ts';
import { fiberAt } from '../wood/face.ts';

/** Old wood under paint is gray with what filled it, linear light. */
const CHALK = [0.36, 0.33, 0.28] as const;

type ColorDrag = FeatureOf<'color-drag'>;

/**
 * Where two colors meet, each stroke of the brush took one with it: thick where it started, drawn out bristle by
 * bristle, transparent and gone.
 */
function* brushed(b: Board, f: ColorDrag, from: number, ground: Readonly<Board>, color: Rgb): Steps {
  const width = f['width-mm'];
  yield* inBands(b, (i, x, y) => {
    // Brushed over, the border has lost its line: swept on in the middle of each stroke, nicked between.
    const v = y - 0.07 * x + 1.1 * noise(x / 38, y / 16, from + 4);
    const lane = noise(7, v / (width * 0.9), from) + 0.3 * noise(x / 45, v / 3, from + 3);
    const stroke = 0.25 + 0.75 * ease(-0.5, 0.4, lane);
    const bristle = drawnOut(x, v, 40, 0.7, from + 1) + 0.6 * drawnOut(x, v, 22, 0.3, from + 2);
    const strand = drawnOut(x + 3, v, 50, 1.5, from + 5);
    const border =
      b.widthMm * 0.36 +
      0.14 * (y - b.heightMm / 2) +
      0.7 * noise(y / 9, 1, from + 7) +
      stroke * (0.7 + 0.6 * strand + 0.2 * bristle);
    const u = x - border;
    const reach = width * (0.8 + 1.5 * stroke * (0.8 + 0.5 * lane + 0.3 * strand));
    // Each bristle ended a little sooner or later than the next.
    const soft =
      1.1 +
      1.6 * Math.max(0, noise(y / 5, 4, from + 17) + 0.2) +
      0.8 * stroke * Math.max(0, noise(y / 3.1, x / 9, from + 13));
    const ahead = Math.max(0, bristle);
    const fray =
      0.3 * bristle - 1.6 * stroke * ahead * ahead * ahead + 0.3 * rough(x / 2.2, y / 1.2, from + 14, 2);
    const over = ease(-soft, soft, u + fray);
    const t = Math.max(0, u) / reach;
    // Pooled at the start of the stroke, a thin glaze later, then only what single bristles still carried.
    const carries = ease(-0.8 + 0.3 * t, 0.7 + 0.5 * t, bristle + 0.35 * strand);
    const glaze =
      Math.exp(-t) *
      (0.55 + 1.05 * carries) *
      (0.8 + 0.45 * noise(x / 9, v / 2.5, from + 9)) *
      ease(3, 1.2, t);
    // Running dry, they skip from one high place to the next.
    const skips =
      ease(0.3, 1.2, t) *
      ease(-0.3, 0.5, noise(x / 1.3, v / 0.4, from + 10) + 0.5 * noise(x / 4, v / 1.2, from + 11));
    const drawn = f.strength * 0.85 * stroke * (1 - 0.5 * skips) * Math.max(0, glaze);
    const worn =
      f.strength * stroke * ease(0.1, 1.1, bristle) * (1 - ease(width * 0.1, width * 1.1, -u)) * 0.08;
    uncover(b, i, ground, over + (1 - over) * worn);
    tint(b, i, color, Math.min(1, drawn));
    // The navy ends in a low ridge where the strokes set down.
    const ridge = Math.exp(-((u / 0.9) ** 2)) * (0.4 + 0.8 * ease(-0.3, 0.5, noise(y / 4, 6, from + 15)));
    raise(b, i, (5 * bristle + 3.5 * glaze) * (0.25 + stroke) * ease(-9, 0, u) + 5 * ridge);
  });
}

/** Rubbed by more than this, some of the ground is bare. */
const THROUGH = 0.68;

/**
 * A cloth rubs the color off: first from the high places, half through round them; low places and pores keep it, and
 * what came off lies beside as a smear.
 */
function* rubbed(b: Board, f: ColorDrag, from: number, ground: Readonly<Board>, color: Rgb): Steps {
  const traces = wipesOver(b, random(from), {
    count: 9,
    width: f['width-mm'] * 2.6,
    radius: [b.widthMm * 0.6, b.widthMm * 1.5],
  }).map(traceOf);
  const streaks = turned(-21);
  yield* inBands(b, (i, x, y) => {
    let rub = 0;
    let threads = 0;
    for (const at of traces) {
      const { share, thread } = at(x, y);
      rub += share * (0.62 + 0.1 * thread);
      threads += share * thread;
    }
    const height = stray(x, y, 10, from + 3) + 0.35 * rough(x / 4, y / 2.6, from + 5, 2);
    const brush = noise(streaks.along(x, y) / 30, streaks.across(x, y) / 0.8, from + 7);
    // The fibers stand unequally high: it goes first along the hard ones.
    const nick =
      0.6 * drawnOut(x, y, 3, 0.4, from + 8) +
      2 * rough(x / 3, y / 2.3, from + 13, 3) +
      0.5 * noise(x / 0.5, y / 0.4, from + 10);
    const wear = rub * (0.55 + 0.32 * f.strength) + 0.5 * height + 0.1 * brush + 0.05 * threads + 0.1 * nick;
    // Most places are only rubbed or not at all: what is seen in bare ones is not reckoned there.
    const through =
      wear > THROUGH ? ease(THROUGH, 0.86 + 0.3 * ease(-0.2, 0.4, noise(x / 8, y / 7, from + 16)), wear) : 0;
    // It broke off at its border, which stands up a little here and there.
    const brink =
      wear > 0.5 && through < 1
        ? ease(0.5, 0.69, wear) * (1 - through) * ease(-0.3, 0.4, noise(x / 4, y / 3, from + 15))
        : 0;
    const fiber = through > 0 && f.under === 'wood' ? fiberAt(x, y, from + 30) : 0;
    const half = ease(0.35, 0.78, wear);
    const pore =
      through > 0 ? ease(-1, -8, ground.height[i]!) * ease(-0.7, 0.1, noise(x / 5, y / 3, from + 32)) : 0;
    const open = ease(-2, -8, ground.height[i]!);
    const kept = Math.max(pore * (0.95 - 0.3 * through), 0.55 * ease(0.2, 0.9, brush) * (1 - through));
    // Half rubbed, it lets the ground show as a scuffed veil.
    const thin = 0.5 * half * half * (1 - through) * Math.max(0, 0.7 + 0.4 * nick);
    const shown = Math.min(1, through * (1 - kept) + thin);
    uncover(b, i, ground, shown);
    if (shown > 0.01) {
      // Old bare wood: dirt in it here and there, its bundles of fibers light and dark.
      const old = 0.62 + 0.2 * rough(x / 8, y / 3, from + 31, 2) + 0.26 * fiber - 0.3 * open;
      // Under the border of the film less light comes in.
      const hemmed = 0.5 * through * (1 - ease(0.72, 0.98, wear));
      const aged = (1 + shown * (Math.min(1.15, old) - 1)) * (1 - hemmed);
      dim(b, i, [aged, aged, aged]);
      if (f.under === 'wood')
        tint(b, i, CHALK, shown * Math.max(0.1, 0.5 + 0.4 * rough(x / 6, y / 2.4, from + 14, 3)));
      // Color in the cloth comes off again in its threads.
      const smear = ease(0.15, 1, 0.5 * threads + 0.5 * noise(x / 6, y / 5, from + 6) + 0.3);
      tint(b, i, color, 0.16 * through + 0.7 * through * smear * (1 - 0.5 * through * rub));
    }
    raise(b, i, through * (ground.height[i]! + 11 * fiber - 32) + 12 * brink - 3 * half);
    roughen(b, i, 0.26, through);
    // The cloth left wax in its arcs: they shine, and its threads show.
    roughen(b, i, 0.06, Math.min(1, 0.9 * rub) * (1 - through));
    raise(b, i, 1.6 * threads * (1 - through));
    scatter(b, i, Math.max(0, 0.02 * rub + 0.022 * threads) * (1 - 0.5 * through));
  });
}

/** Loosened color: drawn out by the brush, or rubbed off by the cloth. */
export function* colorDrag(b: Board, f: ColorDrag, from: number): Steps {
  const color: Rgb = [b.red[0]!, b.green[0]!, b.blue[0]!];
  const ground = groundBelow(b, f.under === 'white' ? { paint: 'white' } : { wood: 'oak' }, from);
  yield;
  yield* (f.tool === 'brush' ? brushed : rubbed)(b, f, from, ground, color);
}
