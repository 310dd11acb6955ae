import { stageOf } from '../case/answers.ts';
import type { Case } from '../case/case.ts';
import { factsIn } from '../case/condition.ts';
import type { PracticeWords } from '../model/practice.ts';
import type { Doing } from '../model/remedy.ts';
import type { SaidRule } from '../rules/rules.ts';
import type { Walked } from '../walk/walk.ts';
import type { Chance } from './chance.ts';
import type { PracticeAsk, PracticeChoice } from './item.ts';
import { OFFERED } from './rivals.ts';

/** Doings that leave the piece alone: of these at most one is offered, since they look alike to hands. */
const QUIET: readonly Doing[] = ['leave', 'wait', 'accept'];
const OPEN_FILM: readonly Doing[] = ['lift', 'tip-off', 'wick', 'wash-off', 'wipe-back'];

export type Outcome = Extract<Walked<SaidRule>, { kind: 'outcome' }>;

/** What is laid, with what and in what air; all other facts are of the piece, of what lies on it, or seen there. */
const OF_THE_WORK: readonly string[] = ['family', 'applicator', 'air-celsius', 'relative-humidity'];

/**
 * The stop that comes before all hands. One of the work alone, such as oily rags or a flame, is none: it is told beside its
 * step, and who answers that the film may be worked on is right.
 */
export const stopOfPiece = ({ fired }: Outcome): SaidRule | undefined =>
  fired.stops.find(({ when = {} }) => [...factsIn(when)].some(({ fact }) => !OF_THE_WORK.includes(fact)));

/** What hands do by the walk: a stop of the piece comes before everything that its verdict says. */
export const handsOf = (walked: Outcome): Doing =>
  stopOfPiece(walked) && !QUIET.includes(walked.action.do) ? 'stop' : walked.action.do;

/**
 * What hands do now, by the walk, against what tempts at this stage. All causes still possible have them do the same, so
 * that one answer is right whatever it is.
 */
export const askHands = (words: PracticeWords, on: Case, walked: Outcome, chance: Chance): PracticeAsk => {
  const right = handsOf(walked);
  const stage = stageOf(on) ?? 'wet';
  const fresh = stage === 'wet' || stage === 'setting';
  const young = fresh || stage === 'dry-to-touch';
  const stop = stopOfPiece(walked);
  const says = (one: Doing): string =>
    one === 'wait' && !young
      ? words['wait-on-a-dry-film']
      : one === 'repair' && on['overdue']?.value === 'yes'
        ? words['repair-of-a-sticky-film']
        : words.hands[one];
  const wrong = (id: string, offer: string, because: string): PracticeChoice => ({
    id,
    says: offer,
    right: false,
    because,
  });
  const moves = chance
    .mixed(OPEN_FILM.filter((one) => fresh && one !== walked.action.do))
    .slice(0, 1)
    .map((one) => wrong(one, words.hands[one], walked.action.say));
  const tempting = chance
    .mixed(
      words.temptations.filter(
        (one) =>
          one.at.includes(stage) &&
          ![right, ...moves.map(({ id }) => id)].some((id) => one.not.some((not) => not === id)),
      ),
    )
    .map(({ id, offer, says: because }) => wrong(id, offer, because));
  const quiet: readonly PracticeChoice[] = QUIET.includes(right)
    ? !fresh && right === 'accept'
      ? [wrong('repair', says('repair'), walked.action.say)]
      : []
    : right === 'stop'
      ? []
      : fresh
        ? [wrong('leave', words.hands.leave, walked.action.say)]
        : [wrong('accept', words.hands.accept, walked.action.say)];
  const others = right === 'stop' ? [wrong('repair', says('repair'), stop?.say ?? walked.action.say)] : [];
  return {
    kind: 'hands',
    ask: 'What do your hands do now?',
    choices: chance.mixed([
      {
        id: right,
        says: says(right),
        right: true,
        because: right === 'stop' && stop ? stop.say : `${walked.action.say} ${walked.action.not}`,
      },
      ...[...others, ...quiet, ...moves, ...tempting].slice(0, OFFERED - 1),
    ]),
  };
};
