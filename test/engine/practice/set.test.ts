/** Sets for a class: as hard as any other of their size, as far as what is met how often tells. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FREQUENCY } from '../../../engine/model/frequency.ts';
import { drawSet, PRACTICE_LEVELS, practised, readPracticeId, SOUND } from '../../../engine/practice.ts';
import { known } from './dealt.ts';

const level = fc.constantFrom(...PRACTICE_LEVELS);
const count = fc.integer({ min: 1, max: 40 });
const seed = fc.integer({ min: 0, max: 2_147_483_647 });
const oftenOf = (flaw: string) => (flaw === SOUND ? SOUND : known.get('defect', flaw).often);
const counts = (of: readonly string[]) => {
  const found = new Map<string, number>();
  for (const one of of) found.set(one, (found.get(one) ?? 0) + 1);
  return found;
};

describe('a set of any flaws', () => {
  it('holds so many boards of its level, each with a key that can be read back', () => {
    fc.assert(
      fc.property(level, count, seed, (at, many, of) => {
        const set = drawSet(known, { level: at, count: many, seed: of });
        expect(set.length).toBe(many);
        for (const key of set) {
          expect(practised(known, at)).toContain(key.flaw);
          expect(readPracticeId(`${key.level}.${key.flaw}.${key.seed}`)).toEqual(key);
        }
      }),
    );
  });
  it('has as many common, rare and sound boards as every other of its size', () => {
    fc.assert(
      fc.property(level, count, seed, seed, (at, many, one, other) => {
        const [first, second] = [one, other].map((of) =>
          counts(drawSet(known, { level: at, count: many, seed: of }).map(({ flaw }) => oftenOf(flaw))),
        );
        expect(first).toEqual(second);
      }),
    );
  });
  it('has of each kind its share, but for less than one board', () => {
    const flaws = practised(known, 'stage');
    const weightOf = (often: string) =>
      flaws
        .filter((flaw) => oftenOf(flaw) === often)
        .reduce((sum, flaw) => sum + FREQUENCY[known.get('defect', flaw).often], 0);
    const all = Object.keys(FREQUENCY).reduce((sum, often) => sum + weightOf(often), 0);
    const set = counts(
      drawSet(known, { level: 'stage', count: 40, seed: 7 }).map(({ flaw }) => oftenOf(flaw)),
    );
    for (const often of Object.keys(FREQUENCY))
      expect(Math.abs((set.get(often) ?? 0) - (40 * weightOf(often)) / all)).toBeLessThan(1);
  });
  it('shows no flaw twice while another of its kind was not shown, and is another set by its seed', () => {
    fc.assert(
      fc.property(level, count, seed, (at, many, of) => {
        const set = drawSet(known, { level: at, count: many, seed: of }).map(({ flaw }) => flaw);
        for (const [flaw, times] of counts(set)) {
          const kin = practised(known, at).filter((one) => oftenOf(one) === oftenOf(flaw));
          if (times > 1) expect(kin.every((one) => set.includes(one))).toBe(true);
        }
      }),
    );
    const set = (of: number) => drawSet(known, { level: 'look', count: 10, seed: of });
    expect(set(1)).toEqual(set(1));
    expect(set(1)).not.toEqual(set(2));
  });
});

describe('a set of chosen flaws', () => {
  it('has each as often as the next, or once more', () => {
    const some = practised(known, 'case').slice(0, 7);
    fc.assert(
      fc.property(fc.subarray([...some], { minLength: 1 }), count, seed, (chosen, many, of) => {
        const set = drawSet(known, { level: 'case', count: many, seed: of }, chosen).map(({ flaw }) => flaw);
        const times = chosen.map((flaw) => set.filter((one) => one === flaw).length);
        expect(set.length).toBe(many);
        expect(times.reduce((sum, one) => sum + one, 0)).toBe(many);
        expect(Math.max(...times) - Math.min(...times)).toBeLessThanOrEqual(1);
      }),
    );
  });
  it('leaves out what the level has no board of', () => {
    const smelled = practised(known, 'stage').find((flaw) => !practised(known, 'look').includes(flaw));
    expect(smelled).toBeDefined();
    const drawn = drawSet(known, { level: 'look', count: 3, seed: 1 }, [smelled ?? '', 'bubbles']);
    expect(drawn.map(({ flaw }) => flaw)).toEqual(['bubbles', 'bubbles', 'bubbles']);
    expect(drawSet(known, { level: 'look', count: 3, seed: 1 }, [smelled ?? ''])).toEqual([]);
  });
});
