import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter } from '../field.ts';
import { patches } from '../mask.ts';
import { ease, noise, random, rough } from '../noise.ts';
import { traceOf, wipesOver } from '../wipes.ts';

/** Powder on top of the wax: it sits where the cloth left the wax thicker, in its arcs and on their ridges. */
export const waxBloom = (b: Board, f: FeatureOf<'wax-bloom'>, from: number): void => {
  const patch = patches(26, from, 0.62, 1.1);
  const width = b.widthMm * 0.26;
  const traces = wipesOver(b, random(from), {
    count: 11,
    width,
    radius: [0.5 * b.widthMm, 1.3 * b.widthMm],
  }).map(traceOf);
  everywhere(b, (i, x, y) => {
    let wax = 0.5;
    for (const at of traces) {
      const { share, thread } = at(x, y);
      if (share > 0) wax += share * (0.16 + 0.5 * thread - 0.4 * wax);
    }
    const lies =
      (f.spread === 'even' ? 0.8 : 0.15 + 0.75 * patch(x, y)) * (0.45 + 0.55 * ease(0.05, 0.95, wax));
    const grain = 0.75 + 0.35 * rough(x / 0.7, y / 0.7, from + 2, 1) + 0.2 * noise(x / 6, y / 6, from + 3);
    const share = lies * grain;
    scatter(b, i, 0.85 * f.strength * Math.max(0, share));
    raise(b, i, 3 * share);
    roughen(b, i, 0.26, Math.min(1, 1.3 * lies));
  });
};
