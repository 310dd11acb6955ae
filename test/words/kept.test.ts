/** What the engine makes right of strangers' words stays right. Where a loss is meant: `node test/words/kept.ts`. */
import { describe, expect, it } from 'vitest';
import { THOROUGH } from '../thorough.ts';
import { ITEMS, readKept } from './kept.ts';

/** Few enough that one part is quick and names what was lost. */
const PART = 40;
/** `npm test` looks at every fourth part, and there a word may be lost for one that is won. */
const MAY_BE_LOST = THOROUGH || process.env['MUTATE'] !== undefined ? 0 : 2;

const kept = readKept();
const parts = Array.from({ length: Math.ceil(ITEMS.length / PART) }, (_, at) =>
  ITEMS.slice(at * PART, (at + 1) * PART),
).filter((_, at) => THOROUGH || at % 4 === 0);

describe('what was right of strangers’ words', () => {
  it.each(parts.map((items) => ({ items, from: items[0]?.id })))(
    'stays right, from $from on',
    ({ items }) => {
      const lost = items.flatMap(({ id, right }) => {
        const wanted = kept[id]?.split(', ') ?? [];
        if (!wanted.length) return [];
        const now = right();
        return wanted.filter((one) => !now.includes(one)).map((one) => `${id}: ${one}`);
      });
      expect(lost.length, lost.join('\n')).toBeLessThanOrEqual(MAY_BE_LOST);
    },
  );

  it('is more than half of all', () => {
    expect(Object.keys(kept).length).toBeGreaterThan(ITEMS.length / 2);
  });
});
