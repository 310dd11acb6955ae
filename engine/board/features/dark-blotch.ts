import type { FeatureOf } from '../../model/board.ts';
import { type Board, inBands, raise, roughen, stain } from '../field.ts';
import { carried, patches, turned } from '../mask.ts';
import { drawnOut, ease, noise, random, rough } from '../noise.ts';
import type { Steps } from '../steps.ts';
import { traceOf, wipesOver } from '../wipes.ts';

type DarkBlotch = FeatureOf<'dark-blotch'>;
const BROWN = [0.7, 1.1, 1.6] as const;

/** One brushed lane of paint: its own direction and bristles. Returns the height of its furrows, about −1 to 1. */
const brushed = (degrees: number, seed: number) => {
  const { along, across } = turned(degrees);
  return (x: number, y: number): number => {
    const u = along(x, y);
    const v = across(x, y) + 0.8 * noise(u / 26, across(x, y) / 14, seed);
    return noise(u / 38, v / 1.15, seed + 1) + 0.6 * noise(u / 24, v / 0.5, seed + 2);
  };
};

/**
 * Dark wax on brushed paint: a soft brown where the cloth left it thick, darker in the furrows and where two wipes
 * overlap, wiped thin elsewhere.
 */
function* wax(b: Board, f: DarkBlotch, from: number): Steps {
  const grabs = patches(f['size-mm'] * 1.2, from, 0.42, 0.62);
  const spots = patches(f['size-mm'] * 0.34, from + 70, 0.3, 0.5);
  const lanes = [brushed(-16, from + 3), brushed(9, from + 13)] as const;
  const traces = wipesOver(b, random(from), {
    count: 12,
    width: f['size-mm'] * 0.75,
    radius: [b.widthMm * 0.4, b.widthMm * 1.2],
  }).map(traceOf);
  yield* inBands(b, (i, x, y) => {
    const cross = ease(-0.25, 0.25, noise(x / 34, y / 17, from + 8));
    const furrow =
      cross < 0.01
        ? lanes[0](x, y)
        : cross > 0.99
          ? lanes[1](x, y)
          : lanes[0](x, y) * (1 - cross) + lanes[1](x, y) * cross;
    const hairs = 1.2 * noise(x / 20, (y + 0.2 * x) / 0.36, from + 9);
    raise(b, i, 8 * furrow + 1.6 * hairs);
    const edge = 0.7 * furrow + 0.6 * hairs;
    let left = 0.13 + 0.62 * grabs(x + 0.8 * edge, y + 0.5 * edge) + 0.32 * spots(x, y) * grabs(x + 9, y + 5);
    traces.forEach((at, n) => {
      const { share, thread } = at(x, y);
      if (share === 0) return;
      // Every third wipe came with wax on the cloth and left more instead of less.
      left =
        n % 3 === 0 ? left + 0.22 * share * (1 + 0.6 * thread) : left * (1 - share * (0.55 + 0.3 * thread));
    });
    const held = ease(0.05, -0.9, furrow);
    // It clings to the pits of the chalky face, too.
    const pits = rough(x / 0.7, y / 0.6, from + 10, 2);
    raise(b, i, -2.2 * pits);
    const deep =
      left * (0.72 + 0.3 * pits + 0.2 * rough(x / 6, y / 5, from + 6, 2) + 0.55 * held + 0.22 * hairs) +
      0.1 * held +
      0.05 * Math.max(0, -hairs);
    stain(b, i, BROWN, 1.7 * f.strength * Math.max(0, deep - 0.1));
    roughen(b, i, 0.085, 0.7 * Math.min(1, Math.max(0, left)));
  });
}

/** Oil or stain that sank in deep: soft, drawn out along the grain, darkest where the grain runs out of the face. */
function* sunken(b: Board, f: DarkBlotch, from: number): Steps {
  const cloud = patches(f['size-mm'] * 1.3, from, 0.44, 0.6);
  yield* inBands(b, (i, x, y) => {
    const fiber = 0.4 * drawnOut(x, y, 7, 0.5, from + 3) + 0.25 * drawnOut(x, y, 1.6, 0.22, from + 5);
    const share = cloud(x * 0.65 + 0.4 * carried(x, y, 3, from + 7), y + 0.8 * fiber);
    if (share === 0) return;
    const streaky = 0.8 + 0.4 * fiber + 0.35 * rough(x / 6, y / 4, from + 11, 2);
    stain(b, i, BROWN, 1.3 * f.strength * share * Math.max(0.2, streaky));
  });
}

/** Dark clouds in wax or in the wood. */
export const darkBlotch = (b: Board, f: DarkBlotch, from: number): Steps =>
  f.edge === 'hard' ? wax(b, f, from) : sunken(b, f, from);
