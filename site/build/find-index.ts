import { readFileSync } from 'node:fs';
import { load } from 'js-yaml';
import { buildIndex, documentsOf } from '#engine/find.ts';
import { Words } from '#engine/model/words.ts';
import { knowledge } from './knowledge.ts';

export const findIndex = () =>
  buildIndex(documentsOf(knowledge), Words.parse(load(readFileSync('content/words.yaml', 'utf8'))));
