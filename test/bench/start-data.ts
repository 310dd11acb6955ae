/** Two ways to send the same trees and rules: compiled tables as data, and an if-chain as code. */
import { ruleTable } from '#engine/compiled/rules.ts';
import { type TreeTable, tableOf } from '#engine/compiled/trees.ts';
import type { Knowledge } from '#engine/index.ts';
import { ruleChain, treeChainBoth } from './if-chain.ts';

/** The tables of trees and rules as JSON holds them. */
export type StartData = ReturnType<typeof startData>;

const startData = (trees: TreeTable, rules: Knowledge['rules']) => {
  const { starts, rows, words, stride, ruled, count, facts } = ruleTable(rules);
  return {
    nodes: [...trees.nodes],
    questions: trees.questions,
    roots: [...trees.roots],
    leafCount: trees.leaves.length,
    starts: [...starts],
    rows: [...rows],
    words,
    stride,
    ruled: [...ruled],
    count,
    facts: facts.map(({ name, named, bounds }) => ({ name, named: [...named], bounds })),
  };
};

/** The trees of these flaws, of those that they lead on to, and all rules. */
export const startOf = (known: Knowledge, defects: Knowledge['defects']) => {
  const trees = tableOf({ ...known, defects });
  return {
    trees,
    data: JSON.stringify(startData(trees, known.rules)),
    /** Defines `first` as `in-page/start.ts` does. */
    chain: `const ends = ${treeChainBoth(trees)};
const rules = ${ruleChain(known.rules)};
globalThis.start = { first: (_text, defect, answers, told) => {
  const left = new Set();
  ends(defect, answers, left);
  const out = new Uint16Array(${known.rules.length});
  const count = rules(told, out);
  return { ends: [...left].sort((a, b) => a - b), rules: [...out.subarray(0, count)] };
} };`,
  };
};
