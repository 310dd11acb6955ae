import type { Entry, Knowledge } from '#engine/index.ts';
import { isAsk, visits } from '#engine/index.ts';
import { FREQUENCY } from '#engine/model/frequency.ts';
import { knowledge } from './knowledge.ts';

const findFlaws = (known: Knowledge): ReadonlyMap<string, readonly Entry<'defect'>[]> => {
  const found = new Map<string, Set<Entry<'defect'>>>();
  for (const defect of known.defects.toSorted((a, b) => FREQUENCY[b.often] - FREQUENCY[a.often]))
    for (const { branch } of visits(defect.tree))
      if (!isAsk(branch) && 'remedy' in branch)
        found.set(branch.remedy, (found.get(branch.remedy) ?? new Set()).add(defect));
  return new Map([...found].map(([remedy, defects]) => [remedy, [...defects]]));
};
const FLAWS = findFlaws(knowledge);

/** The flaws that a repair mends, what is met most often first; none for a repair that only another one leads to. */
export const flawsOf = (remedy: string): readonly Entry<'defect'>[] => FLAWS.get(remedy) ?? [];
