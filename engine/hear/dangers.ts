import type { HeardDanger, HeardUrgent } from './heard.ts';
import type { Manner } from './manner.ts';
import { type Match, spanOf } from './match.ts';
import { isPastStep } from './past-step.ts';
import type { Word } from './words.ts';

/** Of two phrases over the same words the one that names more of them is meant: a gas water heater is no gas heater. */
const isOutdone = ({ from, to, size }: Match, matches: readonly Match[]): boolean =>
  matches.some(
    (other) => other.kind === 'danger' && other.from === from && other.to === to && other.size > size,
  );

/** "Stripper on my chair legs", "on my arm chair", "on the face frame": what has legs, arms or a face there is furniture. */
const isOfPiece = ({ to, from }: Match, matches: readonly Match[]): boolean =>
  matches.some(
    (other) =>
      (other.kind === 'fact' &&
        (other.of[0] === 'piece' || other.of[0] === 'part') &&
        (other.from === to || (other.from === to - 2 && other.from > from))) ||
      (other.kind === 'none' && other.from === to - 1),
  );

/** Harm that is told in one sentence, and what does it in another. */
const acrossOf = (matches: readonly Match[], manner: Manner): readonly Match[] => {
  const isTold = (match: Match) => manner.denied(match) === undefined && !isOfPiece(match, matches);
  const named = new Set(
    matches.filter((match) => match.kind === 'harms' && isTold(match)).map(({ of }) => of.join(' ')),
  );
  return matches.filter((match) => match.kind === 'harm' && named.has(match.of.join(' ')) && isTold(match));
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
  const called = matches.filter(
    (match) =>
      match.kind === 'danger' &&
      !isOutdone(match, matches) &&
      !isOfPiece(match, matches) &&
      manner.denied(match) === undefined,
  );
  for (const match of [...called, ...acrossOf(matches, manner)]) {
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

/** The cases of rules that can not wait, in the order in which each rule tells them. */
export const urgentOf = (matches: readonly Match[], manner: Manner): readonly HeardUrgent[] => {
  const once = matches
    .filter((match) => match.kind === 'urgent' && manner.denied(match) === undefined)
    .filter((match) => !isWithin(match, matches) && !isOfPiece(match, matches));
  const told = new Set([...once, ...acrossOf(matches, manner)].map(({ of }) => of.join(' ')));
  return [...told]
    .map((one) => one.split(' '))
    .map(([rule = '', at]) => ({ rule, at: Number(at) }))
    .sort((a, b) => a.at - b.at);
};
