import type { Answer } from '../../case/case.ts';
import type { Question } from '../../model/question.ts';
import { reached, type Stage } from '../../model/stage.ts';
import { YES_CHANCE } from '../../see/matrix.ts';
import { nextQuestion as planned } from '../../see/plan.ts';
import { type Heard, SURE as TAKEN } from '../words/heard.ts';
import { answerTold, type Mind, type ToldFacts } from './mind.ts';

/** Share of answers that we reckon to be wrong, given to a question and given by the clock or a fact. Our estimate. */
const ERRS = 0.04;
const FACT_ERRS = 0.02;
/** What a text says is heard with less trust: its signs lean on the same words as each other. Chosen on open posts. */
const HEARD_ERRS = 0.12;
const HEARD_COUNTS = 0.2;
/** What follows from facts that a text tells leans on the same words, too. Chosen on open posts. */
const HEARD_FACTS_COUNT = 0.1;
/** Words repeat each other: taken whole they would be surer than they are right. Chosen on open posts. */
const WORDS_COUNT = 0.8;
/** How far the prior still counts beside words, which already know how common a flaw is. */
const PRIOR_BESIDE_WORDS = 0.2;
/** A kind of top coat that a flaw is not met on; people name the wrong kind, or one that lies below. Chosen on open posts. */
const WRONG_KIND = 0.3;

/**
 * Who calls a flaw by its name knows it: so much likelier is it, of several that are called so each. A few words name what
 * is the matter; a story names what was the matter before, too. Where nothing is told of the
 * coat nothing stands against the name, and the words do. Chosen on open posts and phrases.
 */
const CALLED = 40;
const CALLED_IN_STORY = 12;
const STORY = 160;
/** Facts by which one flaw is likelier than another. */
const OF_THE_COAT: readonly string[] = ['family', 'base', 'hardener'];
const KIN_OF_OTHER_KINDS = 0.5;

/** How much likelier a name makes a flaw. */
const forceOf = (heard: Heard | undefined): number => {
  const speaks = heard?.among.length || heard?.facts.some(({ fact }) => OF_THE_COAT.includes(fact));
  if (!heard || !speaks) return 1;
  return heard.text.length > STORY ? CALLED_IN_STORY : CALLED;
};

/**
 * How far each flaw is called by its name, 0 to 1. Where the kind of finish is told, those met on it, or all if none is;
 * where none is told, the first is meant before its kin of other kinds.
 */
const calledFlaws = (
  { matrix, families }: Mind,
  heard: Heard | undefined,
  kinds: readonly string[] | undefined,
): ReadonlyMap<number, number> => {
  const called = new Map<number, number>();
  for (const { flaws, denied } of heard?.names ?? []) {
    if (denied) continue;
    const all = flaws.map((id) => matrix.defects.indexOf(id)).filter((at) => at >= 0);
    const met = kinds ? all.filter((at) => families[at]?.some((family) => kinds.includes(family))) : all;
    (met.length ? met : all).forEach((at, rank) => {
      const far = kinds || rank === 0 ? 1 : KIN_OF_OTHER_KINDS;
      called.set(at, Math.max(called.get(at) ?? 0, far));
    });
  }
  return called;
};

/** Everything that weighs: what was told for certain, what a text says, and the chance of each flaw by its words. */
export type Evidence = {
  readonly told: ToldFacts;
  readonly heard?: Heard | undefined;
  /** By the search: chance of each flaw of the table, 0 to 1; not normalized. */
  readonly words?: ArrayLike<number> | undefined;
};

export type Belief = {
  /** Chances of the flaws in the order of the table; they add up to 1. */
  readonly chances: Float64Array;
  /** Answers known without asking, by question: told, heard or following. */
  readonly known: ReadonlyMap<string, Answer>;
};

export const bent = (yes: number, errs: number): number => yes * (1 - 2 * errs) + errs;

/** Facts and answers that a text tells surely enough to be taken as told. */
export const toldBy = (heard: Heard): ToldFacts => ({
  ...Object.fromEntries(
    heard.facts.filter(({ sure }) => sure >= TAKEN).map(({ fact, value }) => [fact, value]),
  ),
});

/** One belief: prior × kind of finish × words × each answer with its chance of error. Nothing is ruled out by one answer. */
export const believe = (mind: Mind, { told, heard, words }: Evidence): Belief => {
  const { matrix } = mind;
  const all: ToldFacts = { ...(heard ? toldBy(heard) : {}), ...told };
  const logs = Float64Array.from(matrix.prior, (share) => Math.log(share) * (words ? PRIOR_BESIDE_WORDS : 1));
  if (words)
    for (let d = 0; d < logs.length; d++)
      logs[d] = (logs[d] ?? 0) + WORDS_COUNT * Math.log((words[d] ?? 0) + 1e-3);
  const open = heard?.among.find(({ fact }) => fact === 'family');
  const kinds = all['family'] !== undefined ? [String(all['family'])] : open?.values;
  if (kinds)
    mind.families.forEach((families, d) => {
      if (!families.some((family) => kinds.includes(family))) logs[d] = (logs[d] ?? 0) + Math.log(WRONG_KIND);
    });
  const called = Math.log(forceOf(heard));
  for (const [d, far] of calledFlaws(mind, heard, kinds)) logs[d] = (logs[d] ?? 0) + called * far;
  const known = new Map<string, Answer>();
  const weigh = (question: number, answer: 'yes' | 'no', errs: number, counts: number): void => {
    for (let d = 0; d < logs.length; d++) {
      const yes = YES_CHANCE[(matrix.signs[question] ?? '').charCodeAt(d) - 48] ?? 0.5;
      logs[d] = (logs[d] ?? 0) + counts * Math.log(bent(answer === 'yes' ? yes : 1 - yes, errs));
    }
  };
  const signs = new Map(heard?.signs.map((sign) => [sign.question, sign]));
  matrix.questions.forEach((question, at) => {
    const answer = answerTold(mind, all, question);
    const sign = signs.get(question);
    if (answer) {
      known.set(question, answer);
      if (answer === 'unsure') return;
      if (told[question] === answer) weigh(at, answer, ERRS, 1);
      else weigh(at, answer, FACT_ERRS, answerTold(mind, told, question) ? 1 : HEARD_FACTS_COUNT);
    } else if (sign) {
      if (sign.sure >= TAKEN) known.set(question, sign.answer);
      weigh(at, sign.answer, Math.max(HEARD_ERRS, 1 - sign.sure), HEARD_COUNTS);
    }
  });
  const most = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - most));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return { chances: weights.map((weight) => weight / total), known };
};

/**
 * Flaws less likely than the first by this are left out of the plan of questions; they stay in the belief. Where an
 * answer speaks against the first itself, one of them is wrong, and more are kept in view.
 */
const LEFT_OUT = 1 / 20;
const LEFT_OUT_IN_DOUBT = 1 / 200;

const planWeights = ({ matrix }: Mind, { chances, known }: Belief): Float64Array => {
  let first = 0;
  chances.forEach((chance, d) => {
    if (chance > (chances[first] ?? 0)) first = d;
  });
  const doubted = matrix.questions.some((question, at) => {
    const answer = known.get(question);
    const yes = YES_CHANCE[(matrix.signs[at] ?? '').charCodeAt(first) - 48] ?? 0.5;
    return (answer === 'yes' && yes < 0.05) || (answer === 'no' && yes > 0.95);
  });
  const least = (chances[first] ?? 0) * (doubted ? LEFT_OUT_IN_DOUBT : LEFT_OUT);
  return chances.map((chance) => (chance >= least ? chance : 0));
};

/** What a piece is known to bear: how dry its film is, and ways of checking that wait behind a stop. */
export type Bears = { readonly stage: Stage | undefined; readonly waits: ReadonlySet<Question['by']> };

/** Whether a question may be asked: of a film at an unknown stage only what harms no wet film, and nothing that waits. */
export const isFit = (mind: Mind, question: number, { stage, waits }: Bears): boolean => {
  const { safeFrom = 'cured', by = 'look' } = mind.questions[question] ?? {};
  return reached(stage ?? 'wet', safeFrom) && !waits.has(by);
};

/** The question that tells most and may be asked now, or undefined where nothing is left that would tell. */
export const nextAsked = (mind: Mind, belief: Belief, bears: Bears): string | undefined => {
  const open = mind.matrix.questions.flatMap((question, at) =>
    belief.known.has(question) || !isFit(mind, at, bears) ? [] : [at],
  );
  const next = planned(mind.matrix, planWeights(mind, belief), open);
  return next === undefined ? undefined : mind.matrix.questions[next];
};
