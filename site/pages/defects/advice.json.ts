import { readHands } from '../../../content/tools/hands.ts';
import { dataAnswer } from '../../build/data-answer.ts';
import { knowledge } from '../../build/knowledge.ts';
import { plan } from '../../build/plan.ts';
import { adviceData } from '../../shared/advice-data.ts';
import { ADVICE_DATA } from '../../shared/data-files.ts';

export const GET = () =>
  dataAnswer(ADVICE_DATA, adviceData(knowledge, plan.sanding, readHands(knowledge, process.cwd())));
