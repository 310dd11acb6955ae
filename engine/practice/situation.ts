import type { Applicator } from '../calc/drying/figures.ts';
import { answerOf, canCheck } from '../case/answers.ts';
import { type Case, emptyCase, withAnswer, withFact } from '../case/case.ts';
import type { ClockProduct } from '../clock/coat.ts';
import { ASKED } from '../knowledge/known-questions.ts';
import { visits } from '../knowledge/tree.ts';
import type { BoardRecipe, Paint, Sheen } from '../model/board.ts';
import type { ValueOf } from '../model/facts.ts';
import { type Family, UNSANDED } from '../model/family.ts';
import type { PracticeWords } from '../model/practice.ts';
import type { Stage, Standing } from '../model/stage.ts';
import { keysOf } from '../plain/entry-of.ts';
import { HOUR_MS } from '../plain/time.ts';
import { possible } from '../walk/leaves.ts';
import { withStanding } from '../walk/standing.ts';
import { variedBoard } from './boards.ts';
import type { Chance } from './chance.ts';
import { coatOf } from './coat.ts';
import type { PracticeCoat, PracticeLevel } from './item.ts';
import type { PracticeFlaw, PracticeKnowledge } from './knowledge.ts';
import { mostly, type PlainAnswer, stagesMet, strictly } from './met-at.ts';

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

/** Hours that go with a stage where no clock tells them: enough for what is asked about a day or a week. */
const HOURS: Readonly<Record<Stage, number | undefined>> = {
  wet: 0.02,
  setting: undefined,
  'dry-to-touch': undefined,
  recoatable: 30,
  cured: 1000,
};

/** And where a film is sticky long past its time. */
const TACKY_HOURS = 200;

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

/** What was drawn of a coat before its facts are told. */
type Drawn = {
  readonly flaw: PracticeFlaw;
  readonly level: PracticeLevel;
  readonly stage: Stage | undefined;
  readonly board: BoardRecipe;
  readonly product: ClockProduct & { readonly id: string };
  readonly applicator: Applicator;
  readonly coatNumber: number;
};

/** The facts of the piece: what lies below, the coat, and how old the oldest paint may be. */
const pieceTold = (
  words: PracticeWords,
  { level, board, product: { family }, applicator, coatNumber }: Drawn,
  chance: Chance,
): Case => {
  let on = laidOn(words, family, board, applicator, chance);
  on = withFact(on, 'coat-number', coatNumber);
  on = withFact(on, 'piece', 'furniture');
  if (!UNSANDED.includes(family)) on = withFact(on, 'sheen', SHEEN[board.sheen]);
  // Old paint of unknown age asks for a test before anything else; it is met now and then.
  const old = level === 'case' && board.base.paint !== undefined && chance.under(12) === 0;
  return withFact(on, 'age', old ? 'unknown' : 'since-1993');
};

/** How dry it is, and of a whole case the clock that tells it; nothing where that clock is not surely there. */
const filmTold = (
  { flaw, level, stage, product, applicator, coatNumber }: Drawn,
  piece: Case,
  chance: Chance,
): Pick<Told, 'on' | 'standing' | 'coat'> | undefined => {
  if (!stage) return { on: piece, standing: undefined, coat: undefined };
  if (strictly(flaw, ASKED.stillTacky) === 'yes') {
    const on = withFact(piece, 'hours-since-coat', TACKY_HOURS);
    return { on: withStanding(on, 'overdue', 'told'), standing: 'overdue', coat: undefined };
  }
  if (level !== 'case') {
    const hours = HOURS[stage];
    const on = hours === undefined ? piece : withFact(piece, 'hours-since-coat', hours);
    return { on: withStanding(on, stage, 'told'), standing: stage, coat: undefined };
  }
  const coat = coatOf(product, applicator, coatNumber, stage, chance);
  if (!coat) return undefined;
  let on = withFact(piece, 'air-celsius', coat.laid.celsius, 'measured');
  on = withFact(on, 'relative-humidity', coat.laid.relativeHumidity, 'measured');
  on = withFact(on, 'hours-since-coat', (coat.now - coat.laid.laidAt) / HOUR_MS, 'computed');
  return { on: withStanding(on, stage, 'computed'), standing: stage, coat };
};

/** Whether what the facts already tell is what the flaw and the picture show. */
const fits = (
  known: PracticeKnowledge,
  on: Case,
  { signs }: PracticeFlaw,
  shows: Situation['shows'],
  wanted: (question: string) => PlainAnswer | undefined,
): boolean =>
  [...new Set([...Object.keys(signs), ...Object.keys(shows)])].every((question) => {
    const [told, sign] = [answerOf(known, on, question), wanted(question)];
    return !sign || !told || told === sign;
  });

/**
 * Every question of the tree that can be checked at this stage, answered as the flaw shows. Nothing where the way leads
 * over to another flaw, or asks what is that one's own.
 */
const answeredOn = (
  known: PracticeKnowledge,
  told: Case,
  flaw: PracticeFlaw,
  { shows, stage }: { readonly shows: Situation['shows']; readonly stage: Stage | undefined },
  answerTo: (question: string) => PlainAnswer,
): Pick<Situation, 'on' | 'answered'> | undefined => {
  // Another flaw's questions are met where a tree hands over; what is told would then be of that flaw and not of this one.
  const own = new Set<string>([
    ...Object.keys(flaw.signs),
    ...Object.keys(shows),
    ...[...visits(flaw.tree)].flatMap(({ branch }) => ('ask' in branch ? [branch.ask] : [])),
  ]);
  const answered: string[] = [];
  let on = told;
  for (;;) {
    const { met, leaves } = possible(known, on, flaw.id);
    const next = met.find((one) => one.open);
    if (leaves.every(({ of }) => of !== flaw.id)) return undefined;
    if (!next) {
      const settled = !stage || stage === 'recoatable' || stage === 'cured';
      return settled && leaves.some(({ of }) => of !== flaw.id) ? undefined : { on, answered };
    }
    if (!own.has(next.question)) return undefined;
    on = withAnswer(on, next.question, answerTo(next.question));
    answered.push(next.question);
  }
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
  const drawn: Drawn = { flaw, level, stage, board, product, applicator, coatNumber: 1 + chance.under(4) };
  const told = filmTold(drawn, pieceTold(words, drawn, chance), chance);
  if (!told) return undefined;
  const wanted = (question: string): PlainAnswer | undefined => shows[question] ?? strictly(flaw, question);
  if (!fits(known, told.on, flaw, shows, wanted)) return undefined;
  const found = answeredOn(
    known,
    told.on,
    flaw,
    { shows, stage },
    (question) => wanted(question) ?? mostly(flaw, question) ?? chance.one<PlainAnswer>(['yes', 'no']),
  );
  return found && { ...told, ...found, board, applicator, shows };
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
