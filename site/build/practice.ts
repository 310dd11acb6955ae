import { readPractice } from '../../content/tools/practice.ts';
import { knowledge } from './knowledge.ts';

/** The words of practice boards. */
export const practiceWords = readPractice(knowledge, process.cwd());
