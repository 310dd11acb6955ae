/**
 * What must not compile: each error is expected, with its reason, and a line that compiles after all is a failed
 * test. `npm test` runs the compiler over this file.
 */
import { expectTypeOf, it } from 'vitest';
import {
  decide,
  emptyCase,
  type Knowledge,
  type Knows,
  nextQuestion,
  type PartOf,
  resolve,
  type WayReads,
  walk,
  withAnswer,
  withFact,
} from '#engine/index.ts';
import type { ClockWords } from '#engine/model/clock-words.ts';
import type { DefectId, QuestionId, RemedyId } from '#engine/model/ids.ts';
import { filled } from '#engine/plain/filled.ts';
import type { dealPractice } from '#engine/practice.ts';
import type { matrixOf } from '#engine/see/matrix.ts';
import type { outcomeKnowledge, SheetKnowledge } from '../site/shared/advice-knowledge.ts';
import type { practiceKnowledge } from '../site/shared/practice-knowledge.ts';
import type { WalkData } from '../site/shared/walk-data.ts';

it('refuses a wrong value of a fact', () => {
  // @ts-expect-error 'damp' is no drying stage
  withFact(emptyCase(), 'stage', 'damp');
  // @ts-expect-error a number fact takes no words
  withFact(emptyCase(), 'air-celsius', 'warm');
});

it('refuses a sentence of the content of which a place is not filled in, or another is', () => {
  const words = {} as ClockWords;
  // @ts-expect-error {most} is left
  filled(words.thick.why, {});
  // @ts-expect-error there is no place {mots}
  filled(words.thick.why, { mots: '125 µm' });
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

type Sent = PartOf<WalkData>;
type Without<K extends keyof WalkData, F extends string> = PartOf<
  Omit<WalkData, K> & { readonly [P in K]: readonly Omit<WalkData[P][number], F>[] }
>;

it('walks on what a page was sent, and on no less', () => {
  const found = (known: Sent) => nextQuestion(known, emptyCase(), 'bubbles');
  const whole = (known: Knowledge) => [
    nextQuestion(known, emptyCase(), 'bubbles'),
    walk(known, emptyCase(), 'bubbles'),
  ];
  expectTypeOf<Sent>().toExtend<Knows<WayReads>>();
  expectTypeOf<Without<'defects', 'families'>>().toExtend<Knows<WayReads>>();
  expectTypeOf<Without<'defects', 'tree'>>().not.toExtend<Knows<WayReads>>();
  expectTypeOf<Without<'questions', 'known'>>().not.toExtend<Knows<WayReads>>();
  expectTypeOf<Without<'questions', 'safe-from'>>().not.toExtend<Knows<WayReads>>();
  expectTypeOf<Without<'remedies', 'now'>>().not.toExtend<Knows<WayReads>>();
  expectTypeOf<PartOf<Omit<WalkData, 'questions'>>>().not.toExtend<Knows<WayReads>>();
  // @ts-expect-error what is sent for the next question has no steps and no rules to decide by
  const decided = (known: Sent) => decide(known, emptyCase(), 'bubbles');
  // @ts-expect-error and no words to tell what hands do
  const walked = (known: Sent) => walk(known, emptyCase(), 'bubbles');
  expectTypeOf([found, whole, decided, walked]).toBeArray();
});

it('decides, resolves and deals on what a page was sent for it', () => {
  type Outcome = ReturnType<typeof outcomeKnowledge>;
  const decided = (known: Outcome) => decide(known, emptyCase(), 'bubbles');
  const resolved = (known: SheetKnowledge) => resolve(known, 'sand-and-recoat', emptyCase());
  // @ts-expect-error a rule says its why only where the page was sent it
  const untold = (known: SheetKnowledge) => resolved(known)[0]?.before[0]?.claims;
  // @ts-expect-error the sheet of a repair is sent without trees
  const lost = (known: SheetKnowledge) => decide(known, emptyCase(), 'bubbles');
  // @ts-expect-error the words of what hands do stand on the page
  const wordless = (known: Outcome) => walk(known, emptyCase(), 'bubbles');
  expectTypeOf<ReturnType<typeof practiceKnowledge>>().toExtend<Parameters<typeof dealPractice>[0]>();
  expectTypeOf<Sent>().not.toExtend<Parameters<typeof dealPractice>[0]>();
  expectTypeOf<Sent>().not.toExtend<Parameters<typeof matrixOf>[0]>();
  expectTypeOf<Knowledge>().toExtend<Parameters<typeof matrixOf>[0]>();
  expectTypeOf([decided, untold, lost, wordless]).toBeArray();
});
