/**
 * Where nobody has told how dry the film is, no check of any flaw that harms a wet film is asked, or named as the one that
 * decides, without the stage that it waits for: a wet coat takes each touch, so hands are off until a drip of it on paper
 * tells (common practice, no source). Every stop of every tree, by a plain reading of the question's own field.
 */
import { expect, it } from 'vitest';
import { nodesOf } from '#engine/index.ts';
import { known } from './knowledge.ts';

const harmsWet = (question: string): string | undefined => {
  const from = known.get('question', question)['safe-from'];
  return from === 'wet' ? undefined : from;
};

it('says of each check that harms a wet film what it waits for, wherever the stage is not told', () => {
  const wrong: string[] = [];
  const asked = new Set<string>();
  const named = new Set<string>();
  const flaws = new Set<string>();
  for (const { id } of known.defects)
    for (const { address, stage, walked } of nodesOf(known, id)) {
      if (stage) {
        // A told stage is waited for by none: what harms it is not asked.
        if (walked.kind === 'question' && walked.from) wrong.push(`${id} ${address.join(' ')}`);
        continue;
      }
      if (walked.kind === 'question') {
        if (walked.from !== harmsWet(walked.question)) wrong.push(`${id} ${address.join(' ')}`);
        if (walked.from) {
          asked.add(walked.question);
          flaws.add(id);
        }
      }
      if (walked.kind === 'cause' && walked.check) {
        if (walked.check.from !== harmsWet(walked.check.question)) wrong.push(`${id} ${address.join(' ')}`);
        if (walked.check.from) named.add(walked.check.question);
      }
    }
  expect(wrong).toEqual([]);
  // The proof looks at something: some flaws do ask such a check on the way to the cause.
  expect(asked.size).toBeGreaterThan(10);
  expect(named.size).toBeGreaterThan(5);
  expect(flaws.size).toBeGreaterThan(20);
});
