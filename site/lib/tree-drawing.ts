import { hierarchy, tree } from 'd3-hierarchy';
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

/** The tree grows to the right, yes above no. `said` gives the answer to a question, where it is known. */
export const drawTree = (
  root: Branch,
  { across, down, fork }: TreeScale,
  said: (question: string) => string | undefined,
): TreeDrawing => {
  const grown = hierarchy<Grown>({ branch: root, answer: undefined }, ({ branch }) =>
    isAsk(branch)
      ? (['yes', 'no'] as const).map((answer) => ({ branch: branch[answer], answer }))
      : undefined,
  );
  const placed = tree<Grown>()
    .nodeSize([down, across])
    .separation(() => 1)(grown)
    .descendants();
  const top = Math.min(...placed.map(({ x }) => x)) - down;
  const numbers = new Map(placed.map((one, number) => [one, number]));
  const heightOf = (x: number) => Math.round(x - top);
  const branches: DrawnBranch[] = [];
  for (const [number, { data, parent, x, y }] of placed.entries()) {
    const of = parent ? numbers.get(parent) : undefined;
    const above = parent?.data.branch;
    branches.push({
      ...data,
      x: y,
      y: heightOf(x),
      number,
      of,
      way: parent ? `M${parent.y + fork} ${heightOf(parent.x)}V${heightOf(x)}H${y}` : '',
      taken:
        of === undefined ||
        Boolean(branches[of]?.taken && above && isAsk(above) && said(above.ask) === data.answer),
    });
  }
  return {
    width: Math.max(...branches.map(({ x }) => x)) + across,
    height: Math.max(...branches.map(({ y }) => y)) + Math.round(down / 2),
    branches,
  };
};

/** At most two lines of so many letters, cut between words. */
export const twoLines = (text: string, letters: number): string[] => {
  const lines = [''];
  for (const word of text.split(' ')) {
    const line = lines.at(-1) ?? '';
    const longer = line ? `${line} ${word}` : word;
    if (longer.length <= letters || !line) lines[lines.length - 1] = longer;
    else if (lines.length < 2) lines.push(word);
    else return [...lines.slice(0, -1), `${line.replace(/[,;:]$/, '')} …`];
  }
  return lines;
};
