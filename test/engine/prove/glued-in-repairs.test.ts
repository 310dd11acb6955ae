/**
 * Words of a step that make a slip of it, or mend one, are whole words: with letters glued to them they do neither. Invented
 * repairs; sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { coatsHoldOnCoats } from '#engine/prove/coats-on-coats.ts';
import { repairsKeepToTheTrade } from '#engine/prove/repairs-keep-to-the-trade.ts';
import { proved } from './proved.ts';

type Step = Record<string, unknown> & { kind: string; say: string };
const step = (kind: string, say: string, more: object = {}): Step => ({ kind, say, ...more });
const wait = step('wait', 'Wait.', { until: 'recoatable' });
const coat = step('coat', 'Lay it.', { product: 'same' });
const vacuum = step('wipe', 'Vacuum.', { with: 'vacuum' });
const look = step('look', 'Look.');
const told = (what: string, steps: readonly Step[]): number =>
  [
    ...proved(repairsKeepToTheTrade, { remedies: [{ id: 'mend', steps }] }),
    ...proved(coatsHoldOnCoats, {
      remedies: [{ id: 'mend', steps }],
      defects: [{ id: 'spot', families: ['water-based'], tree: { remedy: 'mend' } }],
    }),
  ].filter((one) => String(one['what']).includes(what)).length;

/** A sentence, the words in it that count, the steps around it, and what is told. */
type Row = readonly [say: string, words: string, around: (say: string) => readonly Step[], what: string];
const WET = 'on top of what is still wet';
const wet = (say: string) => [wait, step('wipe', say, { with: 'thinner' }), coat, wait];
const SURPLUS = 'is not wiped off in the next step';
const surplus = (say: string) => [wait, step('coat', say, { product: 'oil' }), look];
const VENEER = 'to what may be veneer';
const veneer = (say: string) => [wait, step('sand', say, { grit: 120 })];
const STAYS = 'brings stripper to paint that is to stay';
const stays = (say: string) => [step('strip', say, { with: 'stripper' })];
const last = (say: string) => [
  step('mix', say, { what: 'thin', percent: [1, 20], when: { family: 'oil-based' } }),
];
const ALCOHOL = 'lays alcohol';
const primer = (say: string) => [step('coat', say, { product: 'shellac-primer' })];

/** Words that mend a slip. */
const MENDS: readonly Row[] = [
  ...['dry', 'dries', 'dried', 'ten minutes', 'an hour', 'two hours', 'overnight'].map(
    (words): Row => [`Wipe it, ${words} it is.`, words.split(' ').at(-1) ?? '', wet, WET],
  ),
  ['Lay it and wipe it.', 'wipe', surplus, SURPLUS],
  ['Lay it and buff it.', 'buff', surplus, SURPLUS],
  ['Sand it, on veneer by hand.', 'veneer', veneer, VENEER],
  ['Over paint, on a hidden spot first.', 'paint', stays, STAYS],
  ['Over paint, on a hidden spot first.', 'hidden spot', stays, STAYS],
  ['Thin it for the last coat.', 'last', last, 'thins up to'],
  ['Lay an oil-based primer.', 'oil-based', primer, ALCOHOL],
];

describe('words that mend a slip', () => {
  it.each(MENDS)('%s: %s', (say, words, around, what) => {
    expect(told(what, around(say))).toBe(0);
    expect(told(what, around(say.replace(words, `qu${words}`)))).toBe(1);
  });
  it.each(MENDS.filter(([, words]) => !['minutes', 'overnight', 'wipe', 'buff'].includes(words)))(
    '%s: %s, at their end',
    (say, words, around, what) => {
      expect(told(what, around(say.replace(words, `${words}qu`)))).toBe(1);
    },
  );
});

const again = (say: string) => [wait, step('scrape', say, { tool: 'razor' }), look];
const AGAIN = 'but nothing above it does that';
const repeats = (say: string) => [wait, coat, wait, step('wipe', say, { with: 'dry-cloth' }), look];
const REPEATS = 'does not stand below what it repeats';
const AT_ONCE = 'comes after a wait';
const looks = (say: string) => [
  wait,
  step('look', say),
  step('wipe', 'Rinse it, wash it, wipe it, sand it, buff it, scrape it.', { with: 'damp-cloth' }),
];
const LOOKS = 'once more before that was done once';
const panel = (say: string) => [
  wait,
  step('sand', 'Sand the spot.', { grit: 320 }),
  vacuum,
  step('coat', say, { product: 'same' }),
  wait,
];
const SHINES = 'coats more than was sanded';

/** Words that make a slip. */
const MAKES: readonly Row[] = [
  ['Shave it once more now.', 'once more', again, AGAIN],
  ['Shave it again now.', 'again', again, AGAIN],
  ['Do it with a clean cloth.', 'it', repeats, REPEATS],
  ['Repeat that with a clean cloth.', 'that', repeats, REPEATS],
  ['Repeat this with a clean cloth.', 'this', repeats, REPEATS],
  ['Do so with a clean cloth.', 'so', repeats, REPEATS],
  ['Wipe it off at once, all.', 'at once', repeats, AT_ONCE],
  ['Buff it at once, all.', 'at once', repeats, AT_ONCE],
  ['Blot it at once, all.', 'at once', repeats, AT_ONCE],
  ...['rinse', 'wash', 'wipe', 'sand', 'buff', 'scrape'].flatMap((verb): Row[] => [
    [`If dull, ${verb} it once more then.`, verb, looks, LOOKS],
    [`If dull, ${verb} again then.`, 'again', looks, LOOKS],
    [`If dull, ${verb} them once more then.`, 'once more', looks, LOOKS],
  ]),
  ['Coat the whole of it.', 'whole', panel, SHINES],
  ['Coat the panel.', 'panel', panel, SHINES],
  ['Lay one thin coat.', 'one thin coat', panel, SHINES],
];

describe('words that make a slip', () => {
  it.each(MAKES)('%s: %s', (say, words, around, what) => {
    expect(told(what, around(say))).toBe(1);
    expect(told(what, around(say.replace(words, `${words}qu`)))).toBe(0);
    expect(told(what, around(say.replace(words, `qu${words}`)))).toBe(0);
  });
  it('a touch of the whole is none, at the beginning alone', () => {
    expect(told(SHINES, panel('Touch the whole panel.'))).toBe(0);
    expect(told(SHINES, panel('Touches up the whole panel.'))).toBe(1);
    expect(told(SHINES, panel('Then touch the whole panel.'))).toBe(1);
    expect(told(AT_ONCE, repeats('Then wipe it at once.'))).toBe(0);
    expect(told(AT_ONCE, repeats('Wipe it, at once.'))).toBe(0);
    expect(told(REPEATS, repeats('Then do it.'))).toBe(0);
  });
  it('once more counts within the first seven words', () => {
    expect(told(AGAIN, again('Shave it all off right there again.'))).toBe(1);
    expect(told(AGAIN, again('Shave it all off right there now again.'))).toBe(0);
    expect(told(AGAIN, again('Again.'))).toBe(0);
  });
});
