/**
 * How dry a film is by its words, by its hours, and by both: never drier than both allow. Hours of an invented kind: dry to
 * touch in 2, ready for the next coat in 4, doubled for air that is not known; a month cures it, two in the cold.
 */
import { describe, expect, it } from 'vitest';
import { stageFacts } from '#engine/hear/film/stage.ts';
import type { HeardFact } from '#engine/hear/words/heard.ts';
import { mannerIn } from '../small-ear.ts';

const DRY = { lacquer: [2, 4], shellac: [1, 2], oil: [24, 48] } as const;

type More = {
  readonly hours?: readonly [least: number, most: number];
  readonly sure?: number;
  readonly families?: readonly string[];
  readonly label?: number;
  readonly cold?: boolean;
  readonly age?: string;
};

const fact = (name: string, value: string | number, more: object = {}): HeardFact =>
  ({
    fact: name,
    value,
    sure: 0.9,
    rests: [{ from: 0, to: 1 }],
    against: [],
    ...more,
  }) as unknown as HeardFact;

const told = (text: string, { hours, sure = 0.9, families = ['lacquer'], label, cold, age }: More = {}) => {
  const { words, matches, manner } = mannerIn(text);
  const heard = [
    ...(hours ? [fact('hours-since-coat', (hours[0] + hours[1]) / 2, { range: hours, sure })] : []),
    ...(cold ? [fact('air-celsius', 10)] : []),
    ...(age ? [fact('age', age)] : []),
  ];
  const found = stageFacts(words, matches, manner, heard, families, DRY, label).filter(
    (one) => one.sure >= 0.7,
  );
  const value = (name: string) => found.find((one) => one.fact === name)?.value;
  return [value('stage'), value('overdue')].filter(Boolean).join(' ') || 'none';
};

describe('by its words', () => {
  it.each<[string, string]>([
    ['the lacquer coat is wet', 'wet'],
    ['the lacquer coat is sticky', 'setting'],
    ['the lacquer coat is dry', 'dry-to-touch'],
    ['the lacquer coat is hard', 'recoatable'],
    ['the lacquer coat is cured', 'cured'],
    ['the lacquer coat is not sticky', 'dry-to-touch'],
    ['the lacquer coat is not hard', 'none'],
    ['the lacquer coat is not cured', 'none'],
    ['the lacquer coat is dry and hard', 'recoatable'],
    ['afraid the lacquer coat is sticky', 'none'],
    ['want to see the lacquer coat dry', 'none'],
    ['is the lacquer coat hard?', 'none'],
    ['the lacquer coat, sticky, but gone', 'none'],
    ['a coat. Sticky that went away', 'none'],
    ['the stain was sticky under lacquer', 'none'],
    ['stain, and the coat of lacquer is sticky', 'setting'],
    ['the stain is sticky', 'setting'],
    ['the can is sticky, lacquer coats', 'none'],
    ['in the can it is sticky and gelled', 'none'],
    ['still wet and sticky, the coat', 'wet'],
    ['the coat is wet and dry', 'none'],
    ['the coat clings', 'setting'],
    ['my thumb dents the coat', 'setting'],
    ['sticky coat, but I stripped it and laid a coat', 'none'],
    ['it was sticky, so I painted it', 'none'],
    ['never dried, the coat', 'dry-to-touch yes'],
    ['still gummy, the coat', 'setting'],
    ['sanded the coat and went through', 'recoatable'],
    ['sanded the coat and went through, then brushed it', 'none'],
    ['the coat went through', 'none'],
  ])('%s: %s', (text, wanted) => {
    expect(told(text)).toBe(wanted);
  });
});

describe('by its hours', () => {
  it.each<[readonly [number, number], string]>([
    [[0.1, 0.35], 'wet'],
    [[0.1, 0.36], 'none'],
    [[5.9, 9], 'none'],
    [[6.1, 9], 'dry-to-touch'],
    [[12, 20], 'dry-to-touch'],
    [[12.1, 20], 'recoatable'],
    [[559, 700], 'recoatable'],
    [[560, 700], 'cured'],
  ])('%o: %s', (hours, wanted) => {
    expect(told('I brushed the coat', { hours })).toBe(wanted);
    expect(told('I brushed the coat', { hours, sure: 0.65 })).toBe('none');
  });
  it('in the cold it cures in two months', () => {
    expect(told('I brushed the coat', { hours: [1439, 1500], cold: true })).toBe('recoatable');
    expect(told('I brushed the coat', { hours: [1440, 1500], cold: true })).toBe('cured');
  });
  it('of several kinds the slowest counts, and of none the slowest of all films', () => {
    expect(told('I brushed the coat', { hours: [6.1, 9], families: ['lacquer', 'oil'] })).not.toBe(
      'dry-to-touch',
    );
    expect(told('I brushed the coat', { hours: [73, 90], families: ['lacquer', 'oil'] })).toBe(
      'dry-to-touch',
    );
    expect(told('I brushed the coat', { hours: [6.1, 9], families: ['shellac'] })).toBe('recoatable');
    expect(told('I brushed the coat', { hours: [145, 160], families: ['wax'] })).toBe('dry-to-touch');
    expect(told('I brushed the coat', { hours: [300, 320], families: ['wax'] })).toBe('recoatable');
  });
  it('that are told of no film tell nothing, once work is told', () => {
    expect(told('I saw it', { hours: [12.1, 20] })).toBe('recoatable');
    expect(told('I primed it', { hours: [12.1, 20] })).toBe('none');
    expect(told('I primed it, bubbles', { hours: [12.1, 20] })).toBe('recoatable');
    expect(told('I primed the varnish', { hours: [12.1, 20] })).toBe('recoatable');
  });
  it('before any kind that is meant has dried it sets; open oil is never taken for setting', () => {
    expect(told('I brushed the coat', { hours: [0.4, 0.6] })).toBe('setting');
    expect(told('I brushed the coat', { hours: [0.4, 0.7] })).toBe('none');
    expect(told('I brushed the coat', { hours: [0.4, 0.6], families: ['oil'] })).toBe('none');
    expect(told('I brushed the coat', { hours: [0.4, 0.6], families: [] })).toBe('none');
    expect(told('I brushed the coat', { hours: [0.4, 0.6], families: ['lacquer', 'shellac'] })).toBe('none');
  });
});

describe('by both', () => {
  it.each<[string, readonly [number, number], string]>([
    // The less dry of the two.
    ['the coat is cured', [12.1, 20], 'recoatable'],
    ['the coat is hard', [600, 700], 'recoatable'],
    ['the coat is dry', [600, 700], 'cured'],
    ['the coat is hard', [6.1, 9], 'dry-to-touch'],
    ['the coat is hard', [1, 2], 'dry-to-touch'],
    ['the coat is dry', [1, 2], 'dry-to-touch'],
    ['the coat is wet', [600, 700], 'none'],
    ['the coat is wet', [0.1, 0.3], 'wet'],
    // Long past its time it no longer sets.
    ['the coat is sticky', [1, 2], 'setting'],
    ['the coat is sticky', [12, 13], 'setting'],
    ['the coat is sticky', [12.1, 13], 'dry-to-touch yes'],
    ['the coat is sticky', [600, 700], 'dry-to-touch yes'],
    ['my thumb dents the coat', [5, 6], 'setting'],
    ['my thumb dents the coat', [600, 700], 'dry-to-touch'],
    ['never dried, the coat', [5, 12], 'setting'],
    ['never dried, the coat', [5, 13], 'dry-to-touch yes'],
  ])('%s, %o hours: %s', (text, hours, wanted) => {
    expect(told(text, { hours })).toBe(wanted);
  });
  it('where the label is told, three times its hours are the bar', () => {
    expect(told('the coat is sticky', { hours: [5, 7], label: 2 })).toBe('dry-to-touch yes');
    expect(told('the coat is sticky', { hours: [5, 6.9], label: 2 })).toBe('setting no');
    expect(told('the coat is sticky', { hours: [30, 40], label: 20 })).toBe('setting no');
    expect(told('the coat is dry', { hours: [30, 40], label: 20 })).not.toContain('no');
    expect(told('the coat is sticky', { label: 2 })).toBe('setting');
  });
});

describe('a piece that is lived with', () => {
  it.each<[string, More, string]>([
    ['a mug ring on it', {}, 'cured'],
    ['grandmas table', {}, 'cured'],
    ['a mug ring on the coat that I brushed', {}, 'none'],
    ['no mug ring on it', {}, 'none'],
    ['afraid of a mug ring', {}, 'none'],
    ['degreaser on my table', {}, 'cured'],
    ['degreaser on some wood', {}, 'none'],
    ['a customer used degreaser', {}, 'cured'],
    ['an odd thing', { age: 'before-1993' }, 'cured'],
    ['an odd thing', { age: 'since-1993' }, 'none'],
    ['a mug ring on it', { hours: [5, 9] }, 'cured'],
    ['grandmas table', { hours: [5, 9] }, 'none'],
    ['grandmas table', { hours: [600, 700] }, 'cured'],
    ['a mug ring, wet', {}, 'wet'],
    // What is soft there was hard once, or is no fresh film.
    ['grandmas table went sticky', {}, 'cured'],
    ['grandmas table is sticky', {}, 'dry-to-touch yes'],
    ['my table went sticky', {}, 'cured'],
    ['my table is sticky', {}, 'setting'],
    ['a mug ring, and it is sticky', {}, 'cured'],
    ['it was fine, then a mug ring, now sticky', {}, 'cured'],
    ['it was fine, now sticky', {}, 'setting'],
    ['it went sticky', { hours: [1400, 1500] }, 'cured'],
    ['it went sticky', { hours: [1399, 1500] }, 'dry-to-touch yes'],
    ['it is sticky', { hours: [1400, 1500] }, 'dry-to-touch yes'],
    ['grandmas table went sticky, never dried', {}, 'dry-to-touch yes'],
  ])('%s %o: %s', (text, more, wanted) => {
    expect(told(text, more)).toBe(wanted);
  });
});
