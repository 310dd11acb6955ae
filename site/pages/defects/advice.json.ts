import { readHands } from '../../../content/tools/hands.ts';
import { knowledge } from '../../build/knowledge.ts';
import { plan } from '../../build/plan.ts';
import { adviceData } from '../../shared/advice-data.ts';

export const GET = () =>
  Response.json(adviceData(knowledge, plan.sanding, readHands(knowledge, process.cwd())));
