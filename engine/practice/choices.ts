import { actionKey, actOf } from '../act.ts';
import { answerOf, stageOf } from '../answers.ts';
import type { Case } from '../case.ts';
import { type Moment, sayInstant, sayUntil } from '../clock.ts';
import type { Knowledge } from '../knowledge.ts';
import { type Leaf, possible } from '../leaves.ts';
import { FREQUENCY } from '../model/frequency.ts';
import type { Entry } from '../model/knowledge.ts';
import type { PracticeWords } from '../model/practice.ts';
import type { Doing } from '../model/remedy.ts';
import { type Separation, separatedBy } from '../prove/look-alikes-differ.ts';
import { isHandover, visits } from '../tree.ts';
import type { Walked } from '../walk.ts';
import type { Chance } from './chance.ts';
import type { PracticeAsk, PracticeChoice, PracticeCoat } from './item.ts';
import { canBeTold } from './situation.ts';
import { PRACTICE_TIME } from './story.ts';

type Flaw = Entry<'defect'>;

/** A flaw that is offered and is not it, and the sign that rules it out. */
export type Rival = { readonly flaw: Flaw; readonly sign: Separation; readonly seen: boolean };

const OFFERED = 4;

/** Seen on the board, or at least by looking at the piece; what must be told stands last. */
const bySight = (known: Knowledge, { question }: Separation): number => {
  const { by, boards, effort } = known.get('question', question);
  return (by !== 'look' ? 10 : boards ? 0 : 5) + effort;
};

/** The sign that best rules `other` out for this case; nothing where none may be told at this stage. */
const rivalOf = (known: Knowledge, on: Case, flaw: Flaw, other: Flaw): Rival | undefined => {
  const [sign] = separatedBy(flaw, other)
    .filter(({ question, a }) => canBeTold(known, on, question, a))
    .sort((one, two) => bySight(known, one) - bySight(known, two));
  if (!sign) return undefined;
  const { by, boards } = known.get('question', sign.question);
  return { flaw: other, sign, seen: by === 'look' && boards !== undefined };
};

/**
 * Flaws to offer beside the right one: first one that it is truly taken for, then others of its kind. Each is ruled out by
 * a sign that the board shows or that is told.
 */
export const rivalsOf = (
  known: Knowledge,
  on: Case,
  flaw: Flaw,
  chance: Chance,
): readonly Rival[] | undefined => {
  const alike = new Set<string>(flaw['look-alikes']);
  const back = known.defects.filter((one) => (one['look-alikes'] as readonly string[]).includes(flaw.id));
  const family = on['family']?.value;
  const fits = ({ id, families }: Flaw) => id !== flaw.id && families.some((one) => one === family);
  const rivals = (of: readonly Flaw[]) =>
    chance.mixed(of.filter(fits)).flatMap((other) => rivalOf(known, on, flaw, other) ?? []);
  const own = rivals(known.defects.filter(({ id }) => alike.has(id)));
  // A look-alike of another kind of coat is still one, where no own kind has any.
  const truly = own.length
    ? own
    : chance
        .mixed(known.defects.filter(({ id }) => alike.has(id) && id !== flaw.id))
        .flatMap((other) => rivalOf(known, on, flaw, other) ?? []);
  const sorted = [...truly].sort((one, two) => Number(two.seen) - Number(one.seen));
  const taken = new Set(sorted.map((one) => one.flaw.id));
  const more = [
    ...rivals(back.filter(({ id }) => !taken.has(id))),
    ...rivals(known.defects.filter(({ often, id }) => !taken.has(id) && FREQUENCY[often] > 1)).filter(
      ({ seen }) => seen,
    ),
  ];
  const all = [...sorted, ...more].filter(
    (one, index, list) => list.findIndex((other) => other.flaw.id === one.flaw.id) === index,
  );
  return sorted.length && all.length >= OFFERED - 1 ? all.slice(0, OFFERED - 1) : undefined;
};

const signSaid = (known: Knowledge, { sign, flaw }: Rival): string => {
  const { ask, [sign.a]: here, [sign.b]: there } = known.get('question', sign.question);
  return `${ask} Here: ${sign.a}. ${here} ${flaw.name}: ${sign.b}. ${there}`;
};

/** What hands would have done, had they taken it for another flaw. */
const mistaken = (known: Knowledge, on: Case, flaw: Flaw, right: Doing | undefined): string => {
  const stage = stageOf(on);
  if (!stage || !right) return '';
  const acts = possible(known, on, flaw.id).leaves.map((leaf) => actOf(known, on, leaf, stage));
  const [first] = acts;
  if (!first || !acts.every((act) => act.do === first.do)) return '';
  return first.do === right
    ? ' For now your hands would do the same.'
    : ` Taken for it, you would have done this: ${first.say}`;
};

export const askFlaw = (
  known: Knowledge,
  on: Case,
  flaw: Flaw,
  rivals: readonly Rival[],
  right: Doing | undefined,
  chance: Chance,
): PracticeAsk => {
  const [nearest] = rivals;
  return {
    kind: 'flaw',
    ask: 'What is it?',
    choices: chance.mixed<PracticeChoice>([
      {
        id: flaw.id,
        says: flaw.name,
        right: true,
        because: nearest ? signSaid(known, nearest) : flaw.summary,
      },
      ...rivals.map((rival) => ({
        id: rival.flaw.id,
        says: rival.flaw.name,
        right: false,
        because: signSaid(known, rival) + mistaken(known, on, rival.flaw, right),
      })),
    ]),
  };
};

/** Doings that leave the piece alone: of these at most one is offered, since they look alike to hands. */
const QUIET: readonly Doing[] = ['leave', 'wait', 'accept'];
const OPEN_FILM: readonly Doing[] = ['lift', 'tip-off', 'wick', 'wash-off', 'wipe-back'];

export type Outcome = Extract<Walked, { kind: 'outcome' }>;

/** What hands do by the walk: a stop of the piece comes before everything that its verdict says. */
export const handsOf = (walked: Outcome): Doing =>
  walked.fired.stops.length && !QUIET.includes(walked.action.do) ? 'stop' : walked.action.do;

/** All that any cause still possible would have hands do. */
const doingsOf = (known: Knowledge, on: Case, walked: Outcome): ReadonlySet<Doing> => {
  const stage = stageOf(on);
  return new Set(stage ? walked.leaves.map((leaf) => actOf(known, on, leaf, stage).do) : []);
};

/** True where all causes still possible have hands do the same, so that one answer is right whatever it is. */
export const isPlain = (known: Knowledge, on: Case, walked: Outcome): boolean => {
  const stage = stageOf(on);
  if (!stage) return false;
  const keys = new Set(walked.leaves.map((leaf) => actionKey(actOf(known, on, leaf, stage), leaf)));
  const doings = doingsOf(known, on, walked);
  return keys.size === 1 || ([...doings].every((one) => one === 'repair') && walked.action.do === 'repair');
};

export const askHands = (
  known: Knowledge,
  words: PracticeWords,
  on: Case,
  walked: Outcome,
  chance: Chance,
): PracticeAsk => {
  const right = handsOf(walked);
  const stage = stageOf(on) ?? 'wet';
  const possibleNow = doingsOf(known, on, walked);
  const fresh = stage === 'wet' || stage === 'setting';
  const stop = walked.fired.stops[0];
  const wrong = (id: string, says: string, because: string): PracticeChoice => ({
    id,
    says,
    right: false,
    because,
  });
  const tempting = chance
    .mixed(words.temptations.filter((one) => one.at.includes(stage) && !one.not.includes(right)))
    .map(({ id, offer, says }) => wrong(id, offer, says));
  const moves = chance
    .mixed(OPEN_FILM.filter((one) => fresh && one !== right && !possibleNow.has(one)))
    .slice(0, 1)
    .map((one) => wrong(one, words.hands[one], walked.action.say));
  const quiet: readonly PracticeChoice[] = QUIET.includes(right)
    ? !fresh && right === 'accept'
      ? [wrong('repair', words.hands.repair, walked.action.say)]
      : []
    : possibleNow.has('accept') || right === 'stop'
      ? []
      : fresh
        ? [wrong('leave', words.hands.leave, walked.action.say)]
        : [wrong('accept', words.hands.accept, walked.action.say)];
  const others =
    right === 'stop' ? [wrong('repair', words.hands.repair, stop?.say ?? walked.action.say)] : [];
  return {
    kind: 'hands',
    ask: 'What do your hands do now?',
    choices: chance.mixed([
      {
        id: right,
        says: words.hands[right],
        right: true,
        because: right === 'stop' && stop ? stop.say : `${walked.action.say} ${walked.action.not}`,
      },
      ...[...others, ...quiet, ...moves, ...tempting].slice(0, OFFERED - 1),
    ]),
  };
};

/** When the film may be touched or worked on: the clock's own range against what is tempting to believe. */
export const askUntil = (
  { laid, now, reading, touchMinutes, recoatMinutes }: PracticeCoat,
  right: Doing,
  chance: Chance,
): PracticeAsk | undefined => {
  const { moments } = reading;
  const touching = right === 'leave';
  const moment: Moment = touching ? moments.touch : moments.recoat;
  if (moment.to <= now) return undefined;
  const minute = 60_000;
  const printed = laid.laidAt + (touching ? touchMinutes : recoatMinutes) * minute;
  const say = (at: number) => sayInstant(at, now, PRACTICE_TIME);
  const wrong: PracticeChoice[] = [
    {
      id: 'now',
      says: 'No need to wait',
      right: false,
      because: touching
        ? 'The film is not dry to the touch. A finger or a brush would leave its mark in it for good.'
        : 'It is dry on top and soft below. Paper would tear it, and a coat would shut in what still has to leave.',
    },
  ];
  // The time of the can holds in the room of the can.
  if (printed > now && printed < moment.from - 2 * minute)
    wrong.push({
      id: 'can',
      says: `Until ${say(printed)}`,
      right: false,
      because:
        'That is the time on the can, and it holds in the room that the can names. In this air the film takes longer.',
    });
  const half = now + (moment.from - now) / 2;
  if (half - now > 5 * minute && moment.from - half > 5 * minute)
    wrong.push({
      id: 'half',
      says: `Until ${say(Math.round(half / (5 * minute)) * 5 * minute)}`,
      right: false,
      because: 'That is too soon. It looks dry before it is, and the first touch proves it.',
    });
  const late = moments.cure.to;
  if (late > moment.to)
    wrong.push({
      id: 'cure',
      says: `Until ${sayUntil(moments.cure.from, late, now, PRACTICE_TIME)}`,
      right: false,
      because: 'That is full cure, when it may be used hard. It may be looked at and worked on long before.',
    });
  const offered = wrong.filter((one, index) => wrong.findIndex(({ says }) => says === one.says) === index);
  if (offered.length < 2) return undefined;
  return {
    kind: 'until',
    ask: touching ? 'Until when are hands off?' : 'Until when does it dry on before you work on it?',
    choices: chance.mixed([
      {
        id: 'range',
        says: `Until ${sayUntil(moment.from, moment.to, now, PRACTICE_TIME)}`,
        right: true,
        because:
          'The clock takes the times on the can to this air. The late end is sure, the early one only perhaps.',
      },
      ...offered,
    ]),
  };
};

/** Every repair that some branch of the flaw's tree leads to, hand-overs followed. */
const repairsOf = (known: Knowledge, flaw: string, found = new Set<string>()): Set<string> => {
  for (const { branch } of visits(known.get('defect', flaw).tree)) {
    if ('remedy' in branch) found.add(branch.remedy);
    else if (isHandover(branch)) repairsOf(known, branch.defect, found);
  }
  return found;
};

/** What mends it: the repair of this cause against repairs of what it is taken for, none of which mends this flaw. */
export const askRepair = (
  known: Knowledge,
  flaw: Flaw,
  walked: Outcome,
  rivals: readonly Rival[],
  chance: Chance,
): PracticeAsk | undefined => {
  const leaves = new Set(walked.leaves.map((leaf: Leaf) => ('remedy' in leaf ? leaf.remedy : '')));
  const [remedy] = leaves;
  if (!remedy || leaves.size > 1) return undefined;
  const own = repairsOf(known, flaw.id);
  const others = rivals.flatMap(({ flaw: other }) =>
    [...repairsOf(known, other.id)]
      .filter((one) => !own.has(one))
      .map((id) => ({ id, other, called: known.get('remedy', id).name })),
  );
  const { name, summary } = known.get('remedy', remedy);
  const distinct = chance
    .mixed(others)
    .filter(
      (one, index, list) =>
        one.called !== name && list.findIndex(({ called }) => called === one.called) === index,
    )
    .slice(0, OFFERED - 1);
  if (distinct.length < 2) return undefined;
  return {
    kind: 'repair',
    ask: 'What mends it?',
    choices: chance.mixed([
      { id: remedy, says: name, right: true, because: summary },
      ...distinct.map(({ id, other }) => {
        const wrong = known.get('remedy', id);
        return {
          id,
          says: wrong.name,
          right: false,
          because: `That one is for another flaw, such as ${other.name.toLowerCase()}: ${wrong.summary}`,
        };
      }),
    ]),
  };
};

/** The answer that the case itself gives to the question of a sign, so that nothing told contradicts it. */
export const isConsistent = (known: Knowledge, on: Case, { sign }: Rival): boolean => {
  const told = answerOf(known, on, sign.question);
  return told === undefined || told === sign.a;
};
