import type { FindIndex } from '#engine/find.ts';
import type { SignMatrix } from '#engine/see/matrix.ts';
import type { AdviceData } from './advice-data.ts';
import type { AtCheckData } from './at-check.ts';
import type { Ear } from './ear.ts';
import type { JobsData } from './jobs-data.ts';
import type { PlanData } from './plan-data.ts';
import type { PracticeData } from './practice-data.ts';
import { BASE, DEFECTS, JOBS, PRACTICE, SCHEDULE } from './urls.ts';
import type { WalkData } from './walk-data.ts';

/**
 * A file of data that the build writes and a phone reads: `dataAnswer` takes no other data for it, and `fetchJson` gives
 * it as just that. `holds` is for the compiler alone.
 */
export type DataFile<T> = { readonly url: string; readonly holds?: T };

/** What the search looks words up in. */
export const FIND_INDEX: DataFile<FindIndex> = { url: `${BASE}data/find.json` };

/** What a phone needs to hear a text and to weigh what it says. */
export const EAR: DataFile<Ear> = { url: `${BASE}data/ear.json` };

/** Rules and steps, for the script that fits an outcome to what is told of the piece. */
export const ADVICE_DATA: DataFile<AdviceData> = { url: `${DEFECTS}advice.json` };

/** What stops ask of the checks of a question. */
export const AT_CHECK: DataFile<AtCheckData> = { url: `${DEFECTS}at-check.json` };

/** The tree of a flaw and what its ends say. */
export const walkDataFile = (id: string): DataFile<WalkData> => ({ url: `${DEFECTS}${id}/walk.json` });

/** The signs of all defects, for the script of the search for the flaw. */
export const SIGN_TABLE: DataFile<SignMatrix> = { url: `${BASE}see/table.json` };

export const PLAN_DATA: DataFile<PlanData> = { url: `${SCHEDULE}data.json` };
export const JOBS_DATA: DataFile<JobsData> = { url: `${JOBS}data.json` };
export const PRACTICE_DATA: DataFile<PracticeData> = { url: `${PRACTICE}data.json` };
