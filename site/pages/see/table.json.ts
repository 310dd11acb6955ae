import { dataAnswer } from '../../build/data-answer.ts';
import { signMatrix } from '../../build/see.ts';
import { SIGN_TABLE } from '../../shared/data-files.ts';

export const GET = () => dataAnswer(SIGN_TABLE, signMatrix);
