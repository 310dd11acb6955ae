import { LIGHT } from '../../../build/colors.ts';
import { dataAnswer } from '../../../build/data-answer.ts';
import { knowledge } from '../../../build/knowledge.ts';
import { practiceWords } from '../../../build/practice.ts';
import { PRACTICE_DATA } from '../../../shared/data-files.ts';
import { practiceData } from '../../../shared/practice-data.ts';

export const GET = () => dataAnswer(PRACTICE_DATA, practiceData(knowledge, practiceWords, LIGHT));
