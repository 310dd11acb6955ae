import { type AnswerReads, answerOf, canCheck } from '../case/answers.ts';
import type { Answer, Case } from '../case/case.ts';
import { treesOf } from '../compiled/compiled.ts';
import { type Leaf, NODE, type Place, type TreeReads, type TreeTable } from '../compiled/trees.ts';
import type { Knows } from '../knowledge/knowledge.ts';
import type { QuestionId } from '../model/ids.ts';

export type { Leaf };

/** A question met on the way, in walking order. `open`: not answered, and it can be checked now. */
export type MetQuestion = {
  readonly question: QuestionId;
  readonly answer: Answer | undefined;
  readonly open: boolean;
  readonly of: string;
};

export type Possible = { readonly leaves: readonly Leaf[]; readonly met: readonly MetQuestion[] };

/**
 * All ends that the facts leave open, following hand-overs. A known answer follows its branch; anything else
 * (unknown, can't tell, can't be checked on this film) keeps both.
 */
export const possible = (known: Knows<TreeReads & AnswerReads>, on: Case, defect: string): Possible => {
  const trees = treesOf(known);
  const leaves: Leaf[] = [];
  const met: MetQuestion[] = [];
  follow(known, on, trees, rootOf(known, trees, defect), leaves, met);
  return { leaves, met };
};

/** Goes on from a place to all ends below it: where both branches are kept, the yes first. */
const follow = (
  known: Knows<TreeReads & AnswerReads>,
  on: Case,
  trees: TreeTable,
  from: Place,
  leaves: Leaf[],
  met: MetQuestion[],
): void => {
  const { nodes, of, questions } = trees;
  let place = from;
  while (place >= 0) {
    const at = place * NODE;
    const question = questions[nodes[at]!]!;
    const answer = answerOf(known, on, question);
    const open = answer === undefined && canCheck(known, on, question);
    met.push({ question, answer, open, of: of[place]! });
    if (answer !== 'yes' && answer !== 'no') follow(known, on, trees, nodes[at + 1]!, leaves, met);
    place = nodes[answer === 'yes' ? at + 1 : at + 2]!;
  }
  const leaf = trees.leaves[~place]!;
  // Ends are few: they are looked through faster than a set is made of them.
  if (!leaves.includes(leaf)) leaves.push(leaf);
};

/** Where the tree of a defect begins. Throws, naming it, for one that has none. */
export const rootOf = (known: Knows<TreeReads>, { roots }: TreeTable, defect: string): Place => {
  const root = roots.get(defect);
  if (root === undefined) throw new Error(`no tree for ${known.get('defect', defect).id}`);
  return root;
};
