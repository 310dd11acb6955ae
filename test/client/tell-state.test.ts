/** The state of the page that listens, in an address that anybody may have written. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LONGEST, readState, writeState } from '../../site/client/tell/state.ts';
import { chanceSaid, factWords } from '../../site/client/tell/words.ts';

const name = fc.stringMatching(/^[a-z][a-z0-9-]{0,20}$/).filter((word) => word !== 'constructor');

describe('the address of what was told', () => {
  it('reads back what it writes', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 300 }),
        fc.dictionary(name, name, { maxKeys: 6 }),
        fc.uniqueArray(name, { maxLength: 4 }),
        (text, told, off) => {
          const state = { text, told: { ...told }, off };
          expect(readState(`#${writeState(state)}`)).toEqual(state);
        },
      ),
    );
  });

  it('takes any address, and no more of a post than is read', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (hash) => {
        const { text, told, off } = readState(hash);
        expect(text.length).toBeLessThanOrEqual(LONGEST);
        for (const word of [...Object.entries(told).flat(), ...off])
          expect(word).toMatch(/^[a-z][a-z0-9-]*$/);
      }),
    );
    expect(readState(`#say=${'x'.repeat(9000)}`).text.length).toBe(LONGEST);
    expect(readState('#told=constructor_yes.__proto___yes').told).toEqual({});
  });
});

/** Invented: one list as the forms have them. */
const LISTS = { family: { values: { shellac: 'Shellac' } } };

describe('the words of facts', () => {
  it('says a choice as the forms do', () => {
    expect(factWords(LISTS, 'family', 'shellac')).toBe('Shellac');
  });

  it('has none for a value that is no choice', () => {
    expect(factWords(LISTS, 'family', 'constructor')).toBeUndefined();
    expect(factWords(LISTS, 'stage', 'toString')).toBeUndefined();
    expect(factWords(LISTS, 'nothing', 'x')).toBeUndefined();
  });

  it('says times and air as people do, in both units', () => {
    expect(factWords(LISTS, 'hours-since-coat', 12, [6, 20])).toBe('Laid 6 to 20 h ago');
    expect(factWords(LISTS, 'hours-since-coat', 1 / 6, [0.15, 0.2])).toBe('Laid 10 min ago');
    expect(factWords(LISTS, 'hours-since-coat', 72)).toBe('Laid 3 days ago');
    expect(factWords(LISTS, 'air-celsius', 10)).toBe('About 50 °F (10 °C)');
  });

  it('never says surely of what may be', () => {
    expect([0.95, 0.7, 0.3, 0.1].map(chanceSaid)).toEqual([
      'almost surely',
      'most likely',
      'may be',
      'less likely',
    ]);
  });
});
