import { type Case, withAnswer } from '../case/case.ts';
import { signOf } from '../knowledge/sign.ts';
import type { BoardRecipe } from '../model/board.ts';
import { FREQUENCY } from '../model/frequency.ts';
import type { PracticeWords } from '../model/practice.ts';
import { walk } from '../walk/walk.ts';
import { askFlaw, saidBySign } from './ask-flaw.ts';
import { askHands, handsOf, type Outcome, stopOfPiece } from './ask-hands.ts';
import { askRepair } from './ask-repair.ts';
import { askUntil } from './ask-until.ts';
import { besides, soundBoard, variedBoard } from './boards.ts';
import { type Chance, chanceOf } from './chance.ts';
import {
  PRACTICE_LEVELS,
  type PracticeAsk,
  type PracticeItem,
  type PracticeKey,
  type PracticeLevel,
  type PracticeRival,
  SOUND,
} from './item.ts';
import type { PracticeFlaw, PracticeKnowledge } from './knowledge.ts';
import { OFFERED, type Rival, type Rivals, rivalsOf } from './rivals.ts';
import { type Situation, situationOf, soundSituation } from './situation.ts';
import { findingOf, storyOf } from './story.ts';

/** One board in so many has nothing wrong with it: a learner who always finds something has learned nothing. */
export const SOUND_ONE_IN = 6;
const MOST_TRIES = 400;
/** Streams of chance: one a purpose, and a try of a level. */
const [PICK, BOARD] = [1, 2];
const tryOf = (level: PracticeLevel, n: number): number => 1000 * (1 + PRACTICE_LEVELS.indexOf(level)) + n;

/** Flaws that a level can be practised on: they have a board of a dry film, which every stage can show. */
export const practised = (known: PracticeKnowledge, level: PracticeLevel): readonly string[] => [
  ...known.defects
    .filter((one) =>
      level === 'look'
        ? // What only the nose finds cannot be named by a look.
          one.boards.some(({ wet, features }) => !wet && features.length)
        : one.boards.some(({ wet }) => !wet),
    )
    .map(({ id }) => id),
  ...(level === 'look' ? [SOUND] : []),
];

/** The flaw that a seed alone picks, each as often as it is met; some boards are sound. */
export const flawOfSeed = (known: PracticeKnowledge, level: PracticeLevel, seed: number): string => {
  const chance = chanceOf(seed, PICK);
  if (level === 'look' && chance.under(SOUND_ONE_IN) === 0) return SOUND;
  return chance.weighted(
    practised(known, level)
      .filter((id) => id !== SOUND)
      .map((id) => [id, FREQUENCY[known.get('defect', id).often]] as const),
  );
};

const mapped = <A, B>([first, ...rest]: readonly [A, ...A[]], to: (one: A) => B): [B, ...B[]] => [
  to(first),
  ...rest.map(to),
];

const idOf = ({ level, flaw, seed }: PracticeKey): string => `${level}.${flaw}.${seed}`;

/** What is offered where nothing is wrong. */
const SOUND_NAME = 'Nothing: a sound coat';
/** Fewer answers than this are no choice of what hands do. */
const LEAST_HANDS = 3;
/** What a sound board shows: what the questions say of a no is said of other flaws. */
const EVEN = 'The coat is even from edge to edge.';

/** A board with nothing on it, against one that has a flaw which can be seen. */
const dealSound = (known: PracticeKnowledge, words: PracticeWords, key: PracticeKey): PracticeItem => {
  const chance = chanceOf(key.seed, BOARD);
  const board = soundBoard(chance);
  const situation = soundSituation(known, words, board, chance);
  const family = situation.on['family']?.value;
  const seen = known.questions.filter(
    ({ by, boards, usually }) => by === 'look' && boards && usually !== 'yes',
  );
  const shown = known.defects.flatMap((flaw) => {
    const question = seen.find(({ id }) => signOf(flaw, id) === 'yes');
    const dry = flaw.boards.filter(({ wet }) => !wet);
    const fits = flaw.often !== 'rare' && flaw.families.some((one) => one === family);
    return question && dry[0] && fits ? [{ flaw, question, board: dry[0] }] : [];
  });
  const [rival, ...others] = chance.mixed(shown).slice(0, OFFERED);
  if (!rival) throw new Error('no flaw can be seen');
  const picked = [rival, ...others] as const;
  const because = ({ question, flaw }: (typeof picked)[number]) =>
    saidBySign({ ask: question.ask, here: EVEN, there: question.yes }, 'no', flaw.name);
  return {
    ...key,
    id: idOf(key),
    name: SOUND_NAME,
    standing: undefined,
    on: situation.on,
    coat: undefined,
    story: storyOf(words, situation, 'look', SOUND, chance),
    found: [],
    board,
    rivals: mapped(picked, ({ flaw, question, board: seenBoard }) => {
      const [own, other] = besides(board, variedBoard(seenBoard, chance));
      return {
        flaw: flaw.id,
        name: flaw.name,
        board: other,
        own,
        sign: { question: question.id, ask: question.ask, here: EVEN, there: question.yes },
      };
    }),
    asks: [
      {
        kind: 'flaw',
        ask: 'What is it?',
        choices: [
          ...picked.map((one) => ({
            id: one.flaw.id,
            says: one.flaw.name,
            right: false,
            because: because(one),
          })),
          { id: SOUND, says: SOUND_NAME, right: true, because: because(rival) },
        ],
      },
    ],
    verdict: undefined,
  };
};

/** A rival's board beside the item's own, wet or dry alike, at one scale. */
const besideBoard = (
  known: PracticeKnowledge,
  board: BoardRecipe,
  rival: Rival,
  chance: Chance,
): PracticeRival => {
  const { flaw, sign } = rival;
  const other = variedBoard(chance.one(flaw.boards.filter(({ wet }) => !wet)), chance);
  const [own, beside] = besides(board, { ...other, wet: board.wet });
  const { ask, [sign.a]: here, [sign.b]: there } = known.get('question', sign.question);
  return {
    flaw: flaw.id,
    name: flaw.name,
    board: beside,
    own,
    sign: { question: sign.question, ask, here, there },
  };
};

/** What is drawn of an item before anything is asked: its facts with the signs that are told beside the picture. */
type Drawn = { readonly situation: Situation; readonly on: Case; readonly rivals: Rivals };
/** What is asked of it, and the verdict of the walk behind that. */
type Asked = { readonly asks: readonly PracticeAsk[]; readonly verdict: PracticeItem['verdict'] };

/** Of a look alone: which flaw it is, or none. */
const askedOfLook = (
  known: PracticeKnowledge,
  flaw: PracticeFlaw,
  { on, rivals }: Drawn,
  chance: Chance,
): Asked => {
  const { choices, ...ask } = askFlaw(known, on, flaw, rivals, undefined, chance);
  const none = { id: SOUND, says: SOUND_NAME, right: false, because: `It is there: ${flaw.looks}` };
  return { asks: [{ ...ask, choices: [...choices, none] }], verdict: undefined };
};

/** Of a whole case besides: what mends it, or until when it is left. */
const askedOfCase = (
  known: PracticeKnowledge,
  words: PracticeWords,
  flaw: PracticeFlaw,
  { situation: { coat }, rivals }: Drawn,
  walked: Outcome,
  chance: Chance,
): PracticeAsk | undefined => {
  const right = handsOf(walked);
  if (right === 'repair') return askRepair(known, flaw, walked, rivals, chance);
  return coat && (right === 'leave' || right === 'wait') ? askUntil(words, coat, right, chance) : undefined;
};

/** Of a film whose stage is told: which flaw it is, and what hands do now. Nothing where the causes ask for different hands. */
const askedOfHands = (
  known: PracticeKnowledge,
  words: PracticeWords,
  flaw: PracticeFlaw,
  drawn: Drawn,
  level: PracticeLevel,
  chance: Chance,
): Asked | undefined => {
  const { on, rivals } = drawn;
  const walked = walk(known, on, flaw.id);
  if (walked.kind !== 'outcome' || !walked.alike) return undefined;
  const right = handsOf(walked);
  const which = askFlaw(known, on, flaw, rivals, right, chance);
  const hands = askHands(words, on, walked, chance);
  if (hands.choices.length < LEAST_HANDS) return undefined;
  const last = level === 'case' ? askedOfCase(known, words, flaw, drawn, walked, chance) : undefined;
  const { verdict, say, not } = walked.action;
  const stop = right === 'stop' ? stopOfPiece(walked) : undefined;
  return {
    asks: last ? [which, hands, last] : [which, hands],
    verdict: stop ? { say: stop.title, why: stop.say, not } : { say: verdict, why: say, not },
  };
};

const tried = (
  known: PracticeKnowledge,
  words: PracticeWords,
  flaw: PracticeFlaw,
  key: PracticeKey,
  chance: Chance,
): PracticeItem | undefined => {
  const { level } = key;
  const situation = situationOf(known, words, flaw, level, chance);
  if (!situation) return undefined;
  const rivals = rivalsOf(known, situation, flaw, chance);
  if (!rivals) return undefined;
  // What the picture does not show of the signs is told.
  const on = rivals.reduce((of, { sign }) => withAnswer(of, sign.question, sign.a), situation.on);
  const drawn: Drawn = { situation, on, rivals };
  const asked =
    level === 'look'
      ? askedOfLook(known, flaw, drawn, chance)
      : askedOfHands(known, words, flaw, drawn, level, chance);
  if (!asked) return undefined;
  const unseen = rivals.filter(({ seen }) => !seen).map(({ sign }) => sign.question);
  const questions = new Set([...(level === 'look' ? [] : situation.answered), ...unseen]);
  return {
    ...key,
    id: idOf(key),
    name: flaw.name,
    standing: situation.standing,
    on,
    coat: situation.coat,
    story: storyOf(words, situation, level, flaw.id, chance),
    found: [...questions].flatMap((question) => findingOf(known, on, question) ?? []),
    board: situation.board,
    rivals: mapped(rivals, (one) => besideBoard(known, situation.board, one, chance)),
    ...asked,
  };
};

/**
 * A practice item: the same for the same level, seed and flaw wherever the knowledge is the same. Without a flaw the seed
 * picks one, as often as it is met. `seed` is a whole number, 0 to 2³¹ − 1.
 * Throws for a flaw that the knowledge does not hold or that this level has none of.
 */
export const dealPractice = (
  known: PracticeKnowledge,
  words: PracticeWords,
  {
    level,
    seed,
    flaw = flawOfSeed(known, level, seed),
  }: Omit<PracticeKey, 'flaw'> & { readonly flaw?: string },
): PracticeItem => {
  const key = { level, seed, flaw };
  if (flaw === SOUND) return dealSound(known, words, key);
  const entry = known.get('defect', flaw);
  for (let n = 0; n < MOST_TRIES; n++) {
    const item = tried(known, words, entry, key, chanceOf(seed, tryOf(level, n)));
    if (item) return item;
  }
  throw new Error(`${idOf(key)}: no situation in ${MOST_TRIES} tries fits what this flaw shows`);
};
