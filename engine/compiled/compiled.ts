import type { Knows } from '../knowledge/knowledge.ts';
import { type Conditioned, type RuleTable, ruleTable } from './rules.ts';
import { type TreeReads, type TreeTable, tableOf } from './trees.ts';

/** Made when it is first asked for, once for each list of entries: these are never changed. */
const once = <Known, Made>(make: (known: Known) => Made, of: (known: Known) => readonly unknown[]) => {
  const made = new WeakMap<readonly unknown[], Made>();
  return (known: Known): Made => {
    const key = of(known);
    const found = made.get(key) ?? make(known);
    made.set(key, found);
    return found;
  };
};

/** All trees as one table of numbers. */
export const treesOf = once<Knows<TreeReads>, TreeTable>(tableOf, ({ defects }) => defects);

/** The conditions of all rules as bits, one a rule in the order of the rules. */
export const rulesOf = once<{ readonly rules: readonly Conditioned[] }, RuleTable>(
  ({ rules }) => ruleTable(rules),
  ({ rules }) => rules,
);
