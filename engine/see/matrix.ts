import { holds } from '../case/condition.ts';
import type { Knows } from '../knowledge/knowledge.ts';
import { signOf } from '../knowledge/sign.ts';
import type { Defect, Sign } from '../model/defect.ts';
import { FREQUENCY } from '../model/frequency.ts';
import type { Question } from '../model/question.ts';

/** What a defect shows for a question, as a code. Only NO and YES can rule a defect out. */
export const NO = 0;
export const YES = 1;
const EITHER = 2;
const MOSTLY_YES = 3;
const MOSTLY_NO = 4;

/** How often a defect with each code shows yes. The mostly ones are our estimate. */
export const YES_CHANCE: readonly number[] = [0, 1, 0.5, 0.9, 0.1];

/** The signs of all defects as one table; plain data, so that it can be sent to a page. */
export type SignMatrix = {
  readonly defects: readonly string[];
  readonly questions: readonly string[];
  /** How common each defect is, in parts of one. */
  readonly prior: readonly number[];
  /** 1 at a glance to 3 with a tool, per question. */
  readonly effort: readonly number[];
  /** One string a question, a digit a defect: the code of its sign. */
  readonly signs: readonly string[];
};

/** What is read to make the table. */
export type SeeReads = {
  readonly defect: Pick<Defect, 'signs' | 'often' | 'families'>;
  readonly question: Pick<Question, 'known' | 'usually' | 'effort'>;
};
type Asked = SeeReads['question'] & { readonly id: string };

const CODE: Record<Sign, number> = {
  no: NO,
  yes: YES,
  either: EITHER,
  'mostly-yes': MOSTLY_YES,
  'mostly-no': MOSTLY_NO,
};

/**
 * What a defect shows for a question: what its author says; else what its kinds of top coat settle; else what
 * flaws usually show; else either.
 */
const shownBy = (defect: SeeReads['defect'], question: Asked): Sign =>
  signOf(defect, question.id) ?? byFamilies(defect, question) ?? question.usually ?? 'either';

const byFamilies = (defect: SeeReads['defect'], question: Asked): Sign | undefined => {
  const answers = new Set(
    defect.families.map(
      (family) =>
        question.known.find(
          (rule) => holds(rule.when, (fact) => (fact === 'family' ? family : undefined)) === 'yes',
        )?.answer,
    ),
  );
  const [only] = answers;
  return answers.size === 1 ? only : undefined;
};

/** The table of the whole knowledge: the questions that tell at least two defects apart. */
export const matrixOf = (known: Knows<SeeReads>): SignMatrix => {
  const defects = known.defects;
  const total = defects.reduce((sum, defect) => sum + FREQUENCY[defect.often], 0);
  const rows = known.questions
    .map((question) => ({ question, signs: defects.map((defect) => shownBy(defect, question)) }))
    .filter(({ signs }) => signs.includes('yes') && signs.includes('no'));
  return {
    defects: defects.map((defect) => defect.id),
    questions: rows.map(({ question }) => question.id),
    prior: defects.map((defect) => FREQUENCY[defect.often] / total),
    effort: rows.map(({ question }) => question.effort),
    signs: rows.map(({ signs }) => signs.map((sign) => CODE[sign]).join('')),
  };
};
