import { dataAnswer } from '../../build/data-answer.ts';
import { findIndex } from '../../build/find-index.ts';
import { FIND_INDEX } from '../../shared/data-files.ts';

export const GET = () => dataAnswer(FIND_INDEX, findIndex());
