import { WIPED_OFF } from '../../model/family.ts';
import { DAY_HOURS } from '../../plain/time.ts';
import type { HeardFact } from '../words/heard.ts';
import { tellsOfWork } from '../words/laying.ts';
import { FOLLOWS, JUST, SAID } from '../words/sure.ts';
import { isKind } from '../words/words.ts';
import { BY_HOURS, type Finding, firstOf, stageFact, timeOf } from './film-finding.ts';
import type { Mention } from './film-mentions.ts';
import type { FilmTold } from './film-told.ts';
import {
  isChanged,
  isDent,
  isFineTillUsed,
  isPieceOld,
  isTheirs,
  isUsedSoft,
  neverHard,
  saidOverdue,
  spanIn,
} from './soft.ts';

/** What sticks after so long was hard once, unless it is said that it never was. */
const SOFTENED_HOURS = 1400;
/** A film is overdue after so many times its hours. */
const OVERDUE_TIMES = 3;

const isOnlyDented = ({ soft, words }: FilmTold): boolean =>
  soft.length > 0 && soft.every((match) => isDent(words, match));

/** "finished it two years ago and it has gone gummy" */
const isSoftenedByAge = ({ words, matches, heard, timed, least }: FilmTold): boolean =>
  timed !== undefined &&
  least >= SOFTENED_HOURS &&
  (isChanged(words, matches) || isPieceOld(words, timed, matches, heard));

/** "my kitchen cabinets are getting sticky", with no time told and no work on them */
const isSoftenedInUse = ({ words, matches, manner, timed, owned }: FilmTold): boolean =>
  timed === undefined &&
  !tellsOfWork(words, matches, manner) &&
  (owned !== undefined || isTheirs(words, matches)) &&
  (isChanged(words, matches) || (owned !== undefined && isUsedSoft(matches)));

/** "after a year it still comes off on a rag": it never was hard. */
const isStillSoft = ({ soft, words }: FilmTold): boolean =>
  soft.some(({ from, to }) => words.slice(from, to).some(({ word }) => word === 'still'));

/** "they gave her a mix to refinish it, and what is there is soft": it was dissolved, and has not set again. */
const isDissolved = ({ words }: FilmTold): boolean => words.some((word) => isKind(word, 'dissolving'));

/** Whether what is soft was hard once. */
const isSoftened = (film: FilmTold): boolean =>
  film.soft.length > 0 &&
  !isStillSoft(film) &&
  !isDissolved(film) &&
  !neverHard(film.matches, film.manner) &&
  // "fine for a month, then a wet glass stood on it"
  (isFineTillUsed(film.matches) || isSoftenedByAge(film) || isSoftenedInUse(film));

/** What was to be wiped off and lies there still: after a day no waiting helps. Common practice, no source. */
const isUnwiped = ({ matches, timed, least, families }: FilmTold): boolean =>
  timed !== undefined &&
  least >= DAY_HOURS &&
  families.some((family) => (WIPED_OFF as readonly string[]).includes(family)) &&
  matches.some(({ sense }) => sense === 'cue unwiped');

/** What is soft and never was hard: whether it is overdue, and `undefined` where nothing tells it. */
const overdueOf = (film: FilmTold): 'yes' | 'no' | undefined => {
  const { words, matches, manner, label, timed, least, most, bars, owned } = film;
  // What somebody lives with is no fresh film, though nobody tells that it was hard once.
  if ((!timed && owned) || isUnwiped(film)) return 'yes';
  // Where the label is told, its hours are the bar; else those of the kind.
  if (timed && label !== undefined) return Number(timed.value) >= OVERDUE_TIMES * label ? 'yes' : 'no';
  // No kind is given more than a day to be dry to touch.
  const late = OVERDUE_TIMES * Math.min(bars.touch, DAY_HOURS);
  if (timed && least > late && !isOnlyDented(film)) return 'yes';
  // "never dried" of a coat of this morning is said too early.
  const isEarly = timed && most <= late;
  return !isEarly && saidOverdue(words, matches, manner) ? 'yes' : undefined;
};

type SoftFilm = FilmTold & {
  readonly softened: boolean;
  readonly overdue: 'yes' | 'no' | undefined;
};

/** "my table went gummy after two years": it was hard once. */
const softened = ({ softened, time, soft, words }: SoftFilm): Finding | undefined =>
  softened
    ? { stage: 'cured', sure: JUST, rests: time?.rests ?? soft.map((match) => spanIn(words, match)) }
    : undefined;

/** "sticky, still wet in places" */
const stillWet = ({ mentions, words, overdue }: SoftFilm): Finding | undefined => {
  const isStill = ({ span }: Mention) =>
    words.some(({ word, from, to }) => word === 'still' && from >= span.from && to <= span.to);
  const wet = mentions.find((one) => one.stage === 'wet' && isStill(one));
  return wet && overdue !== 'yes' ? { stage: 'wet', sure: FOLLOWS, rests: [wet.span] } : undefined;
};

/** "it is sticky": what is so long past its time no longer sets; it is judged as an overdue film. */
const sticky = (film: SoftFilm): Finding => {
  const { mentions, timed, least, bars, overdue } = film;
  // "ten days, and it is still damp": so late it has not even a skin
  const isWet = film.soft.some(({ from, to }) =>
    film.words.slice(from, to).some(({ word }) => /^(damp|wet|liquid)$/.test(word)),
  );
  // "laid 3 days ago, my nail leaves a mark": there is a skin that is dry
  const isSkinned = timed !== undefined && least > BY_HOURS * bars.touch && isOnlyDented(film);
  return {
    stage: !isWet && (overdue === 'yes' || isSkinned) ? 'dry-to-touch' : 'setting',
    sure: timed ? SAID : FOLLOWS,
    rests: mentions.filter(({ stage }) => stage === 'setting').map(({ span }) => span),
  };
};

/** Each is named by its example; the first that says something counts. */
const SOFT_RULES: readonly ((film: SoftFilm) => Finding | undefined)[] = [softened, stillWet, sticky];

/** How dry a film is that is said to be soft, and whether it is overdue. */
export const softFilm = (film: FilmTold): HeardFact[] => {
  const isOnceHard = isSoftened(film);
  const overdue = isOnceHard ? undefined : overdueOf(film);
  const found = firstOf(SOFT_RULES, { ...film, softened: isOnceHard, overdue });
  return [
    ...(found ? [stageFact(found)] : []),
    ...(overdue
      ? [{ fact: 'overdue' as const, value: overdue, sure: SAID, rests: timeOf(film), against: [] }]
      : []),
  ];
};
