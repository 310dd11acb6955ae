import { ANSWERS } from '#engine/case.ts';
import {
  addressOf,
  answersOverdue,
  type Knowledge,
  nodesOf,
  readAddress,
  type TreeNode,
} from '#engine/index.ts';
import { addressFor } from '../shared/way.ts';

/** The most questions from a page to an end, whatever is answered; where another flaw takes over, its own come to it. */
type MostFrom = (defect: string, node: TreeNode) => number;

const counting = (known: Knowledge): MostFrom => {
  const walks = new Map<string, ReadonlyMap<string, TreeNode>>();
  const counts = new Map<TreeNode, number>();
  const at = (defect: string, address: readonly string[]): TreeNode | undefined => {
    const walk =
      walks.get(defect) ??
      new Map([...nodesOf(known, defect)].map((node) => [node.address.join('/'), node] as const));
    walks.set(defect, walk);
    return walk.get(address.join('/'));
  };
  const from = (defect: string, address: readonly string[]): number => {
    const node = at(defect, address);
    if (!node) return 0;
    const most = counts.get(node) ?? mostFrom(defect, node);
    counts.set(node, most);
    return most;
  };
  const mostFrom: MostFrom = (defect, { walked, handover, stage, on, address }) => {
    if (walked.kind !== 'question') return 0;
    if (handover !== undefined) {
      const standing = stage === 'overdue' && !answersOverdue(known, handover) ? 'dry-to-touch' : stage;
      return from(handover, addressFor(known, handover, standing, on));
    }
    const { answers } = readAddress(known, address);
    return (
      1 +
      Math.max(
        ...ANSWERS.map((answer) => from(defect, addressOf(stage, [...answers, [walked.question, answer]]))),
      )
    );
  };
  return mostFrom;
};

const kept = new WeakMap<Knowledge, MostFrom>();

/** Where she is in a conversation: "Question 2 of at most 6". What is promised holds whatever she answers. */
export const countOf = (known: Knowledge, defect: string, node: TreeNode): string => {
  const mostFrom = kept.get(known) ?? counting(known);
  kept.set(known, mostFrom);
  const asked = readAddress(known, node.address).answers.length;
  const here = `Question ${asked + 1}`;
  const ahead = mostFrom(defect, node);
  return asked + ahead > 1 ? `${here} of at most ${asked + ahead}` : here;
};
