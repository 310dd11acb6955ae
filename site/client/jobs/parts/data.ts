import { JOBS_DATA } from '../../../shared/data-files.ts';
import type { JobsData } from '../../../shared/jobs-data.ts';
import { fetchedOnce } from '../../shared/fetch-json.ts';

export type { JobsData };

/** The names and figures that belong to the cards. Throws a `NetworkFault`; then it is tried again at the next call. */
export const jobsData = fetchedOnce(JOBS_DATA);
