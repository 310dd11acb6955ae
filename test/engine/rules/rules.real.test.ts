/**
 * Which rules come before the steps of every real repair, beside a plain reading of the rules: one whose facts hold, for
 * each kind of top coat that it can be, and which names something that the step does. Cases drawn at random.
 */
import { describe, expect, it } from 'vitest';
import { lookupIn } from '#engine/case/answers.ts';
import { holds, type Truth } from '#engine/case/condition.ts';
import { type Case, emptyCase, withFact } from '#engine/index.ts';
import { FACTS } from '#engine/model/facts.ts';
import { FAMILIES, type Family } from '#engine/model/family.ts';
import type { Hazard } from '#engine/model/hazard.ts';
import { hazardsOf } from '#engine/rules/hazards.ts';
import { fire, type RuleEntry, rulesForStep } from '#engine/rules/rules.ts';
import { known } from '../../content/real/knowledge.ts';
import { dice } from '../../dice.ts';

const roll = dice(1993);
const one = <T>(of: readonly T[]): T => of[Math.floor(roll() * of.length)] as T;
const TOLD = ['family', 'base', 'age', 'applicator', 'piece', 'hardener', 'stage'] as const;
const anyCase = (): Case =>
  Object.fromEntries(
    TOLD.flatMap((name) => {
      const { values = [] } = FACTS[name] as { readonly values?: readonly string[] };
      return roll() < 0.4 && values.length ? [[name, { value: one(values), how: 'told' as const }]] : [];
    }),
  );

/** Facts hold, or are not known not to where the rule asks for no more. What only words call for never fires. */
const holdsIn = (rule: RuleEntry, on: Case): boolean => {
  if (!rule.hazards.length && !rule.when) return false;
  const truth: Truth = rule.when ? holds(rule.when, lookupIn(known, on)) : 'yes';
  return truth === 'yes' || (truth === 'unknown' && rule['unless-known-no']);
};

/** In the case as it is and in one of those that it may turn out to be; or in all of these. */
const holdsFor = (rule: RuleEntry, on: Case, families: readonly Family[]): boolean => {
  if (on['family'] || !families.length) return holdsIn(rule, on);
  const each = families.map((family) => holdsIn(rule, withFact(on, 'family', family)));
  return holdsIn(rule, on) ? each.includes(true) : !each.includes(false);
};

/** Something that the step does, and as surely as the rule wants it. */
const isBefore = (rule: RuleEntry, does: ReadonlyMap<Hazard, Truth>): boolean =>
  rule.hazards.some((hazard) => {
    const truth = does.get(hazard);
    if (truth === undefined) return false;
    return rule.sure === undefined || (rule.sure === 'yes' ? truth === 'yes' : truth !== 'yes');
  });

const idsOf = (rules: readonly RuleEntry[]) => rules.map(({ id }) => id);

describe.each(known.remedies.map((remedy) => [remedy.id, remedy.steps] as const))('%s', (_, steps) => {
  it('has the rules before it that its steps and the facts call for', () => {
    for (let n = 0; n < 4; n++) {
      const on = n ? anyCase() : emptyCase();
      const families = n % 2 ? [one(FAMILIES), one(FAMILIES)] : [];
      const held = known.rules.filter((rule) => holdsFor(rule, on, families));
      const ofSteps = (rule: RuleEntry) => rule.hazards.length > 0 && !rule.always;
      const does = steps.map((step) => hazardsOf(known, on, step, families));
      for (const [at, step] of steps.entries())
        expect(idsOf(rulesForStep(known, on, step, families))).toEqual(
          idsOf(
            held.filter((rule) => ofSteps(rule) && isBefore(rule, does[at] as ReadonlyMap<Hazard, Truth>)),
          ),
        );
      const fired = held.filter((rule) => !ofSteps(rule) || does.some((all) => isBefore(rule, all)));
      const { stops, holds: waits, cautions, adjustments } = fire(known, on, steps, families);
      for (const [kind, rules] of [
        ['stop', stops],
        ['hold', waits],
        ['caution', cautions],
        ['adjustment', adjustments],
      ] as const)
        expect(idsOf(rules)).toEqual(idsOf(fired.filter((rule) => rule.kind === kind)));
    }
  });
});

it('a rule of facts alone fires with no step at all, and one of steps does not', () => {
  const on = withFact(emptyCase(), 'piece', 'crib');
  const all = Object.values(fire(known, on, [])).flat();
  expect(all.length).toBeGreaterThan(0);
  expect(all.every(({ hazards, always }) => always || !hazards.length)).toBe(true);
});
