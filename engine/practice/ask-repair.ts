import { isHandover, visits } from '../knowledge/tree.ts';
import type { Leaf } from '../walk/leaves.ts';
import type { Outcome } from './ask-hands.ts';
import type { Chance } from './chance.ts';
import type { PracticeAsk } from './item.ts';
import type { PracticeFlaw, PracticeKnowledge } from './knowledge.ts';
import { OFFERED, type Rival } from './rivals.ts';

/** Every repair that some branch of the flaw's tree leads to, hand-overs followed. */
const repairsOf = (known: PracticeKnowledge, flaw: string, found = new Set<string>()): Set<string> => {
  for (const { branch } of visits(known.get('defect', flaw).tree)) {
    if ('remedy' in branch) found.add(branch.remedy);
    else if (isHandover(branch)) repairsOf(known, branch.defect, found);
  }
  return found;
};

/** What mends it: the repair of this cause against repairs of what it is taken for, none of which mends this flaw. */
export const askRepair = (
  known: PracticeKnowledge,
  flaw: PracticeFlaw,
  walked: Outcome,
  rivals: readonly Rival[],
  chance: Chance,
): PracticeAsk | undefined => {
  const leaves = new Set(walked.leaves.map((leaf: Leaf) => ('remedy' in leaf ? leaf.remedy : '')));
  const [remedy] = leaves;
  if (!remedy || leaves.size > 1) return undefined;
  const own = repairsOf(known, flaw.id);
  const others = rivals.flatMap(({ flaw: other }) =>
    [...repairsOf(known, other.id)]
      .filter((one) => !own.has(one))
      .map((id) => ({ id, other, called: known.get('remedy', id).name })),
  );
  const { name, summary } = known.get('remedy', remedy);
  const distinct = chance
    .mixed(others)
    .filter(
      (one, index, list) =>
        one.called !== name && list.findIndex(({ called }) => called === one.called) === index,
    )
    .slice(0, OFFERED - 1);
  if (distinct.length < 2) return undefined;
  return {
    kind: 'repair',
    ask: 'What mends it?',
    choices: chance.mixed([
      { id: remedy, says: name, right: true, because: summary },
      ...distinct.map(({ id, other }) => {
        const wrong = known.get('remedy', id);
        return {
          id,
          says: wrong.name,
          right: false,
          because: `That one is for another flaw, such as ${other.name.toLowerCase()}: ${wrong.summary}`,
        };
      }),
    ]),
  };
};
