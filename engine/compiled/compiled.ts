import type { Knowledge } from '../knowledge.ts';
import type { Entry } from '../model/knowledge.ts';
import { type RuleTable, ruleTable } from './rules.ts';
import { type TreeTable, tableOf } from './trees.ts';

/** Made when it is first asked for, once for each list of entries: these are never changed. */
const once = <Of extends object, Made>(make: (known: Knowledge) => Made, of: (known: Knowledge) => Of) => {
  const made = new WeakMap<Of, Made>();
  return (known: Knowledge): Made => {
    const key = of(known);
    const found = made.get(key) ?? make(known);
    made.set(key, found);
    return found;
  };
};

/** All trees as one table of numbers. */
export const treesOf = once<readonly Entry<'defect'>[], TreeTable>(tableOf, ({ defects }) => defects);

/** The conditions of all rules as bits, one a rule in the order of the rules. */
export const rulesOf = once<readonly Entry<'rule'>[], RuleTable>(
  ({ rules }) => ruleTable(rules),
  ({ rules }) => rules,
);
