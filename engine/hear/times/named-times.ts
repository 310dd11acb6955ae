import { isMerely } from '../words/laying.ts';
import type { Match } from '../words/match.ts';
import type { SpokenSpan } from '../words/spoken-span.ts';
import { DOUBTED, FOLLOWS, SAID } from '../words/sure.ts';
import type { Telling } from '../words/telling.ts';
import type { Span } from '../words/words.ts';
import { laidIn } from './laid-since.ts';
import { isOfAnotherStory } from './other-story.ts';
import { isElse } from './other-times.ts';
import {
  isDoubted,
  isOfFilm,
  isOfFlaw,
  isOfLaying,
  laysBeside,
  MONTH,
  speaksOfFilm,
  tightest,
} from './time-words.ts';

const FROM_TODAY = /^(ago|yesterday|last|this|now|just|today)$/;

/** A time that the content has a word for, `least` to `most` hours. */
type Named = Span & {
  readonly match: Match;
  readonly least: number;
  readonly likely: number;
  readonly most: number;
  /** "been a week or so" */
  readonly been: boolean;
};

const namedAt = ({ words }: Telling, match: Match): Named => {
  const [least = 0, likely = 0, most = 0] = match.of.map(Number);
  const from = words[match.from]?.from ?? 0;
  const to = words[match.to - 1]?.to ?? from;
  const been = words[match.from - 1]?.word === 'been' || words[match.from]?.word === 'been';
  return { match, from, to, least, likely, most, been };
};

/** "Planning for Saturday: they paint in the morning": nothing was laid, and the time is none that is over. */
const isOfPlan = ({ ear, words, matches, manner }: Telling, match: Match): boolean => {
  if (words.slice(match.from, match.to).some(({ word }) => FROM_TODAY.test(word))) return false;
  if (isOfFilm(words, matches, match.from) || laidIn(words, manner).length) return false;
  const said = words
    .map(({ word, sentence }, at) => (sentence === words[at + 1]?.sentence ? word : `${word}.`))
    .join(' ');
  return ear.says('planned', said) && !ear.says('done', said);
};

/** "we were to spray this morning, but it was foggy": what was meant to be done. */
const isWereTo = ({ words }: Telling, { from }: Match): boolean =>
  words.some(
    ({ word, clause }, at) =>
      at < from &&
      clause === words[from]?.clause &&
      /^(was|were)$/.test(word) &&
      words[at + 1]?.word === 'to',
  );

/** "It has been raining all day": what went on so long is told between. */
const isOfWhatWentOn = ({ words }: Telling, match: Match): boolean =>
  words[match.from]?.word === 'been' &&
  match.to - match.from > match.size &&
  /ing$/.test(words[match.from + 1]?.word ?? '');

/** Whether a time is that of no coat: planned, of the can, said by the way, or of another story. */
const isOfNoCoat = ({ ear, words, matches, manner, lays }: Telling, match: Match): boolean =>
  manner.notYet(match) ||
  isElse(words, matches, match.from, match.to) ||
  isMerely(words, match.from) ||
  isWereTo({ ear, words, matches, manner, lays }, match) ||
  isOfWhatWentOn({ ear, words, matches, manner, lays }, match) ||
  isOfPlan({ ear, words, matches, manner, lays }, match) ||
  (words[match.to - 1]?.word === 'ago' && isOfAnotherStory(words, match.to));

/** "we bought it years ago": its coat need not be so old. */
const isOfPiece = ({ match, least }: Named, { words, matches, manner }: Telling): boolean =>
  least >= MONTH && isDoubted(words, matches, match.from, match.to, { old: false, ago: false }, manner);

/** "yesterday it rained": where nothing is told of laying a coat, and nothing of a film or its flaw beside it. */
const isOfAnything = ({ match, least }: Named, { words, matches, lays }: Telling): boolean => {
  const ofFlaw = words[match.to - 1]?.word === 'later' && isOfFlaw(words, matches, match.from);
  return least < MONTH && !lays && !ofFlaw && !isOfFilm(words, matches, match.from);
};

/** "the varnish went on yesterday" */
const isToldOfFilm = ({ been, match }: Named, { ear, words }: Telling): boolean =>
  been || speaksOfFilm(ear, words, match.from);

/** How sure a time is; the first that fits counts. */
const SURE_BY: readonly (readonly [is: (time: Named, telling: Telling) => boolean, sure: number])[] = [
  [isOfPiece, DOUBTED],
  [isOfAnything, DOUBTED],
  [isToldOfFilm, SAID],
  [({ least }) => least < MONTH, FOLLOWS],
];

const spokenOf = (time: Named, telling: Telling): SpokenSpan => {
  const { from, to, match, least, likely, most, been } = time;
  const { words } = telling;
  return {
    from,
    to,
    least,
    likely,
    most,
    sure: SURE_BY.find(([is]) => is(time, telling))?.[1] ?? DOUBTED,
    laid: isOfLaying(words, match.from) || been,
    near: laysBeside(words, match.from),
    now: been || words.slice(match.from, match.to).some(({ word }) => FROM_TODAY.test(word)),
  };
};

/** Times that have a word of their own: "yesterday", "a few weeks ago", where none in `found` stands over the same words. */
export const namedTimes = (telling: Telling, found: readonly SpokenSpan[]): SpokenSpan[] => {
  const named: SpokenSpan[] = [];
  for (const match of tightest(telling.matches.filter(({ kind }) => kind === 'times'))) {
    if (isOfNoCoat(telling, match)) continue;
    const time = namedAt(telling, match);
    const isOver = (one: Span) => one.from < time.to && time.from < one.to;
    if (!found.some(isOver) && !named.some(isOver)) named.push(spokenOf(time, telling));
  }
  return named;
};
