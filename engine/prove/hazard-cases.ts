import { lookupIn } from '../answers.ts';
import { type Case, emptyCase, withFact } from '../case.ts';
import { factsIn, holds } from '../condition.ts';
import { factsOfStep, hazardsOf } from '../hazards.ts';
import type { Knowledge } from '../knowledge.ts';
import { FAMILIES, type Family } from '../model/family.ts';
import type { Hazard } from '../model/hazard.ts';
import type { Step } from '../model/step.ts';
import { fire, type RuleEntry } from '../rules.ts';
import { missing, NEEDS, needed, type Weight, weightOf } from './needs.ts';

/** The values of the facts that a caution can hang on; `undefined` is not told. */
const MATTERS: Readonly<Record<string, readonly (string | number | undefined)[]>> = {
  family: [undefined, ...FAMILIES],
  applicator: [undefined, 'brush', 'cloth', 'spray-gun', 'aerosol'],
  'was-sprayed': [undefined, 'yes', 'no'],
  'tin-lists-oil': [undefined, 'yes', 'no'],
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
 * Every case of one step: for each hazard that it can have, all values of the facts that the hazard, its rules and its
 * need hang on. Other facts change nothing for it, so their cases are the same and are looked at once.
 */
const holesOfStep = (
  known: Knowledge,
  step: Step,
  families: readonly Family[],
  at: Case,
): { holes: readonly Hole[]; looked: number } => {
  const holes = new Map<string, Hole>();
  const base = factsOfStep(step);
  let looked = 0;
  const hazards = new Set<Hazard>(base.keys());
  for (const hazard of hazards) {
    const rules = known.rules.filter((rule) => mayGuard(rule, hazard));
    const guarded = { ...known, rules };
    const facts = [
      ...new Set([
        ...(base.get(hazard) ?? []),
        ...NEEDS[hazard].on,
        ...rules.flatMap(({ when }) => (when ? [...factsIn(when)].map(({ fact }) => fact) : [])),
      ]),
    ].filter((fact) => fact in MATTERS);
    for (const on of productOf(facts, at)) {
      looked++;
      const truth = hazardsOf(known, on, step, families).get(hazard) ?? 'no';
      const each =
        on['family'] || !families.length ? [on] : families.map((one) => withFact(on, 'family', one));
      const lookups = each.map((one) => lookupIn(known, one));
      const wanted = needed(hazard, truth, (condition) =>
        lookups.every((lookup) => holds(condition, lookup) === 'yes'),
      );
      if (!wanted.length) continue;
      const fired = Object.values(fire(guarded, on, [step], families)).flat();
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

const signature = (step: Step, families: readonly Family[], at: Case): string => {
  const { say: _, when: __, 'worked-if': ___, ...rest } = step;
  const {
    strokes: ____,
    hours: _____,
    percent: ______,
    until: _______,
    ...means
  } = rest as Record<string, unknown>;
  return JSON.stringify([means, families, Object.entries(at).map(([fact, { value }]) => [fact, value])]);
};

/** Looks at every case of a step once for all steps that do the same with the same means. */
export const caseBook = (known: Knowledge) => {
  const seen = new Map<string, { holes: readonly Hole[]; looked: number }>();
  return {
    holesOf(step: Step, families: readonly Family[], at: Case = emptyCase()): readonly Hole[] {
      const key = signature(step, families, at);
      const found = seen.get(key) ?? holesOfStep(known, step, families, at);
      seen.set(key, found);
      return found.holes;
    },
    /** Cases looked at one by one; all others are equal to one of them. */
    get looked() {
      return [...seen.values()].reduce((sum, { looked }) => sum + looked, 0);
    },
  };
};
