/** Cases of published sources: none is advised what it forbids. The sealed part is scored by hand, once. */
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { provenKnowledge } from '../../content/tools/knowledge.ts';
import { advise, caseOf, forbiddenIn, isAcceptable } from '../cases/advise.ts';
import type { TroubleCase } from '../cases/case-file.ts';
import { readTroubles } from './words.ts';

const { known } = provenKnowledge(fileURLToPath(new URL('../..', import.meta.url)));

it.skipIf(!known)('advises nothing that a source forbids', () => {
  if (!known) return;
  const harm = readTroubles('open').flatMap((trouble) => {
    const one = { ...trouble, source: 'words', file: trouble.id } as TroubleCase;
    const advice = advise(known, one, one.defect, caseOf(one));
    return isAcceptable(known, advice, one.acceptable, one.stops)
      ? []
      : forbiddenIn(known, advice, one.forbidden, one.stops).map((what) => `${trouble.id}: ${what}`);
  });
  expect(harm).toEqual([]);
});
