/**
 * A time is that of the coat where it is said to be, word by word, in pairs of sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { earned } from '#engine/hear/times/earned.ts';
import type { Manner } from '#engine/hear/words/manner.ts';
import type { Match } from '#engine/hear/words/match.ts';
import { marked } from '../marked.ts';

const matchOf = ({ from, to }: { from: number; to: number }, more: Partial<Match> = {}): Match => ({
  sense: '',
  kind: '',
  of: [],
  from,
  to,
  size: to - from,
  ...more,
});

const plain: Manner = {
  denied: () => undefined,
  notYet: () => false,
  feared: () => false,
  over: () => false,
};

describe('a time is that of the coat where it is earned', () => {
  const sure = (
    text: string,
    more: object = {},
    manner = plain,
    kinds: readonly Partial<Match>[] = [],
  ): number => {
    const { words, from, to } = marked(text);
    const time = {
      from: words[from]?.from ?? 0,
      to: words[to - 1]?.to ?? 0,
      least: 40,
      likely: 48,
      most: 60,
      sure: 0.8,
      laid: false,
      ...more,
    };
    return earned(
      words,
      kinds.map((one) => matchOf({ from, to }, one)),
      manner,
      time,
    ).sure;
  };
  it.each([
    ['went to bed [two days]', {}],
    ['[a day] later I began the second coat', { near: true }],
    ['let it haze [20 minutes] and buffed it', { near: true }],
    ['[24 hours], sanded, waxed', { near: true }],
    ['[four weeks ago] the pipe burst', { now: true }],
    ['a glass fell [just now]', { now: true }],
    ['over the last [three months] 60 poly boards', {}],
    ['used it on boards for [three months]', { near: true }],
    ['sanded the thing for [hours]', { near: true }],
    ['[the day before] I leave, poly', {}],
    ['my [4 year] old table', { near: true }],
    ['I would scuff that poly in [two days]', {}],
  ])('doubted: %s', (text, more) => {
    expect(sure(text, more)).toBeLessThan(0.7);
  });
  it.each([
    ['the poly went on [two days]', {}],
    ['it was on [two days]', {}],
    ['waited [two days]', {}],
    ['[two days] on, it is dull', {}],
    ['[a day] later I saw the second coat', { near: true }],
    ['the day after I laid the second coat, [a day]', { near: true }],
    ['[24 hours] and it is still dull, sanded, waxed', { near: true }],
    ['[four weeks ago] the poly', { now: true }],
    ['it came [two days ago]', { now: true }],
    ['I bought it [two years ago]', { now: true, least: 9000 }],
    ['during the last [three months] it was laid', { laid: true }],
    ['used poly for [three months]', {}],
    ['sanded the dry thing for [hours]', { near: true }],
    ['[the day before] I brushed poly', {}],
    ['its [4 years] old', { near: true }],
    ['my [4 year] old poly', {}],
    ['I would say that poly is on [two days]', {}],
  ])('taken as it is: %s', (text, more) => {
    expect(sure(text, more)).toBe(0.8);
  });
  it('what is seen, or how dry it is, ties a loose time to the film', () => {
    const loose = 'went to bed [two days]';
    for (const kind of [
      { kind: 'sign' },
      { kind: 'fact', of: ['stage', 'setting'] },
      { kind: 'fact', of: ['overdue', 'yes'] },
    ])
      expect(sure(loose, {}, plain, [kind])).toBe(0.8);
    for (const kind of [{ kind: 'fact', of: ['piece', 'crib'] }, { kind: 'cue' }])
      expect(sure(loose, {}, plain, [kind])).toBeLessThan(0.7);
    for (const more of [{ now: true }, { laid: true }, { near: true }]) expect(sure(loose, more)).toBe(0.8);
  });
  it('what was only planned or asked was not laid since', () => {
    const text = '[a day] later I began the second coat';
    expect(sure(text, { near: true }, { ...plain, notYet: () => true })).toBe(0.8);
    expect(sure(text, { near: true }, { ...plain, feared: () => true })).toBe(0.8);
    expect(sure(text, { near: true }, { ...plain, denied: () => 0 })).toBe(0.8);
    expect(sure('[24 hours], sanded, waxed', { near: true }, { ...plain, notYet: () => true })).toBe(0.8);
  });
  it('never makes a time surer', () => {
    expect(sure('went to bed [two days]', { sure: 0.3 })).toBe(0.3);
  });
});
