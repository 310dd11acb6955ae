/** The compiled form says what the content says: beside plain readings of trees and conditions, written here again. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerOf, lookupIn } from '#engine/case/answers.ts';
import type { Case } from '#engine/case/case.ts';
import { holds } from '#engine/case/condition.ts';
import { rulesOf, treesOf } from '#engine/compiled/compiled.ts';
import { codesOf } from '#engine/compiled/fact-codes.ts';
import { hasBit, markHolding, ruleTable } from '#engine/compiled/rules.ts';
import { endOf, markEnds, NO, OPEN, YES } from '#engine/compiled/trees.ts';
import { emptyCase, isAsk, type Knowledge, possible } from '#engine/index.ts';
import { isHandover } from '#engine/knowledge/tree.ts';
import type { ConditionInput } from '#engine/model/condition.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import type { Branch } from '#engine/model/tree.ts';
import { known } from '../../content/real/knowledge.ts';
import { WHOLE } from '../../thorough.ts';

const trees = treesOf(known);
const rules = rulesOf(known);

/** Every end that the answers leave open, read from the nested trees. */
const endsByHand = (
  knowledge: Knowledge,
  defect: string,
  answer: (question: QuestionId) => string | undefined,
): ReadonlySet<string> => {
  const ends = new Set<string>();
  const follow = (branch: Branch, of: string): void => {
    if (isHandover(branch)) {
      follow(knowledge.get('defect', branch.defect).tree, branch.defect);
      return;
    }
    if (!isAsk(branch)) {
      ends.add(JSON.stringify({ ...branch, of }));
      return;
    }
    const said = answer(branch.ask);
    if (said !== 'no') follow(branch.yes, of);
    if (said !== 'yes') follow(branch.no, of);
  };
  follow(knowledge.get('defect', defect).tree, defect);
  return ends;
};

const WORDS = { yes: YES, no: NO, unsure: OPEN } as const;
const answers = fc.array(fc.constantFrom('yes' as const, 'no' as const, 'unsure' as const), {
  minLength: trees.questions.length,
  maxLength: trees.questions.length,
});
const defect = fc.constantFrom(...known.defects.map(({ id }) => id));

describe('trees as a table', () => {
  it('ends where the nested tree ends, with both ways kept where nothing is told', () => {
    fc.assert(
      fc.property(defect, answers, (id, said) => {
        const coded = Uint8Array.from(said, (word) => WORDS[word]);
        const bits = new Uint32Array(Math.ceil(trees.leaves.length / 32));
        markEnds(trees, trees.roots.get(id) ?? Number.NaN, coded, bits);
        const found = trees.leaves.filter((_, at) => hasBit(bits, at)).map((leaf) => JSON.stringify(leaf));
        const wanted = endsByHand(known, id, (question) => said[trees.questions.indexOf(question)]);
        expect(new Set(found)).toEqual(wanted);
        if (!said.includes('unsure'))
          expect(JSON.stringify(trees.leaves[endOf(trees, trees.roots.get(id) ?? Number.NaN, coded)])).toBe(
            [...wanted][0],
          );
      }),
      { numRuns: WHOLE ? 600 : 200 },
    );
  });

  it('holds each question of each tree and each end once, though other trees lead over to them', () => {
    const asks = (branch: Branch): number => (isAsk(branch) ? 1 + asks(branch.yes) + asks(branch.no) : 0);
    const count = known.defects.reduce((sum, { tree }) => sum + asks(tree), 0);
    expect(trees.nodes).toHaveLength(3 * count);
    expect(trees.of).toHaveLength(count);
    expect(new Set(trees.leaves.map((leaf) => JSON.stringify(leaf))).size).toBe(trees.leaves.length);
    expect(new Set(trees.questions).size).toBe(trees.questions.length);
    expect([...trees.roots.keys()].sort()).toEqual(known.defects.map(({ id }) => id).sort());
  });

  it('has one end for complete answers', () => {
    fc.assert(
      fc.property(defect, answers, (id, said) => {
        const coded = Uint8Array.from(said, (word) => (word === 'yes' ? YES : NO));
        const end = trees.leaves[endOf(trees, trees.roots.get(id) ?? Number.NaN, coded)];
        const wanted = endsByHand(known, id, (question) =>
          said[trees.questions.indexOf(question)] === 'yes' ? 'yes' : 'no',
        );
        expect(new Set([JSON.stringify(end)])).toEqual(wanted);
      }),
      { numRuns: WHOLE ? 600 : 200 },
    );
  });

  it('is what `possible` walks: all that facts and answers leave open', () => {
    fc.assert(
      fc.property(defect, answers, (id, said) => {
        const on: Case = Object.fromEntries(
          trees.questions.map((question, at) => [
            question,
            { value: said[at] ?? 'unsure', how: 'answered' as const },
          ]),
        );
        expect(new Set(possible(known, on, id).leaves.map((leaf) => JSON.stringify(leaf)))).toEqual(
          endsByHand(known, id, (question) => answerOf(known, on, question)),
        );
      }),
      { numRuns: WHOLE ? 300 : 100 },
    );
  });
});

/** A value for each fact that conditions speak of, among them none, can't tell, one that none names, and odd numbers. */
const caseOf = (facts: typeof rules.facts) =>
  fc
    .tuple(
      ...facts.map(({ examples }) =>
        fc.oneof(fc.constantFrom(...examples), fc.constantFrom(undefined, 'unsure', 'of-no-name', 21.5)),
      ),
    )
    .map((values) =>
      Object.fromEntries(
        facts.flatMap(({ name }, at) =>
          values[at] === undefined ? [] : [[name, { value: values[at], how: 'told' as const }]],
        ),
      ),
    );

describe('rules as bits', () => {
  it('holds for the rules of the content as their conditions do', () => {
    fc.assert(
      fc.property(caseOf(rules.facts), (on: Case) => {
        const lookup = lookupIn(known, on);
        const bits = new Uint32Array(rules.stride);
        markHolding(rules, codesOf(rules.facts, lookup), bits);
        for (const [bit, rule] of known.rules.entries()) {
          const truth = rule.when ? holds(rule.when, lookup) : 'yes';
          expect([rule.id, hasBit(bits, bit)]).toEqual([
            rule.id,
            truth === 'yes' || (truth === 'unknown' && rule['unless-known-no']),
          ]);
        }
      }),
      { numRuns: WHOLE ? 2000 : 500 },
    );
  });

  const test = fc.oneof(
    fc.constantFrom<unknown>('a', 'b', ['a', 'c'], { above: 3 }, { below: 3 }, { above: 1, below: 4 }, {}),
  );
  const flat = fc.record({ one: test, two: test }, { requiredKeys: [] });
  const nested = (inner: fc.Arbitrary<object>) =>
    fc.record(
      { one: test, two: test, any: fc.array(inner, { minLength: 1, maxLength: 3 }), not: inner },
      { requiredKeys: [] },
    );
  const condition = nested(nested(flat)).map((made) => made as ConditionInput);
  const value = fc.constantFrom(undefined, 'unsure', 'a', 'b', 'c', 'd', 0, 1, 2, 3, 3.5, 4, 9);

  it('holds for any conditions, however they nest', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ when: condition, 'unless-known-no': fc.boolean() }), {
          minLength: 1,
          maxLength: 40,
        }),
        fc.record({ one: value, two: value }),
        (conditioned, facts) => {
          const table = ruleTable(conditioned);
          const lookup = (fact: string) => facts[fact as keyof typeof facts];
          const bits = new Uint32Array(table.stride);
          markHolding(table, codesOf(table.facts, lookup), bits);
          for (const [bit, rule] of conditioned.entries()) {
            const truth = holds(rule.when, lookup);
            expect(hasBit(bits, bit)).toBe(
              truth === 'yes' || (truth === 'unknown' && rule['unless-known-no']),
            );
          }
          expect(hasBit(bits, conditioned.length)).toBe(false);
        },
      ),
      { numRuns: 150 },
    );
  });

  it('fires nothing where there are no rules', () => {
    const table = ruleTable([]);
    const bits = new Uint32Array(table.stride);
    markHolding(table, codesOf(table.facts, lookupIn(known, emptyCase())), bits);
    expect([...bits]).toEqual([0]);
  });
});
