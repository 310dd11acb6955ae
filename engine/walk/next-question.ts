import { type AnswerReads, answerOf, canCheck } from '../case/answers.ts';
import { type Case, withAnswer } from '../case/case.ts';
import { treesOf } from '../compiled/compiled.ts';
import { NODE, type Place, type TreeReads } from '../compiled/trees.ts';
import type { Knows } from '../knowledge/knowledge.ts';
import type { QuestionId } from '../model/ids.ts';
import type { Stage } from '../model/stage.ts';
import { actionKey, type DoingReads, doingOf } from './act.ts';
import { type Leaf, type MetQuestion, possible, rootOf } from './leaves.ts';

/** What is read to find the next question. */
export type WayReads = TreeReads & AnswerReads & DoingReads;

/** What hands do at an end: the same word, the same hands. */
export type HandsKey = (leaf: Leaf) => string;

export const handsAt =
  (known: Knows<DoingReads>, on: Case, stage: Stage): HandsKey =>
  (leaf) =>
    actionKey(doingOf(known, on, leaf, stage), leaf);

/** Whether all of these ends have hands do the same. */
export const areAlike = (leaves: readonly Leaf[], hands: HandsKey): boolean =>
  new Set(leaves.map(hands)).size === 1;

/** What she could not tell on the way and what keeps both branches, each once, in the order met. */
export const doubtedIn = (met: readonly MetQuestion[]): readonly QuestionId[] => [
  ...new Set(met.filter(({ answer }) => answer === 'unsure').map(({ question }) => question)),
];

/** The first question on the way that is not answered. One that can't be checked now is passed over. */
export const firstOpen = (met: readonly MetQuestion[]): QuestionId | undefined =>
  met.find(({ open }) => open)?.question;

/** What the answers that can still be given may lead hands to do; ends that stay open leave the film alone. */
const endings = (known: Knows<WayReads>, on: Case, defect: string, hands: HandsKey): ReadonlySet<string> => {
  const { leaves, met } = possible(known, on, defect);
  const next = firstOpen(met);
  if (!next) {
    const [only = '', ...others] = new Set(leaves.map(hands));
    return new Set([others.length ? 'leave' : only]);
  }
  const found = new Set<string>();
  for (const answer of ['yes', 'no'] as const) {
    for (const key of endings(known, withAnswer(on, next, answer), defect, hands)) found.add(key);
    if (found.size > 1) break; // told apart: that is all that is asked
  }
  return found;
};

/**
 * What all ends below a place may come to agree on, and how likely each is, one answer being as likely as the other.
 */
type Agreement = ReadonlyMap<string, number>;

/**
 * How likely it is that all ends still open come to have hands do the same. What she can't tell, or can't check now, keeps
 * both branches, so both must come to it; branches are taken to hang on answers of their own.
 */
const agreement = (known: Knows<WayReads>, on: Case, defect: string, hands: HandsKey): number => {
  const trees = treesOf(known);
  const { nodes, questions, leaves } = trees;
  const below = (place: Place): Agreement => {
    if (place < 0) return new Map([[hands(leaves[~place]!), 1]]);
    const at = place * NODE;
    const question = questions[nodes[at]!]!;
    const answer = answerOf(known, on, question);
    const [yes, no] = [nodes[at + 1]!, nodes[at + 2]!];
    if (answer === 'yes' || answer === 'no') return below(answer === 'yes' ? yes : no);
    const [ofYes, ofNo] = [below(yes), below(no)];
    const asked = answer === undefined && canCheck(known, on, question);
    return new Map(
      [...new Set([...ofYes.keys(), ...ofNo.keys()])].map((key) => {
        const [one, other] = [ofYes.get(key) ?? 0, ofNo.get(key) ?? 0];
        return [key, asked ? (one + other) / 2 : one * other];
      }),
    );
  };
  return [...below(rootOf(known, trees, defect)).values()].reduce((sum, one) => sum + one, 0);
};

/** Whether some answers to all that is open have hands do the same: where one answer tells two branches, none may. */
const canSettle = (known: Knows<WayReads>, on: Case, defect: string, hands: HandsKey): boolean => {
  const { leaves, met } = possible(known, on, defect);
  if (areAlike(leaves, hands)) return true;
  const next = firstOpen(met);
  if (!next || agreement(known, on, defect, hands) === 0) return false;
  return (['yes', 'no'] as const).some((answer) =>
    canSettle(known, withAnswer(on, next, answer), defect, hands),
  );
};

/** Nothing more is asked where other answers are less likely than this to settle what hands do. */
const WORTH_ASKING = 0.3;
/** Whoever could not tell more than this is asked no further: a check takes her less than guesses. */
const MOST_DOUBTED = 1;

/**
 * The question that does most to settle what hands do in spite of a doubt; nothing where that is not likely. Most
 * doubts are about what parts two repairs, and no other answer joins these.
 */
const settling = (
  known: Knows<WayReads>,
  on: Case,
  defect: string,
  hands: HandsKey,
  met: readonly MetQuestion[],
): QuestionId | undefined => {
  if (agreement(known, on, defect, hands) < WORTH_ASKING || !canSettle(known, on, defect, hands))
    return undefined;
  const open = new Set(met.filter((one) => one.open).map(({ question }) => question));
  let best: { readonly question: QuestionId; readonly parts: number } | undefined;
  for (const question of open) {
    const after = (answer: 'yes' | 'no') => agreement(known, withAnswer(on, question, answer), defect, hands);
    const parts = Math.abs(after('yes') - after('no'));
    if (parts > (best?.parts ?? 0)) best = { question, parts };
  }
  return best?.question;
};

/** The next question whose answer can change what hands do. */
export const questionThatChanges = (
  known: Knows<WayReads>,
  on: Case,
  defect: string,
  hands: HandsKey,
): QuestionId | undefined => {
  const { leaves, met } = possible(known, on, defect);
  if (areAlike(leaves, hands)) return undefined;
  const doubted = doubtedIn(met).length;
  if (doubted) return doubted > MOST_DOUBTED ? undefined : settling(known, on, defect, hands, met);
  const next = firstOpen(met);
  return next && endings(known, on, defect, hands).size > 1 ? next : undefined;
};
