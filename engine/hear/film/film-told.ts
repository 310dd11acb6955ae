import { type Family, WIPED_OFF, WITH_FILM } from '../../model/family.ts';
import { DAY_HOURS } from '../../plain/time.ts';
import type { HeardFact } from '../words/heard.ts';
import { tellsOfWork } from '../words/laying.ts';
import type { Manner } from '../words/manner.ts';
import type { Match } from '../words/match.ts';
import type { Span, Word } from '../words/words.ts';
import { type DryHours, UNKNOWN_AIR } from './dry-hours.ts';
import { type Mention, mentionsOf } from './film-mentions.ts';
import { restsOfUse, softWords } from './soft.ts';

/** The fast end of a kind may be a third of its slow one. */
const SURELY_BEFORE = 3;
/** A month, the low end of how it is said; in the cold two months. */
const CURED_HOURS = 560;
const CURED_IN_THE_COLD = 60 * DAY_HOURS;
const COLD_CELSIUS = 15;
/** Where none of the kinds has figures: the slowest film, one of oil, has set in two days. Common practice, no source. */
const NO_FIGURES: readonly [touch: number, recoat: number] = [48, 96];
/**
 * A time is weighed from here on: one that is doubted by itself (0.6) is not, one just told that another speaks against
 * (0.72 × 0.92) is.
 */
const WEIGHED = 0.62;

/** Hours by which a time is judged. */
type Bars = {
  readonly touch: number;
  readonly recoat: number;
  readonly cured: number;
  /** No kind that is meant has set before. */
  readonly soonest: number;
};

const barsOf = (dry: DryHours, families: readonly string[], heard: readonly HeardFact[]): Bars => {
  const figures = (families.length ? families : WITH_FILM).flatMap((family) => {
    const hours = dry[family as Family];
    return hours ? [hours] : [];
  });
  const slowest = figures.length ? figures : [NO_FIGURES];
  const cold = heard.some(({ fact, value }) => fact === 'air-celsius' && Number(value) < COLD_CELSIUS);
  const isWiped = families.some((family) => (WIPED_OFF as readonly string[]).includes(family));
  return {
    touch: UNKNOWN_AIR * Math.max(...slowest.map(([touch]) => touch)),
    recoat: UNKNOWN_AIR * Math.max(...slowest.map(([, recoat]) => recoat)),
    cured: cold ? CURED_IN_THE_COLD : CURED_HOURS,
    // Open oil is wiped while it flows, so that it sets is never taken for told.
    soonest: isWiped
      ? 0
      : Math.min(...families.map((family) => (dry[family as Family]?.[0] ?? 0) / SURELY_BEFORE)),
  };
};

/** All that a text tells of how dry its film is. */
export type FilmTold = {
  readonly words: readonly Word[];
  readonly matches: readonly Match[];
  readonly manner: Manner;
  readonly heard: readonly HeardFact[];
  /** The kinds of finish that are meant. */
  readonly families: readonly string[];
  readonly mentions: readonly Mention[];
  /** Words of a film that is soft. */
  readonly soft: readonly Match[];
  /** Since the last coat was laid, in hours. */
  readonly time: HeardFact | undefined;
  readonly least: number;
  readonly most: number;
  /** The same time, where it is sure enough to be weighed. */
  readonly timed: HeardFact | undefined;
  readonly bars: Bars;
  /** Hours that the label gives the coat to dry. */
  readonly label: number | undefined;
  /** Where no work is told: what tells that the piece is old or in use. */
  readonly owned: readonly Span[] | undefined;
};

export const filmTold = (
  words: readonly Word[],
  matches: readonly Match[],
  manner: Manner,
  heard: readonly HeardFact[],
  families: readonly string[],
  dry: DryHours,
  label: number | undefined,
): FilmTold => {
  const time = heard.find(({ fact }) => fact === 'hours-since-coat');
  const [least = 0, most = 0] = time?.range ?? [];
  return {
    words,
    matches,
    manner,
    heard,
    families,
    mentions: mentionsOf(words, matches, manner),
    soft: softWords(words, matches, manner),
    time,
    least,
    most,
    timed: time && time.sure >= WEIGHED ? time : undefined,
    bars: barsOf(dry, families, heard),
    label,
    owned: tellsOfWork(words, matches, manner) ? undefined : restsOfUse(words, matches, manner, heard),
  };
};
