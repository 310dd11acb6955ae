import { readCare } from '../../../content/tools/care.ts';
import { dataAnswer } from '../../build/data-answer.ts';
import { knowledge } from '../../build/knowledge.ts';
import { plan } from '../../build/plan.ts';
import { choices } from '../../shared/choices.ts';
import { JOBS_DATA } from '../../shared/data-files.ts';
import { jobsData } from '../../shared/jobs-data.ts';

export const GET = () =>
  dataAnswer(JOBS_DATA, jobsData(knowledge, plan, readCare(knowledge, process.cwd()), choices.base.values));
