/**
 * Words that tell a hazard or an order are whole words: with letters glued to their front or their end they are others,
 * and tell it no more. Tried on the sentences of all steps of the real repairs.
 */
import { describe, expect, it } from 'vitest';
import { hazardsSaid, laidOrOpenedIn, orderedIn } from '#engine/prove/hazard-words.ts';
import { touchOrdered } from '#engine/prove/touch-words.ts';
import { known } from '../../content/real/knowledge.ts';

const steps = [...new Set(known.remedies.flatMap((remedy) => remedy.steps.map(({ say }) => say)))];
const EXTRA = [
  'A vacuum with a HEPA filter.',
  'Mix lye in water.',
  'Use a razor.',
  'Brush or spray.',
  'Use stripper.',
  'Wood bleach.',
  'The can goes out.',
  'Open a can.',
  'Charge the pad.',
  'Touch it in.',
];

/** A sentence with letters glued to a part of it, before or behind. */
const glued = (say: string, part: string, behind: boolean) => {
  const at = say.indexOf(part) + (behind ? part.length : 0);
  return `${say.slice(0, at)}qu${say.slice(at)}`;
};
/** A figure of degrees has no word at its end. */
const endsInWord = (part: string) => /[a-z]$/i.test(part) && !part.endsWith('°F');

/** The sentences that a hazard, or an order to lay or to open, is told by; few enough in a part that one is quick. */
const PART = 40;
const inParts = (some: readonly string[]) =>
  Array.from({ length: Math.ceil(some.length / PART) }, (_, at) => ({
    says: some.slice(at * PART, (at + 1) * PART),
    from: some[at * PART],
  }));
const ordered = [...EXTRA, ...steps].map(orderedIn);
const ofHazards = ordered.filter((say) => hazardsSaid(say).size > 0);
const ofLaying = ordered.filter((say) => laidOrOpenedIn(say) !== undefined);

describe('words glued to others', () => {
  it('are tried in many sentences', () => {
    expect(ofHazards.length).toBeGreaterThan(150);
    expect(ofLaying.length).toBeGreaterThan(100);
  });

  it.each(inParts(ofHazards))('tell no hazard any more, from "$from" on', ({ says }) => {
    for (const say of says)
      for (const [hazard, words] of hazardsSaid(say)) {
        expect(hazardsSaid(glued(say, words, false)).get(hazard), say).not.toBe(words);
        // Where fewer of these words tell it too, they end at a word as well.
        const left = hazardsSaid(glued(say, words, true)).get(hazard);
        if (endsInWord(words) && left?.startsWith(words)) expect(hazard, say).toBe('heat');
      }
  });

  it.each(inParts(ofLaying))('are no order to lay or to open any more, from "$from" on', ({ says }) => {
    for (const say of says) {
      const words = laidOrOpenedIn(say) ?? '';
      const before = glued(say, words, false);
      const found = laidOrOpenedIn(before);
      if (found) expect(before.indexOf(found), say).not.toBe(say.indexOf(words) + 2);
      expect(laidOrOpenedIn(glued(say, words, true)), say).not.toBe(words);
    }
  });

  it('are no order of touch any more', () => {
    let tried = 0;
    for (const say of steps) {
      const [first = ''] = say.split(/[.;:!?]/);
      // Of one clause, so that it can be told from which word the order comes.
      if (/,|\band\b|\bthen\b|\bbut\b|\bwith\b/.test(first) || !touchOrdered(first)) continue;
      const [verb = ''] = first.split(' ');
      if (!/^[A-Z][a-z]+$/.test(verb) || touchOrdered(first.slice(verb.length).trim())) continue;
      tried++;
      expect(touchOrdered(`Qu${first.toLowerCase()}`), first).toBeUndefined();
    }
    expect(tried).toBeGreaterThan(20);
  });
});
