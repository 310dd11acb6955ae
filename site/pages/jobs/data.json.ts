import { readCare } from '../../../content/tools/care.ts';
import { knowledge } from '../../build/knowledge.ts';
import { plan } from '../../build/plan.ts';
import { choices } from '../../shared/choices.ts';
import { jobsData } from '../../shared/jobs-data.ts';

export const GET = () =>
  Response.json(jobsData(knowledge, plan, readCare(knowledge, process.cwd()), choices.base.values));
