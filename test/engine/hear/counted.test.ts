/**
 * How many coats, and on which day: word by word, on the small lexicon, in pairs of sentences of our own. How people count
 * is common practice, no source.
 */
import { describe, expect, it } from 'vitest';
import {
  countBefore,
  countDone,
  countOf,
  countOn,
  countSoFar,
  isApplication,
  timesLaid,
} from '#engine/hear/coat-counts.ts';
import { coatNumberOf } from '#engine/hear/coats.ts';
import { monthTimes, seasonTimes, weekdayTimes } from '#engine/hear/days.ts';
import { besideLabel, labelTime } from '#engine/hear/label-time.ts';
import type { Manner } from '#engine/hear/manner.ts';
import type { Ear } from '#engine/hear/match.ts';
import type { Word } from '#engine/hear/words.ts';
import { marked } from './marked.ts';
import { read, ear as small } from './small-ear.ts';

const NUMBERS = 'one two three four five six seven eight nine ten eleven twelve'.split(' ');
const NTH = 'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth'.split(' ');
const ear: Ear = {
  ...small,
  numbers: new Map<string, number>([
    ...NUMBERS.map((word, at): [string, number] => [word, at + 1]),
    ...NTH.map((word, at): [string, number] => [word, at + 1]),
    ['1st', 1],
    ['2nd', 2],
    ['3rd', 3],
    ['4th', 4],
    ['both', 2],
    ['dozen', 12],
    ['half', 0.5],
    ['a', 1],
    ['an', 1],
  ]),
};
const plain: Manner = {
  denied: () => undefined,
  notYet: () => false,
  feared: () => false,
  over: () => false,
};
const at =
  <T>(is: (words: readonly Word[], from: number) => T) =>
  (text: string): T => {
    const { words, from } = marked(text);
    return is(words, from);
  };
const numbers = (count: { low: number; high: number } | undefined) =>
  count && (count.low === count.high ? count.low : [count.low, count.high]);

describe('a round that is a coat', () => {
  const is = at(isApplication);
  it.each([
    'four [applications] of oil',
    '[rounds] of shellac',
    'the third [round] of satin',
    '[passes] of thin lacquer',
    '[applications]',
    '3 [rounds]',
    'two [passes]',
    'several [rounds]',
    'third [round]',
    '4th [pass]',
    '[round] 3',
    '[round] two',
    'few [passes], then sanding',
  ])('%s', (text) => {
    expect(is(text)).toBe(true);
  });
  it.each([
    '[rounds] of the room',
    '[round] of beer and wine',
    'the [rounds]',
    'seven [rounds]',
    'two, [rounds]',
    'my [round]',
    'third [rounds]',
    '[round] table',
    '[round], 3',
    'two [passes] with the sander',
    'two [passes] on the first',
    'third [round] of sanding',
    '[pass] 3',
    '[coat]',
    'two [goes]',
  ])('%s: none', (text) => {
    expect(is(text)).toBe(false);
  });
});

describe('a count before coats', () => {
  const before = (text: string) => numbers(at((words, from) => countBefore(ear, words, from))(text));
  it.each<[string, number | readonly [number, number]]>([
    ['three [coats]', 3],
    ['three thin [coats]', 3],
    ['three very thin wet [coats]', 3],
    ['both [coats]', 2],
    ['the second [coat]', 2],
    ['the second of three [coats]', 2],
    ['2nd [coat]', 2],
    ['9 or 10 [coats]', [9, 10]],
    ['two to three [coats]', [2, 3]],
    ['three or two [coats]', 2],
    ['half a dozen [coats]', 6],
    ['a dozen [coats]', 12],
    ['4 double [coats]', 4],
    ['several [coats]', [3, 7]],
    ['few [coats]', [2, 5]],
    ['multiple [coats]', [2, 6]],
    ['many [coats]', [4, 10]],
    ['two and more [coats]', 2],
  ])('%s', (text, wanted) => {
    expect(before(text)).toEqual(wanted);
  });
  it.each([
    '[coats]',
    'a [coat]',
    'each [coat]',
    'another [coat]',
    'three. [Coats]',
    'three but [coats]',
    'two more [coats]',
    'three last [coats]',
    'one final [coat]',
    '2 k [coat]',
    'three hours [coats]',
    'how many [coats]',
    'too many [coats]',
    'so many [coats]',
    'three of the good old thin [coats]',
    'double [coat]',
  ])('%s: none', (text) => {
    expect(before(text)).toBeUndefined();
  });
});

describe('a count of coats that are not named', () => {
  it('"three of clear", "poly x2"', () => {
    const of = at((words, from) => countOf(ear, words, from));
    for (const [text, count] of [
      ['[three] of clear', 3],
      ['[one] of poly', 1],
      ['[two] of satin', 2],
      ['[12] of oil', 12],
      ['[two] of white paint', 2],
      ['poly [x] 2', 2],
      ['satin, poly [x] 3', 3],
    ] as const)
      expect(numbers(of(text)), text).toBe(count);
    expect(of('[two] of paint')?.ofPaint).toBe(true);
    expect(of('[two] of clear')?.ofPaint).toBe(false);
    for (const text of [
      '[three] of them',
      '[13] of clear',
      '[1.5] of clear',
      '[third] of clear',
      '[a] of clear',
      '[three] clear',
      '[three] of, clear',
      '[three] of the good old clear',
      'grit [x] 2',
      'poly [x] it',
      'poly, [x] 2',
      '[many] of clear',
    ])
      expect(of(text), text).toBeUndefined();
  });
  it('"three so far", "nine in all"', () => {
    const of = at((words, from) => countSoFar(ear, words, from));
    for (const [text, count] of [
      ['brushed on [three] so far', 3],
      ['[nine] in all', 9],
      ['[two] in total', 2],
      ['[four] all told', 4],
    ] as const)
      expect(numbers(of(text)), text).toBe(count);
    for (const text of [
      'saw [three] so far',
      'brushed it, [three] so far',
      '[three] so good',
      '[nine] in June',
      '[third] in all',
      '[a] in all',
      '[21] in all',
      '[three] far so',
      '[three]',
    ])
      expect(of(text), text).toBeUndefined();
  });
  it('"two on", "and four on the top"', () => {
    const of = at((words, from) => countOn(ear, words, from));
    for (const [text, count] of [
      ['[two] on', 2],
      ['[two] down', 2],
      ['[two] done', 2],
      ['[two] on now', 2],
      ['[two] on already', 2],
      ['and [four] on the top', 4],
      ['[two] on, it is dull', 2],
    ] as const)
      expect(numbers(of(text)), text).toBe(count);
    for (const text of [
      '[two] on the top',
      'and [four] down the hall',
      '[two], on',
      '[two] of it',
      '[third] on',
      '[a] on',
      '[it] on',
    ])
      expect(of(text), text).toBeUndefined();
  });
  it('"Six down", "I did two", "gave it three", "mine has 4"', () => {
    const of = at((words, from) => countDone(ear, words, from));
    for (const [text, count] of [
      ['[six] down', 6],
      ['[six] done and dull', 6],
      ['[six] on', 6],
      ['[six] on now', 6],
      ['I did [two]', 2],
      ['I did [two] thin', 2],
      ['I count [three]', 3],
      ['gave it [three]', 3],
      ['gave mine [three] wipes', 3],
      ['put on [three]', 3],
      ['laid on [three] thin', 3],
      ['mine has [4]', 4],
      ['it has [4]', 4],
    ] as const)
      expect(numbers(of(text)), text).toBe(count);
    expect(numbers(of('I brushed [three] ones'))).toBe(3);
    for (const text of [
      '[six] feet',
      '[six], down',
      '[six] on the hall',
      'I saw [two]',
      'I did [two] doors',
      'I did [one]',
      'I did [a]',
      'I did [third]',
      'I did [21]',
      'I did [2.5]',
      'I, [two]',
      'gave him [three]',
      'put it [three]',
      'put on [three] doors',
      'mine has [4] legs',
      'he has [4]',
      'I have [4]',
      'it used [4]',
    ])
      expect(of(text), text).toBeUndefined();
  });
  it('"oiled it twice", "brushed it a second time"', () => {
    const of = at((words, from) => timesLaid(ear, words, from));
    for (const [text, count] of [
      ['oiled it [twice]', 2],
      ['rubbed in oil [four] times', 4],
      ['brushed it a [third] time', 3],
      ['waxed it [3] times', 3],
    ] as const)
      expect(numbers(of(text)), text).toBe(count);
    for (const text of [
      'saw it [twice]',
      'oiled it, [twice]',
      'oiled it and went out for all of that day [twice]',
      'oiled it [four] doors',
      'saw it a [third] time',
      'brushed it the [third] time',
      'brushed it a [first] time',
      'brushed it a [third] coat',
      'oiled it [many] times',
    ])
      expect(of(text), text).toBeUndefined();
  });
});

describe('which coat it is', () => {
  const coat = (text: string, isTopNamed = true, family?: string, manner = plain) => {
    const [found] = coatNumberOf(ear, read(text).words, manner, isTopNamed, family);
    return found && found.sure >= 0.7 ? Number(found.value) : undefined;
  };
  it.each<[string, number | undefined]>([
    ['three coats', 3],
    ['three coats of clear and two of satin', 5],
    ['three coats of paint and two of clear', 2],
    ['two coats of stain', undefined],
    ['two coats of oil stain', undefined],
    ['two coats of primer and one of clear', 1],
    ['two coats of clear over stain', 2],
    ['from one coat to the next', undefined],
    ['cover in one coat at most', undefined],
    ['three coats a day', undefined],
    ['three coats each day', undefined],
    ['three coats a door', 3],
    ['one coat a day', 1],
    ['the third coat a day later', 3],
    ['coat number four', 4],
    ['coat 4 is dull', 4],
    ['coat 4 hours ago', undefined],
    ['layer 4', undefined],
    ['a coat of clear', 1],
    ['a thin coat of clear', 1],
    ['a final coat of clear', undefined],
    ['a new coat of clear', undefined],
    ['a coat of clear and a coat of poly', undefined],
    ['a coat of it', undefined],
    ['three coats before it', 3],
    ['before the third coat', undefined],
    ['I need three coats', undefined],
    ['he says three coats', undefined],
    ['usually three coats', undefined],
    ['three coats enough', undefined],
    ['three coats needed', undefined],
    ['three coats are needed', undefined],
    ['25 coats', undefined],
    ['20 coats', 20],
    ['half coat', undefined],
    ['I am on my fourth and it is dull', 4],
    ['on my fourth hour', undefined],
    ['my fourth it is', undefined],
    ['one coat. The second is dull', 2],
    ['one coat, the second day', 1],
    ['one coat. After the second one there are dots', 1],
    ['one coat. After the second one I saw dots', 2],
    ['one coat. After the second one', 2],
    ['one coat. Second hand', 1],
    ['one coat. Then second', 2],
    ['one coat. Put a second on', 2],
    ['one coat. Saw a second on', 1],
    ['one coat. Thinned the second a little', 2],
    ['one coat. Saw the second a little', 1],
    ['one coat the next day, buffed on the third', 1],
    ['one coat on it, then the third', 3],
    ['two coats of clear, two more on', 4],
    ['two coats of clear, two more', 4],
    ['two coats of clear, two more coats', 4],
    ['two coats of clear, two more doors', 2],
    ['two coats of clear, two more days', 2],
    ['two coats of clear, seven more', 2],
    ['two more on, two coats', 2],
    ['two coats, put on another', 3],
    ['two coats, another coat', 3],
    ['two coats, need another coat', 2],
    ['two coats, another day', 2],
    ['two coats, brushed a coat', 3],
    ['two coats, a coat', 2],
    ['I laid it, then another coat', 2],
    ['then another coat', undefined],
    ['five coats, stripped, two coats', 2],
    ['five coats, stripped', 5],
    ['three coats, oiled it four times', 4],
    ['eighteen', undefined],
  ])('%s: %s', (text, wanted) => {
    expect(coat(text)).toBe(wanted);
  });
  it('of another kind is none of this', () => {
    expect(coat('three coats of shellac', true, 'lacquer')).toBeUndefined();
    expect(coat('three coats of shellac', true, 'shellac')).toBe(3);
    expect(coat('three coats of shellac', true)).toBe(3);
    expect(coat('three coats of oil', true, 'hardwax-oil')).toBe(3);
    expect(coat('three coats of oil', true, 'oil-based')).toBe(3);
    expect(coat('three coats of oil', true, 'lacquer')).toBeUndefined();
    expect(coat('three coats of lacquer', true, 'water-lacquer')).toBe(3);
    expect(coat('three coats of wax', true, 'oil')).toBeUndefined();
  });
  it('of paint counts where no top coat is named', () => {
    expect(coat('two coats of paint', false)).toBe(2);
    expect(coat('two coats of paint', true)).toBeUndefined();
    expect(coat('then another coat', false)).toBeUndefined();
  });
  it('that is planned, or somebody else’s, is none', () => {
    expect(coat('three coats', true, undefined, { ...plain, notYet: () => true })).toBeUndefined();
    expect(coat('my buddy put three coats on his')).toBeUndefined();
    expect(coat('two coats, another coat', true, undefined, { ...plain, denied: () => 0 })).toBe(2);
  });
});

describe('days of the week', () => {
  const DAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
  const days = (text: string, manner = plain) => weekdayTimes(read(text).words, manner)[0];
  it('are counted on from the day of the coat, a week where it is the same', () => {
    for (const [from, one] of DAYS.entries())
      for (const [to, other] of DAYS.entries()) {
        const apart = ((to - from + 6) % 7) + 1;
        expect(days(`I brushed it on ${one}, today is ${other}`)?.likely).toBe(24 * apart);
        expect(days(`I brushed it on ${one}, it is ${other}`)?.likely).toBe(24 * apart);
      }
  });
  it.each([
    'today is Friday',
    'its Friday',
    'now Friday',
    'tonight Friday',
    'it is Friday',
    'today and Friday',
  ])('today: brushed it on Monday, %s', (today) => {
    expect(days(`brushed it on Monday, ${today}`)).toMatchObject({ likely: 96, most: 110 });
  });
  it('a later day that is not today leaves a week open', () => {
    expect(days('brushed it on Monday. On Friday it was dull')).toMatchObject({ likely: 96, most: 96 + 168 });
    expect(days('brushed it on Monday. On Friday, a week on, it was dull')?.sure).toBeLessThan(0.7);
    expect(days('brushed it on Monday, dull')).toMatchObject({ most: 190 });
    expect(days('brushed it on Monday, dull')?.sure).toBeLessThan(0.7);
  });
  it.each([
    'the third went on on Monday',
    'that was on Monday',
    'it was Monday',
    'curing since Monday',
    'drying since last Monday',
    'I did the doors on Monday',
    'did it Monday',
    'poly on Monday',
    'I laid it Monday',
  ])('of the coat: %s', (text) => {
    expect(days(`${text}, today is Friday`)?.likely).toBe(96);
  });
  it.each([
    'saw it on Monday',
    'I brushed it and stacked it on Monday',
    'did well on Monday',
    'curing on Monday',
    'on Monday that was',
    'the can of mon',
    'in the sun',
  ])('of something else: %s', (text) => {
    expect(days(`${text}, today is Friday`)).toBeUndefined();
  });
  it.each(['until Monday', 'till Monday', 'next Monday', 'every Monday', 'my Monday', 'by Monday'])(
    'no day of a coat: brushed it %s',
    (text) => {
      expect(days(`brushed it ${text}`)).toBeUndefined();
    },
  );
  it('by a day something was there', () => {
    expect(days('brushed it on Monday. By Friday there were dots')?.likely).toBe(96);
    expect(days('brushed it on Monday, I want it by Friday')).toMatchObject({ most: 190 });
    expect(days('brushed it on Monday', { ...plain, notYet: () => true })).toBeUndefined();
  });
  it('short forms are days behind a word that calls for one', () => {
    for (const short of ['Wed', 'Fri', 'Mon', 'Sun']) {
      expect(days(`brushed it on ${short}, dull`)).toBeDefined();
      expect(days(`brushed it in ${short}, dull`)).toBeUndefined();
    }
    for (const short of ['Tues', 'Tue', 'Thur', 'Thurs'])
      expect(days(`brushed it ${short}, dull`)).toBeDefined();
  });
});

describe('months and seasons', () => {
  const MONTHS = [
    'January',
    'February',
    'March',
    'April',
    'May',
    'June',
    'July',
    'August',
    'September',
    'October',
    'November',
    'December',
  ];
  it('are counted on from the month of the coat', () => {
    for (const [from, one] of MONTHS.entries())
      for (const [to, other] of MONTHS.entries()) {
        const [found] = monthTimes(read(`brushed it in ${one}, it is ${other} now`).words);
        expect(found?.likely).toBe(from === to ? undefined : ((to - from + 12) % 12) * 730);
      }
    for (const [feast, month] of [
      ['Easter', 3],
      ['Thanksgiving', 10],
      ['Christmas', 11],
    ] as const)
      expect(monthTimes(read(`brushed it at ${feast}, its July now`).words)[0]?.likely).toBe(
        ((6 - month + 12) % 12) * 730,
      );
  });
  it.each(['delivered in May', 'moved in May', 'got it in May', 'that was in May', 'done in May'])(
    'of a coat that came so: %s',
    (text) => {
      expect(monthTimes(read(`${text}, it is July now`).words)[0]?.likely).toBe(1460);
    },
  );
  it.each(['saw it in May', 'brushed it, may be', 'brushed it. In May'])('of none: %s', (text) => {
    expect(monthTimes(read(`${text}, it is July now`).words)).toEqual([]);
  });
  const season = (text: string, manner = plain) => seasonTimes(read(text).words, manner)[0];
  it('a season that is named is over, last summer for a month at least', () => {
    for (const text of [
      'brushed it in spring',
      'brushed it since fall',
      'brushed it back winter',
      'done over Christmas',
      'redone during summer',
    ])
      expect(season(text)).toMatchObject({ least: 336, most: 9000 });
    expect(season('brushed it last summer')).toMatchObject({ least: 720 });
    for (const text of ['brushed it, in spring, it', 'saw it. Brushed it in autumn'])
      expect(season(text)).toBeDefined();
    for (const text of [
      'saw it in spring',
      'brushed it next spring',
      'brushed a spring',
      'brushed it last, spring',
      'brushed it. In spring',
    ])
      expect(season(text), text).toBeUndefined();
    expect(season('brushed it in spring', { ...plain, notYet: () => true })).toBeUndefined();
  });
  it('a year that is named is more than one past', () => {
    for (const text of [
      'brushed it in 2012',
      'brushed it since 2024',
      'had it since 2010',
      'owned since 1999',
      'built in 1960',
      'installed in 2001',
      'made in 2001',
      'bought in 2001',
    ])
      expect(season(text), text).toMatchObject({ least: 8760, likely: 9000 });
    for (const text of [
      'brushed it over 2012',
      'brushed it last 2012',
      'brushed it in 2025',
      'had it in 2010',
      'built in 1960. Brushed it',
      'brushed it in 2112',
      'saw it in 2012',
    ])
      expect(season(text), text).toBeUndefined();
  });
});

describe('what the label gives', () => {
  const label = (text: string) => labelTime(ear, read(text).words);
  it.each<[string, number]>([
    ['the can says 2 hours', 2],
    ['dry time on the can 8 hours', 8],
    ['the tin promised four hours', 4],
    ['8 to 12 hours dry the label says', 12],
    ['supposed to dry in two hours', 2],
    ['should be hard in two days', 48],
    ['can says 2 hours, or the label says four hours', 4],
    ['can says four hours, or the label says 2 hours', 4],
  ])('%s', (text, hours) => {
    expect(label(text)?.hours).toBe(hours);
  });
  it.each([
    'it took 2 hours',
    'the can of 2 hours',
    'he says 2 hours',
    'can says so, 2 hours',
    'supposed to be here in two hours',
    'it dries in two hours',
    'the can says two weeks',
    'the can says it is 2 hours old',
  ])('%s: none', (text) => {
    expect(label(text)).toBeUndefined();
  });
  const beside = (text: string) => {
    const { words } = read(text);
    const found = labelTime(ear, words);
    return found && besideLabel(ear, words, found)?.hours;
  };
  it.each<[string, number | undefined]>([
    ['can says 2 hours. It has been twice that', 4],
    ['can says 2 hours. Been triple the time', 6],
    ['can says 2 hours. It has been half that', 1],
    ['can says 2 hours. It has been five times that', 10],
    ['can says 2 hours. It has been 3 times what it says', 6],
    ['can says 2 hours. Its 6 and still soft', 6],
    ['can says 2 hours. Been eight', 8],
    ['can says 2 days. Its 6 now', 144],
    ['can says 2 hours. Its 6 doors', undefined],
    ['can says 2 hours. Its a mess', undefined],
    ['can says 2 hours. Its 6 hours', undefined],
    ['can says 2 hours. Saw 6', undefined],
    ['can says 2 hours. Saw it twice', undefined],
    ['its 6 and the can says 2 hours', undefined],
  ])('%s: %s', (text, hours) => {
    expect(beside(text)).toBe(hours);
  });
});
