import { adviceData } from '../../lib/advice-data.ts';
import { knowledge } from '../../lib/knowledge.ts';
import { plan } from '../../lib/plan.ts';

export const GET = () => Response.json(adviceData(knowledge, plan.sanding));
