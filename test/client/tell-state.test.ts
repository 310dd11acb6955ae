/** The state of the page that listens, in an address that anybody may have written. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withNamed } from '#engine/hear/reply/with-named.ts';
import { LONGEST, thisMinute } from '#engine/hear.ts';
import { HELD, readState, writeState } from '../../site/client/tell/state.ts';
import { chanceSaid, factWords, tellsOfAnother } from '../../site/client/tell/words.ts';
import { words } from '../engine/hear/hearing.ts';

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

  it('takes any address, and no more of a post than is held', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (hash) => {
        const { text, told, off } = readState(hash);
        expect(text.length).toBeLessThanOrEqual(LONGEST);
        for (const word of [...Object.entries(told).flat(), ...off])
          expect(word).toMatch(/^[a-z][a-z0-9-]*$/);
      }),
    );
    // More than is read at once is kept, so that the page can say so; there is an end to that, too.
    expect(readState(`#say=${'x'.repeat(2 * LONGEST)}`).text.length).toBe(2 * LONGEST);
    expect(readState(`#say=${'x'.repeat(90_000)}`).text.length).toBe(HELD);
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
    expect(factWords(LISTS, 'hours-since-coat', 12, [6, 20])).toBe('Laid 6 to 20 hours ago');
    expect(factWords(LISTS, 'hours-since-coat', 1 / 6, [0.15, 0.2])).toBe('Laid about 10 minutes ago');
    expect(factWords(LISTS, 'hours-since-coat', 72)).toBe('Laid about 3 days ago');
    expect(factWords(LISTS, 'hours-since-coat', 2, [1.6, 2.6])).toBe('Laid about 2 hours ago');
    expect(factWords(LISTS, 'hours-since-coat', 1, [0.8, 1.3])).toBe('Laid about 1 hour ago');
    expect(factWords(LISTS, 'hours-since-coat', 72, [58, 94])).toBe('Laid about 3 days ago');
    expect(factWords(LISTS, 'hours-since-coat', 9000, [9000, 9000])).toBe('Laid a year or more ago');
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

describe('what is done this minute', () => {
  /** Invented lines: one for a spill, one for oil that still flows. */
  const LINES = {
    'white-rings': { says: 'Blot it.', of: 'spill' },
    'sticky-oil': { says: 'Wipe it.', of: 'coat' },
  } as const;
  const minute = (text: string, defect: string, hours?: number) =>
    thisMinute(
      LINES,
      { likely: [], stage: undefined, warnings: [] } as unknown as Parameters<typeof thisMinute>[1],
      [{ defect }],
      {
        text,
        facts: hours === undefined ? [] : [{ fact: 'hours-since-coat', value: hours, rests: [], sure: 0.9 }],
      } as unknown as Parameters<typeof thisMinute>[3],
    );

  it.each([
    'My client called, the table I did two years ago has a white ring from a hot cup',
    'white ring on the table I sold two years ago',
    'my client says the table has a white ring',
    'White rings from a hot cup on an old shellac table',
  ])('is nothing where no spill is fresh: %s', (text) => expect(minute(text, 'white-rings')).toBeUndefined());

  it.each([
    'I just put a wet glass on my shellac table and there is a white ring',
    'spilled water on the table I did two years ago, it is going white',
    'a glass fell over a minute ago, white spot',
    'there is water on it now, and it turns white',
  ])('comes first where one is told: %s', (text) => expect(minute(text, 'white-rings')).toBe('Blot it.'));

  it('is of oil that may still flow, not of last month’s', () => {
    expect(minute('oiled the bench, sticky', 'sticky-oil')).toBe('Wipe it.');
    expect(minute('oiled the bench an hour ago, sticky', 'sticky-oil', 1)).toBe('Wipe it.');
    expect(minute('oiled the bench last month, sticky', 'sticky-oil', 700)).toBeUndefined();
  });
});

/** Invented: two flaws named, a reply about the first. */
const FIRST = { defect: 'cloudy-film', name: 'Milky coat', chance: 0.9 };
const named = (defect: string, name: string) => ({ defect, name, span: { from: 0, to: 1 }, denied: false });
const linkTo = (defect: string) => `https://halfdry.example/${defect}/`;

describe('the reply', () => {
  const considered = { likely: [FIRST] } as unknown as Parameters<typeof withNamed>[2];

  it('leaves no flaw out that was named, and puts each link on a line of its own', () => {
    const both = [named('cloudy-film', 'Milky coat'), named('bubbles', 'Bubbles in the coat')];
    const { short, long } = withNamed(
      { short: `Hands off. ${linkTo('cloudy-film')}`, long: 'Hands off.' },
      both,
      considered,
      linkTo,
      words.says,
    );
    expect(short).toBe(`Hands off.\n${linkTo('cloudy-film')}\nAnd bubbles in the coat: ${linkTo('bubbles')}`);
    expect(long).toContain(linkTo('bubbles'));
  });

  it('stays short', () => {
    const many = Array.from({ length: 9 }, (_, at) => named(`flaw-${at}`, `A flaw ${'long '.repeat(20)}`));
    const { short } = withNamed({ short: 'Hands off.', long: '' }, many, considered, linkTo, words.says);
    expect(short.length).toBeLessThanOrEqual(500);
  });

  it('is wanted where the words tell of somebody else', () => {
    expect(tellsOfAnother('my follower asks why her table is milky')).toBe(true);
    expect(tellsOfAnother('she put poly on it last night')).toBe(true);
    expect(tellsOfAnother('I put poly on my dresser')).toBe(false);
  });
});
