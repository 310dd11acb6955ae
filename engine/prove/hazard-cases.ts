import { lookupIn } from '../case/answers.ts';
import { type Case, emptyCase, withFact } from '../case/case.ts';
import { holds } from '../case/condition.ts';
import type { Weight } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import type { ConditionInput } from '../model/condition.ts';
import type { Family } from '../model/family.ts';
import type { Hazard } from '../model/hazard.ts';
import type { Step } from '../model/step.ts';
import { hazardRows, hazardsOf } from '../rules/hazards.ts';
import { firedBefore, type RuleEntry } from '../rules/rules.ts';
import { type CaseValue, comparedIn, countOfCases, valuesTold } from './case-values.ts';
import { missing, NEEDS, needed, weightOf } from './needs.ts';

/** A step that lacks what its hazard calls for, in the first case where it does. */
export type Hole = {
  readonly hazard: Hazard;
  readonly lacks: Weight;
  readonly in: string;
  readonly cases: number;
};

type Values = ReadonlyMap<string, readonly CaseValue[]>;

const productOf = (values: Values, at: Case): readonly Case[] =>
  [...values].reduce<readonly Case[]>(
    (cases, [fact, all]) =>
      fact in at
        ? cases
        : cases.flatMap((one) =>
            all.map((value) =>
              value === undefined ? one : { ...one, [fact]: { value, how: 'told' as const } },
            ),
          ),
    [at],
  );

const ANY_CASE = 'any case';
const sayCase = (on: Case, facts: readonly string[]): string =>
  facts.map((fact) => `${fact} ${on[fact]?.value ?? 'not told'}`).join(', ') || ANY_CASE;

const mayGuard = (rule: RuleEntry, hazard: Hazard) => rule.hazards.includes(hazard);

/**
 * What is the same for many steps: the knowledge with the rules of one hazard alone, and the cases. Rules that hold in a
 * case are remembered by both, so each is made once.
 */
type Book = {
  readonly known: Knowledge;
  readonly guarded: (hazard: Hazard) => Knowledge;
  readonly casesOf: (values: Values, at: Case) => readonly Case[];
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

const whens = (all: readonly { readonly when?: ConditionInput | undefined }[]): readonly ConditionInput[] =>
  all.flatMap(({ when }) => (when ? [when] : []));

const bookOf = (known: Knowledge): Book => ({
  known,
  guarded: madeOnce(
    (hazard) => ({ ...known, rules: known.rules.filter((rule) => mayGuard(rule, hazard)) }),
    (hazard) => hazard,
  ),
  casesOf: madeOnce(productOf, (values, at) => JSON.stringify([[...values], at])),
});

/**
 * Every case of one step: for each hazard that it can have, all values of the facts that the hazard, its rules and its
 * need hang on, and of those that answers among these follow from. Other facts change nothing for it, so their cases are
 * the same and are looked at once.
 */
const holesOfStep = (
  { known, guarded, casesOf }: Book,
  step: Step,
  families: readonly Family[],
  at: Case,
): { holes: readonly Hole[]; looked: number } => {
  const holes = new Map<string, Hole>();
  const rows = hazardRows(step);
  const hangsOn = ['family', ...comparedIn(known, whens(rows)).keys()];
  const doesIn = madeOnce(
    (on: Case) => hazardsOf(known, on, step, families),
    (on) => hangsOn.map((fact) => on[fact]?.value).join('|'),
  );
  let looked = 0;
  for (const hazard of new Set(rows.map((row) => row.hazard))) {
    const guards = guarded(hazard);
    const { rules } = guards;
    // A rule of several hazards may stand before the step for another one.
    const guardedBy = new Set<Hazard>([hazard, ...rules.flatMap(({ hazards }) => hazards)]);
    const values = valuesTold(
      known,
      comparedIn(known, [
        ...whens(rows.filter((row) => guardedBy.has(row.hazard))),
        ...NEEDS[hazard].on,
        ...whens(rules),
      ]),
    );
    const facts = [...values.keys()];
    const cases = casesOf(values, at);
    for (const on of cases) {
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
      for (const lacks of new Set(missing(wanted, fired.map(weightOf)))) {
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
    // What is lacking everywhere hangs on none of the facts that were looked at.
    for (const [key, hole] of holes)
      if (hole.hazard === hazard && hole.cases === cases.length && !Object.keys(at).length)
        holes.set(key, { ...hole, in: ANY_CASE });
  }
  return { holes: [...holes.values()], looked };
};

/** Nothing else of a step is looked at than what it does and the facts that this hangs on. */
const signature = (step: Step, families: readonly Family[], at: Case): string =>
  JSON.stringify([hazardRows(step), families, Object.entries(at).map(([fact, { value }]) => [fact, value])]);

/** All that a caution can hang on: what steps do, what that calls for, and when its rules fire. */
export const conditionsThatMatter = (known: Knowledge): readonly ConditionInput[] => [
  ...whens(known.remedies.flatMap(({ steps }) => steps.flatMap(hazardRows))),
  ...Object.values(NEEDS).flatMap(({ on }) => on),
  ...whens(known.rules.filter(({ hazards }) => hazards.length > 0)),
];

/** Looks at every case of a step once for all steps that do the same. */
export const caseBook = (known: Knowledge) => {
  const countOnce = madeOnce(
    () => countOfCases(known, comparedIn(known, conditionsThatMatter(known))),
    () => '',
  );
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
    /** How many cases there are for one step: all values of all facts that matter, told and not told. */
    get casesOfAStep() {
      return countOnce();
    },
  };
};
