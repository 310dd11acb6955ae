import type { FactName } from '../model/facts.ts';
import { FAMILIES, type Family } from '../model/family.ts';
import { STAGES, type Stage } from '../model/stage.ts';
import type { HeardFact } from './heard.ts';
import type { Manner } from './manner.ts';
import type { Match } from './match.ts';
import type { Span, Word } from './words.ts';

/**
 * Hours until a coat of each kind is dry to touch and ready for the next, the slow end of the product figures, doubled
 * for air that is not known. Common practice, no source.
 */
export type DryHours = Readonly<Partial<Record<Family, readonly [touch: number, recoat: number]>>>;

/** Air that is not known may be cold or damp. */
const UNKNOWN_AIR = 2;
/** A month, the low end of how it is said; in the cold two months. */
const CURED_HOURS = 560;
const CURED_IN_THE_COLD = 1440;
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

/** Whether a layer below is named before the words in their clause: "the stain was not dry". */
const isOfLayer = (words: readonly Word[], matches: readonly Match[], { from }: Match): boolean =>
  matches.some(
    (one) =>
      one.sense === 'cue other-layer' && one.to <= from && words[one.from]?.clause === words[from]?.clause,
  );

const mentionsOf = (words: readonly Word[], matches: readonly Match[], manner: Manner): Mention[] =>
  matches.flatMap((match) => {
    const [fact, value] = match.of;
    if (match.kind !== 'fact' || fact !== 'stage' || manner.notYet(match) || manner.feared(match)) return [];
    if (manner.over(match)) return [];
    const span = spanIn(words, match);
    const denied = manner.denied(match) !== undefined;
    const stage = value as Stage;
    if ((denied || stage === 'setting') && isOfLayer(words, matches, match)) return [];
    const felt = words.slice(match.from, match.to).some(({ word }) => /^(touch|feels?)$/.test(word));
    // "not dry" is setting; "not sticky" is dry to the touch; a denied "cured" says nothing.
    if (denied)
      return stage === 'dry-to-touch'
        ? [{ stage: 'setting' as const, span, size: match.size, felt }]
        : stage === 'setting'
          ? [{ stage: 'dry-to-touch' as const, span, size: match.size, felt }]
          : [];
    return [{ stage, span, size: match.size, felt }];
  });

const spanIn = (words: readonly Word[], { from, to }: Match): Span => ({
  from: words[from]?.from ?? 0,
  to: words[to - 1]?.to ?? 0,
});

const rank = (stage: Stage): number => STAGES.indexOf(stage);

/** Words of a film that is not sound, whatever its age. */
const isSoft = (words: readonly Word[], matches: readonly Match[], manner: Manner): boolean =>
  matches.some(
    (match) =>
      !isOfLayer(words, matches, match) &&
      ((match.kind === 'fact' && (match.of[0] === 'overdue' || match.of[1] === 'setting')) ||
        (match.kind === 'sign' && match.of[0] === 'still-tacky' && match.of[1] === 'yes')) &&
      manner.denied(match) === undefined &&
      !manner.over(match) &&
      !manner.feared(match),
  );

/** Whether any work on a coat is told: then a mark of use does not tell how old the last coat is. */
const isWorkedOn = (words: readonly Word[]): boolean =>
  words.some(({ word }) =>
    /^(coats?|layers?|brushed|rolled|sprayed|applied|sanded|primed|painted|stripped|refinished|recoated)$/.test(
      word,
    ),
  );

/** Said outright: it never got hard, or still is not. */
const neverHard = (matches: readonly Match[], manner: Manner): boolean =>
  matches.some(
    (match) => match.kind === 'fact' && match.of[0] === 'overdue' && manner.denied(match) === undefined,
  );

/** A mark of use, where nothing tells that a coat was laid of late: a film long since cured. */
const isInUse = (matches: readonly Match[], manner: Manner): Match | undefined =>
  matches.find(
    (match) =>
      match.kind === 'sign' &&
      match.of[0] === 'came-in-use' &&
      match.of[1] === 'yes' &&
      manner.denied(match) === undefined &&
      !manner.feared(match) &&
      !manner.notYet(match),
  );

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
): HeardFact[] => {
  const mentions = mentionsOf(words, matches, manner);
  const time = heard.find(({ fact }) => fact === 'hours-since-coat');
  const [least = 0, most = 0] = time?.range ?? [];
  const timed = time && time.sure >= 0.62;
  const soft = isSoft(words, matches, manner);
  const cold = heard.some(({ fact, value }) => fact === 'air-celsius' && Number(value) < COLD_CELSIUS);
  const curedFrom = cold ? CURED_IN_THE_COLD : CURED_HOURS;
  const [touch, recoat] = slowest(dry, families.length ? families : FAMILIES.slice(0, 6)).map(
    (hours) => hours * UNKNOWN_AIR,
  ) as [number, number];
  const softened = soft && timed && least >= SOFTENED_HOURS && !neverHard(matches, manner);
  const overdue = soft && !softened && timed && least > 3 * Math.min(touch, 24);
  const late: HeardFact[] = overdue
    ? [
        {
          fact: 'overdue' as FactName,
          value: 'yes',
          sure: 0.8,
          rests: time?.rests ?? [],
          against: [],
        },
      ]
    : [];
  const say = (stage: Stage, sure: number, rests: readonly Span[], against: readonly Span[]): HeardFact[] => [
    { fact: 'stage', value: stage, sure, rests, against },
    ...late,
  ];
  if (softened && time) return say('cured', 0.72, time.rests, []);
  if (soft) {
    const rests = mentions.filter(({ stage }) => stage === 'setting').map(({ span }) => span);
    // What is sticky long past its time no longer sets; it is judged as an overdue film.
    return say(overdue ? 'dry-to-touch' : 'setting', timed ? 0.82 : 0.75, rests, []);
  }
  const byTime: Stage | undefined = !timed
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
  if (spoken === 'dry-to-touch' && byTime && rank(byTime) > rank(spoken) && !said.some(({ felt }) => felt))
    return say(byTime, 0.75, [...spans(spoken), ...(time?.rests ?? [])], []);
  if (spoken && byTime) {
    const stage = rank(spoken) <= rank(byTime) ? spoken : byTime;
    // The hours can not be known to the hour where the words say more.
    const both = spoken !== 'wet' && rank(byTime) < rank(spoken) ? byTime : stage;
    return say(both, spoken === byTime ? 0.9 : 0.75, [...spans(spoken), ...(time?.rests ?? [])], []);
  }
  if (spoken)
    return say(spoken, spoken === 'cured' || spoken === 'recoatable' ? 0.72 : 0.75, spans(spoken), []);
  const used = byTime || isWorkedOn(words) ? undefined : isInUse(matches, manner);
  if (used && !said.length) return say('cured', timed ? 0.6 : 0.74, [spanIn(words, used)], []);
  if (byTime && wettest !== 'wet') return say(byTime, 0.72, time?.rests ?? [], []);
  if (byTime) return say(byTime, 0.6, time?.rests ?? [], spans('wet'));
  return [];
};
