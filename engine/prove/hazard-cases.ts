import { lookupIn } from '../case/answers.ts';
import { type Case, emptyCase, withFact } from '../case/case.ts';
import { factsIn, holds } from '../case/condition.ts';
import type { Weight } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import { ASKED } from '../knowledge/known-questions.ts';
import { FAMILIES, type Family } from '../model/family.ts';
import type { Hazard } from '../model/hazard.ts';
import type { Step } from '../model/step.ts';
import { factsOfStep, hazardRows, hazardsOf } from '../rules/hazards.ts';
import { firedBefore, type RuleEntry } from '../rules/rules.ts';
import { missing, NEEDS, needed, weightOf } from './needs.ts';

/** The values of the facts that a caution can hang on; `undefined` is not told. */
const MATTERS: Readonly<Record<string, readonly (string | number | undefined)[]>> = {
  family: [undefined, ...FAMILIES],
  applicator: [undefined, 'brush', 'cloth', 'spray-gun', 'aerosol'],
  [ASKED.wasSprayed]: [undefined, 'yes', 'no'],
  [ASKED.tinListsOil]: [undefined, 'yes', 'no'],
  [ASKED.firstCoatOnBareWood]: [undefined, 'yes', 'no'],
  age: [undefined, 'before-1993', 'since-1993', 'unknown'],
  piece: [undefined, 'furniture', 'tabletop', 'food-surface', 'childs-item', 'crib', 'valuable'],
  hardener: [undefined, 'none', 'isocyanate', 'acid'],
  base: [undefined, 'oil-paint', 'stain', 'latex-paint', 'old-finish'],
  'air-celsius': [undefined, 10, 20],
  stage: [undefined, 'wet', 'cured'],
};

/** How many cases there are for one step: all values of all facts that matter, told and not told. */
export const CASES_OF_A_STEP = Object.values(MATTERS).reduce((all, { length }) => all * length, 1);

/** A step that lacks what its hazard calls for, in the first case where it does. */
export type Hole = {
  readonly hazard: Hazard;
  readonly lacks: Weight;
  readonly in: string;
  readonly cases: number;
};

const productOf = (facts: readonly string[], at: Case): readonly Case[] =>
  facts.reduce<readonly Case[]>(
    (cases, fact) =>
      cases.flatMap((one) =>
        fact in at
          ? [one]
          : (MATTERS[fact] ?? [undefined]).map((value) =>
              value === undefined ? one : { ...one, [fact]: { value, how: 'told' as const } },
            ),
      ),
    [at],
  );

const sayCase = (on: Case, facts: readonly string[]): string =>
  facts.map((fact) => `${fact} ${on[fact]?.value ?? 'not told'}`).join(', ') || 'any case';

const mayGuard = (rule: RuleEntry, hazard: Hazard) => rule.hazards.includes(hazard);

/**
 * What is the same for many steps: the knowledge with the rules of one hazard alone, and the cases. Rules that hold in a
 * case are remembered by both, so each is made once.
 */
type Book = {
  readonly known: Knowledge;
  readonly guarded: (hazard: Hazard) => Knowledge;
  readonly casesOf: (facts: readonly string[], at: Case) => readonly Case[];
};

const madeOnce = <A extends readonly unknown[], T>(
  make: (...given: A) => T,
  keyOf: (...given: A) => string,
): ((...given: A) => T) => {
  const made = new Map<string, T>();
  return (...given) => {
    const key = keyOf(...given);
    const one = made.get(key) ?? make(...given);
    made.set(key, one);
    return one;
  };
};

/** Facts with those that answers among them follow from. */
const withAnswers = (known: Knowledge, facts: readonly string[]): readonly string[] => {
  const all = new Set(facts);
  for (const fact of all)
    if (known.has('question', fact))
      for (const { when } of known.get('question', fact).known)
        for (const { fact: other } of factsIn(when)) all.add(other);
  // The stage is told by a film that is overdue as well.
  return all.has('stage') ? [...all.add('overdue')] : [...all];
};

const bookOf = (known: Knowledge): Book => ({
  known,
  guarded: madeOnce(
    (hazard) => ({ ...known, rules: known.rules.filter((rule) => mayGuard(rule, hazard)) }),
    (hazard) => hazard,
  ),
  casesOf: madeOnce(productOf, (facts, at) => JSON.stringify([facts, at])),
});

/**
 * Every case of one step: for each hazard that it can have, all values of the facts that the hazard, its rules and its
 * need hang on. Other facts change nothing for it, so their cases are the same and are looked at once.
 */
const holesOfStep = (
  { known, guarded, casesOf }: Book,
  step: Step,
  families: readonly Family[],
  at: Case,
): { holes: readonly Hole[]; looked: number } => {
  const holes = new Map<string, Hole>();
  const base = factsOfStep(step);
  const hangsOn = withAnswers(known, ['family', ...[...base.values()].flat()]);
  const doesIn = madeOnce(
    (on: Case) => hazardsOf(known, on, step, families),
    (on) => hangsOn.map((fact) => on[fact]?.value).join('|'),
  );
  let looked = 0;
  const hazards = new Set<Hazard>(base.keys());
  for (const hazard of hazards) {
    const guards = guarded(hazard);
    const { rules } = guards;
    const facts = [
      ...new Set([
        ...(base.get(hazard) ?? []),
        ...NEEDS[hazard].on,
        ...rules.flatMap(({ when }) => (when ? [...factsIn(when)].map(({ fact }) => fact) : [])),
      ]),
    ].filter((fact) => fact in MATTERS);
    for (const on of casesOf(facts, at)) {
      looked++;
      const does = doesIn(on);
      const truth = does.get(hazard) ?? 'no';
      const each =
        on['family'] || !families.length ? [on] : families.map((one) => withFact(on, 'family', one));
      const lookups = each.map((one) => lookupIn(known, one));
      const wanted = needed(hazard, truth, (condition) =>
        lookups.every((lookup) => holds(condition, lookup) === 'yes'),
      );
      if (!wanted.length) continue;
      const fired = Object.values(firedBefore(guards, on, [does], families)).flat();
      for (const lacks of missing(wanted, fired.map(weightOf))) {
        const key = `${hazard} ${lacks}`;
        const before = holes.get(key);
        holes.set(
          key,
          before
            ? { ...before, cases: before.cases + 1 }
            : { hazard, lacks, in: sayCase(on, facts), cases: 1 },
        );
      }
    }
  }
  return { holes: [...holes.values()], looked };
};

/** Nothing else of a step is looked at than what it does and the facts that this hangs on. */
const signature = (step: Step, families: readonly Family[], at: Case): string =>
  JSON.stringify([hazardRows(step), families, Object.entries(at).map(([fact, { value }]) => [fact, value])]);

/** Looks at every case of a step once for all steps that do the same. */
export const caseBook = (known: Knowledge) => {
  const seen = new Map<string, { holes: readonly Hole[]; looked: number }>();
  const book = bookOf(known);
  return {
    holesOf(step: Step, families: readonly Family[], at: Case = emptyCase()): readonly Hole[] {
      const key = signature(step, families, at);
      const found = seen.get(key) ?? holesOfStep(book, step, families, at);
      seen.set(key, found);
      return found.holes;
    },
    /** Cases looked at one by one; all others are equal to one of them. */
    get looked() {
      return [...seen.values()].reduce((sum, { looked }) => sum + looked, 0);
    },
  };
};
