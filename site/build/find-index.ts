import { readIndex } from '../../content/tools/said.ts';
import { knowledge } from './knowledge.ts';

export const findIndex = () => readIndex(knowledge, process.cwd());
