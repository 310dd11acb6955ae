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

/** "Stripper on my chair legs": what has legs and arms there is furniture. */
const isOfPiece = ({ to, from }: Match, matches: readonly Match[]): boolean =>
  matches.some(
    (other) =>
      other.kind === 'fact' &&
      (other.of[0] === 'piece' || other.of[0] === 'part') &&
      other.from === to - 2 &&
      other.from > from,
  );

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
  for (const match of matches) {
    const [rule = ''] = match.of;
    if (
      match.kind !== 'danger' ||
      isOutdone(match, matches) ||
      isOfPiece(match, matches) ||
      manner.denied(match) !== undefined
    )
      continue;
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
  const told = new Set(
    matches
      .filter((match) => match.kind === 'urgent' && manner.denied(match) === undefined)
      .filter((match) => !isWithin(match, matches) && !isOfPiece(match, matches))
      .map(({ of }) => of.join(' ')),
  );
  return [...told]
    .map((one) => one.split(' '))
    .map(([rule = '', at]) => ({ rule, at: Number(at) }))
    .sort((a, b) => a.at - b.at);
};
