import { ASKED } from '../knowledge/known-questions.ts';
import type { FactName } from '../model/facts.ts';
import { type Family, WITH_FILM } from '../model/family.ts';
import { STAGES, type Stage } from '../model/stage.ts';
import { DAY_HOURS } from '../plain/time.ts';
import { bareStage } from './bare-stage.ts';
import { type HeardFact, SURE } from './heard.ts';
import { isLaying, isMerely, isOfTheCan, tellsOfWork } from './laying.ts';
import type { Manner } from './manner.ts';
import type { Match } from './match.ts';
import { isHowItIsDone, isInCan, isNotYetDry, isOfThen } from './not-dry.ts';
import { senseOfSign } from './sense.ts';
import {
  isChanged,
  isDent,
  isFineTillUsed,
  isOfLayer,
  isPieceOld,
  isTheirs,
  isUsedSoft,
  neverHard,
  restsOfUse,
  saidOverdue,
  softWords,
  spanIn,
} from './soft.ts';
import { DOUBTED, FOLLOWS, JUST, OUTRIGHT, SAID } from './sure.ts';
import { isTopNoun } from './top-words.ts';
import type { Span, Word } from './words.ts';

/**
 * Hours until a coat of each kind is dry to touch and ready for the next, the slow end of the product figures, doubled
 * for air that is not known. Common practice, no source.
 */
export type DryHours = Readonly<Partial<Record<Family, readonly [touch: number, recoat: number]>>>;

/** Air that is not known may be cold or damp. */
export const UNKNOWN_AIR = 2;
/** The fast end of a kind may be a third of its slow one. */
const SURELY_BEFORE = 3;
/** A month, the low end of how it is said; in the cold two months. */
const CURED_HOURS = 560;
const CURED_IN_THE_COLD = 60 * DAY_HOURS;
const COLD_CELSIUS = 15;
/** What sticks after so long was hard once, unless it is said that it never was. */
const SOFTENED_HOURS = 1400;

const slowest = (dry: DryHours, families: readonly string[]): readonly [number, number] => {
  const known = families.flatMap((family) => dry[family as Family] ?? []);
  const list = families
    .map((family) => dry[family as Family])
    .filter((hours): hours is readonly [number, number] => hours !== undefined);
  if (known.length === 0) return [48, 96];
  return [Math.max(...list.map(([touch]) => touch)), Math.max(...list.map(([, recoat]) => recoat))];
};

type Mention = {
  readonly stage: Stage;
  readonly span: Span;
  readonly size: number;
  /** How it feels, and not only that it dried: no later stage is meant. */
  readonly felt: boolean;
};

const mentionsOf = (words: readonly Word[], matches: readonly Match[], manner: Manner): Mention[] =>
  matches.flatMap((match) => {
    const [fact, value] = match.of;
    if (match.kind !== 'fact' || fact !== 'stage' || manner.notYet(match) || manner.feared(match)) return [];
    if (manner.over(match) || isMerely(words, match.from) || isHowItIsDone(words, match)) return [];
    if (isOfThen(words, match)) return [];
    // "I'm going to lay three coats"
    if (words.slice(match.from, match.to).some(({ word }) => word === 'going')) return [];
    const span = spanIn(words, match);
    const denied = manner.denied(match) !== undefined;
    const stage = value as Stage;
    if (stage === 'setting' && isInCan(words, match)) return [];
    if (rank(stage) >= rank('dry-to-touch') && isNotYetDry(words, match)) return [];
    if (stage !== 'wet' && isOfLayer(words, matches, match)) return [];
    const felt = words.slice(match.from, match.to).some(({ word }) => /^(touch|feels?)$/.test(word));
    // "paint won't stick to my dresser" tells of its grip, and of no film that is dry
    if (denied && isGrip(words, match)) return [];
    // "not dry" is setting; "not sticky" is dry to the touch; a denied "cured" says nothing.
    if (denied)
      return stage === 'dry-to-touch'
        ? [{ stage: 'setting' as const, span, size: match.size, felt }]
        : stage === 'setting'
          ? [{ stage: 'dry-to-touch' as const, span, size: match.size, felt }]
          : [];
    return [{ stage, span, size: match.size, felt }];
  });

const BODY =
  /^(hand|hands|skin|arm|arms|finger|fingers|leg|legs|sleeve|shirt|clothes|touch|anything|everything)$/;
const isGrip = (words: readonly Word[], { from, to }: Match): boolean =>
  words[from]?.word === 'stick' &&
  words[to]?.part === words[from]?.part &&
  !words.slice(from, to + 2).some(({ word }) => BODY.test(word));

const rank = (stage: Stage): number => STAGES.indexOf(stage);

/** Whether the time was told of a film: where work is told, its sentence or the one before must speak of it. */
const isOfFilm = (
  words: readonly Word[],
  matches: readonly Match[],
  manner: Manner,
  time: HeardFact,
): boolean => {
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

/** "Sanded between coats and went through to the wood", and nothing laid since: what can be sanded is dry enough for it. */
const sandedLast = (words: readonly Word[], matches: readonly Match[], manner: Manner): Match | undefined => {
  const through = matches.find(
    (match) =>
      match.sense === senseOfSign(ASKED.bareWoodShows, 'yes') &&
      manner.denied(match) === undefined &&
      !manner.feared(match) &&
      words
        .slice(Math.max(0, match.from - 12), match.to)
        .some(({ word }) => /^(sanded|sanding|sander|sandpaper)$/.test(word)),
  );
  const laidSince = words.some((_, at) => through !== undefined && at >= through.to && isLaying(words, at));
  return laidSince ? undefined : through;
};

/**
 * How dry the film is, from what is said of it and from the hours since it was laid. Never drier than both allow;
 * where words contradict each other nothing is taken as told.
 */
export const stageFacts = (
  words: readonly Word[],
  matches: readonly Match[],
  manner: Manner,
  heard: readonly HeardFact[],
  families: readonly string[],
  dry: DryHours,
  labelHours?: number,
): HeardFact[] => {
  if (isOfTheCan(words)) return [];
  const spelledOut = mentionsOf(words, matches, manner);
  const bare = spelledOut.length ? undefined : bareStage(words, matches);
  const mentions: readonly Mention[] = bare ? [{ ...bare, size: 1, felt: false }] : spelledOut;
  const time = heard.find(({ fact }) => fact === 'hours-since-coat');
  const [least = 0, most = 0] = time?.range ?? [];
  const timed = time && time.sure >= 0.62;
  const softly = softWords(words, matches, manner);
  const soft = softly.length > 0;
  const onlyDents = soft && softly.every((match) => isDent(words, match));
  const cold = heard.some(({ fact, value }) => fact === 'air-celsius' && Number(value) < COLD_CELSIUS);
  const curedFrom = cold ? CURED_IN_THE_COLD : CURED_HOURS;
  const [touch, recoat] = slowest(dry, families.length ? families : WITH_FILM).map(
    (hours) => hours * UNKNOWN_AIR,
  ) as [number, number];
  const wiped = families.some((family) => /^(?:oil|hardwax-oil|wax)$/.test(family));
  // Open oil is wiped while it flows, so that it sets is never taken for told.
  const soonest = wiped
    ? 0
    : Math.min(...families.map((family) => (dry[family as Family]?.[0] ?? 0) / SURELY_BEFORE));
  const owned = tellsOfWork(words, matches, manner) ? undefined : restsOfUse(words, matches, manner, heard);
  const softened =
    soft &&
    !neverHard(matches, manner) &&
    (isFineTillUsed(matches) ||
      (timed
        ? least >= SOFTENED_HOURS && (isChanged(words, matches) || isPieceOld(words, time, matches, heard))
        : !timed &&
          !tellsOfWork(words, matches, manner) &&
          (owned || isTheirs(words, matches)) &&
          (isChanged(words, matches) || (owned && isUsedSoft(matches)))));
  const isSoft = soft && !softened;
  // Where the label is told, three times its hours are the bar; else those of the kind.
  const overLabel = labelHours !== undefined && timed && Number(time.value) >= 3 * labelHours;
  const underLabel = labelHours !== undefined && timed && !overLabel;
  const overdue =
    isSoft && (overLabel || (!underLabel && !onlyDents && timed && least > 3 * Math.min(touch, 24)));
  // "never dried" of a coat of this morning is said too early.
  const isEarly = timed && most <= 3 * Math.min(touch, 24);
  // What somebody lives with and is soft is no fresh film, though nobody tells that it was hard once.
  const oldAndSoft = soft && !softened && !timed && owned !== undefined;
  const isLate =
    overdue || oldAndSoft || (isSoft && !isEarly && !underLabel && saidOverdue(words, matches, manner));
  const standing: HeardFact[] =
    isLate || (underLabel && isSoft)
      ? [
          {
            fact: 'overdue' as FactName,
            value: isLate ? 'yes' : 'no',
            sure: SAID,
            rests: time?.rests ?? [],
            against: [],
          },
        ]
      : [];
  const say = (stage: Stage, sure: number, rests: readonly Span[], against: readonly Span[]): HeardFact[] => [
    { fact: 'stage', value: stage, sure, rests, against },
    ...standing,
  ];
  if (softened) return say('cured', JUST, time?.rests ?? softly.map((match) => spanIn(words, match)), []);
  const wet = mentions.find(
    ({ stage, span }) =>
      stage === 'wet' &&
      words.some((word) => word.word === 'still' && word.from >= span.from && word.to <= span.to),
  );
  if (soft && wet && !isLate) return say('wet', FOLLOWS, [wet.span], []);
  if (soft) {
    const rests = mentions.filter(({ stage }) => stage === 'setting').map(({ span }) => span);
    // What is sticky long past its time no longer sets; it is judged as an overdue film.
    const skinned = onlyDents && timed && least > 1.5 * touch;
    return say(isLate || skinned ? 'dry-to-touch' : 'setting', timed ? SAID : FOLLOWS, rests, []);
  }
  const byTime: Stage | undefined =
    !timed || time.sure < SURE || !isOfFilm(words, matches, manner, time)
      ? undefined
      : most <= 0.35
        ? 'wet'
        : least >= curedFrom
          ? 'cured'
          : least > 1.5 * recoat
            ? 'recoatable'
            : least > 1.5 * touch
              ? 'dry-to-touch'
              : undefined;
  const said = mentions.filter(({ stage }) => stage !== 'setting');
  const ranks = said.map(({ stage }) => rank(stage));
  const wettest = STAGES[Math.min(...ranks)];
  const driest = STAGES[Math.max(...ranks)];
  const spans = (of: Stage) => said.filter(({ stage }) => stage === of).map(({ span }) => span);
  // Words of wet beside a time long past tell of how it was.
  const spoken = wettest === 'wet' && (driest !== 'wet' || (byTime && byTime !== 'wet')) ? undefined : driest;
  // A piece that was bought or is lived with, and no work on it told: its film is old, whatever else dried on it.
  const isNew =
    time && most < curedFrom && !matches.some(({ sense }) => sense === senseOfSign(ASKED.cameInUse, 'yes'));
  if (owned && !isNew && byTime !== 'wet' && spoken !== 'wet') return say('cured', FOLLOWS, owned, []);
  if (spoken === 'dry-to-touch' && byTime && rank(byTime) > rank(spoken) && !said.some(({ felt }) => felt))
    return say(byTime, FOLLOWS, [...spans(spoken), ...(time?.rests ?? [])], []);
  if (spoken && byTime) {
    const stage = rank(spoken) <= rank(byTime) ? spoken : byTime;
    // The hours can not be known to the hour where the words say more.
    const both = spoken !== 'wet' && rank(byTime) < rank(spoken) ? byTime : stage;
    return say(both, spoken === byTime ? OUTRIGHT : FOLLOWS, [...spans(spoken), ...(time?.rests ?? [])], []);
  }
  // Words of a hard film beside too short a time: no more than dry is sure.
  if (spoken && timed && most < curedFrom && rank(spoken) > rank('dry-to-touch'))
    return say('dry-to-touch', JUST, [...spans(spoken), ...time.rests], []);
  if (spoken)
    return say(spoken, spoken === 'cured' || spoken === 'recoatable' ? JUST : FOLLOWS, spans(spoken), []);
  if (byTime && wettest !== 'wet') return say(byTime, JUST, time?.rests ?? [], []);
  if (byTime) return say(byTime, DOUBTED, time?.rests ?? [], spans('wet'));
  const sanded = timed || mentions.length ? undefined : sandedLast(words, matches, manner);
  if (sanded) return say('recoatable', JUST, [spanIn(words, sanded)], []);
  // So soon after it was laid no kind that is meant has dried: hands are off, whatever else is told.
  if (
    timed &&
    time.sure >= SURE &&
    !mentions.length &&
    families.length &&
    least > 0.35 &&
    most <= soonest &&
    isOfFilm(words, matches, manner, time)
  )
    return say('setting', JUST, time.rests, []);
  return [];
};
