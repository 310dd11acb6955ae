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
/** Two months: longer than any kind of finish takes to cure. */
const CURED_HOURS = 1440;

const slowest = (dry: DryHours, families: readonly string[]): readonly [number, number] => {
  const known = families.flatMap((family) => dry[family as Family] ?? []);
  const list = families
    .map((family) => dry[family as Family])
    .filter((hours): hours is readonly [number, number] => hours !== undefined);
  if (known.length === 0) return [48, 96];
  return [Math.max(...list.map(([touch]) => touch)), Math.max(...list.map(([, recoat]) => recoat))];
};

type Mention = { readonly stage: Stage; readonly span: Span; readonly size: number };

const mentionsOf = (words: readonly Word[], matches: readonly Match[], manner: Manner): Mention[] =>
  matches.flatMap((match) => {
    const [fact, value] = match.of;
    if (match.kind !== 'fact' || fact !== 'stage' || manner.notYet(match) || manner.feared(match)) return [];
    if (manner.over(match)) return [];
    const span = { from: words[match.from]?.from ?? 0, to: words[match.to - 1]?.to ?? 0 };
    const denied = manner.denied(match) !== undefined;
    const stage = value as Stage;
    // "not dry" is setting; "not sticky" is dry to the touch; a denied "cured" says nothing.
    if (denied)
      return stage === 'dry-to-touch'
        ? [{ stage: 'setting' as const, span, size: match.size }]
        : stage === 'setting'
          ? [{ stage: 'dry-to-touch' as const, span, size: match.size }]
          : [];
    return [{ stage, span, size: match.size }];
  });

const rank = (stage: Stage): number => STAGES.indexOf(stage);

/** Words of a film that is not sound, whatever its age. */
const isSoft = (matches: readonly Match[], manner: Manner): boolean =>
  matches.some(
    (match) =>
      ((match.kind === 'fact' && (match.of[0] === 'overdue' || match.of[1] === 'setting')) ||
        (match.kind === 'sign' && match.of[0] === 'still-tacky' && match.of[1] === 'yes')) &&
      manner.denied(match) === undefined &&
      !manner.over(match) &&
      !manner.feared(match),
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
  const timed = time && time.sure >= 0.6;
  const soft = isSoft(matches, manner);
  const [touch, recoat] = slowest(dry, families.length ? families : FAMILIES.slice(0, 6)).map(
    (hours) => hours * UNKNOWN_AIR,
  ) as [number, number];
  const overdue = soft && timed && least > 3 * Math.min(touch, 24);
  const late: HeardFact[] =
    overdue && time
      ? [{ fact: 'overdue' as FactName, value: 'yes', sure: 0.8, rests: time.rests, against: [] }]
      : [];
  const say = (stage: Stage, sure: number, rests: readonly Span[], against: readonly Span[]): HeardFact[] => [
    { fact: 'stage', value: stage, sure, rests, against },
    ...late,
  ];
  if (soft) {
    const rests = mentions.filter(({ stage }) => stage === 'setting').map(({ span }) => span);
    // What is sticky long past its time no longer sets; it is judged as an overdue film.
    return say(overdue ? 'dry-to-touch' : 'setting', timed ? 0.82 : 0.75, rests, []);
  }
  const byTime: Stage | undefined = !timed
    ? undefined
    : most <= 0.35
      ? 'wet'
      : least >= CURED_HOURS
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
  if (spoken && byTime) {
    const stage = rank(spoken) <= rank(byTime) ? spoken : byTime;
    // The hours can not be known to the hour where the words say more.
    const both = spoken !== 'wet' && rank(byTime) < rank(spoken) ? byTime : stage;
    return say(both, spoken === byTime ? 0.9 : 0.75, [...spans(spoken), ...(time?.rests ?? [])], []);
  }
  if (spoken)
    return say(spoken, spoken === 'cured' || spoken === 'recoatable' ? 0.72 : 0.75, spans(spoken), []);
  if (byTime && wettest !== 'wet') return say(byTime, 0.72, time?.rests ?? [], []);
  if (byTime) return say(byTime, 0.6, time?.rests ?? [], spans('wet'));
  return [];
};
