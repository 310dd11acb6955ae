import { readCare } from '../../../content/tools/care.ts';
import { dataAnswer } from '../../build/data-answer.ts';
import { knowledge } from '../../build/knowledge.ts';
import { plan } from '../../build/plan.ts';
import { sourceTitle } from '../../build/source-shelves.ts';
import { choices } from '../../shared/choices.ts';
import { JOBS_DATA } from '../../shared/data-files.ts';
import { jobsData } from '../../shared/jobs-data.ts';

/** Each by its title: an id would tell nobody what a line rests on. */
const titleOf = (id: string): string => sourceTitle(knowledge.get('source', id));

export const GET = () =>
  dataAnswer(
    JOBS_DATA,
    jobsData(knowledge, plan, readCare(knowledge, process.cwd()), choices.base.values, titleOf),
  );
