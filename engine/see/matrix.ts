import type { Knowledge } from '../knowledge.ts';
import { FREQUENCY, type Sign } from '../model/defect.ts';

/** What a defect shows for a question, as a code: it must be no, must be yes, or both are met. */
export const NO = 0;
export const YES = 1;
export const EITHER = 2;

/** The signs of all defects as one table; plain data, so that it can be sent to a page. */
export type SignMatrix = {
  readonly defects: readonly string[];
  readonly questions: readonly string[];
  /** How common each defect is, in parts of one. */
  readonly prior: readonly number[];
  /** 1 at a glance to 3 with a tool, per question. */
  readonly effort: readonly number[];
  /** One string a question, a digit a defect: NO, YES or EITHER. */
  readonly signs: readonly string[];
};

const CODE: Record<Sign, number> = { no: NO, yes: YES, either: EITHER };

/** The table of the whole knowledge. A sign that is not given counts as either. */
export const matrixOf = (known: Knowledge): SignMatrix => {
  const defects = known.defects;
  const total = defects.reduce((sum, defect) => sum + FREQUENCY[defect.often], 0);
  const questions = known.questions.filter((question) => {
    const signs = new Set(defects.map((defect) => (defect.signs as Record<string, Sign>)[question.id]));
    return signs.has('yes') && signs.has('no');
  });
  return {
    defects: defects.map((defect) => defect.id),
    questions: questions.map((question) => question.id),
    prior: defects.map((defect) => FREQUENCY[defect.often] / total),
    effort: questions.map((question) => question.effort),
    signs: questions.map((question) =>
      defects.map((defect) => CODE[(defect.signs as Record<string, Sign>)[question.id] ?? 'either']).join(''),
    ),
  };
};
