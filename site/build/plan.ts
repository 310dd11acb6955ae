import { readPlan } from '../../content/tools/plan.ts';
import { knowledge } from './knowledge.ts';

/** The tables of the finishing schedule. */
export const plan = readPlan(knowledge, process.cwd());
