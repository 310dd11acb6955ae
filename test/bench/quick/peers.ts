/** Well-kept general libraries, given the same trees and rules in their own terms, each at its best: built once. */
import { Engine, type NestedCondition, type TopLevelCondition } from 'json-rules-engine';
import { createActor, createMachine } from 'xstate';
import { clausesOf, type Literal } from '#engine/compiled/clauses.ts';
import { NODE, type Place, type TreeTable } from '#engine/compiled/trees.ts';
import type { RuleEntry } from '#engine/index.ts';

export type Answers = Readonly<Record<string, string>>;
export type Facts = Readonly<Record<string, string | number>>;

/** One engine a tree; an end is a rule over the answers on the way to it. */
export const treeEngines = (table: TreeTable): ReadonlyMap<string, Engine> =>
  new Map(
    [...table.roots].map(([defect, root]) => {
      const engine = new Engine([], { allowUndefinedFacts: true });
      const follow = (place: Place, way: readonly NestedCondition[]): void => {
        if (place < 0) {
          engine.addRule({ conditions: { all: [...way] }, event: { type: String(~place) } });
          return;
        }
        const fact = table.questions[table.nodes[place * NODE] ?? 0] ?? '';
        const step = (value: string): NestedCondition => ({ fact, operator: 'equal', value });
        follow(table.nodes[place * NODE + 1] ?? -1, [...way, step('yes')]);
        follow(table.nodes[place * NODE + 2] ?? -1, [...way, step('no')]);
      };
      follow(root, []);
      return [defect, engine];
    }),
  );

const OPERATORS = {
  above: { plain: 'greaterThan', negated: 'lessThanInclusive' },
  below: { plain: 'lessThan', negated: 'greaterThanInclusive' },
} as const;

const comparison = ({ fact, wanted, negated }: Literal, lenient: boolean): NestedCondition => {
  const tested: NestedCondition[] = Array.isArray(wanted)
    ? [{ fact, operator: negated ? 'notIn' : 'in', value: wanted }]
    : typeof wanted === 'object' && wanted !== null
      ? Object.entries(wanted).map(([bound, value]) => ({
          fact,
          operator: OPERATORS[bound === 'above' ? 'above' : 'below'][negated ? 'negated' : 'plain'],
          value,
        }))
      : [{ fact, operator: negated ? 'notEqual' : 'equal', value: wanted }];
  const none: NestedCondition = { fact, operator: 'in', value: [undefined, 'unsure'] };
  const some: NestedCondition = { fact, operator: 'notIn', value: [undefined, 'unsure'] };
  // Not between two bounds is beyond either of them.
  const said: NestedCondition = negated ? { any: tested } : { all: tested };
  return lenient ? { any: [said, none] } : { all: [said, some] };
};

/** All rules in one engine. */
export const ruleEngine = (rules: readonly Pick<RuleEntry, 'when' | 'unless-known-no'>[]): Engine => {
  const engine = new Engine([], { allowUndefinedFacts: true });
  for (const [rule, { when, 'unless-known-no': lenient }] of rules.entries()) {
    const conditions: TopLevelCondition = {
      all: (when ? clausesOf(when) : []).map((clause) => ({
        any: clause.map((literal) => comparison(literal, lenient)),
      })),
    };
    engine.addRule({ conditions, event: { type: String(rule) } });
  }
  return engine;
};

type Answered = { readonly type: 'yes' } | { readonly type: 'no' };

/** One machine a tree: a state a node, an answer an event. */
export const machines = (table: TreeTable) =>
  new Map(
    [...table.roots].map(([defect, root]) => {
      const states: Record<string, object> = {};
      const nameOf = (place: Place) => (place < 0 ? `leaf${~place}` : `ask${place}`);
      const follow = (place: Place): void => {
        if (place < 0) {
          states[nameOf(place)] = { type: 'final' };
          return;
        }
        const yes = table.nodes[place * NODE + 1] ?? -1;
        const no = table.nodes[place * NODE + 2] ?? -1;
        states[nameOf(place)] = { on: { yes: nameOf(yes), no: nameOf(no) } };
        follow(yes);
        follow(no);
      };
      follow(root);
      return [defect, createMachine({ types: {} as { events: Answered }, initial: nameOf(root), states })];
    }),
  );

/** Sends the answers on the way until the machine has ended; its last state. */
export const runMachine = (
  machine: ReturnType<typeof machines> extends ReadonlyMap<string, infer M> ? M : never,
  table: TreeTable,
  answers: Answers,
): string => {
  const actor = createActor(machine).start();
  for (;;) {
    const value = String(actor.getSnapshot().value);
    if (value.startsWith('leaf')) return value;
    const question = table.questions[table.nodes[Number(value.slice(3)) * NODE] ?? 0] ?? '';
    actor.send({ type: answers[question] === 'yes' ? 'yes' : 'no' });
  }
};
