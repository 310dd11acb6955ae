import { hierarchy, type Placed, tree } from 'd3-hierarchy';
import type { Branch } from '#engine/model/tree.ts';
import { isAsk } from '#engine/tree.ts';

/** One branch in place: its line begins at x, y; the line from its question comes down or up to it. */
export type DrawnBranch = {
  readonly branch: Branch;
  readonly x: number;
  readonly y: number;
  readonly answer: 'yes' | 'no' | undefined;
  /** Its number in the drawing and that of its question, root first. */
  readonly number: number;
  readonly of: number | undefined;
  /** SVG path from the fork behind its question to it; empty at the root. */
  readonly way: string;
  /** The answers given lead here. */
  readonly taken: boolean;
};
export type TreeDrawing = {
  readonly width: number;
  readonly height: number;
  readonly branches: readonly DrawnBranch[];
};
/** In SVG units: the room of one branch, and where its line forks, counted from its beginning. */
export type TreeScale = { readonly across: number; readonly down: number; readonly fork: number };

type Grown = { branch: Branch; answer: 'yes' | 'no' | undefined };

const growTree = (root: Branch): Placed<Grown> =>
  hierarchy<Grown>({ branch: root, answer: undefined }, ({ branch }) =>
    isAsk(branch)
      ? (['yes', 'no'] as const).map((answer) => ({ branch: branch[answer], answer }))
      : undefined,
  );

/** Where the line of a branch begins. */
type Place = { readonly x: number; readonly y: number };

/** Branches in their order, with the line that leads to each and whether the answers do. */
const join = (
  grown: readonly Placed<Grown>[],
  placeOf: (node: Placed<Grown>) => Place,
  fork: number,
  said: (question: string) => string | undefined,
): DrawnBranch[] => {
  const numbers = new Map(grown.map((one, number) => [one, number]));
  const branches: DrawnBranch[] = [];
  for (const [number, node] of grown.entries()) {
    const of = node.parent ? numbers.get(node.parent) : undefined;
    const question = of === undefined ? undefined : branches[of];
    const { x, y } = placeOf(node);
    branches.push({
      ...node.data,
      x,
      y,
      number,
      of,
      way: question ? `M${question.x + fork} ${question.y}V${y}H${x}` : '',
      taken:
        !question ||
        Boolean(question.taken && isAsk(question.branch) && said(question.branch.ask) === node.data.answer),
    });
  }
  return branches;
};

/** The tree grows to the right, yes above no. `said` gives the answer to a question, where it is known. */
export const drawTree = (
  root: Branch,
  { across, down, fork }: TreeScale,
  said: (question: string) => string | undefined,
): TreeDrawing => {
  const nodes = tree<Grown>()
    .nodeSize([down, across])
    .separation(() => 1)(growTree(root))
    .descendants();
  const top = Math.min(...nodes.map(({ x }) => x)) - down;
  const branches = join(nodes, ({ x, y }) => ({ x: y, y: Math.round(x - top) }), fork, said);
  return {
    width: Math.max(...branches.map(({ x }) => x)) + across,
    height: Math.max(...branches.map(({ y }) => y)) + Math.round(down / 2),
    branches,
  };
};

/** The tree stands on a narrow page: one branch below another, each a step in from its question. */
export const standTree = (
  root: Branch,
  { across, down, fork }: TreeScale,
  width: number,
  said: (question: string) => string | undefined,
): TreeDrawing => {
  const nodes: Placed<Grown>[] = [];
  growTree(root).eachBefore((node) => void nodes.push(node));
  const rows = new Map(nodes.map((node, row) => [node, row]));
  const place = (node: Placed<Grown>) => ({
    x: node.depth * across,
    y: ((rows.get(node) ?? 0) + 0.5) * down,
  });
  return { width, height: nodes.length * down, branches: join(nodes, place, fork, said) };
};

/** At most `most` lines of so many letters, cut between words; what does not fit is left to the list. */
export const linesOf = (text: string, letters: number, most: number): string[] => {
  const lines = [''];
  for (const word of text.split(' ')) {
    const line = lines.at(-1) ?? '';
    const longer = line ? `${line} ${word}` : word;
    if (longer.length <= letters || !line) lines[lines.length - 1] = longer;
    else if (lines.length < most) lines.push(word);
    else {
      const kept = line.length + 2 > letters ? line.replace(/ ?[^ ]+$/, '') : line;
      return [...lines.slice(0, -1), `${kept.replace(/[,;:]$/, '')} …`.trim()];
    }
  }
  return lines;
};
