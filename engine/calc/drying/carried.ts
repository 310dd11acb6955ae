import type { Span } from '../../plain/span.ts';
import type { Climate } from './climate.ts';
import type { DryingProduct, Figures } from './figures.ts';
import { CHAIN, type Milestone } from './milestone.ts';
import { slowing } from './slowing.ts';

/** Figures carried from one climate to another, step by step, so that their order is kept. */
export const carried = (figures: Figures, product: DryingProduct, from: Climate, to: Climate): Figures => {
  const after = (milestone: Milestone, time: Span, before: Span, start: Span): Span => {
    const slow = slowing(product.mechanism, milestone, from, to, 1);
    return {
      from: start.from + (time.from - before.from) * slow.from,
      to: start.to + (time.to - before.to) * slow.to,
    };
  };
  const moved = { ...figures };
  let [before, start]: [Span, Span] = [
    { from: 0, to: 0 },
    { from: 0, to: 0 },
  ];
  for (const milestone of CHAIN) {
    start = after(milestone, figures[milestone], before, start);
    before = figures[milestone];
    moved[milestone] = start;
  }
  const deadline = figures['sand-if-beyond'];
  if (!deadline) return moved;
  return { ...moved, 'sand-if-beyond': after('sand-if-beyond', deadline, figures.recoat, moved.recoat) };
};
