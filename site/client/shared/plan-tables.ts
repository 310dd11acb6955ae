import { PLAN_DATA } from '../../shared/data-files.ts';
import { fetchedOnce } from './fetch-json.ts';

/** The tables and rules of the schedule. Throws a `NetworkFault`; then it is tried again at the next call. */
export const planTables = fetchedOnce(PLAN_DATA);
