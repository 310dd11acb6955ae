import { type Knowledge, nodesOf, type TreeNode } from '#engine/index.ts';

const kept = new WeakMap<Knowledge, Map<string, readonly TreeNode[]>>();

/** Every node of a flaw's tree; walked once a build, whoever asks. */
export const nodesIn = (known: Knowledge, defect: string): readonly TreeNode[] => {
  const walked = kept.get(known) ?? new Map<string, readonly TreeNode[]>();
  kept.set(known, walked);
  const nodes = walked.get(defect) ?? [...nodesOf(known, defect)];
  walked.set(defect, nodes);
  return nodes;
};
