/**
 * How phrases are found and how they are said, on a small invented lexicon: what may stand between two words of a phrase,
 * what denies, plans or fears it, and which of two phrases is meant. Sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { dangersOf, urgentOf } from '#engine/hear/dangers.ts';
import { familyOf } from '#engine/hear/family.ts';
import { type Mention, settled, withoutBeaten } from '#engine/hear/mention.ts';
import { signsOf } from '#engine/hear/signs.ts';
import { countAt, numberAt, ordinalSpan, spanAt } from '#engine/hear/spans.ts';
import { wordsIn } from '#engine/hear/words.ts';
import { ear, heardBySmall, mannerIn, read } from './small-ear.ts';

const found = (text: string) => read(text).matches.map(({ sense, from, to }) => `${sense} ${from}-${to}`);
const has = (text: string, sense: string) => read(text).matches.some((one) => one.sense === sense);

describe('the words of a text', () => {
  const split = (text: string) => wordsIn(text, { ...ear, spelled: (word) => word });
  it('are told by sentence, clause and part', () => {
    const of = (text: string, name: 'sentence' | 'clause' | 'part') => split(text).map((word) => word[name]);
    expect(of('a b. c', 'sentence')).toEqual([0, 0, 1]);
    expect(of('a! b? c\nd', 'sentence')).toEqual([0, 1, 2, 3]);
    expect(of('a, b; c (d) e: f', 'sentence')).toEqual([0, 0, 0, 0, 0, 0]);
    expect(of('a, b', 'clause')).toEqual([0, 0]);
    expect(of('a but b', 'clause')).toEqual([0, 1, 1]);
    for (const mark of ['; ', ': ', ' (', ') ', ' – ', ' — ', ' - '])
      expect(of(`a${mark}b`, 'clause')).toEqual([0, 1]);
    expect(of('a-b', 'clause')).toEqual([0, 0]);
    expect(of('a, b', 'part')).toEqual([0, 1]);
    expect(of('a but b; c. d', 'part')).toEqual([0, 1, 1, 2, 3]);
    expect(of('twenty or so b', 'clause')).toEqual([0, 0, 0, 0]);
    expect(of('twenty so b', 'clause')).toEqual([0, 1, 1]);
    expect(split('a, b').map(({ comma }) => comma)).toEqual([false, true]);
  });
  it('ask where their sentence ends in a question mark, and that sentence alone', () => {
    expect(split('a b? c. d?').map(({ asks }) => asks)).toEqual([true, true, false, true]);
    expect(split('a. b?').map(({ asks }) => asks)).toEqual([false, true]);
  });
  it('are plain: without accents and apostrophes, numbers whole, halves as such', () => {
    expect(split('Don’t café 2.5 1,5 1st ½ 1/2 x2').map(({ word }) => word)).toEqual([
      'dont',
      'cafe',
      '2.5',
      '1,5',
      '1st',
      'half',
      'half',
      'x',
      '2',
    ]);
    const [first] = split('  Don’t');
    expect(first).toMatchObject({ from: 2, to: 7 });
    expect(split('50 % off').map(({ word }) => word)).toEqual(['50', 'off']);
  });
  it('beyond the first 6,000 letters are not read', () => {
    expect(
      split(`${'a '.repeat(2999)}b c`)
        .map(({ word }) => word)
        .slice(-1),
    ).toEqual(['b']);
  });
});

describe('a phrase', () => {
  it('is found in other forms of its words, and a word that must stand so only as it is', () => {
    expect(has('bubble', 'sign round yes')).toBe(true);
    expect(found('lacquer')).toEqual(['fact family lacquer 0-1']);
  });
  it('bears two words between its own, and no third', () => {
    expect(has('round dots', 'sign round yes')).toBe(true);
    expect(has('round gray dots', 'sign round yes')).toBe(true);
    expect(has('round small gray dots', 'sign round yes')).toBe(true);
    expect(has('round very small gray dots', 'sign round yes')).toBe(false);
  });
  it('ends with its clause, at a comma, and at a denial', () => {
    for (const text of ['round; dots', 'round. Dots', 'round but dots', 'round no dots', 'round, gray dots'])
      expect(has(text, 'sign round yes'), text).toBe(false);
    expect(has('round, dots', 'sign round yes')).toBe(true);
    expect(has('round not dots', 'sign round yes')).toBe(false);
  });
  it('of a fact reaches over no word that ties two things, nor over a comma', () => {
    expect(has('tung seed oil', 'fact family oil')).toBe(true);
    const tung = (text: string) =>
      read(text).matches.some(({ sense, size }) => sense === 'fact family oil' && size === 2);
    expect(tung('tung oil')).toBe(true);
    expect(tung('tung nut oil')).toBe(true);
    for (const tie of [
      'and',
      'or',
      'is',
      'was',
      'with',
      'under',
      'over',
      'of',
      'in',
      'from',
      'after',
      'before',
      'than',
    ])
      expect(tung(`tung ${tie} oil`), tie).toBe(false);
    expect(tung('tung, oil')).toBe(false);
    expect(
      read('round and dots').matches.some(({ sense, size }) => sense === 'sign round yes' && size === 2),
    ).toBe(true);
  });
  it('is read as it is meant to be spelled', () => {
    expect(has('laquer', 'fact family lacquer')).toBe(true);
    for (const slip of ['lacqer', 'lacquerr', 'shelac', 'shellack'])
      expect(
        read(slip).matches.some(({ sense }) => sense.startsWith('fact family')),
        slip,
      ).toBe(true);
    for (const other of ['liquor', 'shell', 'lacq', 'xacquer']) expect(found(other), other).toEqual([]);
  });
});

describe('how it is said', () => {
  const at = (text: string, sense: string) => {
    const { matches, manner } = mannerIn(text);
    const match = matches.find((one) => one.sense === sense);
    if (!match) throw new Error(`no ${sense} in "${text}"`);
    return { match, manner };
  };
  const denied = (text: string, sense = 'sign round yes') => {
    const { match, manner } = at(text, sense);
    return manner.denied(match) !== undefined;
  };
  it.each([
    'no bubbles',
    'not one of those bubbles',
    'there are no bubbles',
    'without bubbles',
    'never any bubbles',
    'no dust, runs or bubbles',
    'no dust, nor bubbles',
    'bubbles free',
  ])('denied: %s', (text) => {
    expect(denied(text)).toBe(true);
  });
  it.each([
    'bubbles',
    'bubbles, no dust',
    'no dust but bubbles',
    'no dust. Bubbles',
    'not only bubbles',
    'no, bubbles',
    'no dust, bubbles',
    'no dust and the bubbles came',
    'not that I would ever have seen bubbles',
    'not much of it here to see, and this is all I see, bubbles or dust',
    'bubbles. Free',
  ])('told: %s', (text) => {
    expect(denied(text)).toBe(false);
  });

  const notYet = (text: string, sense = 'fact family oil') => {
    const { match, manner } = at(text, sense);
    return manner.notYet(match);
  };
  it.each([
    'I want to oil it',
    'can I use oil',
    'the plan is oil',
    'I may use oil',
    'oil?',
    'is oil ok?',
    'I want to sand and then oil it',
  ])('planned or asked: %s', (text) => {
    expect(notYet(text)).toBe(true);
  });
  it.each([
    'I used oil',
    'oil, and I want to know',
    'I want to know but I used oil',
    'I want to redo doors that were in oil',
    'I want to redo doors that I did in oil',
    'can I sleep where the bed was in oil',
    'back in may it was oil',
    'since may it is oil',
    'how can I fix the oil',
    'can I get the oil off',
    'is it the oil that made it all so?',
  ])('told: %s', (text) => {
    expect(notYet(text)).toBe(false);
  });
  it('a repair that is asked for tells what it is done to, and a plan does not', () => {
    for (const text of [
      'can I remove the oil',
      'can I clean the oil',
      'can I get rid of oil',
      'can I take oil out',
    ])
      expect(notYet(text), text).toBe(false);
    for (const text of ['can I get oil', 'can I take oil', 'want to remove oil'])
      expect(notYet(text), text).toBe(true);
  });

  const feared = (text: string) => {
    const { match, manner } = at(text, 'sign round yes');
    return manner.feared(match);
  };
  it('what is feared is no sign, and a hope ends at the comma', () => {
    for (const text of ['I am afraid of bubbles', 'I hope for no bubbles']) expect(feared(text)).toBe(true);
    for (const text of ['bubbles, I am afraid', 'I hope you help, bubbles', 'afraid but it bubbles'])
      expect(feared(text)).toBe(false);
  });

  const over = (text: string) => {
    const { match, manner } = at(text, 'sign round yes');
    return manner.over(match);
  };
  it('what went away is over, in its sentence or told next of what was', () => {
    for (const text of ['bubbles that went away', 'there were bubbles. Gone now', 'bubbles, gone'])
      expect(over(text), text).toBe(true);
    for (const text of [
      'bubbles',
      'gone are they, bubbles',
      'bubbles. Gone now',
      'there were bubbles. I see. Gone',
    ])
      expect(over(text), text).toBe(false);
  });
});

describe('signs', () => {
  const signs = (text: string) => {
    const { words, matches, manner } = mannerIn(text);
    return Object.fromEntries(
      signsOf(ear, words, matches, manner).map(({ question, answer, sure }) => [
        question,
        [answer, sure] as const,
      ]),
    );
  };
  const sure = (text: string, question = 'round') => signs(text)[question]?.[1] ?? 0;
  it('answer yes or no; denied they answer the other way', () => {
    expect(signs('bubbles')['round']?.[0]).toBe('yes');
    expect(signs('no bubbles')['round']?.[0]).toBe('no');
    expect(signs('smooth')['round']?.[0]).toBe('no');
    expect(signs('not smooth')['round']?.[0]).toBe('yes');
  });
  it('are the surer the more words tell, and the more often; denied or past they are less sure', () => {
    expect(sure('nail dents', 'soft')).toBeGreaterThan(sure('soft', 'soft'));
    expect(sure('very soft edges', 'soft')).toBeGreaterThan(sure('nail dents', 'soft'));
    expect(sure('bubbles. Bubbles')).toBeGreaterThan(sure('bubbles'));
    expect(sure('no bubbles')).toBeLessThan(sure('bubbles'));
    expect(sure('bubbles that went away')).toBeLessThan(sure('no bubbles'));
    expect(sure('bubbles. '.repeat(30))).toBeLessThanOrEqual(0.95);
  });
  it('of both kinds: the stronger is heard, and the other takes from it', () => {
    expect(signs('round dots, smooth')['round']?.[0]).toBe('yes');
    expect(sure('round dots, smooth')).toBeLessThan(sure('round dots'));
    expect(signs('smooth, bubbles')['round']?.[0]).toBe('yes');
    expect(signs('no bubbles, smooth. Round dots')['round']?.[0]).toBe('yes');
  });
  it('of what was planned tell nothing of work, but of what is seen', () => {
    expect(signs('I want to see bubbles')['round']?.[0]).toBe('yes');
    expect(signs('I want to see it laid thick')['laid']).toBeUndefined();
    expect(signs('it was laid thick')['laid']?.[0]).toBe('yes');
    expect(signs('afraid of bubbles')).toEqual({});
  });
  it('lie in no words that are none', () => {
    expect(signs('bubble wrap')).toEqual({});
    expect(signs('bubble and wrap')['round']?.[0]).toBe('yes');
    expect(signs('bubble wrap, bubbles')['round']?.[0]).toBe('yes');
  });
});

describe('dangers', () => {
  const rules = (text: string) => {
    const { words, matches, manner } = mannerIn(text);
    return dangersOf(words, matches, manner).map(({ rule }) => rule);
  };
  it('are called for by words that are asked or planned as well, and by none that are denied', () => {
    expect(rules('oily rag')).toEqual(['rags']);
    expect(rules('can I leave the rag?')).toEqual(['rags']);
    expect(rules('afraid of the rag')).toEqual(['rags']);
    expect(rules('no rag')).toEqual([]);
    expect(rules('rag and another rag')).toEqual(['rags']);
  });
  it('of two over the same words the one that names more of them is meant', () => {
    expect(rules('gas water heater')).toEqual(['flame']);
    expect(rules('gas heater')).toEqual(['heater']);
    expect(rules('gas water heater, gas heater').sort()).toEqual(['flame', 'heater']);
  });
  it('rest on all their words', () => {
    const { words, matches, manner } = mannerIn('a rag, one more rag');
    expect(dangersOf(words, matches, manner)[0]?.rests.length).toBeGreaterThanOrEqual(2);
  });
  it('that can not wait are told case by case, the longer phrase before the one within it', () => {
    const urgent = (text: string) => {
      const { matches, manner } = mannerIn(text);
      return urgentOf(matches, manner).map(({ rule, at }) => `${rule} ${at}`);
    };
    expect(urgent('rag smokes')).toEqual(['rags 0']);
    expect(urgent('rag pile smokes')).toEqual(['rags 1']);
    expect(urgent('rag smokes; the pile smokes')).toEqual(['rags 0', 'rags 1']);
    expect(urgent('the dog licked it')).toEqual(['licked 0']);
    expect(urgent('he licked it')).toEqual(['licked 1']);
    expect(urgent('no rag smokes')).toEqual([]);
  });
});

describe('numbers and spans of time', () => {
  const count = (text: string, at = 0) => countAt(ear, read(text).words, at);
  it('are figures or words, with their halves', () => {
    for (const [text, value, to] of [
      ['3 x', 3, 1],
      ['2.5', 2.5, 1],
      ['2,5', 2.5, 1],
      ['three', 3, 1],
      ['forty five', 45, 2],
      ['twenty one', 21, 2],
      ['two and a half', 2.5, 4],
      ['3 1/2', 3.5, 2],
      ['a', 1, 1],
      ['three quarters of an hour', 0.75, 4],
      ['a quarter of an hour', 0.25, 4],
      ['forty, five', 40, 1],
      ['forty forty', 40, 1],
      ['five five', 5, 1],
    ] as const)
      expect(count(text), text).toEqual({ to, value });
    for (const text of ['third', 'second', 'first', '3rd', 'many', 'quarters of an hour', ''])
      expect(count(text), text).toBeUndefined();
    expect(numberAt(ear, undefined)).toBeUndefined();
    expect(numberAt(ear, read('2nd').words[0])).toBeUndefined();
  });
  const span = (text: string, at = 0) => {
    const found = spanAt(ear, read(text).words, at);
    return found && [found.low, found.high, found.to];
  };
  it('from one to another, with a smaller unit behind, with fillers between', () => {
    for (const [text, low, high, to] of [
      ['two days', 48, 48, 2],
      ['two or three days', 48, 72, 4],
      ['two to three days', 48, 72, 4],
      ['2 3 days', 48, 72, 3],
      ['three or two days', undefined, undefined, 0],
      ['two full days', 48, 48, 3],
      ['two more full days', 48, 48, 4],
      ['an hour and a half', 1.5, 1.5, 5],
      ['an hour and a quarter', 1.25, 1.25, 5],
      ['2 hours 20 minutes', 2 + 1 / 3, 2 + 1 / 3, 4],
      ['two weeks and three days', 408, 408, 5],
      ['two days and three weeks', 48, 48, 2],
      ['2 hours, 20 minutes', 2, 2, 2],
      ['2 hours 90 minutes', 2, 2, 2],
      ['2 h', 2, 2, 2],
      ['two h', undefined, undefined, 0],
      ['a second', undefined, undefined, 0],
      ['two long good full days', undefined, undefined, 0],
      ['two. Days', undefined, undefined, 0],
    ] as const)
      expect(span(text), text).toEqual(low === undefined ? undefined : [low, high, to]);
  });
  const nth = (text: string, at: number) => {
    const found = ordinalSpan(ear, read(text).words, at);
    return found && [found.low, found.high, found.to];
  };
  it('the third day is from two and a half days to three', () => {
    expect(nth('on the third day', 2)).toEqual([60, 72, 4]);
    expect(nth('third day', 0)).toEqual([60, 72, 2]);
    expect(nth('my third day', 1)).toEqual([60, 72, 3]);
    expect(nth('like the third day', 2)).toBeUndefined();
    expect(nth('on a third day', 2)).toBeUndefined();
    expect(nth('first day', 0)).toBeUndefined();
    expect(nth('third, day', 0)).toBeUndefined();
    expect(nth('third coat', 0)).toBeUndefined();
    expect(nth('day three', 0)).toEqual([60, 72, 2]);
    expect(nth('hour twenty two', 0)).toEqual([21.5, 22, 3]);
    expect(nth('on day 3', 1)).toEqual([60, 72, 3]);
    expect(nth('one day three', 1)).toBeUndefined();
    expect(nth('day a', 0)).toBeUndefined();
    expect(nth('day 3 hours', 0)).toBeUndefined();
    expect(nth('day 3, hours', 0)).toEqual([60, 72, 2]);
    expect(nth('day 61', 0)).toBeUndefined();
    expect(nth('day 60', 0)).toEqual([1428, 1440, 2]);
    expect(nth('hour 101', 0)).toBeUndefined();
    expect(nth('week 31', 0)).toBeUndefined();
  });
});

describe('which of several is meant', () => {
  const mention = (value: string, from: number, more: Partial<Mention> = {}): Mention => ({
    value,
    weight: 0.72,
    span: { from, to: from + 1 },
    place: undefined,
    ...more,
  });
  it('the one that most speaks for; what speaks for another stands against it', () => {
    const one = settled('piece', [mention('crib', 0)], []);
    expect(one).toMatchObject([{ value: 'crib', rests: [{ from: 0, to: 1 }], against: [] }]);
    const twice = settled('piece', [mention('crib', 0), mention('crib', 2)], []);
    expect(twice[0]?.sure).toBeGreaterThan(one[0]?.sure ?? 1);
    const two = settled(
      'piece',
      [mention('crib', 0), mention('tabletop', 2, { weight: 0.9 })],
      [{ from: 9, to: 10 }],
    );
    expect(two[0]).toMatchObject({
      value: 'tabletop',
      rests: [{ from: 2, to: 3 }],
      against: [
        { from: 0, to: 1 },
        { from: 9, to: 10 },
      ],
    });
    expect(two[0]?.sure).toBeLessThan(0.92);
    const near = settled('piece', [mention('crib', 0), mention('tabletop', 2, { weight: 0.75 })], []);
    expect(near[0]?.sure).toBeLessThan(0.7);
    expect(settled('piece', [], [])).toEqual([]);
    expect(settled('piece', [mention('crib', 0, { weight: 5 })], [])[0]?.sure).toBeLessThanOrEqual(0.95);
  });
  it('paint lies over wood and old finish, and what is surely old over what may be', () => {
    const left = (
      fact: 'base' | 'base-tone' | 'age' | 'family' | 'applicator' | 'piece',
      ...values: string[]
    ) =>
      withoutBeaten(
        fact,
        values.map((value, at) => mention(value, at)),
      ).map(({ value }) => value);
    for (const tone of ['dark', 'light']) expect(left('base-tone', 'wood', tone)).toEqual([tone]);
    for (const paint of ['chalk-paint', 'milk-paint'])
      expect(left('base', 'old-finish', 'bare-wood', 'stain', paint)).toEqual([paint]);
    for (const paint of ['latex-paint', 'oil-paint'])
      expect(left('base', 'old-finish', 'bare-wood', 'stain', paint)).toEqual(['stain', paint]);
    expect(left('base', 'bare-wood', 'stain')).toEqual(['stain']);
    expect(left('age', 'unknown', 'since-1993', 'before-1993')).toEqual(['before-1993']);
    expect(left('family', 'lacquer', 'water-lacquer')).toEqual(['water-lacquer']);
    expect(left('family', 'oil', 'wax', 'hardwax-oil')).toEqual(['hardwax-oil']);
    expect(left('applicator', 'spray-gun', 'aerosol')).toEqual(['aerosol']);
    expect(left('applicator', 'brush', 'sponge')).toEqual(['sponge']);
    expect(left('applicator', 'brush', 'aerosol')).toEqual(['brush', 'aerosol']);
    expect(left('piece', 'crib', 'tabletop')).toEqual(['crib', 'tabletop']);
  });
  it('of kinds of top coat: what lies on top, what was laid last, what was named last', () => {
    const family = (all: readonly Mention[], open: readonly Mention[] = []) => {
      const { facts, among } = familyOf(all, open, []);
      return facts[0]?.value ?? among[0]?.values.join('|');
    };
    expect(family([mention('oil', 0), mention('shellac', 2)])).toBe('shellac');
    expect(family([mention('shellac', 0, { place: 'top' }), mention('oil', 2)])).toBe('shellac');
    expect(family([mention('shellac', 0), mention('oil', 2, { place: 'below' })])).toBe('shellac');
    expect(family([mention('shellac', 0, { laid: true }), mention('oil', 2)])).toBe('shellac');
    expect(family([mention('shellac', 0, { laid: true }), mention('oil', 2, { laid: true })])).toBe('oil');
    // Wax that is rubbed over a film is no top coat of its own.
    expect(family([mention('lacquer', 0), mention('wax', 2)])).toBe('lacquer');
    expect(family([mention('lacquer', 0, { place: 'below' }), mention('wax', 2)])).toBe('wax');
    expect(family([mention('oil', 0), mention('wax', 2)])).toBe('wax');
    const poly = (from: number, more: Partial<Mention> = {}) => mention('oil-based|water-based', from, more);
    expect(family([], [poly(0)])).toBe('oil-based|water-based');
    expect(family([mention('wax', 2)], [poly(0, { laid: true })])).toBe('oil-based|water-based');
    expect(family([mention('wax', 2)], [poly(0)])).toBe('wax');
    // Named last it was laid last, over what often lies below.
    expect(family([mention('shellac', 0)], [poly(2)])).toBe('oil-based|water-based');
    expect(family([mention('shellac', 0, { place: 'top' })], [poly(2)])).toBe('shellac');
    expect(family([mention('water-lacquer', 0)], [poly(2)])).toBe('water-lacquer');
    expect(family([mention('oil-based', 0)], [poly(2)])).toBe('oil-based');
    expect(family([mention('shellac', 0, { place: 'below' })], [poly(2)])).toBe('oil-based|water-based');
    const below = familyOf([mention('shellac', 0, { place: 'below' })], [], []);
    expect(below.facts[0]).toMatchObject({ value: 'shellac' });
    expect(below.facts[0]?.sure).toBeLessThan(0.7);
    expect(family([], [])).toBeUndefined();
  });
});

describe('the whole of a text', () => {
  const facts = (text: string) =>
    Object.fromEntries(
      heardBySmall(text)
        .facts.filter(({ sure }) => sure >= 0.7)
        .map(({ fact, value }) => [fact, value]),
    );
  it('takes the longer phrase before those inside it', () => {
    expect(facts('oil stain')).toEqual({ base: 'stain' });
    expect(facts('oil')).toMatchObject({ family: 'oil' });
    expect(facts('table salt')).not.toHaveProperty('piece');
    expect(facts('a table')).toMatchObject({ piece: 'tabletop' });
    expect(facts('chalk paint and old finish')).toMatchObject({ base: 'chalk-paint' });
  });
  it('of several pieces takes the one that demands most care', () => {
    expect(facts('a table and a crib')).toMatchObject({ piece: 'crib' });
    expect(facts('no crib, a table')).toMatchObject({ piece: 'tabletop' });
    expect(facts('can I use the table?')).toMatchObject({ piece: 'tabletop' });
  });
  it('takes what is only asked or denied for nothing told', () => {
    expect(facts('can I use oil')).toEqual({});
    expect(facts('no oil')).toEqual({});
    expect(facts('my buddy swears by oil')).toEqual({});
  });
});
