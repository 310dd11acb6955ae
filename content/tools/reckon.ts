/** The part of the check that needs no linked knowledge: another thread can do it beside the proofs. */
import type { Issue } from '#engine/issue.ts';
import type { SignMatrix } from '#engine/see/matrix.ts';
import { type Survey, survey } from '#engine/see/survey.ts';
import { gradesOf, type ToGrade } from './grade.ts';

/** What there is to do; plain data, so that it can be sent. */
export type Work = { readonly grade: ToGrade; readonly signs: SignMatrix };

export type Reckoned = {
  /** What is worded otherwise, where it was looked at elsewhere. */
  readonly worded?: readonly Issue[];
  readonly grades: readonly number[];
  readonly figures: Survey;
};

export const reckon = ({ grade, signs }: Work): Reckoned => ({
  grades: gradesOf(grade),
  figures: survey(signs),
});
