import { dataAnswer } from '../../build/data-answer.ts';
import { knowledge } from '../../build/knowledge.ts';
import { plan } from '../../build/plan.ts';
import { PLAN_DATA } from '../../shared/data-files.ts';
import { planData } from '../../shared/plan-data.ts';

export const GET = () => dataAnswer(PLAN_DATA, planData(knowledge, plan));
