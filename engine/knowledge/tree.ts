import type { AskBranch, Branch, DefectLeaf } from '../model/tree.ts';

export const isAsk = (branch: Branch): branch is AskBranch => 'ask' in branch;
export const isHandover = (branch: Branch): branch is DefectLeaf => 'defect' in branch;

export type Answered = { readonly question: AskBranch['ask']; readonly answer: 'yes' | 'no' };
export type Visit = {
  readonly branch: Branch;
  readonly path: readonly ('yes' | 'no')[];
  readonly answers: readonly Answered[];
};

/** Every branch of a tree, parents first, with the answers that lead there. */
export function* visits(
  branch: Branch,
  path: readonly ('yes' | 'no')[] = [],
  answers: readonly Answered[] = [],
): Generator<Visit> {
  yield { branch, path, answers };
  if (!isAsk(branch)) return;
  for (const answer of ['yes', 'no'] as const)
    yield* visits(branch[answer], [...path, answer], [...answers, { question: branch.ask, answer }]);
}
