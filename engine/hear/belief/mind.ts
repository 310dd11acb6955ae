import { answerBy } from '../../case/answers.ts';
import { type Answer, type Case, emptyCase, withAnswer, withFact } from '../../case/case.ts';
import type { Knowledge } from '../../knowledge/knowledge.ts';
import type { ConditionInput } from '../../model/condition.ts';
import type { Question } from '../../model/question.ts';
import { STAGES, type Stage } from '../../model/stage.ts';
import type { Whom } from '../../model/whom.ts';
import { firstSentence } from '../../plain/text.ts';
import { SPRAYED } from '../../rules/hazards.ts';
import { isHeardAlone, type RuleEntry } from '../../rules/rules.ts';
import { matrixOf, type SignMatrix } from '../../see/matrix.ts';
import { actionKey, actOf } from '../../walk/act.ts';
import { possible } from '../../walk/leaves.ts';
import { walk } from '../../walk/walk.ts';

/** What a question of the table needs to be asked at the right moment, in the order of `matrix.questions`. */
type Manner = {
  readonly ask: string;
  readonly how: string;
  readonly safeFrom: Stage;
  readonly by: Question['by'];
  readonly known: Question['known'];
};

/** All that the belief needs of the knowledge: plain data, made at build time, sent as JSON. */
export type Mind = {
  readonly matrix: SignMatrix;
  readonly names: readonly string[];
  /** Kinds of top coat that each flaw is met on. */
  readonly families: readonly (readonly string[])[];
  readonly questions: readonly Manner[];
  /**
   * For each stage in the order of `STAGES`, then for a film that is sticky long past its time: what hands may come to
   * do for each flaw, as marks in `acts`.
   */
  readonly hands: readonly (readonly (readonly number[])[])[];
  readonly acts: readonly string[];
  /** The words of each act, in the order of `acts`. */
  readonly words: readonly ActWords[];
  /** What each flaw's own page says of a coat that is wet, or sets; those left out are left alone in general words. */
  readonly fresh: Readonly<Record<'wet' | 'setting', Readonly<Record<string, FreshWay>>>>;
  /** Rules that facts alone fire: those that stop the work, and cautions that hang on no step. */
  readonly fired: readonly FiredRule[];
  /** Rules that words call for, in the order in which they are told: first what has happened, then stops, then the rest. */
  readonly dangers: readonly ToldRule[];
};

/** What is said of an act: its verdict, what to do and what not to do; a repair names its remedy. */
export type ActWords = {
  readonly do: string;
  readonly verdict: string;
  readonly say: string;
  readonly not: string;
  readonly again: string;
  readonly remedy?: string;
};

/** What hands do with one flaw in a coat that moves: a mark in `acts`, words of its own, or the question they hang on. */
export type FreshWay =
  | { readonly act: number }
  | { readonly words: ActWords }
  | {
      readonly asks: string;
      /** What answers it by itself. */
      readonly known: Question['known'];
      readonly yes: FreshWay;
      readonly no: FreshWay;
    };

/** A rule in the words that are told of a post. */
export type ToldRule = {
  readonly id: string;
  readonly title: string;
  readonly say: string;
  /** One line for it, where it is named behind another. */
  readonly lead?: string;
  readonly defers: string;
  readonly isStop: boolean;
  /** What saves first, case by case. */
  readonly atOnce?: readonly string[];
  /** Whom to call: the film can wait, and nothing else is told before it. Of what is considered with those of its cases. */
  readonly calls?: readonly Whom[];
  /** Whom to call by each case of `atOnce`; nothing once the cases are those that are told. */
  readonly callsAtOnce?: readonly (readonly Whom[])[];
  /** What is said in its place once the step is over. */
  readonly done?: string;
  /** The step is over for sure: it stands behind what to do. */
  readonly isPast?: true;
  /** It guards a step that is told as done; what it says is for the next one. */
  readonly ofStep?: true;
  /** The facts that fire it tell nothing of the step that it guards: it stands behind what to do. */
  readonly toldLast?: true;
  /** Ways of checking that wait while it stands. */
  readonly waits?: readonly Question['by'][];
};

/** Told where the first condition holds, and the second too; a lenient one where nothing told speaks against it. */
type FiredRule = ToldRule & {
  readonly when: ConditionInput;
  readonly and?: ConditionInput;
  readonly isLenient: boolean;
};

const toldRule = (rule: RuleEntry): ToldRule => {
  const { id, title, say, lead, done, defers, kind, checks, calls, 'at-once': cases } = rule;
  const waits = checks.flatMap(({ by, wait }) => (wait ? by : []));
  return {
    id,
    title,
    say,
    ...(lead && { lead }),
    ...(done && { done }),
    defers,
    isStop: kind === 'stop',
    ...(cases.length && { atOnce: cases.map((one) => one.say) }),
    ...(calls.length && { calls }),
    ...(cases.some((one) => one.calls.length) && { callsAtOnce: cases.map((one) => one.calls) }),
    ...(waits.length && { waits }),
  };
};

/** A post has no steps: a rule before a step that sprays is told where the post says that the coat was sprayed. */
const firedRule = (rule: RuleEntry): FiredRule => ({
  ...toldRule(rule),
  when: rule.when ?? {},
  ...(rule.sure === 'yes' && rule.hazards.includes('mist') && { and: SPRAYED, ofStep: true as const }),
  ...(rule['told-last'] && { toldLast: true as const }),
  isLenient: rule['unless-known-no'],
});

const rankOf = (rule: RuleEntry): number => (rule.kind === 'stop' ? (isHeardAlone(rule) ? 0 : 1) : 2);

const wordsOf = (known: Knowledge, act: string): ActWords => {
  const [doing = 'leave', remedy = ''] = act.split(':');
  const { verdict, say, not, again } = known.get('doing', doing);
  if (!remedy) return { do: doing, verdict, say, not, again };
  return { do: doing, verdict, say: known.get('remedy', remedy).summary, not, again, remedy };
};

/** The walk of a coat that moves, to every end of it. */
const freshWay = (known: Knowledge, on: Case, defect: string, markOf: (act: string) => number): FreshWay => {
  const walked = walk(known, on, defect);
  if (walked.kind === 'question') {
    const { question } = walked;
    const way = (answer: 'yes' | 'no') => freshWay(known, withAnswer(on, question, answer), defect, markOf);
    return { asks: question, known: known.get('question', question).known, yes: way('yes'), no: way('no') };
  }
  if (walked.kind !== 'outcome' || !walked.alike) return { act: markOf('leave') };
  const { do: doing, verdict, say, not, again } = walked.action;
  const general = wordsOf(known, doing);
  return say === general.say && not === general.not
    ? { act: markOf(doing) }
    : { words: { do: doing, verdict, say, not, again } };
};

/** The mind of the whole knowledge. */
export const mindOf = (known: Knowledge): Mind => {
  const matrix = matrixOf(known);
  const acts: string[] = [];
  const markOf = (act: string): number => {
    if (!acts.includes(act)) acts.push(act);
    return acts.indexOf(act);
  };
  const dry = withFact(emptyCase(), 'stage', 'dry-to-touch');
  const cases = [
    ...STAGES.map((stage) => [stage, withFact(emptyCase(), 'stage', stage)] as const),
    ['dry-to-touch' as const, withFact(dry, 'overdue', 'yes')] as const,
  ];
  const hands = cases.map(([stage, on]) =>
    matrix.defects.map((defect) => {
      const { leaves } = possible(known, on, defect);
      return [...new Set(leaves.map((leaf) => markOf(actionKey(actOf(known, on, leaf, stage), leaf))))].sort(
        (a, b) => a - b,
      );
    }),
  );
  const freshAt = (stage: 'wet' | 'setting') =>
    Object.fromEntries(
      matrix.defects.flatMap((defect) => {
        const way = freshWay(known, withFact(emptyCase(), 'stage', stage), defect, markOf);
        return 'act' in way && acts[way.act] === 'leave' ? [] : [[defect, way]];
      }),
    );
  const fresh = { wet: freshAt('wet'), setting: freshAt('setting') };
  return {
    matrix,
    names: known.defects.map(({ name }) => name),
    families: known.defects.map(({ families }) => families),
    questions: matrix.questions.map((id) => {
      const { ask, how, by, known: rules, 'safe-from': safeFrom } = known.get('question', id);
      return { ask, how, by, safeFrom, known: rules };
    }),
    hands,
    acts,
    words: acts.map((act) => wordsOf(known, act)),
    fresh,
    fired: known.rules
      // A rule is told of a post only where a fact of it fires it; the others stand before their steps.
      .filter(({ kind, always, when }) => (kind === 'stop' || always) && when && !('not' in when))
      .map(firedRule),
    dangers: known.rules
      .filter(
        ({ heard, 'at-once': cases }) =>
          heard.length > 0 || cases.some(({ fires, across }) => fires || across),
      )
      .sort((a, b) => rankOf(a) - rankOf(b))
      .map(toldRule),
  };
};

/** What is known for certain: facts and answers by name. */
export type ToldFacts = Readonly<Record<string, string | number>>;

const places = new WeakMap<readonly string[], ReadonlyMap<string, number>>();

/** Where each question stands in the table: all of them are looked up for each belief. */
const placesOf = (questions: readonly string[]): ReadonlyMap<string, number> => {
  const known = places.get(questions);
  if (known) return known;
  const fresh = new Map(questions.map((question, at) => [question, at]));
  places.set(questions, fresh);
  return fresh;
};

/** The answer to a question of the table as far as what is told gives it, by the same rule as in a walk. */
export const answerTold = (mind: Mind, told: ToldFacts, question: string): Answer | undefined =>
  answerBy(
    (id) => mind.questions[placesOf(mind.matrix.questions).get(id) ?? -1]?.known,
    (fact) => told[fact],
    question,
  );

/** The first sentence of what a rule says, which does alone; nothing where the ear does not know the rule. */
export const firstOfRule = ({ dangers, fired }: Mind, id: string): string | undefined => {
  const rule = [...dangers, ...fired].find((one) => one.id === id);
  return rule && firstSentence(rule.say);
};
