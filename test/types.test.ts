/** What must not compile. `npm run check` runs the compiler over this file: each error is expected, with its reason. */
import { expect, it } from 'vitest';
import { emptyCase, withAnswer, withFact } from '#engine/index.ts';
import type { DefectId, QuestionId, RemedyId } from '#engine/model/ids.ts';

it('refuses wrong facts, values and ids where they are written', () => {
  // @ts-expect-error 'damp' is no drying stage
  const wrongValue = withFact(emptyCase(), 'stage', 'damp');
  // @ts-expect-error there is no fact 'famly'
  const wrongName = withFact(emptyCase(), 'famly', 'shellac');
  // @ts-expect-error a number fact takes no words
  const wrongKind = withFact(emptyCase(), 'air-celsius', 'warm');
  // @ts-expect-error a plain string is no question id
  const plain = withAnswer(emptyCase(), 'round-spots', 'yes');
  // @ts-expect-error a remedy is not a question
  const mixed = withAnswer(emptyCase(), 'sand-and-recoat' as RemedyId, 'yes');
  // @ts-expect-error a defect id is not a question id
  const crossed: QuestionId = 'bubbles' as DefectId;
  expect([wrongValue, wrongName, wrongKind, plain, mixed, crossed]).toHaveLength(6);
});
