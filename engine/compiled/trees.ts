import type { Knows } from '../knowledge/knowledge.ts';
import { isAsk, isHandover } from '../knowledge/tree.ts';
import type { Defect } from '../model/defect.ts';
import type { QuestionId } from '../model/ids.ts';
import type { Branch, LeaveLeaf, RemedyLeaf } from '../model/tree.ts';

/** What is read of a flaw to walk its tree. */
export type TreeReads = { readonly defect: Pick<Defect, 'tree'> };

/** An end of a tree, and the defect whose tree it belongs to. */
export type Leaf = (RemedyLeaf | LeaveLeaf) & { readonly of: string };

/**
 * A place in the table: from 0 the node that asks, below 0 the leaf `~place`. A hand-over is no place of its own: it is
 * the root of the other tree.
 */
export type Place = number;

/** All trees as one table, three numbers a node: its question, its place for yes, its place for no. */
export type TreeTable = {
  readonly nodes: Int32Array;
  /** The defect whose tree a node belongs to. */
  readonly of: readonly string[];
  readonly questions: readonly QuestionId[];
  /** Each end once. */
  readonly leaves: readonly Leaf[];
  readonly roots: ReadonlyMap<string, Place>;
};

/** Numbers for one node. */
export const NODE = 3;

/**
 * The table of all trees. Trees that hand over in a circle are refused by the proofs before; here they would not end.
 */
export const tableOf = ({ defects, get }: Knows<TreeReads>): TreeTable => {
  const nodes: number[] = [];
  const of: string[] = [];
  const leaves = new Map<string, { readonly at: number; readonly leaf: Leaf }>();
  const questions = new Map<QuestionId, number>();
  const roots = new Map<string, Place>();
  const root = (defect: string): Place => {
    const known = roots.get(defect);
    if (known !== undefined) return known;
    const place = lay(get('defect', defect).tree, defect);
    roots.set(defect, place);
    return place;
  };
  const lay = (branch: Branch, defect: string): Place => {
    if (isHandover(branch)) return root(branch.defect);
    if (!isAsk(branch)) {
      const leaf = { ...branch, of: defect };
      const key = JSON.stringify(leaf);
      const { at } = leaves.get(key) ?? { at: leaves.size };
      leaves.set(key, { at, leaf });
      return ~at;
    }
    const place = of.push(defect) - 1;
    const question = questions.get(branch.ask) ?? questions.size;
    questions.set(branch.ask, question);
    nodes.push(question, 0, 0);
    const yes = lay(branch.yes, defect);
    const no = lay(branch.no, defect);
    nodes[place * NODE + 1] = yes;
    nodes[place * NODE + 2] = no;
    return place;
  };
  for (const { id } of defects) root(id);
  return {
    nodes: Int32Array.from(nodes),
    of,
    questions: [...questions.keys()],
    leaves: [...leaves.values()].map(({ leaf }) => leaf),
    roots,
  };
};

/** An answer as a number: not known, or can't tell, keeps both ways. */
export const OPEN = 0;
export const YES = 1;
export const NO = 2;

/**
 * The one end that complete answers lead to, as its number among the leaves.
 * @param answers - For each question of the table YES or NO; anything else counts as NO.
 */
export const endOf = ({ nodes }: TreeTable, root: Place, answers: Uint8Array): number => {
  let place = root;
  while (place >= 0) {
    const at = place * NODE;
    // An index of the table's own, so it is there.
    place = nodes[answers[nodes[at]!] === YES ? at + 1 : at + 2]!;
  }
  return ~place;
};

/**
 * Marks in `ends`, one bit a leaf, every end that the answers leave open; OPEN keeps both ways.
 * @param ends - At least ⌈leaves / 32⌉ words; bits that are set stay set.
 */
export const markEnds = (table: TreeTable, root: Place, answers: Uint8Array, ends: Uint32Array): void => {
  const { nodes } = table;
  let place = root;
  while (place >= 0) {
    const at = place * NODE;
    const answer = answers[nodes[at]!];
    if (answer === OPEN) markEnds(table, nodes[at + 1]!, answers, ends);
    place = nodes[answer === YES ? at + 1 : at + 2]!;
  }
  const leaf = ~place;
  ends[leaf >> 5] = ends[leaf >> 5]! | (1 << (leaf & 31));
};
