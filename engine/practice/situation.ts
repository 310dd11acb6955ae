import type { Applicator } from '../calc/drying/figures.ts';
import { answerOf, canCheck } from '../case/answers.ts';
import { type Case, emptyCase, withAnswer, withFact } from '../case/case.ts';
import type { ClockProduct, LaidCoat } from '../clock/coat.ts';
import { clockNow, type Running } from '../clock/reading.ts';
import { ASKED } from '../knowledge/known-questions.ts';
import { signOf } from '../knowledge/sign.ts';
import { visits } from '../knowledge/tree.ts';
import type { BoardRecipe, Paint, Sheen } from '../model/board.ts';
import type { Defect } from '../model/defect.ts';
import type { ValueOf } from '../model/facts.ts';
import { type Family, UNSANDED } from '../model/family.ts';
import type { PracticeWords } from '../model/practice.ts';
import { STAGES, type Stage, type Standing } from '../model/stage.ts';
import { keysOf } from '../plain/entry-of.ts';
import { DAY_MS, HOUR_MS, MINUTE_MS } from '../plain/time.ts';
import { possible } from '../walk/leaves.ts';
import { withStanding } from '../walk/standing.ts';
import { variedBoard } from './boards.ts';
import type { Chance } from './chance.ts';
import type { PracticeCoat, PracticeLevel } from './item.ts';
import type { PracticeFlaw, PracticeKnowledge } from './knowledge.ts';

/** A Saturday in May at nine; coats of practice are laid on that day. */
const MORNING = Date.UTC(2026, 4, 2, 9);

/** Rooms that a refinisher has: air in °C and relative humidity. Our own choice. */
const ROOMS = [
  [21, 0.45],
  [23, 0.5],
  [18, 0.55],
  [16, 0.6],
  [13, 0.6],
  [12, 0.75],
  [17, 0.72],
  [24, 0.65],
  [27, 0.4],
  [29, 0.6],
] as const;

/**
 * When somebody asks, by our estimate: half of the time while the coat is still too fresh to be worked on, since that is
 * when it looks worst.
 */
const WHEN: Readonly<Record<Stage, number>> = {
  wet: 22,
  setting: 24,
  'dry-to-touch': 16,
  recoatable: 26,
  cured: 12,
};

const DARK: readonly Paint[] = ['navy', 'black', 'red'];
const SHEEN: Readonly<Record<Sheen, ValueOf<'sheen'>>> = {
  matte: 'matte',
  eggshell: 'matte',
  satin: 'satin',
  'semi-gloss': 'gloss',
  gloss: 'gloss',
  'high-gloss': 'gloss',
};

/** What a story tells. */
export type Told = {
  readonly board: BoardRecipe;
  readonly on: Case;
  readonly standing: Standing | undefined;
  readonly applicator: Applicator;
  readonly coat: PracticeCoat | undefined;
};
export type Situation = Told & {
  /** The questions that were answered on the way, in the order asked. */
  readonly answered: readonly string[];
  /** What the picture itself answers, where that differs from board to board. */
  readonly shows: Readonly<Record<string, PlainAnswer>>;
};

type PlainAnswer = 'yes' | 'no';

const strictly = (defect: Pick<Defect, 'signs'>, question: string): PlainAnswer | undefined => {
  const sign = signOf(defect, question);
  return sign === 'yes' || sign === 'no' ? sign : undefined;
};
const mostly = (defect: Pick<Defect, 'signs'>, question: string): PlainAnswer | undefined => {
  const sign = signOf(defect, question);
  return sign === 'yes' || sign === 'mostly-yes'
    ? 'yes'
    : sign === 'no' || sign === 'mostly-no'
      ? 'no'
      : undefined;
};

/** Flaws that come later than the coat, or only from work on a dry one, are not met on a fresh film. */
const metAt = (defect: Pick<Defect, 'signs'>, stage: Stage): boolean => {
  const later = [ASKED.cameInUse, ASKED.fineWhenFirstDry, ASKED.appearedAfterSanding, ASKED.comesOffInFlakes];
  if (later.some((question) => mostly(defect, question) === 'yes'))
    return stage === 'recoatable' || stage === 'cured';
  if (strictly(defect, ASKED.stillTacky) === 'yes') return stage === 'dry-to-touch';
  const atOnce = mostly(defect, ASKED.thereWhileCoating);
  if (stage === 'wet') return atOnce !== 'no';
  // What a nail or a finger must find is not yet there in a film that is open.
  return stage !== 'setting' || mostly(defect, ASKED.filmIsWeak) !== 'yes';
};

/** Each stage at which the flaw is met, with its weight: one at least. */
const stagesMet = (defect: Pick<Defect, 'signs'>): readonly (readonly [Stage, number])[] =>
  STAGES.filter((stage) => metAt(defect, stage)).map((stage) => [stage, WHEN[stage]] as const);

/** A board of the flaw that goes with the stage, and what it shows of what the flaw leaves open. */
const chosenBoard = (
  flaw: PracticeFlaw,
  words: PracticeWords,
  stage: Stage | undefined,
  chance: Chance,
): readonly [BoardRecipe, Readonly<Record<string, PlainAnswer>>] => {
  const fresh = stage === 'wet' || stage === 'setting';
  const shows: Readonly<Record<string, readonly Record<string, PlainAnswer>[] | undefined>> = words.shows;
  const all = flaw.boards.map((recipe, index) => [recipe, shows[flaw.id]?.[index] ?? {}] as const);
  const wet = all.filter(([recipe]) => recipe.wet);
  const dry = all.filter(([recipe]) => !recipe.wet);
  const [recipe, answers] = chance.one(fresh && wet.length ? wet : dry);
  return [{ ...variedBoard(recipe, chance), wet: fresh }, answers];
};

/** Nobody looks at a coat in the middle of the night. */
const [EARLIEST_HOUR, LATEST_HOUR] = [6, 23];

/** The moment that is asked about, surely inside its stage; nothing where the stage is too short to be sure of. */
const momentOf = ({ moments }: Running, laidAt: number, stage: Stage, chance: Chance): number | undefined => {
  const spans: Readonly<Record<Stage, readonly [number, number]>> = {
    wet: [laidAt + MINUTE_MS, moments.open.from],
    setting: [moments.open.to, moments.touch.from],
    'dry-to-touch': [moments.touch.to, moments.recoat.from],
    recoatable: [moments.recoat.to, Math.min(moments.cure.from, moments.recoat.to + 3 * DAY_MS)],
    cured: [moments.cure.to, moments.cure.to + 30 * DAY_MS],
  };
  const [from, to] = spans[stage];
  if (to <= from) return undefined;
  const at = from + ((to - from) * (20 + chance.under(61))) / 100;
  const step = stage === 'wet' || stage === 'setting' ? MINUTE_MS : 5 * MINUTE_MS;
  const asked = Math.round(at / step) * step;
  const hour = Math.floor((asked % DAY_MS) / HOUR_MS);
  return hour >= LATEST_HOUR || hour < EARLIEST_HOUR ? undefined : asked;
};

/** Times as a can prints them. */
const NICE = [5, 10, 15, 20, 30, 45, 60, 90, 120, 180, 240, 300, 360, 480, 720, 1440, 2160, 2880] as const;
const nice = (minutes: number): number =>
  NICE.reduce((best, one) => (Math.abs(one - minutes) < Math.abs(best - minutes) ? one : best));

const coatOf = (
  product: ClockProduct & { readonly id: string },
  applicator: Applicator,
  coatNumber: number,
  stage: Stage,
  chance: Chance,
): PracticeCoat | undefined => {
  const middle = ([from, to]: readonly [number, number]) => (from + to) / 2;
  const touchMinutes = nice(middle(product['touch-minutes']));
  const recoatMinutes = Math.max(nice(60 * middle(product['recoat-hours'])), 2 * touchMinutes);
  const [celsius, relativeHumidity] = chance.one(ROOMS);
  const laidAt = MORNING + chance.under(32) * 15 * MINUTE_MS;
  const laid: LaidCoat = {
    id: 'practice',
    piece: '',
    product: product.id,
    label: {
      minutes: {
        touch: { from: touchMinutes, to: touchMinutes },
        recoat: { from: recoatMinutes, to: recoatMinutes },
      },
    },
    laidAt,
    celsius,
    relativeHumidity,
    coatNumber,
    applicator,
  };
  const first = clockNow(product, laid, laidAt);
  if (first.kind !== 'running') return undefined;
  const now = momentOf(first, laidAt, stage, chance);
  if (now === undefined) return undefined;
  const reading = clockNow(product, laid, now);
  return reading.kind === 'running' && reading.stage === stage && reading.sureness === 'surely'
    ? { laid, now, reading, touchMinutes, recoatMinutes }
    : undefined;
};

/** Hours that go with a stage where no clock tells them: enough for what is asked about a day or a week. */
const HOURS: Readonly<Record<Stage, number | undefined>> = {
  wet: 0.02,
  setting: undefined,
  'dry-to-touch': undefined,
  recoatable: 30,
  cured: 1000,
};

/** What was laid, with what and on what: the facts that the first sentence of every story tells. */
const laidOn = (
  words: PracticeWords,
  family: Family,
  { base: { paint } }: BoardRecipe,
  applicator: Applicator,
  chance: Chance,
): Case => {
  let on: Case = withFact(emptyCase(), 'family', family);
  on = withFact(on, 'applicator', applicator);
  on = withFact(
    on,
    'base',
    paint ? chance.one(words['over-paint']).base : chance.one(['stain', 'bare-wood'] as const),
  );
  return withFact(on, 'base-tone', paint ? (DARK.includes(paint) ? 'dark' : 'light') : 'wood');
};

/** A coat with nothing wrong, told in the words in which a flawed one is. */
export const soundSituation = (
  known: PracticeKnowledge,
  words: PracticeWords,
  board: BoardRecipe,
  chance: Chance,
): Told => {
  const { family, ...product } = chance.one(known.products);
  const applicator = chance.one(keysOf(product['wet-film-micrometers']));
  const on = laidOn(words, family, board, applicator, chance);
  return { board, on, standing: undefined, applicator, coat: undefined };
};

/**
 * One try at a situation in which the flaw is met, with everything that its tree asks and that can be checked at this
 * stage. Nothing where the choices contradict the flaw: another try makes others.
 */
export const situationOf = (
  known: PracticeKnowledge,
  words: PracticeWords,
  flaw: PracticeFlaw,
  level: PracticeLevel,
  chance: Chance,
): Situation | undefined => {
  const stage = level === 'look' ? undefined : chance.weighted(stagesMet(flaw));
  const [board, shows] = chosenBoard(flaw, words, stage, chance);
  const family = chance.one(flaw.families);
  const product = chance.one(known.products.filter((one) => one.family === family));
  const applicator = chance.one(keysOf(product['wet-film-micrometers']));
  const coatNumber = 1 + chance.under(4);

  let on = laidOn(words, family, board, applicator, chance);
  on = withFact(on, 'coat-number', coatNumber);
  on = withFact(on, 'piece', 'furniture');
  if (!UNSANDED.includes(family)) on = withFact(on, 'sheen', SHEEN[board.sheen]);
  const { paint } = board.base;
  // Old paint of unknown age asks for a test before anything else; it is met now and then.
  const old = level === 'case' && paint !== undefined && chance.under(12) === 0;
  on = withFact(on, 'age', old ? 'unknown' : 'since-1993');

  const tacky = strictly(flaw, ASKED.stillTacky) === 'yes';
  const standing: Standing | undefined = tacky && stage ? 'overdue' : stage;
  let coat: PracticeCoat | undefined;
  if (stage && level === 'case' && !tacky) {
    coat = coatOf(product, applicator, coatNumber, stage, chance);
    if (!coat) return undefined;
    on = withFact(on, 'air-celsius', coat.laid.celsius, 'measured');
    on = withFact(on, 'relative-humidity', coat.laid.relativeHumidity, 'measured');
    on = withFact(on, 'hours-since-coat', (coat.now - coat.laid.laidAt) / HOUR_MS, 'computed');
  } else if (stage) {
    const hours = tacky ? 200 : HOURS[stage];
    if (hours !== undefined) on = withFact(on, 'hours-since-coat', hours);
  }
  if (standing) on = withStanding(on, standing, coat ? 'computed' : 'told');

  // What the facts already tell must be what the flaw and the picture show.
  const wanted = (question: string): PlainAnswer | undefined => shows[question] ?? strictly(flaw, question);
  for (const question of new Set([...Object.keys(flaw.signs), ...Object.keys(shows)])) {
    const told = answerOf(known, on, question);
    const sign = wanted(question);
    if (sign && told && told !== sign) return undefined;
  }
  // Another flaw's questions are met where a tree hands over; what is told would then be of that flaw and not of this one.
  const own = new Set<string>([
    ...Object.keys(flaw.signs),
    ...Object.keys(shows),
    ...[...visits(flaw.tree)].flatMap(({ branch }) => ('ask' in branch ? [branch.ask] : [])),
  ]);
  const answered: string[] = [];
  for (;;) {
    const { met, leaves } = possible(known, on, flaw.id);
    const next = met.find((one) => one.open);
    const over = leaves.every(({ of }) => of !== flaw.id);
    if (over) return undefined;
    if (!next) {
      const settled = !stage || stage === 'recoatable' || stage === 'cured';
      return settled && leaves.some(({ of }) => of !== flaw.id)
        ? undefined
        : { board, on, standing, applicator, coat, answered, shows };
    }
    if (!own.has(next.question)) return undefined;
    const answer =
      wanted(next.question) ?? mostly(flaw, next.question) ?? chance.one<PlainAnswer>(['yes', 'no']);
    on = withAnswer(on, next.question, answer);
    answered.push(next.question);
  }
};

/** Whether a check harms nothing at this stage, and its answer is what the flaw shows. */
export const canBeTold = (
  known: PracticeKnowledge,
  on: Case,
  question: string,
  answer: PlainAnswer,
): boolean => {
  if (!canCheck(known, on, question)) return false;
  const told = answerOf(known, on, question);
  return told === undefined || told === answer;
};
