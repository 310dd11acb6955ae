import { answerOf, canCheck } from './answers.ts';
import type { Answer, Case } from './case.ts';
import type { Knowledge } from './knowledge.ts';
import type { Branch, LeaveLeaf, RemedyLeaf } from './model/tree.ts';
import { isAsk, isHandover } from './tree.ts';

/** An end of a tree that is still possible, and the defect whose tree it belongs to. */
export type Leaf = (RemedyLeaf | LeaveLeaf) & { readonly of: string };

/** A question met on the way, in walking order. `open`: not answered, and it can be checked now. */
export type Met = {
  readonly question: string;
  readonly answer: Answer | undefined;
  readonly open: boolean;
  readonly of: string;
};

export type Possible = { readonly leaves: readonly Leaf[]; readonly met: readonly Met[] };

/**
 * All ends that the facts leave open, following hand-overs. A known answer follows its branch; anything else
 * (unknown, can't tell, can't be checked on this film) keeps both.
 */
export const possible = (known: Knowledge, on: Case, defect: string): Possible => {
  const leaves: Leaf[] = [];
  const met: Met[] = [];
  const follow = (branch: Branch, of: string): void => {
    if (isHandover(branch)) {
      follow(known.get('defect', branch.defect).tree, branch.defect);
      return;
    }
    if (!isAsk(branch)) {
      leaves.push({ ...branch, of });
      return;
    }
    const answer = answerOf(known, on, branch.ask);
    met.push({
      question: branch.ask,
      answer,
      open: answer === undefined && canCheck(known, on, branch.ask),
      of,
    });
    if (answer !== 'no') follow(branch.yes, of);
    if (answer !== 'yes') follow(branch.no, of);
  };
  follow(known.get('defect', defect).tree, defect);
  return { leaves: unique(leaves), met };
};

const unique = (leaves: readonly Leaf[]): Leaf[] => {
  const seen = new Map(leaves.map((leaf) => [JSON.stringify(leaf), leaf]));
  return [...seen.values()];
};
