import { ASKED } from '../../knowledge/known-questions.ts';
import { STAGES, type Stage } from '../../model/stage.ts';
import { type HeardFact, SURE } from '../words/heard.ts';
import { isLaying, tellsOfWork } from '../words/laying.ts';
import type { Match } from '../words/match.ts';
import { senseOfSign } from '../words/sense.ts';
import { DOUBTED, FOLLOWS, JUST, OUTRIGHT } from '../words/sure.ts';
import { isTopNoun } from '../words/top-words.ts';
import type { Span } from '../words/words.ts';
import { BY_HOURS, type Finding, firstOf, stageFact, timeOf } from './film-finding.ts';
import { type Mention, rank } from './film-mentions.ts';
import type { FilmTold } from './film-told.ts';
import { spanIn } from './soft.ts';

/** Twenty minutes: no coat has begun to set. Common practice, no source. */
const SURELY_WET = 0.35;

/** Whether the time was told of a film: where work is told, its sentence or the one before must speak of it. */
const isOfFilm = ({ words, matches, manner }: FilmTold, time: HeardFact): boolean => {
  if (!tellsOfWork(words, matches, manner)) return true;
  const { sentence } = words.find(({ from }) => from >= (time.rests[0]?.from ?? 0)) ?? {};
  const near = (at: number) => sentence !== undefined && sentence - at <= 1 && sentence - at >= 0;
  return (
    words.some((word, at) => near(word.sentence) && (isTopNoun(word) || isLaying(words, at))) ||
    matches.some(
      ({ kind, from }) => (kind === 'sign' || kind === 'fact') && words[from]?.sentence === sentence,
    )
  );
};

const stageBy = ({ least, most, bars }: FilmTold): Stage | undefined => {
  if (most <= SURELY_WET) return 'wet';
  if (least >= bars.cured) return 'cured';
  if (least > BY_HOURS * bars.recoat) return 'recoatable';
  return least > BY_HOURS * bars.touch ? 'dry-to-touch' : undefined;
};

type FirmFilm = FilmTold & {
  /** Whether its time is taken as told. */
  readonly isTimeTold: boolean;
  /** The stage by its time alone. */
  readonly byTime: Stage | undefined;
  /** What is said of it, but that it sets. */
  readonly said: readonly Mention[];
  readonly isWetSaid: boolean;
  /** The stage by its words alone. */
  readonly spoken: Stage | undefined;
};

const judged = (film: FilmTold): FirmFilm => {
  const { time } = film;
  const isTimeTold = time !== undefined && time.sure >= SURE && isOfFilm(film, time);
  const byTime = isTimeTold ? stageBy(film) : undefined;
  const said = film.mentions.filter(({ stage }) => stage !== 'setting');
  const isWetSaid = said.some(({ stage }) => stage === 'wet');
  const driest = STAGES[Math.max(...said.map(({ stage }) => rank(stage)))];
  // Words of wet beside a drier stage, or a time long past, tell of how it was.
  const isOfBefore = isWetSaid && (driest !== 'wet' || (byTime !== undefined && byTime !== 'wet'));
  return { ...film, isTimeTold, byTime, said, isWetSaid, spoken: isOfBefore ? undefined : driest };
};

const spansOf = ({ said }: FirmFilm, of: Stage): Span[] =>
  said.filter(({ stage }) => stage === of).map(({ span }) => span);

/** "a hot mug left a white ring": the piece is in use and no work on it is told, so its film is old, whatever else dried on it. */
const ofOldPiece = ({ time, most, bars, matches, owned, byTime, spoken }: FirmFilm): Finding | undefined => {
  const isUsed = matches.some(({ sense }) => sense === senseOfSign(ASKED.cameInUse, 'yes'));
  const isNew = time !== undefined && most < bars.cured && !isUsed;
  return owned && !isNew && byTime !== 'wet' && spoken !== 'wet'
    ? { stage: 'cured', sure: FOLLOWS, rests: owned }
    : undefined;
};

/** "it dried, that was three weeks ago": by its hours it has come further, where no hand felt how far. */
const driedSince = (film: FirmFilm): Finding | undefined => {
  const { spoken, byTime, said } = film;
  const isFurther = spoken === 'dry-to-touch' && byTime !== undefined && rank(byTime) > rank(spoken);
  return isFurther && !said.some(({ felt }) => felt)
    ? { stage: byTime, sure: FOLLOWS, rests: [...spansOf(film, spoken), ...timeOf(film)] }
    : undefined;
};

/** "laid yesterday, it is hard": the wetter of both. */
const byBoth = (film: FirmFilm): Finding | undefined => {
  const { spoken, byTime } = film;
  if (!spoken || !byTime) return undefined;
  return {
    stage: rank(spoken) <= rank(byTime) ? spoken : byTime,
    sure: spoken === byTime ? OUTRIGHT : FOLLOWS,
    rests: [...spansOf(film, spoken), ...timeOf(film)],
  };
};

/** "oil-based poly, hard after three hours": words of a hard film beside too short a time; no more than dry is sure. */
const hardTooSoon = (film: FirmFilm): Finding | undefined => {
  const { spoken, timed, most, bars } = film;
  return spoken && timed && most < bars.cured && rank(spoken) > rank('dry-to-touch')
    ? { stage: 'dry-to-touch', sure: JUST, rests: [...spansOf(film, spoken), ...timed.rests] }
    : undefined;
};

/** "the coat is dry" */
const byWords = (film: FirmFilm): Finding | undefined => {
  const { spoken } = film;
  if (!spoken) return undefined;
  const isHard = spoken === 'cured' || spoken === 'recoatable';
  return { stage: spoken, sure: isHard ? JUST : FOLLOWS, rests: spansOf(film, spoken) };
};

/** "brushed it on two months ago": less sure where it was wet in between. */
const byHours = (film: FirmFilm): Finding | undefined => {
  const { byTime, isWetSaid } = film;
  if (!byTime) return undefined;
  return {
    stage: byTime,
    sure: isWetSaid ? DOUBTED : JUST,
    rests: timeOf(film),
    against: spansOf(film, 'wet'),
  };
};

const SANDED = /^(sanded|sanding|sander|sandpaper)$/;
/** Words before the wood that shows among which it is told that it was sanded. */
const NEAR_SANDED = 12;

/** "Sanded between coats and went through to the wood", and nothing laid since: what can be sanded is dry enough for it. */
const sandedLast = ({ words, matches, manner, timed, mentions }: FirmFilm): Finding | undefined => {
  if (timed || mentions.length) return undefined;
  const isSanded = (match: Match) =>
    match.sense === senseOfSign(ASKED.bareWoodShows, 'yes') &&
    manner.denied(match) === undefined &&
    !manner.feared(match) &&
    words.slice(Math.max(0, match.from - NEAR_SANDED), match.to).some(({ word }) => SANDED.test(word));
  const through = matches.find(isSanded);
  if (!through || words.some((_, at) => at >= through.to && isLaying(words, at))) return undefined;
  return { stage: 'recoatable', sure: JUST, rests: [spanIn(words, through)] };
};

/** "laid it an hour ago": so soon no kind that is meant has dried. Hands are off, whatever else is told. */
const laidJustNow = (film: FirmFilm): Finding | undefined => {
  const { isTimeTold, mentions, families, least, most, bars } = film;
  return isTimeTold && !mentions.length && families.length && least > SURELY_WET && most <= bars.soonest
    ? { stage: 'setting', sure: JUST, rests: timeOf(film) }
    : undefined;
};

/** Each is named by its example; the first that says something counts. */
const FIRM_RULES: readonly ((film: FirmFilm) => Finding | undefined)[] = [
  ofOldPiece,
  driedSince,
  byBoth,
  hardTooSoon,
  byWords,
  byHours,
  sandedLast,
  laidJustNow,
];

/** How dry a film is of which nothing says that it is soft. */
export const firmFilm = (film: FilmTold): HeardFact[] => {
  const found = firstOf(FIRM_RULES, judged(film));
  return found ? [stageFact(found)] : [];
};
