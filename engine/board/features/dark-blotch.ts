import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, stain } from '../field.ts';
import { patches } from '../mask.ts';
import { ease, noise, random, rough } from '../noise.ts';
import { traceOf, wipesOver } from '../wipes.ts';

type DarkBlotch = FeatureOf<'dark-blotch'>;
const BROWN = [0.7, 1.1, 1.6] as const;

/** Dark wax: it grabs where the face is open, stays in the furrows of the brush, and shows how the cloth went. */
const wax = (b: Board, f: DarkBlotch, from: number): void => {
  const grabs = patches(f['size-mm'] * 1.5, from, 0.4, 0.22);
  const traces = wipesOver(b, random(from), {
    count: 8,
    width: f['size-mm'],
    radius: [b.widthMm * 0.5, b.widthMm * 1.2],
  }).map(traceOf);
  everywhere(b, (i, x, y) => {
    const furrow = noise(x / 22, y / 0.9, from + 3) + 0.6 * noise(x / 12, y / 0.35, from + 4);
    const ragged = 0.14 * noise(x / 7, y / 0.9, from + 5);
    const open = grabs(x * 0.75 + 6 * ragged, y + 4 * ragged);
    let left = 0.22 + 0.78 * open;
    for (const at of traces) {
      const { share, thread } = at(x, y);
      if (share > 0) left *= 1 - share * (0.5 + 0.35 * thread);
    }
    const tide = 0.3 * Math.exp(-(((open - 0.5) / 0.3) ** 2));
    const deep =
      left * (0.8 + 0.3 * rough(x / 5, y / 4, from + 6, 2) + 0.22 * furrow) +
      0.12 * ease(0.35, 0.9, furrow) +
      tide * left;
    stain(b, i, BROWN, 1.25 * f.strength * Math.max(0, deep - 0.12));
  });
};

/** Oil or stain that sank in deep: soft, drawn out along the grain, darkest where the grain runs out of the face. */
const sunken = (b: Board, f: DarkBlotch, from: number): void => {
  const cloud = patches(f['size-mm'] * 1.3, from, 0.44, 0.6);
  everywhere(b, (i, x, y) => {
    const fiber = rough(x / 5, y / 0.7, from + 3, 2);
    const share = cloud(x * 0.6 + fiber, y + 1.2 * fiber);
    if (share === 0) return;
    const streaky = 0.75 + 0.5 * fiber + 0.3 * noise(x / 3, y / 0.3, from + 5);
    stain(b, i, BROWN, 1.3 * f.strength * share * Math.max(0.2, streaky));
  });
};

/** Dark clouds in wax or in the wood. */
export const darkBlotch = (b: Board, f: DarkBlotch, from: number): void =>
  f.edge === 'hard' ? wax(b, f, from) : sunken(b, f, from);
