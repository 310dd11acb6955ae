import { FREQUENCY } from '../model/frequency.ts';
import { keysOf } from '../plain/entry-of.ts';
import { chanceOf } from './chance.ts';
import { practised, SOUND_ONE_IN } from './deal.ts';
import { MOST_PRACTICE_SEED, type PracticeKey, type PracticeLevel, SOUND } from './item.ts';
import type { PracticeKnowledge } from './knowledge.ts';

/** A stream of its own: a set moves none of the boards that seeds deal. */
const SET = 3;

type Group = { readonly flaws: readonly string[]; readonly share: number };

/** Flaws that are met equally often, and the share of boards that are theirs; sound boards are a group of their own. */
const groupsOf = (known: PracticeKnowledge, level: PracticeLevel): readonly Group[] => {
  const flaws = practised(known, level).filter((id) => id !== SOUND);
  const flawed = level === 'look' ? 1 - 1 / SOUND_ONE_IN : 1;
  const byOften = keysOf(FREQUENCY).map((often) => {
    const of = flaws.filter((id) => known.get('defect', id).often === often);
    return { flaws: of, weight: of.length * FREQUENCY[often] };
  });
  const all = byOften.reduce((sum, { weight }) => sum + weight, 0);
  return [
    ...byOften.map(({ flaws: of, weight }) => ({ flaws: of, share: (flawed * weight) / all })),
    { flaws: level === 'look' ? [SOUND] : [], share: 1 - flawed },
  ];
};

/** Whole numbers that add up to `count`, each as near to its share as may be: what is over goes to the largest rests. */
const parted = (count: number, shares: readonly number[]): readonly number[] => {
  const whole = shares.map((share) => Math.floor(share * count));
  const over = count - whole.reduce((sum, one) => sum + one, 0);
  const rests = shares
    .map((share, at) => ({ at, rest: share * count - (whole[at] ?? 0) }))
    .toSorted((one, other) => other.rest - one.rest || one.at - other.at);
  const more = new Set(rests.slice(0, over).map(({ at }) => at));
  return whole.map((one, at) => one + (more.has(at) ? 1 : 0));
};

/**
 * A set of boards for a class, of one level. Without flaws every set of a size holds as many common, as many rare and as
 * many sound boards as any other, so that two classes have it equally hard, and no flaw twice while there are others of
 * its kind. Of chosen flaws that the level has boards of, each comes as often as the next, or once more; with none of them the
 * set is empty. `seed` as for one board.
 */
export const drawSet = (
  known: PracticeKnowledge,
  { level, count, seed }: { readonly level: PracticeLevel; readonly count: number; readonly seed: number },
  chosen: readonly string[] = [],
): readonly PracticeKey[] => {
  const chance = chanceOf(seed, SET);
  /** All of them in turn, in another order each time. */
  const inTurn = (flaws: readonly string[], number: number): readonly string[] =>
    flaws.length
      ? Array.from({ length: Math.ceil(number / flaws.length) }, () => chance.mixed(flaws))
          .flat()
          .slice(0, number)
      : [];
  const shown = practised(known, level);
  const groups = chosen.length
    ? [{ flaws: chosen.filter((flaw) => shown.includes(flaw)), share: 1 }]
    : groupsOf(known, level);
  const counts = parted(
    count,
    groups.map(({ share }) => share),
  );
  const flaws = groups.flatMap((group, at) => inTurn(group.flaws, counts[at] ?? 0));
  return chance.mixed(flaws).map((flaw) => ({ level, flaw, seed: chance.under(MOST_PRACTICE_SEED) }));
};
