/** A post and a walk that know the same facts know the same answers. Cases at random. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { answerOf } from '#engine/case/answers.ts';
import { ANSWERS, type Case } from '#engine/case/case.ts';
import { answerTold } from '#engine/hear/belief/mind.ts';
import { mindOf } from '#engine/hear.ts';
import { FACTS } from '#engine/model/facts.ts';
import { known } from './hearing.ts';

const mind = mindOf(known);
const { questions } = mind.matrix;
const choices = Object.entries(FACTS).flatMap(([name, fact]) =>
  fact.kind === 'choice' ? [[name, fc.constantFrom<string>(...fact.values)] as const] : [],
);
const told = fc
  .tuple(
    fc.record(Object.fromEntries(choices), { requiredKeys: [] }),
    fc.dictionary(fc.constantFrom(...questions), fc.constantFrom(...ANSWERS), { maxKeys: 12 }),
  )
  .map(
    ([facts, answers]): Record<string, string> =>
      Object.fromEntries(
        Object.entries({ ...facts, ...answers }).filter(
          (one): one is [string, string] => one[1] !== undefined,
        ),
      ),
  );

it('the same rule answers in both', () => {
  let followed = 0;
  fc.assert(
    fc.property(told, (facts) => {
      const on: Case = Object.fromEntries(
        Object.entries(facts).map(([name, value]) => [name, { value, how: 'told' as const }]),
      );
      for (const question of questions) {
        const answer = answerOf(known, on, question);
        expect([question, answerTold(mind, facts, question)]).toEqual([question, answer]);
        if (answer && facts[question] !== answer) followed++;
      }
    }),
    { numRuns: 300, seed: 20261130 },
  );
  expect(followed).toBeGreaterThan(100);
});

it('a fact that comes later tells what she could not tell', () => {
  expect(answerTold(mind, { 'is-wax-or-oil': 'unsure' }, 'is-wax-or-oil')).toBe('unsure');
  expect(answerTold(mind, { 'is-wax-or-oil': 'unsure', family: 'wax' }, 'is-wax-or-oil')).toBe('yes');
});
