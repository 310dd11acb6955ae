import { adviceData } from '../../lib/advice-data.ts';
import { knowledge } from '../../lib/knowledge.ts';

export const GET = () => Response.json(adviceData(knowledge));
