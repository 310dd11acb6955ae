import type { Knowledge } from '#engine/index.ts';
import type { Hands } from '#engine/model/hands.ts';
import type { Sanding } from '#engine/model/plan.ts';
import { pick } from '#engine/plain/pick.ts';
import { ruleData } from './rule-data.ts';
import { ownWord } from './told-rule.ts';
import { actsByStanding } from './walk-data.ts';

/** What rules and steps hang on, the words of the rules, and what a film allows; the words of the steps stand on the pages. */
export const adviceData = (known: Knowledge, sanding: Sanding, hands: Hands) => ({
  rules: known.rules.map((rule) => ({
    ...ruleData(rule),
    ...pick(rule, 'lead', 'why', 'open'),
    defers: ownWord(rule),
  })),
  remedies: known.remedies.map(({ id, now, steps }) => ({
    id,
    now: actsByStanding(now),
    steps: steps.map(({ 'worked-if': _, ...step }) => ({ ...step, say: '' })),
  })),
  questions: known.questions.map((question) => pick(question, 'id', 'known', 'safe-from')),
  sanding,
  hands,
});
export type AdviceData = ReturnType<typeof adviceData>;
/** A rule as a page that is fitted to a case tells it. */
export type AdviceRule = AdviceData['rules'][number];
