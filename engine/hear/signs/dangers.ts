import { isPastStep } from '../times/past-step.ts';
import type { HeardDanger, HeardUrgent } from '../words/heard.ts';
import type { Manner } from '../words/manner.ts';
import { type Match, spanOf } from '../words/match.ts';
import { oneOf } from '../words/one-of.ts';
import type { Word } from '../words/words.ts';

/** Of two phrases over the same words the one that names more of them is meant: a gas water heater is no gas heater. */
const isOutdone = ({ from, to, size }: Match, matches: readonly Match[]): boolean =>
  matches.some(
    (other) => other.kind === 'danger' && other.from === from && other.to === to && other.size > size,
  );

const isOver = (a: Match, b: Match): boolean => a.from < b.to && b.from < a.to;

/** "A 2k conversion varnish" is no isocyanate; a "2k or a conversion varnish" may be: no word stands between. */
const soundsLike = (match: Match, matches: readonly Match[]): boolean =>
  matches.some(
    (other) =>
      other.kind === 'no-danger' &&
      other.size === other.to - other.from &&
      other.of[0] === match.of[0] &&
      isOver(other, match),
  );

/** What people and furniture both have. */
const LIMBS = oneOf('arms?|legs?|face|foot|feet|hands?|back|head|neck|skin|shoulders?|knees?');

/** "Stripper on my chair legs", "on my arm chair", "on the face frame": what has legs, arms or a face there is furniture. */
const isOfPiece = (words: readonly Word[], { to, from }: Match, matches: readonly Match[]): boolean =>
  LIMBS.test(words[to - 1]?.word ?? '') &&
  matches.some(
    (other) =>
      (other.kind === 'fact' &&
        (other.of[0] === 'piece' || other.of[0] === 'part') &&
        (other.from === to || (other.from === to - 2 && other.from > from))) ||
      (other.kind === 'none' && other.from === to - 1),
  );

/** Harm that is told in one sentence, and what does it in another. */
const acrossOf = (words: readonly Word[], matches: readonly Match[], manner: Manner): readonly Match[] => {
  const isTold = (match: Match) => manner.denied(match) === undefined && !isOfPiece(words, match, matches);
  const named = new Set(
    matches.filter((match) => match.kind === 'harms' && isTold(match)).map(({ of }) => of.join(' ')),
  );
  return matches.filter((match) => match.kind === 'harm' && named.has(match.of.join(' ')) && isTold(match));
};

/** "The dog licked it" is no case of people: what names more of the words is meant. */
const isWithin = ({ of, from, to, size }: Match, matches: readonly Match[]): boolean =>
  matches.some(
    (other) =>
      other.kind === 'urgent' &&
      other.of[0] === of[0] &&
      other.from <= from &&
      to <= other.to &&
      other.size > size,
  );

/** "A two part poly or conversion varnish": other words of the sentence call for the rule all the same. */
const isCalledElsewhere = (match: Match, words: readonly Word[], matches: readonly Match[]): boolean =>
  matches.some(
    (other) =>
      other.kind === 'danger' &&
      other.of[0] === match.of[0] &&
      words[other.from]?.sentence === words[match.from]?.sentence &&
      !soundsLike(other, matches),
  );

/** Cases of rules that can not wait, where they are told; what takes one back in the same sentence takes it back. */
const urgentIn = (words: readonly Word[], matches: readonly Match[], manner: Manner): readonly Match[] => {
  const keyOf = ({ of, from }: Match): string => `${of.join(' ')} ${words[from]?.sentence}`;
  const calm = new Set(
    matches.filter((match) => match.kind === 'calm' && manner.denied(match) === undefined).map(keyOf),
  );
  const once = matches
    .filter((match) => match.kind === 'urgent' && manner.denied(match) === undefined)
    .filter((match) => !isWithin(match, matches) && !isOfPiece(words, match, matches));
  const isNone = (match: Match): boolean =>
    soundsLike(match, matches) && !isCalledElsewhere(match, words, matches);
  return [...once, ...acrossOf(words, matches, manner)].filter(
    (match) => !calm.has(keyOf(match)) && !isNone(match),
  );
};

/** "The rags are in a bucket of water": a rule is not called for where its case is taken back, and no other is told. */
const calmedRules = (words: readonly Word[], matches: readonly Match[], manner: Manner) => {
  const keyOf = ({ of, from }: Match): string => `${of[0]} ${words[from]?.sentence}`;
  const calm = new Set(
    matches.filter((match) => match.kind === 'calm' && manner.denied(match) === undefined).map(keyOf),
  );
  const urgent = calm.size ? new Set(urgentIn(words, matches, manner).map(keyOf)) : calm;
  return (match: Match): boolean => calm.has(keyOf(match)) && !urgent.has(keyOf(match));
};

/**
 * The rules that the words of a text call for. What is only asked, planned or feared calls for them as well, since a
 * caution comes before the deed; only what is denied does not.
 */
export const dangersOf = (
  words: readonly Word[],
  matches: readonly Match[],
  manner: Manner,
): readonly HeardDanger[] => {
  const found = new Map<string, HeardDanger>();
  const isCalmed = calmedRules(words, matches, manner);
  const called = matches.filter(
    (match) =>
      match.kind === 'danger' &&
      !isOutdone(match, matches) &&
      !soundsLike(match, matches) &&
      !isOfPiece(words, match, matches) &&
      manner.denied(match) === undefined,
  );
  for (const match of [...called, ...acrossOf(words, matches, manner)]) {
    if (isCalmed(match)) continue;
    const [rule = ''] = match.of;
    const known = found.get(rule);
    found.set(rule, {
      rule,
      rests: [...(known?.rests ?? []), spanOf(words, match)],
      past: known?.past !== false && isPastStep(words, manner, match),
    });
  }
  return [...found.values()];
};

/** The cases of rules that can not wait, in the order in which each rule tells them. */
export const urgentOf = (
  words: readonly Word[],
  matches: readonly Match[],
  manner: Manner,
): readonly HeardUrgent[] => {
  const told = new Set(urgentIn(words, matches, manner).map(({ of }) => of.join(' ')));
  return [...told]
    .map((one) => one.split(' '))
    .map(([rule = '', at]) => ({ rule, at: Number(at) }))
    .sort((a, b) => a.at - b.at);
};
