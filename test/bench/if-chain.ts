/** The floor: the same trees and rules written out as nested ifs, as a patient programmer would. */
import { clausesOf, type Literal } from '#engine/compiled/clauses.ts';
import { NODE, type Place, type TreeTable } from '#engine/compiled/trees.ts';
import type { RuleEntry } from '#engine/index.ts';

const text = (value: unknown): string => JSON.stringify(value);

/** `(defect, a) => leaf`, where `a` tells the answer to each question by its name. */
export const treeChain = (table: TreeTable): string => {
  const branch = (place: Place): string =>
    place < 0
      ? `return ${~place};`
      : `if (a[${text(table.questions[table.nodes[place * NODE] ?? 0])}] === 'yes') { ${branch(table.nodes[place * NODE + 1] ?? -1)} } else { ${branch(table.nodes[place * NODE + 2] ?? -1)} }`;
  const cases = [...table.roots].map(([defect, root]) => `case ${text(defect)}: ${branch(root)}`);
  return `(defect, a) => { switch (defect) { ${cases.join('\n')} } return -1; }`;
};

/** `(defect, a, out)`: puts every leaf that is left open into the set `out`. */
export const treeChainBoth = (table: TreeTable): string => {
  const branch = (place: Place): string => {
    if (place < 0) return `out.add(${~place});`;
    const asked = `a[${text(table.questions[table.nodes[place * NODE] ?? 0])}]`;
    return `if (${asked} !== 'no') { ${branch(table.nodes[place * NODE + 1] ?? -1)} } if (${asked} !== 'yes') { ${branch(table.nodes[place * NODE + 2] ?? -1)} }`;
  };
  const cases = [...table.roots].map(([defect, root]) => `case ${text(defect)}: ${branch(root)} break;`);
  return `(defect, a, out) => { switch (defect) { ${cases.join('\n')} } }`;
};

const comparison = ({ fact, wanted, negated }: Literal, lenient: boolean): string => {
  const value = `f[${text(fact)}]`;
  const known = `${value} !== undefined && ${value} !== 'unsure'`;
  const plain = Array.isArray(wanted)
    ? `(${wanted.map((one) => `${value} === ${text(one)}`).join(' || ')})`
    : typeof wanted === 'object' && wanted !== null
      ? `(${Object.entries(wanted)
          .map(([bound, number]) => `${value} ${bound === 'above' ? '>' : '<'} ${number}`)
          .join(' && ')})`
      : `(${value} === ${text(wanted)})`;
  const said = negated ? `(${known} && !${plain})` : plain;
  return lenient ? `(${said} || !(${known}))` : said;
};

/** `(f, out) => count`: puts the numbers of all rules whose facts hold into `out`. */
export const ruleChain = (rules: readonly Pick<RuleEntry, 'when' | 'unless-known-no'>[]): string => {
  const lines = rules.map(({ when, 'unless-known-no': lenient }, rule) => {
    const clauses = (when ? clausesOf(when) : []).map(
      (clause) => `(${clause.map((literal) => comparison(literal, lenient)).join(' || ')})`,
    );
    return `if (${clauses.join(' && ') || 'true'}) out[n++] = ${rule};`;
  });
  return `(f, out) => { let n = 0; ${lines.join('\n')} return n; }`;
};

/** A function of its source; the source is the program's own. */
export const compiledFrom = <F>(source: string): F => new Function(`return ${source}`)() as F;
