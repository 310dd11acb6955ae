import type { FactName, ValueOf } from '../model/facts.ts';
import type { QuestionId } from '../model/ids.ts';

/** How a fact came to be known. */
export type How = 'answered' | 'measured' | 'computed' | 'told';
/** What a question may be answered: yes, no, or that she can not tell. */
export const ANSWERS = ['yes', 'no', 'unsure'] as const;
export type Answer = (typeof ANSWERS)[number];
export type Fact = { readonly value: string | number; readonly how: How };

/** All facts of one piece now, by name. Immutable: adding a fact makes a new case. */
export type Case = { readonly [name: string]: Fact };

export const emptyCase = (): Case => ({});

/** A new case in which `name` has `value`; what was known of it before is replaced. */
export const withFact = <F extends FactName>(
  on: Case,
  name: F,
  value: ValueOf<F>,
  how: How = 'told',
): Case => ({
  ...on,
  [name]: { value: value as string | number, how },
});

/** A new case in which `question` is answered. */
export const withAnswer = (on: Case, question: QuestionId, answer: Answer): Case => ({
  ...on,
  [question]: { value: answer, how: 'answered' },
});

/** A new case without `name`, so that it is asked again. */
export const without = (on: Case, name: string): Case => {
  const { [name]: _gone, ...rest } = on;
  return rest;
};
