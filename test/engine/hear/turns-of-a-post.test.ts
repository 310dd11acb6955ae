/**
 * Smaller turns of a post, by the small lexicon: the last words of a query, steps that are over, what was laid in its story,
 * what is asked for, and which coat to take. Sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { asksFor, isSeen } from '#engine/hear/asks-for.ts';
import { bareStage } from '#engine/hear/bare-stage.ts';
import { dryHoursOf } from '#engine/hear/dry.ts';
import type { HeardFact, HeardSign } from '#engine/hear/heard.ts';
import { isTold, laidIn } from '#engine/hear/laid-since.ts';
import type { Match } from '#engine/hear/match.ts';
import { isPastStep, isSprayedAlready } from '#engine/hear/past-step.ts';
import { isTopNoun } from '#engine/hear/top-words.ts';
import { mannerIn, read } from './small-ear.ts';

const matchAt = (from: number, to: number, kind: string, of: readonly string[] = []): Match => ({
  sense: `${kind} ${of.join(' ')}`,
  kind,
  of,
  from,
  to,
  size: to - from,
});

describe('how dry it is, as the last words of a query', () => {
  /** `seen` and `alone` are the words, from 0, that tell a sign and end the query. */
  const stage = (
    text: string,
    alone: readonly [number, number],
    ...seen: readonly (readonly [number, number, string?])[]
  ) =>
    bareStage(read(text).words, [
      matchAt(...alone, 'alone', ['wet']),
      ...seen.map(([from, to, kind = 'sign']) =>
        matchAt(from, to, kind, kind === 'fact' ? ['base', 'stain'] : ['q', 'yes']),
      ),
    ])?.stage;
  it('behind a comma, or right behind what is seen', () => {
    expect(stage('milky, wet', [1, 2], [0, 1])).toBe('wet');
    expect(stage('milky wet', [1, 2], [0, 1])).toBe('wet');
    expect(stage('milky on stain wet', [3, 4], [0, 1], [2, 3, 'fact'])).toBe('wet');
    expect(stage('milky on it wet', [3, 4], [0, 1])).toBeUndefined();
  });
  it('not where nothing is seen, where it is part of what is seen, asked, or told at length', () => {
    expect(stage('today, wet', [1, 2])).toBeUndefined();
    expect(stage('stain wet', [1, 2], [0, 1, 'fact'])).toBeUndefined();
    expect(stage('milky wet', [1, 2], [0, 2])).toBeUndefined();
    expect(stage('milky wet?', [1, 2], [0, 1])).toBeUndefined();
    expect(stage('wet milky', [0, 1], [1, 2])).toBeUndefined();
    expect(stage('one two three four five six seven milky, wet', [8, 9], [7, 8])).toBe('wet');
    expect(stage('one two three four five six seven eight milky, wet', [9, 10], [8, 9])).toBeUndefined();
    expect(bareStage([], [])).toBeUndefined();
  });
  it('the fewest words first, and only words side by side', () => {
    const { words } = read('milky, still wet');
    const both = [
      matchAt(0, 1, 'sign', ['q', 'yes']),
      matchAt(1, 3, 'alone', ['setting']),
      matchAt(2, 3, 'alone', ['wet']),
    ];
    expect(bareStage(words, both)?.stage).toBe('setting');
    expect(bareStage(words, [both[0] as Match, { ...(both[1] as Match), size: 1 }])).toBeUndefined();
    expect(
      bareStage(read('milky wet').words, [
        matchAt(0, 1, 'sign', ['q', 'yes']),
        matchAt(1, 2, 'alone', ['wet']),
      ])?.span,
    ).toEqual({ from: 6, to: 9 });
  });
});

describe('a step that is over', () => {
  const past = (text: string, word: string) => {
    const { words, manner } = mannerIn(text);
    const at = words.findIndex((one) => one.word === word);
    return isPastStep(words, manner, matchAt(at, at + 1, 'danger', ['rags']));
  };
  it.each([
    'I washed it with ammonia',
    'cleaned it, ammonia',
    'he put ammonia on it',
    'I sprayed ammonia',
    'scrubbed with ammonia and it is dull',
  ])('%s', (text) => {
    expect(past(text, 'ammonia')).toBe(true);
  });
  it.each([
    'ammonia on it',
    'washed it. Ammonia is here',
    'washed it but ammonia is here',
    'I want to see it washed with ammonia',
    'washed it with ammonia?',
    'never washed it with ammonia',
    'washed it with ammonia, now use more',
    'washed it with ammonia, cleaning again',
    'washed it with ammonia, next I put some on',
    'can i have it washed with ammonia',
  ])('%s: it may be ahead', (text) => {
    expect(past(text, 'ammonia')).toBe(false);
  });
  it.each([
    'Sprayed lacquer over it and it wrinkled',
    'I shot it',
    'after spraying it went white',
    'finished spraying',
    'it was sprayed',
  ])('sprayed already: %s', (text) => {
    expect(isSprayedAlready(text)).toBe(true);
  });
  it.each([
    'I brushed it',
    'I sprayed it, can I spray again',
    'I sprayed it, should I spray more',
    'sprayed it, I am spraying now',
    'sprayed it, still spraying',
    'sprayed it, spray another',
    'sprayed it. Another coat now?',
    'sprayed it. Second coats, right?',
    'I sprayed, and spray on Mondays',
    'do not spray, he sprayed',
  ])('and not: %s', (text) => {
    expect(isSprayedAlready(text)).toBe(false);
  });
  it('another coat that is told asks nothing', () => {
    expect(isSprayedAlready('sprayed it. Another coat later it was dull')).toBe(true);
    expect(isSprayedAlready('sprayed another coat. Why?')).toBe(true);
  });
});

describe('what was laid in the story', () => {
  const laid = (text: string) => {
    const { words, manner } = mannerIn(text);
    return laidIn(words, manner).map((at) => words[at]?.word);
  };
  it.each<[string, readonly string[]]>([
    ['began the second coat', ['coat']],
    ['a second coat', ['coat']],
    ['another coat', ['coat']],
    ['the second coat is tacky', []],
    ['brushed the second coat', ['brushed', 'coat']],
    ['my next coat', []],
    ['a coat', []],
    ['then wax it', ['then']],
    ['then I slept', []],
    ['then, wax', ['then']],
    ['the poly went on', ['went']],
    ['the second went on', ['went']],
    ['it went on', []],
    ['the poly went off', []],
    ['had to apply more', ['apply']],
    ['they apply more', []],
    ['I sprayed it', ['sprayed']],
    ['my sprayed table', []],
    ['it was sprayed', []],
    ['I buffed it', []],
    ['I put wax on', ['put']],
    ['I put it on', []],
    ['when I sprayed it', []],
    ['before it sprayed', []],
    ['since he sprayed it', []],
    ['can i have sprayed it', []],
    ['I sprayed it?', []],
    ['never sprayed it', []],
    ['afraid he sprayed it', []],
  ])('%s: %o', (text, wanted) => {
    expect(laid(text)).toEqual(wanted);
  });
  it('is told where nobody asks, plans, fears or denies it', () => {
    const told = (text: string, word: string) => {
      const { words, manner } = mannerIn(text);
      return isTold(
        words,
        manner,
        words.findIndex((one) => one.word === word),
      );
    };
    expect(told('I saw dots', 'dots')).toBe(true);
    for (const text of ['want to see dots', 'no dots', 'afraid of dots', 'I see dots?'])
      expect(told(text, 'dots'), text).toBe(false);
    expect(told('I saw dots', 'gone')).toBe(false);
  });
});

describe('what is asked for', () => {
  const LIST = [
    { answer: 'A month.', lead: 'More:', page: 'p' },
    { answer: 'Soap.', lead: 'More:', page: 'q' },
  ];
  const { words } = read('when can I use the table');
  const cue = (name: string, from = 0, to = 4): Match => ({
    ...matchAt(from, to, 'cue', [name]),
    sense: `cue ${name}`,
  });
  const sign = (from: number, to: number): HeardSign => ({
    question: 'q',
    answer: 'yes',
    sure: 0.8,
    rests: [{ from, to }],
    against: [],
  });
  const fact = (name: string, from: number, to: number, sure = 0.9) =>
    ({ fact: name, value: 1, sure, rests: [{ from, to }], against: [] }) as unknown as HeardFact;
  const _text = 'when can I use the table';
  const asked = (
    matches: readonly Match[],
    facts: readonly HeardFact[] = [],
    signs: readonly HeardSign[] = [],
    among: readonly { from: number; to: number }[] = [],
  ) => asksFor(LIST, words, matches, facts, among, signs, words.filter(isTopNoun))?.page;
  it('is the first of the list that the words ask for', () => {
    expect(asked([cue('asks-for 0')])).toBe('p');
    expect(asked([cue('asks-for 1')])).toBe('q');
    expect(asked([cue('asks-for 1'), cue('asks-for 0')])).toBe('p');
    expect(asked([])).toBeUndefined();
    expect(asked([cue('asks-for 0'), cue('not-for 0')])).toBeUndefined();
    expect(asked([cue('asks-for 0'), cue('not-for 0'), cue('asks-for 1')])).toBe('q');
    expect(asked([cue('asks-for 0'), cue('not-for 1')])).toBe('p');
  });
  it('not where a coat is drying', () => {
    expect(asked([cue('asks-for 0')], [fact('hours-since-coat', 0, 4)])).toBeUndefined();
    expect(asked([cue('asks-for 0')], [fact('hours-since-coat', 0, 4, 0.6)])).toBe('p');
    expect(asked([cue('asks-for 0')], [fact('family', 0, 4)])).toBe('p');
  });
  it('nor where something is seen, beside the words of facts and of the asking', () => {
    expect(asked([cue('asks-for 0')], [], [sign(19, 24)])).toBeUndefined();
    expect(asked([cue('asks-for 0')], [], [sign(0, 4)])).toBe('p');
    expect(asked([cue('asks-for 0')], [fact('piece', 19, 24)], [sign(19, 24)])).toBe('p');
    expect(asked([cue('asks-for 0')], [], [sign(19, 24)], [{ from: 19, to: 24 }])).toBe('p');
  });
  it('a sign on the noun of a coat is nothing seen', () => {
    const shellac = [{ from: 0, to: 7 }];
    expect(isSeen(sign(0, 7), [], shellac)).toBe(false);
    expect(isSeen(sign(0, 5), [], shellac)).toBe(true);
    expect(isSeen(sign(2, 7), [], shellac)).toBe(true);
    expect(isSeen(sign(0, 5), [{ from: 0, to: 5 }], [])).toBe(false);
    expect(isSeen(sign(0, 5), [{ from: 5, to: 9 }], [])).toBe(true);
    const twice = {
      ...sign(0, 1),
      rests: [
        { from: 0, to: 1 },
        { from: 2, to: 7 },
      ],
    };
    expect(isSeen(twice, [{ from: 0, to: 1 }], [])).toBe(true);
  });
});

it('a kind dries as long as the slowest of its products', () => {
  const product = (family: string, touch: number, recoat: number) => ({
    family,
    'touch-minutes': [1, touch],
    'recoat-hours': [1, recoat],
  });
  expect(
    dryHoursOf({ products: [product('oil', 60, 8), product('oil', 120, 4), product('wax', 30, 1)] } as never),
  ).toEqual({ oil: [2, 8], wax: [0.5, 1] });
});
