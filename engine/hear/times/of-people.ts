import { isOfOthers } from '../words/of-others.ts';
import { isTop } from '../words/top-words.ts';
import { isKind, type Word } from '../words/words.ts';
import { has, hasKind, type ToldTime } from './told-time.ts';

/** "my 3 year old", "for a three year old", "Toy blocks for my nephew, 18 months old": an age that is no thing's. */
const isOfPerson = ({ words, from, to }: ToldTime): boolean => {
  const there = words.slice(from, to + 1).findIndex(({ word }) => word === 'old');
  const old = there < 0 ? there : from + there;
  if (old < 0) return false;
  const { part, sentence } = words[old] ?? {};
  const near = (start: number, end: number, isNear: (word: Word) => boolean) =>
    words.slice(Math.max(0, start), end).filter(isNear);
  const year = words[old - 1]?.word;
  // "a one year old table": one before the unit is of a thing as well.
  const one = /^(a|one)$/.test(words[old - 2]?.word ?? '');
  const isInPart = (word: Word) => word.part === part;
  if (
    !one &&
    /^(year|month|week|day)$/.test(year ?? '') &&
    !hasKind(near(old + 1, old + 4, isInPart), 'furniture') &&
    !near(old + 1, old + 2, isInPart).some(isTop)
  )
    return true;
  if (hasKind(near(from - 5, from, isInPart), 'person')) return true;
  // "my daughter, who is 4 weeks old now"
  const who = words.slice(Math.max(0, from - 3), from).findIndex(({ word }) => /^(who|whos)$/.test(word));
  if (who >= 0 && isKind(words[Math.max(0, from - 3) + who - 1], 'person')) return true;
  // Behind a comma the age is that of whoever was named last.
  return (
    words[from]?.comma === true && isKind(words[from - 1], 'person') && words[from - 1]?.sentence === sentence
  );
};

/** "20 years of poly" is what somebody knows. */
const isOfKnowing = ({ after }: ToldTime): boolean =>
  after[0]?.word === 'of' &&
  !/^(use|drying|dry|hard|waiting|curing|cure|brushing|rolling|spraying|wiping|applying|coating|pouring|laying|rest|resting)$/.test(
    after[1]?.word ?? '',
  );

/** "I have used it for years" */
const isOfHabit = ({ words, own, after, from, to }: ToldTime): boolean =>
  after[0]?.word !== 'ago' &&
  words[to - 1]?.word !== 'ago' &&
  has(words.slice(from, to), /^(years?|yrs?|decades?)$/) &&
  has(own, /^(ive|weve|i|we)$/) &&
  hasKind(own, 'often-done') &&
  has(own, /^for$/);

/** "in business for 20 years", "married 10 years" */
const isOfLife = ({ own }: ToldTime): boolean => hasKind(own, 'in-life');

/** "never had this in 20 years" */
const isOfNever = ({ own }: ToldTime): boolean =>
  own.some(({ word }) => word === 'never') && has(own, /^(had|seen|did|happened|saw|heard)$/);

/** "my buddy did his bar top and three days later it was gummy" */
const isOfAnother = ({ words, from, to }: ToldTime): boolean => isOfOthers(words, from, to);

/** "3 months I have been at this dresser", "I was gone for six weeks" */
const isOfMe = ({ before, after }: ToldTime): boolean => {
  const said = after.map(({ word }) => word).join(' ');
  return (
    /^(ive|weve|i have) been (at|working|stripping|sanding|on)/.test(said) ||
    (has(before, /^(gone|away)$/) && has(before, /^(i|we|was|were|been)$/))
  );
};

/** "an hour later my chest felt tight" */
const isOfBody = ({ own }: ToldTime): boolean =>
  hasKind(own, 'body') && has(own, /^(i|my|me)$/) && !own.some(isTop);

export const OF_PEOPLE = [
  isOfBody,
  isOfAnother,
  isOfMe,
  isOfPerson,
  isOfKnowing,
  isOfHabit,
  isOfLife,
  isOfNever,
];
