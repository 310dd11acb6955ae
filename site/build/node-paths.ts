import type { TreeNode } from '#engine/index.ts';
import { knowledge } from './knowledge.ts';
import { nodesIn } from './nodes-in.ts';

/** What the page of a node does: it asks, it says what to do, or it names a cause or the flaw that it leads to. */
const doesOf = ({ walked, handover }: TreeNode): 'asks' | 'tells' | 'names' => {
  if (handover !== undefined) return 'names';
  if (walked.kind === 'question') return 'asks';
  return walked.kind === 'outcome' ? 'tells' : 'names';
};

const allNodes = () =>
  knowledge.defects.flatMap((defect) => nodesIn(knowledge, defect.id).map((node) => ({ defect, node })));

/**
 * The pages of all trees that do this. Each kind has a route of its own, so that a question is not sent the styles of
 * an outcome; the addresses are of one kind all the same.
 */
export const nodePaths = <Name extends string>(name: Name, wanted: ReturnType<typeof doesOf>) =>
  allNodes()
    .filter(({ node }) => doesOf(node) === wanted)
    .map(({ defect, node }) => ({
      params: { id: defect.id, [name]: node.address.join('/') },
      props: { defect, node },
    }));
