import { knowledge } from '../../../build/knowledge.ts';
import { practiceWords } from '../../../build/practice.ts';
import { practiceData } from '../../../shared/practice-data.ts';

export const GET = () => Response.json(practiceData(knowledge, practiceWords));
