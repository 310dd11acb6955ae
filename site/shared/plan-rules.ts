import { partOf } from '#engine/index.ts';
import type { PlanData } from './plan-data.ts';

/** The rules that a plan fires. No question is asked where one is made, so none is sent. */
export const planRules = ({ rules }: PlanData) => partOf({ rules, questions: [] as const });
