import { type AnswerReads, answerOf, canCheck } from '../case/answers.ts';
import type { Answer, Case } from '../case/case.ts';
import { treesOf } from '../compiled/compiled.ts';
import { type Leaf, NODE, type Place, type TreeReads } from '../compiled/trees.ts';
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
  const { nodes, of, questions, leaves, roots } = treesOf(known);
  const ends = new Set<Leaf>();
  const met: MetQuestion[] = [];
  const follow = (place: Place): void => {
    if (place < 0) {
      ends.add(leaves[~place] as Leaf);
      return;
    }
    const at = place * NODE;
    const question = questions[nodes[at] as number] as QuestionId;
    const answer = answerOf(known, on, question);
    const open = answer === undefined && canCheck(known, on, question);
    met.push({ question, answer, open, of: of[place] as string });
    if (answer !== 'no') follow(nodes[at + 1] as Place);
    if (answer !== 'yes') follow(nodes[at + 2] as Place);
  };
  follow(roots.get(defect) ?? rootOfNone(known, defect));
  return { leaves: [...ends], met };
};

/** Throws, naming the defect. */
const rootOfNone = (known: Knows<TreeReads>, defect: string): never => {
  throw new Error(`no tree for ${known.get('defect', defect).id}`);
};
