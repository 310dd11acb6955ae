/**
 * Every real repair made ready for cases drawn at random, beside its own file: what is taken over, what is left out, that
 * each caution is told once and in time, and where the steps are parted by stops.
 */
import { describe, expect, it } from 'vitest';
import { lookupIn } from '#engine/case/answers.ts';
import { holds } from '#engine/case/condition.ts';
import { type Case, type Entry, emptyCase, resolve, stretches } from '#engine/index.ts';
import { FACTS } from '#engine/model/facts.ts';
import type { Step } from '#engine/model/step.ts';
import { factsOfStep } from '#engine/rules/hazards.ts';
import { rulesForStep } from '#engine/rules/rules.ts';
import { LEAVE_OUT } from '#engine/steps/contradictions.ts';
import { known } from '../../content/real/knowledge.ts';
import { dice } from '../../dice.ts';
import { WHOLE } from '../../thorough.ts';

const TOLD = ['family', 'base', 'age', 'applicator', 'part', 'piece', 'stage', 'hardener'] as const;
const roll = dice(20261130);
/** A case that tells each fact in every third draw, and an age of the coat in every second. */
const anyCase = (): Case => {
  const facts = TOLD.flatMap((name) => {
    const { values = [] } = FACTS[name] as { readonly values?: readonly string[] };
    const value = values[Math.floor(roll() * values.length)];
    return roll() < 1 / 3 && value ? [[name, { value, how: 'told' as const }]] : [];
  });
  const age =
    roll() < 0.5 ? [['hours-since-coat', { value: Math.round(roll() * 100), how: 'told' as const }]] : [];
  return Object.fromEntries([...facts, ...age]);
};
const CASES: readonly Case[] = [emptyCase(), ...Array.from({ length: WHOLE ? 5 : 2 }, anyCase)];

/** By the file alone: what is told against it, what takes its place, what has passed. */
const truthOf = (step: Step, on: Case, before: readonly Step[], after: readonly Step[]) => {
  if (step.kind === 'wait' && step.until && on.stage?.value === 'cured' && !step.does?.includes('heat')) {
    const works = (one: Step) => !['wait', 'look'].includes(one.kind);
    const counted = step.hours && step.from !== 'coat';
    const left =
      step.hours && Number(on['hours-since-coat']?.value ?? Number.POSITIVE_INFINITY) < step.hours[1];
    if (!counted && !left && !before.some(works) && after.some(works)) return 'no';
  }

  const lookup = lookupIn(known, on);
  const speaksAgainst = LEAVE_OUT.some(({ told, step: is }) =>
    Object.entries(told).every(([fact, { value }]) => is(step) && on[fact]?.value === value),
  );
  if (speaksAgainst) return 'no';
  if (step.except && holds(step.except, lookup) === 'yes') return 'no';
  const age = on['hours-since-coat']?.value;
  if (step.kind === 'wait' && step.from === 'coat' && step.hours && !step.until && typeof age === 'number')
    if (age >= step.hours[1]) return 'no';
  return step.when ? holds(step.when, lookup) : 'yes';
};

const hoursOf = (step: Step, on: Case) => {
  if (step.kind === 'test-patch') return step.hours;
  if (step.kind !== 'wait' || !step.hours) return undefined;
  const age = on['hours-since-coat']?.value;
  if (step.from !== 'coat' || typeof age !== 'number') return step.hours;
  const [least, most] = step.hours;
  return age >= most ? undefined : [Math.max(0, least - age), most - age];
};

const check = ({ id, steps }: Entry<'remedy'>, on: Case) => {
  const ready = resolve(known, id, on);
  const truth = steps.map((step, at) => truthOf(step, on, steps.slice(0, at), steps.slice(at)));
  const taken = truth.flatMap((is, at) => (is === 'no' ? [] : [at]));
  expect(ready.map(({ at }) => at)).toEqual(taken);
  const told = new Set<string>();
  for (const one of ready) {
    const step = steps[one.at] as Step;
    expect([one.kind, one.say, one.workedIf]).toEqual([step.kind, step.say, step['worked-if']]);
    expect(one.only).toBe(truth[one.at] === 'unknown');
    expect(one.grit).toBe(step.kind === 'sand' ? `P${step.grit}` : undefined);
    expect(one.strokes).toBe(step.kind === 'sand' ? step.strokes : undefined);
    expect(one.until).toBe(step.kind === 'wait' ? step.until : undefined);
    expect(one.percent).toEqual(step.kind === 'mix' ? step.percent : undefined);
    expect(one.hours).toEqual(hoursOf(step, on));
    const rules = rulesForStep(known, on, step);
    expect(one.limits.map(({ id: rule }) => rule)).toEqual(
      rules.filter(({ kind }) => kind === 'adjustment').map(({ id: rule }) => rule),
    );
    expect(one.before.every(({ kind }) => kind !== 'adjustment')).toBe(true);
    for (const { id: rule } of one.before) {
      expect(told.has(rule), `${rule} is told twice`).toBe(false);
      told.add(rule);
    }
    for (const { id: rule, kind } of rules) if (kind !== 'adjustment') expect(told).toContain(rule);
  }
};

/** Whether a stop can come to stand before a step when more is told. */
const canBeStopped = (step: Step) => {
  const does = factsOfStep(step);
  return known.rules.filter(
    ({ kind, hazards, always }) => kind === 'stop' && !always && hazards.some((hazard) => does.has(hazard)),
  );
};

describe.each(known.remedies.map((remedy) => [remedy.id, remedy] as const))('%s', (id, remedy) => {
  it('is made ready as its file says', () => {
    for (const on of CASES) check(remedy, on);
  });

  it('is parted where a stop stands or can come to stand, and nowhere else', () => {
    const begins = (on: Case) =>
      stretches(known, id, resolve(known, id, on)).flatMap(({ steps: [first] }) => (first ? [first.at] : []));
    for (const on of CASES) {
      const ready = resolve(known, id, on);
      const parts = stretches(known, id, ready);
      expect(parts.flatMap(({ steps }) => steps)).toEqual(ready);
      const met = new Set<string>();
      const wanted = ready.flatMap(({ at, before }, place) => {
        const coming = canBeStopped(remedy.steps[at] as Step);
        const isNew =
          coming.some(({ id: rule }) => !met.has(rule)) || before.some(({ kind }) => kind === 'stop');
        for (const { id: rule } of coming) met.add(rule);
        return isNew || place === 0 ? [at] : [];
      });
      expect(begins(on)).toEqual(wanted);
      for (const { steps, stops } of parts) {
        const before = steps.flatMap((step) => step.before).filter(({ kind }) => kind === 'stop');
        expect(stops.map(({ id: rule }) => rule)).toEqual(before.map(({ id: rule }) => rule));
      }
    }
  });
});
