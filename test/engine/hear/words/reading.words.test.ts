/**
 * Words that make a figure doubted, that of the coat, or where it ended, form by form; with letters glued to them they do
 * neither. Phrases of our own.
 */
import { describe, expect, it } from 'vitest';
import { clauseAround, settledReading } from '#engine/hear/words/reading.ts';

/** The figures of a text, each a degree wide and as sure as the others. */
const settled = (text: string, ...figures: readonly number[]) =>
  settledReading(
    text,
    'air-celsius',
    figures.map((value) => {
      const from = text.lastIndexOf(String(value));
      return { from, to: from + String(value).length, low: value - 1, high: value + 1, sure: 0.9 };
    }),
    (value) => value,
    50,
  )[0];
const isDoubted = (text: string) => (settled(text, 30)?.sure ?? 1) < 0.7;

describe('a figure is doubted', () => {
  const BEFORE = [
    ...'iron oven coffee pan melts melting flash flashes flashing storage above below minimum'.split(' '),
    'melt',
    'at least',
    'dew point',
    'floor was',
    'moisture meter',
    ...'label can tin sheet directions instructions they which it'.split(' ').map((one) => `${one} says`),
    ...'said wants calls'.split(' ').map((one) => `it ${one}`),
    ...'week month year winter summer'.split(' ').map((one) => `last ${one}`),
    'normally',
    'usually',
    'used to be',
    'was set',
    'up to',
    'from',
    'when I was',
  ];
  it.each(BEFORE)('%s 30', (words) => {
    expect(isDoubted(`So ${words} 30 there`)).toBe(true);
    expect(isDoubted(`So ${words}. Then 30 there`)).toBe(false);
    expect(isDoubted(`So qu${words} 30 there`)).toBe(false);
  });
  it.each(BEFORE.filter((words) => !/^(?:melt|flash)|(?:says|said|wants|calls)$/.test(words)))(
    '%squ 30: not',
    (words) => {
      expect(isDoubted(`So ${words}qu 30 there`)).toBe(false);
    },
  );
  it.each([
    'last week',
    'last month',
    'last year',
    'last winter',
    'last summer',
    'year round',
    'to cure',
    'in my twenties',
  ])('30 %s', (words) => {
    expect(isDoubted(`30 ${words}`)).toBe(true);
    expect(isDoubted(`30 there ${words}`)).toBe(true);
    expect(isDoubted(`30, ${words}`)).toBe(false);
    expect(isDoubted(`30 qu${words}`)).toBe(false);
    expect(isDoubted(`30 ${words}qu`)).toBe(false);
    expect(isDoubted(`30 in all of that long and cold ${words}`)).toBe(false);
  });
  it('but not by the same words far before it', () => {
    expect(isDoubted('the oven stood there in the corner of it, 30')).toBe(false);
    expect(isDoubted('usually I am quick but on that cold day it was 30')).toBe(false);
  });
});

describe('a figure of the coat', () => {
  it.each([
    'now',
    'today',
    ...'laid put brushed sprayed rolled coated shot wiped varnished applied started'
      .split(' ')
      .map((one) => `when I ${one}`),
    'when we laid',
  ])('%s', (words) => {
    expect(settled(`It is 30 ${words}, and 10 there`, 30, 10)?.value).toBe(30);
    expect(settled(`It is 30 there, and 10 ${words}`, 30, 10)?.value).toBe(10);
    expect(settled(`It is 30 there, and 10 ${words}qu`, 30, 10)?.value).toBe(30);
  });
  it('of two that are both of it is neither', () => {
    expect(settled('30 now, and 10 today', 30, 10)?.value).toBe(30);
  });
});

describe('where it ended', () => {
  it.each([
    'down to',
    'fell to',
    'dropped to',
    'climbs to',
    'climbed to',
    'got to',
    'got it down',
    'got it up',
    'maybe',
    'never got past',
    'to',
    'fell to about',
    'fell to around',
    'fell to maybe',
  ])('%s', (words) => {
    expect(settled(`It was 30 and ${words} 10`, 30, 10)?.value).toBe(10);
  });
  it.each(['saw', 'had', 'qufell into'])('not by "%s"', (words) => {
    expect(settled(`It was 30 and ${words} 10`, 30, 10)?.value).toBe(30);
  });
});

describe('the words around a figure', () => {
  const around = (text: string) => {
    const from = text.indexOf('30');
    return clauseAround(text, { from, to: from + 2 });
  };
  it('end at a stop, and at a turn', () => {
    for (const stop of [';', '!', '?', ',', '–', '.', ' but', ' though', ' while', ' whereas', ' and']) {
      expect(around(`far${stop} near 30 here`).before.trim(), stop).toBe('near');
    }
    for (const stop of [';', '!', '?', ',', '–', '.', ' but', ' though', ' while', ' whereas', ' and the']) {
      expect(around(`near 30 here${stop} far`).after.trim(), stop).toBe('here');
    }
    expect(around('near 30 here and far').after.trim()).toBe('here and far');
    expect(around('0.5 near 30 here.').after.trim()).toBe('here');
    expect(around('a 0.5 near 30 0.5 here').before).toBe('a 0.5 near ');
    expect(around('andes buttes 30 thoughts').before).toBe('andes buttes ');
  });
});
