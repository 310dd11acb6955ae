import type { HeardSign } from '../words/heard.ts';
import type { Manner } from '../words/manner.ts';
import type { Ear, Match } from '../words/match.ts';
import type { Span, Word } from '../words/words.ts';

/** What a phrase answers, and what it answers where it is denied. */
const plainly = (answer: string): 'yes' | 'no' => (answer === 'no' ? 'no' : 'yes');
const opposite = (answer: string): 'yes' | 'no' => (answer === 'yes' ? 'no' : 'yes');

/** A phrase inside a longer one of the same question is part of it. */
const longest = (matches: readonly Match[]): Match[] => {
  const byQuestion = new Map<string | undefined, Match[]>();
  for (const match of matches) {
    const list = byQuestion.get(match.of[0]);
    if (list) list.push(match);
    else byQuestion.set(match.of[0], [match]);
  }
  return matches.filter(
    (match) =>
      !byQuestion
        .get(match.of[0])
        ?.some((other) => other.size > match.size && other.from <= match.from && match.to <= other.to),
  );
};

/**
 * What lies within words that are no sign ("I run my hand over it") is none, nor is a part of a name that is one thing
 * ("orange peel"). Only words side by side are such.
 */
const signsIn = (matches: readonly Match[]): Match[] => {
  const whole = matches.filter(({ kind }) => kind === 'whole');
  const no = matches.filter(({ kind, from, to, size }) => kind === 'no-sign' && to - from === size);
  return matches.filter(
    ({ kind, from, to, size }) =>
      kind === 'sign' &&
      !no.some((one) => one.from <= from && to <= one.to && size <= one.size) &&
      !whole.some((one) => one.from <= from && to <= one.to && size < one.size),
  );
};

/** How far a phrase of one word, of two and of more is trusted; a denial and the past take from it. */
const BY_SIZE = [0.72, 0.82, 0.88] as const;
const DENIED = 0.88;
const IN_THE_PAST = 0.5;
const REPEATED = 0.04;

type Voice = { readonly answer: 'yes' | 'no'; readonly sure: number; readonly span: Span };

/** The answers that a text gives unasked. Where voices speak for both, the stronger is heard, the other stands against. */
export const signsOf = (
  { ofWork }: Pick<Ear, 'ofWork'>,
  words: readonly Word[],
  matches: readonly Match[],
  manner: Manner,
): HeardSign[] => {
  const voices = new Map<string, Voice[]>();
  for (const match of longest(signsIn(matches))) {
    const [question = '', said = ''] = match.of;
    if (manner.feared(match) || (manner.notYet(match) && ofWork.has(question))) continue;
    const denial = manner.denied(match);
    const answer = denial === undefined ? plainly(said) : opposite(said);
    const sure =
      (BY_SIZE[Math.min(match.size, BY_SIZE.length) - 1] ?? 0.7) *
      (denial === undefined ? 1 : DENIED) *
      (manner.over(match) ? IN_THE_PAST : 1);
    const start = words[Math.min(match.from, denial ?? match.from)];
    const span = { from: start?.from ?? 0, to: words[match.to - 1]?.to ?? 0 };
    voices.set(question, [...(voices.get(question) ?? []), { answer, sure, span }]);
  }
  return [...voices].map(([question, heard]) => {
    const strength = (answer: 'yes' | 'no'): number => {
      const of = heard.filter((voice) => voice.answer === answer).map(({ sure }) => sure);
      return of.length ? Math.min(0.95, Math.max(...of) + REPEATED * (of.length - 1)) : 0;
    };
    const [yes, no] = [strength('yes'), strength('no')];
    const answer = yes >= no ? 'yes' : 'no';
    const spans = (of: 'yes' | 'no') => heard.filter((voice) => voice.answer === of).map(({ span }) => span);
    return {
      question,
      answer,
      sure: Math.max(yes, no) * (1 - 0.6 * Math.min(yes, no)),
      rests: spans(answer),
      against: spans(opposite(answer)),
    };
  });
};
