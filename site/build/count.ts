import { addressOf, answersOverdue, type Knowledge, readAddress, type TreeNode } from '#engine/index.ts';
import { addressFor } from '../shared/way.ts';
import { nodesIn } from './nodes-in.ts';

/** How many questions may be left. */
type Counts = ReadonlySet<number>;
type CountsFrom = (defect: string, node: TreeNode) => Counts;

const NONE: Counts = new Set([0]);

/** One more question, and then either of two ways. */
const oneMore = (ways: readonly Counts[]): Counts =>
  new Set(ways.flatMap((way) => [...way].map((count) => count + 1)));

/** From a page to an end; where another flaw takes over, its own questions come to it. */
const counting = (known: Knowledge): CountsFrom => {
  const walks = new Map<string, ReadonlyMap<string, TreeNode>>();
  const found = new Map<TreeNode, Counts>();
  const at = (defect: string, address: readonly string[]): TreeNode | undefined => {
    const walk =
      walks.get(defect) ??
      new Map(nodesIn(known, defect).map((node) => [node.address.join('/'), node] as const));
    walks.set(defect, walk);
    return walk.get(address.join('/'));
  };
  const from = (defect: string, address: readonly string[]): Counts => {
    const node = at(defect, address);
    if (!node) return NONE;
    const counts = found.get(node) ?? countsFrom(defect, node);
    found.set(node, counts);
    return counts;
  };
  const countsFrom: CountsFrom = (defect, { walked, handover, stage, on, address }) => {
    if (walked.kind !== 'question') return NONE;
    if (handover !== undefined) {
      const standing = stage === 'overdue' && !answersOverdue(known, handover) ? 'dry-to-touch' : stage;
      return from(handover, addressFor(known, handover, standing, on));
    }
    const { answers } = readAddress(known, address);
    return oneMore(
      (['yes', 'no'] as const).map((answer) =>
        from(defect, addressOf(stage, [...answers, [walked.question, answer]])),
      ),
    );
  };
  return countsFrom;
};

const kept = new WeakMap<Knowledge, CountsFrom>();

/** The longest way is seldom gone: while it is longer than this it would only frighten. */
const FEW_LEFT = 4;

/** Where she is in a conversation: "Question 2, up to 4 in all", which no Yes and no No makes more. "Can’t tell" keeps both ways open and asks more. */
export const countOf = (known: Knowledge, defect: string, node: TreeNode): string => {
  const countsFrom = kept.get(known) ?? counting(known);
  kept.set(known, countsFrom);
  const asked = readAddress(known, node.address).answers.length;
  const here = `Question ${asked + 1}`;
  const counts = countsFrom(defect, node);
  const [fewest, most] = [asked + Math.min(...counts), asked + Math.max(...counts)];
  if (most <= 1 || most - asked > FEW_LEFT) return here;
  if (most === asked + 1) return `${here}, the last`;
  return fewest === most ? `${here} of ${most}` : `${here}, up to ${most} in all`;
};
