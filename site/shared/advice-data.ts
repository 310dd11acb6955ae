import type { AnyEntry, Knowledge } from '#engine/index.ts';
import type { Hands } from '#engine/model/hands.ts';
import type { Sanding } from '#engine/model/plan.ts';
import { ownWord } from './told-rule.ts';
import { actsByStanding } from './walk-data.ts';

/** What rules and steps hang on, the words of the rules, and what a film allows; the words of the steps stand on the pages. */
export const adviceData = (known: Knowledge, sanding: Sanding, hands: Hands) => ({
  rules: known.rules.map(
    ({ id, kind, level, title, say, why, defers, when, hazards, open, sure, always, ...rule }) => ({
      id,
      kind,
      level,
      title,
      say,
      why,
      defers: ownWord({ defers }),
      when,
      hazards,
      open,
      sure,
      always,
      'unless-known-no': rule['unless-known-no'],
    }),
  ),
  remedies: known.remedies.map(({ id, now, steps }) => ({
    id,
    now: actsByStanding(now),
    steps: steps.map((step) => ({ ...step, say: '', 'worked-if': undefined })),
  })),
  questions: known.questions.map(({ id, known: answers, 'safe-from': from }) => ({
    id,
    known: answers,
    'safe-from': from,
  })),
  sanding,
  hands,
});
export type AdviceData = ReturnType<typeof adviceData>;

/** What was sent, as entries that `walk` and `resolve` can read. */
export const adviceEntries = (data: AdviceData): readonly AnyEntry[] =>
  [
    ...data.rules.map((one) => ({ ...one, kindOf: 'rule' })),
    ...data.remedies.map((one) => ({ ...one, kindOf: 'remedy' })),
    ...data.questions.map((one) => ({ ...one, kindOf: 'question' })),
  ] as unknown as AnyEntry[];
