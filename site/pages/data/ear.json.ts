import { dataAnswer } from '../../build/data-answer.ts';
import { ear } from '../../build/ear.ts';
import { EAR } from '../../shared/data-files.ts';

export const GET = () => dataAnswer(EAR, ear());
