import type { FeatureOf } from '../../model/board.ts';
import { type Board, inBands, raise, roughen, scatter, slowly } from '../field.ts';
import { patches } from '../mask.ts';
import { ease, noise, random, rough } from '../noise.ts';
import type { Steps } from '../steps.ts';
import { traceOf, wipesOver } from '../wipes.ts';

/** Powder on top of the wax: it sits where the cloth left the wax thicker, in its arcs and on their ridges. */
export function* waxBloom(b: Board, f: FeatureOf<'wax-bloom'>, from: number): Steps {
  const patch = patches(26, from, 0.6, 1.25);
  const fine = Math.max(0.16, b.pitch * 1.2);
  const width = b.widthMm * 0.26;
  const traces = wipesOver(b, random(from), {
    count: 11,
    width,
    radius: [0.5 * b.widthMm, 1.3 * b.widthMm],
  }).map(traceOf);
  // No arm keeps its arc: the passes are bent as a whole, and each bore harder here than there.
  const aside = slowly(
    b,
    (x, y) => 4 * noise(x / 33, y / 28, from + 5) + 0.7 * noise(x / 12, y / 11, from + 6),
  );
  const below = slowly(
    b,
    (x, y) => 4 * noise(x / 30, y / 33, from + 7) + 0.7 * noise(x / 11, y / 12, from + 8),
  );
  const bore = slowly(b, (x, y) => ease(-0.35, 0.5, noise(x / 13, y / 10, from + 9)));
  yield* inBands(b, (i, x, y) => {
    let wax = 0.5;
    let threads = 0;
    for (const at of traces) {
      const { share, thread } = at(x + aside[i]!, y + below[i]!);
      if (share === 0) continue;
      wax += share * (0.16 + 0.3 * bore[i]! * thread - 0.4 * wax);
      threads += share * thread * bore[i]!;
    }
    // It grew out in flecks, close together here and single there.
    const fleck = rough(x / 2.6, y / 2.1, from + 10, 3);
    const grown = ease(0, 1, patch(x, y) + 0.2 * fleck);
    const lies = (f.spread === 'even' ? 0.8 : 0.06 + 0.85 * grown) * (0.35 + 0.75 * ease(0.05, 0.95, wax));
    // Powder: single grains where it is thin, thick in the threads of the cloth.
    const clot = noise(x / 7, y / 4, from + 2) + 0.5 * fleck + 0.25 * noise(x / 0.5, y / 0.5, from + 3);
    const dust = ease(-0.1, 0.9, noise(x / fine, y / fine, from + 4));
    const grain = 0.66 + 0.2 * clot * lies + 0.2 * threads + 0.3 * dust * (1.1 - lies);
    const share = lies * grain;
    scatter(b, i, 0.85 * f.strength * Math.max(0, share));
    raise(b, i, 3 * share);
    roughen(b, i, 0.26, Math.min(1, 1.3 * lies));
  });
}
