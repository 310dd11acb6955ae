import { isOfOthers } from './of-others.ts';
import { oneOf } from './one-of.ts';
import { has, type ToldTime } from './told-time.ts';
import { TOP } from './top-words.ts';
import type { Word } from './words.ts';

/** What somebody does for years, or waits for. */
const IN_LIFE = oneOf(
  'business|experience|doing|using|working|trade|woodworking|woodworker|career|professional|hobby|retired|married|pregnant|smoked|smoker|smokers|smoking|lived|living|staying|painter|finisher|usually|normally|typically|generally|guarantee|warranty|army|due',
);
const OFTEN_DONE = oneOf(
  'used|made|sprayed|brushed|refinished|built|sold|painted|stained|finished|done|varnished',
);
/** Whose age may be told beside a piece. */
const PERSON = oneOf(
  'son|daughter|boy|girl|kid|kids|toddler|child|baby|grandson|granddaughter|niece|nephew|dog|cat|he|she|im|husband|wife|mother|father|man|woman|guy',
);
/** What has an age that tells of its finish. */
const THING = oneOf(
  'tables?|desk|dresser|chest|cabinets?|cabinetry|chairs?|floors?|flooring|doors?|furniture|pieces?|piano|bench|house|home|finish|coats?|top|oak|cherry|maple|walnut|pine|mahogany|teak|fir|coffee|dining|kitchen|bed|crib|bookcase|shelf|shelves|deck|boat|sideboard|buffet|hutch|armoire|wardrobe|nightstand|stool|trim|wood|wooden|veneer|set|counter|countertops?|worktops?|stairs?|paneling|box|painted|varnished|hardwood|rental|building',
);

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
    !has(near(old + 1, old + 4, isInPart), THING) &&
    !has(near(old + 1, old + 2, isInPart), TOP)
  )
    return true;
  if (has(near(from - 5, from, isInPart), PERSON)) return true;
  // Behind a comma the age is that of whoever was named last.
  return (
    words[from]?.comma === true &&
    PERSON.test(words[from - 1]?.word ?? '') &&
    words[from - 1]?.sentence === sentence
  );
};

/** "20 years of poly" is what somebody knows. */
const isOfKnowing = ({ after }: ToldTime): boolean =>
  after[0]?.word === 'of' &&
  !/^(use|drying|dry|hard|waiting|curing|cure|brushing|rolling|spraying|wiping|applying|coating|pouring|laying|rest|resting)$/.test(
    after[1]?.word ?? '',
  );

/** "I have used it for years" */
const isOfHabit = ({ words, own, from, to }: ToldTime): boolean =>
  has(words.slice(from, to), /^(years?|yrs?|decades?)$/) &&
  has(own, /^(ive|weve|i|we)$/) &&
  has(own, OFTEN_DONE) &&
  has(own, /^for$/);

/** "in business for 20 years", "married 10 years" */
const isOfLife = ({ own }: ToldTime): boolean => has(own, IN_LIFE);

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

const BODY = oneOf(
  'chest|headache|headaches|lungs|throat|sick|dizzy|nauseous|eyes|nose|skin|rash|cough|coughing',
);

/** "an hour later my chest felt tight" */
const isOfBody = ({ own }: ToldTime): boolean => has(own, BODY) && has(own, /^(i|my|me)$/) && !has(own, TOP);

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
