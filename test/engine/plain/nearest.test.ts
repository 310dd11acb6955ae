/**
 * The name that was meant, against the distance of Damerau's letter slips (Communications of the ACM 7(3), 1964: one letter
 * too many, one too few, a wrong one, two neighbors swapped) reckoned a second way: by trying every single slip.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearest, nearestId, wordsOf } from '#engine/plain/nearest.ts';

const LETTERS = 'abcx-';
/** All that one slip makes of a word, over few letters. */
const slipsOf = (word: string): readonly string[] =>
  Array.from({ length: word.length + 1 }, (_, at) => {
    const [left, right] = [word.slice(0, at), word.slice(at)];
    return [
      ...[...LETTERS].map((letter) => left + letter + right),
      ...(right
        ? [left + right.slice(1), ...[...LETTERS].map((letter) => left + letter + right.slice(1))]
        : []),
      ...(right.length > 1 ? [left + right[1] + right[0] + right.slice(2)] : []),
    ];
  }).flat();

const word = fc.string({ unit: fc.constantFrom(...'abcx'), minLength: 3, maxLength: 8 });

describe('the name that was meant', () => {
  it('is found with one slip in it, and with two', () => {
    fc.assert(
      fc.property(word, fc.nat(), fc.nat(), (name, first, second) => {
        const once = slipsOf(name);
        const one = once[first % once.length] ?? name;
        const twice = slipsOf(one);
        const two = twice[second % twice.length] ?? one;
        expect(nearest(one, [name])).toBe(name);
        expect(nearest(two, [name])).toBe(name);
      }),
      { numRuns: 80 },
    );
  });

  it('is the one that fewer slips lead to, and of equals the first', () => {
    expect(nearest('haze', ['hazel-nut', 'hazes', 'haze'])).toBe('haze');
    expect(nearest('hzae', ['maze', 'haze'])).toBe('haze');
    expect(nearest('haze', ['maze', 'daze'])).toBe('maze');
    expect(nearest('haze', ['daze', 'maze'])).toBe('daze');
    expect(nearest('bcd', ['xxbcd', 'bcdx'])).toBe('bcdx');
  });

  it('takes two neighbors that are swapped for one slip', () => {
    // Two wrong letters would be two: as far off as any other name of these.
    expect(nearest('abdc', ['abxx', 'abcd'])).toBe('abcd');
    expect(nearest('bacd', ['xxcd', 'abcd'])).toBe('abcd');
    // What is swapped lies side by side.
    expect(nearest('cbax', ['cxax', 'abcx'])).toBe('cxax');
  });

  it('is within two slips, or a third of the letters of a long name', () => {
    expect(nearest('haz', ['haze'])).toBe('haze');
    expect(nearest('h', ['haze'])).toBeUndefined();
    expect(nearest('ha', ['haze'])).toBe('haze');
    expect(nearest('', ['of'])).toBe('of');
    // Twelve letters bear four slips and not five.
    expect(nearest('abcdefgh', ['abcdefghijkl'])).toBe('abcdefghijkl');
    expect(nearest('abcdefg', ['abcdefghijkl'])).toBeUndefined();
    expect(nearest('anything', [])).toBeUndefined();
  });

  it('is none where several go on where it ends, and the only one that does', () => {
    expect(nearest('water', ['water-based', 'water-lacquer', 'wafer'])).toBeUndefined();
    expect(nearest('water', ['water-x', 'wafer'])).toBe('wafer');
  });
});

describe('the words of an id', () => {
  it('are without small words and endings', () => {
    expect([...wordsOf('sanding-of-waxed-edges')]).toEqual(['sand', 'wax', 'edg']);
    expect([...wordsOf('scrape-it-for-runs')]).toEqual(['scrap', 'for', 'run']);
    expect([...wordsOf('singer')]).toEqual(['singer']);
  });
});

describe('an id in other words', () => {
  it('shares two words at least, and of several has the fewest others', () => {
    expect(nearestId('wax-rubbing-on-the-edge', ['edges-rubbed-with-wax', 'rub-it'])).toBe(
      'edges-rubbed-with-wax',
    );
    expect(nearestId('leveling-runs', ['runs-level-again-and-later', 'run-leveled-at-once'])).toBe(
      'run-leveled-at-once',
    );
    expect(nearestId('leveling-runs', ['run-leveled-at-once', 'runs-level-again-and-later'])).toBe(
      'run-leveled-at-once',
    );
    expect(nearestId('leveling-runs', ['drips-level', 'gone'])).toBeUndefined();
    // Of equals the first.
    expect(nearestId('leveling-long-runs', ['run-leveled-out', 'runs-level-now'])).toBe('run-leveled-out');
  });
});
