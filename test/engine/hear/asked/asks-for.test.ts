/**
 * What is asked for that has an answer of its own, and what is seen. Sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { asksFor, isSeen } from '#engine/hear/asked/asks-for.ts';
import type { HeardFact, HeardSign } from '#engine/hear/words/heard.ts';
import type { Match } from '#engine/hear/words/match.ts';
import { isTopNoun } from '#engine/hear/words/top-words.ts';
import { read } from '../small-ear.ts';

const matchAt = (from: number, to: number, kind: string, of: readonly string[] = []): Match => ({
  sense: `${kind} ${of.join(' ')}`,
  kind,
  of,
  from,
  to,
  size: to - from,
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
  const sign = (from: number, to: number, answer: HeardSign['answer'] = 'yes'): HeardSign => ({
    question: 'q',
    answer,
    sure: 0.8,
    rests: [{ from, to }],
    against: [],
  });
  const fact = (name: string, from: number, to: number, sure = 0.9) =>
    ({ fact: name, value: 1, sure, rests: [{ from, to }], against: [] }) as unknown as HeardFact;
  const asked = (
    matches: readonly Match[],
    facts: readonly HeardFact[] = [],
    signs: readonly HeardSign[] = [],
    among: readonly { from: number; to: number }[] = [],
  ) => asksFor(LIST, words, matches, facts, among, signs, words.filter(isTopNoun))[0]?.asked.page;
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
  it('though something is not there', () => {
    expect(asked([cue('asks-for 0')], [], [sign(90, 95)])).toBeUndefined();
    expect(asked([cue('asks-for 0')], [], [sign(90, 95, 'no')])).toBe('p');
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
