import type { PlanData } from '../../shared/plan-data.ts';
import { PLAN_DATA } from '../../shared/urls.ts';
import { fetchedOnce } from './fetch-json.ts';

/** The tables and rules of the schedule. Throws a `NetworkFault`; then it is tried again at the next call. */
export const planTables = fetchedOnce<PlanData>(PLAN_DATA);
