import { type Answer, isAsk, visits } from '#engine/index.ts';
import type { Branch } from '#engine/model/tree.ts';

/** The most questions from here to an end. */
const mostFrom = (branch: Branch): number =>
  isAsk(branch) ? 1 + Math.max(mostFrom(branch.yes), mostFrom(branch.no)) : 0;

/**
 * Where she is in a conversation: "question 2 of at most 6". Once something could not be told both ways are open, and
 * how many are left is not said.
 */
export const countOf = (
  tree: Branch,
  question: string,
  answers: readonly (readonly [string, Answer])[],
): string => {
  const here = `Question ${answers.length + 1}`;
  const asked = [...visits(tree)].find(({ branch }) => isAsk(branch) && branch.ask === question)?.branch;
  if (!asked || answers.some(([, answer]) => answer === 'unsure')) return here;
  const most = answers.length + mostFrom(asked);
  return most > answers.length + 1 ? `${here} of at most ${most}` : here;
};
