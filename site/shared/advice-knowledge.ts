import { partOf } from '#engine/index.ts';
import type { AdviceData } from './advice-data.ts';
import type { WalkData } from './walk-data.ts';

/** What was sent, as knowledge that repairs are resolved from. */
export const sheetKnowledge = ({ rules, remedies, questions }: AdviceData) =>
  partOf({ rules, remedies, questions });
export type SheetKnowledge = ReturnType<typeof sheetKnowledge>;

/** Together with the walk of one flaw: what an outcome is decided from. */
export const outcomeKnowledge = ({ rules, remedies, questions }: AdviceData, { defects }: WalkData) =>
  partOf({ rules, remedies, questions, defects });
