import { adviceData } from '../../build/advice-data.ts';
import { knowledge } from '../../build/knowledge.ts';
import { plan } from '../../build/plan.ts';

export const GET = () => Response.json(adviceData(knowledge, plan.sanding));
