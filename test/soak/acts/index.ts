import type { Act } from '../user.ts';
import { cards } from './cards.ts';
import { clock } from './clock.ts';
import { moves } from './moves.ts';
import { planning } from './plan.ts';
import { practice } from './practice.ts';
import { stories } from './stories.ts';
import { walk } from './walk.ts';

export const ACTS: readonly Act[] = [
  ...moves,
  ...walk,
  ...stories,
  ...clock,
  ...cards,
  ...planning,
  ...practice,
];

/** An act by its name and the seed of its dice: what is written down, so that it can be done again. */
export type Done = readonly [name: string, seed: number];

/** The next act, drawn by weight. */
export const draw = (dice: () => number, acts: readonly Act[] = ACTS): Done => {
  const mark = dice() * acts.reduce((sum, { weight }) => sum + weight, 0);
  let passed = 0;
  const act = acts.find(({ weight }) => {
    passed += weight;
    return passed > mark;
  });
  return [act?.name ?? '', Math.floor(dice() * 2 ** 31)];
};

export const actNamed = (name: string): Act => {
  const act = ACTS.find((one) => one.name === name);
  if (!act) throw new Error(`there is no act “${name}” any more`);
  return act;
};
