import { holds } from '../case/condition.ts';
import type { Knows } from '../knowledge/knowledge.ts';
import type { Defect, Sign } from '../model/defect.ts';
import { FREQUENCY } from '../model/frequency.ts';
import type { Question } from '../model/question.ts';
import { keysOf } from '../plain/entry-of.ts';

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

/** What kinds of top coat settle of a question, where they settle the same. */
const byFamilies = (families: SeeReads['defect']['families'], { known }: Asked): Sign | undefined => {
  const answers = new Set(
    families.map(
      (family) =>
        known.find((rule) => holds(rule.when, (fact) => (fact === 'family' ? family : undefined)) === 'yes')
          ?.answer,
    ),
  );
  const [only] = answers;
  return answers.size === 1 ? only : undefined;
};

/** What authors say of each question: the rows of defects, each with its sign. */
const toldOf = (defects: readonly SeeReads['defect'][]): ReadonlyMap<string, (readonly [number, Sign])[]> => {
  const told = new Map<string, (readonly [number, Sign])[]>();
  for (const [row, { signs }] of defects.entries())
    for (const question of keysOf(signs)) {
      const sign = signs[question];
      if (!sign) continue;
      const of = told.get(question);
      if (of) of.push([row, sign]);
      else told.set(question, [[row, sign]]);
    }
  return told;
};

/**
 * The table of the whole knowledge: the questions that tell at least two defects apart. What a defect shows for one is
 * what its author says; else what its kinds of top coat settle, which is asked once for all that are met on the same;
 * else what flaws usually show; else either.
 */
export const matrixOf = (known: Knows<SeeReads>): SignMatrix => {
  const defects = known.defects;
  const total = defects.reduce((sum, defect) => sum + FREQUENCY[defect.often], 0);
  const told = toldOf(defects);
  const kinds = new Map(defects.map(({ families }) => [families.join(), families]));
  const met = [...kinds.keys()];
  const metOf = defects.map(({ families }) => met.indexOf(families.join()));
  const rows = known.questions
    .map((question) => {
      const untold = [...kinds.values()].map(
        (families) => CODE[byFamilies(families, question) ?? question.usually ?? 'either'],
      );
      const codes = metOf.map((kind) => untold[kind]);
      for (const [row, sign] of told.get(question.id) ?? []) codes[row] = CODE[sign];
      return { question, signs: codes.join('') };
    })
    .filter(({ signs }) => signs.includes(String(YES)) && signs.includes(String(NO)));
  return {
    defects: defects.map((defect) => defect.id),
    questions: rows.map(({ question }) => question.id),
    prior: defects.map((defect) => FREQUENCY[defect.often] / total),
    effort: rows.map(({ question }) => question.effort),
    signs: rows.map(({ signs }) => signs),
  };
};
