import { addressOf, answersOverdue, type Knowledge, readAddress, type TreeNode } from '#engine/index.ts';
import { addressFor } from '../shared/way.ts';
import { nodesIn } from './nodes-in.ts';

/** How likely each number of questions is; both answers to each are held to be as likely. */
type Chances = ReadonlyMap<number, number>;
type ChancesFrom = (defect: string, node: TreeNode) => Chances;

const NONE: Chances = new Map([[0, 1]]);

/** One more question, after which either of two ways is as likely. */
const oneMore = (ways: readonly Chances[]): Chances => {
  const chances = new Map<number, number>();
  for (const way of ways)
    for (const [count, chance] of way)
      chances.set(count + 1, (chances.get(count + 1) ?? 0) + chance / ways.length);
  return chances;
};

/** From a page to an end; where another flaw takes over, its own questions come to it. */
const counting = (known: Knowledge): ChancesFrom => {
  const walks = new Map<string, ReadonlyMap<string, TreeNode>>();
  const found = new Map<TreeNode, Chances>();
  const at = (defect: string, address: readonly string[]): TreeNode | undefined => {
    const walk =
      walks.get(defect) ??
      new Map(nodesIn(known, defect).map((node) => [node.address.join('/'), node] as const));
    walks.set(defect, walk);
    return walk.get(address.join('/'));
  };
  const from = (defect: string, address: readonly string[]): Chances => {
    const node = at(defect, address);
    if (!node) return NONE;
    const chances = found.get(node) ?? chancesFrom(defect, node);
    found.set(node, chances);
    return chances;
  };
  const chancesFrom: ChancesFrom = (defect, { walked, handover, stage, on, address }) => {
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
  return chancesFrom;
};

/** The middle half of all ways: a quarter of them are shorter at most, and a quarter longer. */
const middleHalf = (chances: Chances): readonly [number, number] => {
  const counts = [...chances].toSorted(([one], [two]) => one - two);
  const within = (ways: typeof counts): number => {
    let share = 0;
    for (const [count, chance] of ways) {
      share += chance;
      // A quarter added up of eighths and the like may come out a hair short.
      if (share > 0.25 - 1e-9) return count;
    }
    return 0;
  };
  return [within(counts), within(counts.toReversed())];
};

const kept = new WeakMap<Knowledge, ChancesFrom>();

/** Where she is in a conversation: "Question 2, usually 3 or 4 in all". "Can’t tell" keeps both ways open and asks more. */
export const countOf = (known: Knowledge, defect: string, node: TreeNode): string => {
  const chancesFrom = kept.get(known) ?? counting(known);
  kept.set(known, chancesFrom);
  const asked = readAddress(known, node.address).answers.length;
  const here = `Question ${asked + 1}`;
  const [fewest, most] = middleHalf(chancesFrom(defect, node)).map((count) => asked + count);
  if (fewest === undefined || most === undefined || most <= 1) return here;
  if (most === asked + 1) return `${here}, usually the last`;
  if (fewest === most) return `${here}, usually ${most} in all`;
  return `${here}, usually ${fewest} ${most - fewest === 1 ? 'or' : 'to'} ${most} in all`;
};
