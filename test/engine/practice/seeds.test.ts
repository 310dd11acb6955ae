/** Which flaws a level has boards of, and how often a seed picks each. */
import { describe, expect, it } from 'vitest';
import { dealPractice, flawOfSeed, practised, readPracticeId, SOUND } from '../../../engine/practice.ts';
import { known, words } from './dealt.ts';

describe('what can be practised', () => {
  it('has a board of a dry film; for a look alone one with something on it, and sound boards besides', () => {
    const flaw = (id: string, ...boards: { wet: boolean; features: unknown[] }[]) => ({ id, boards });
    const some = {
      defects: [
        flaw('wet-alone', { wet: true, features: [1] }),
        flaw('seen', { wet: true, features: [1] }, { wet: false, features: [1] }),
        flaw('smelled', { wet: false, features: [] }),
        flaw('none'),
      ],
    } as never;
    expect(practised(some, 'look')).toEqual(['seen', SOUND]);
    for (const level of ['stage', 'case'] as const)
      expect(practised(some, level)).toEqual(['seen', 'smelled']);
  });
});

describe('a flaw of a seed', () => {
  it('is as often as it is met: what is common oftener than what is rare', () => {
    const drawn = Array.from({ length: 1500 }, (_, seed) => flawOfSeed(known, 'stage', seed));
    const often = (of: string) => {
      const ids = practised(known, 'stage').filter((id) => known.get('defect', id).often === of);
      return drawn.filter((id) => ids.includes(id)).length / Math.max(1, ids.length);
    };
    const kinds = ['rare', 'now-and-then', 'common'].filter((of) =>
      known.defects.some(({ often: is }) => is === of),
    );
    const shares = kinds.map(often);
    expect(shares.length).toBeGreaterThan(1);
    expect(shares).toEqual(shares.toSorted((one, two) => one - two));
    expect(drawn).not.toContain(SOUND);
  });
  it('is read back from its id up to the largest seed', () => {
    expect(readPracticeId('look.bubbles.2147483647')).toEqual({
      level: 'look',
      flaw: 'bubbles',
      seed: 2_147_483_647,
    });
    expect(readPracticeId('look.bubbles.2147483648')).toBeUndefined();
    for (const bad of ['xlook.bubbles.1', 'look.bubbles.1x', 'look.Bubbles.1', 'look.1bubbles.1', 'look..1'])
      expect(readPracticeId(bad)).toBeUndefined();
    expect(() => dealPractice(known, words, { level: 'look', seed: 1, flaw: 'no-such-flaw' })).toThrow();
  });
});
