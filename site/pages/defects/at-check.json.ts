import { dataAnswer } from '../../build/data-answer.ts';
import { knowledge } from '../../build/knowledge.ts';
import { atCheckData } from '../../shared/at-check.ts';
import { AT_CHECK } from '../../shared/data-files.ts';

export const GET = () => dataAnswer(AT_CHECK, atCheckData(knowledge));
