import { knowledge } from '../../build/knowledge.ts';
import { plan } from '../../build/plan.ts';
import { planData } from '../../shared/plan-data.ts';

export const GET = () => Response.json(planData(knowledge, plan));
