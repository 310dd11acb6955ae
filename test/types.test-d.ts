/**
 * What must not compile: each error is expected, with its reason, and a line that compiles after all is a failed
 * test. `npm test` runs the compiler over this file.
 */
import { expectTypeOf, it } from 'vitest';
import { emptyCase, withAnswer, withFact } from '#engine/index.ts';
import type { DefectId, QuestionId, RemedyId } from '#engine/model/ids.ts';

it('refuses a wrong value of a fact', () => {
  // @ts-expect-error 'damp' is no drying stage
  withFact(emptyCase(), 'stage', 'damp');
  // @ts-expect-error a number fact takes no words
  withFact(emptyCase(), 'air-celsius', 'warm');
});

it('refuses a fact that there is not', () => {
  // @ts-expect-error there is no fact 'famly'
  withFact(emptyCase(), 'famly', 'shellac');
});

it('refuses ids that were not read from the content, and ids of another kind', () => {
  // @ts-expect-error a plain string is no question id
  withAnswer(emptyCase(), 'round-spots', 'yes');
  // @ts-expect-error a remedy is not a question
  withAnswer(emptyCase(), 'sand-and-recoat' as RemedyId, 'yes');
  // @ts-expect-error a defect id is not a question id
  const crossed: QuestionId = 'bubbles' as DefectId;
  expectTypeOf(crossed).toEqualTypeOf<QuestionId>();
});

it('takes what is right', () => {
  withFact(emptyCase(), 'stage', 'setting');
  withFact(emptyCase(), 'air-celsius', 18);
  withAnswer(emptyCase(), 'round-spots' as QuestionId, 'unsure');
});
