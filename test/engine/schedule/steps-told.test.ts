/**
 * What is told before each step of a plan and what is looked for at it, beside a plain reading of the rules and of the
 * table of looks: every product over a base that bears it, with a tool that suits it.
 */
import { describe, expect, it } from 'vitest';
import { coatStep, factsOfLaying } from '#engine/fitness/case.ts';
import { withFact } from '#engine/index.ts';
import { FACTS } from '#engine/model/facts.ts';
import type { Step } from '#engine/model/step.ts';
import { fire, isOfSteps, rulesForStep, type SaidRule } from '#engine/rules/rules.ts';
import type { Job, Planned, PlanStep } from '#engine/schedule.ts';
import { DAY, job, known, outcome, plan, productOf } from './sheet.ts';

type Done = { readonly name: string; readonly one: Job; readonly got: Planned };
const done: readonly Done[] = known.products.flatMap(({ id }, at) =>
  FACTS.base.values.flatMap((base, index) => {
    if ((at + index) % 2) return [];
    const tools = Object.keys(productOf(id)['wet-film-micrometers']) as Job['applicator'][];
    const applicator = tools[(at + index) % tools.length] ?? 'brush';
    const one = job({
      product: id,
      base,
      applicator,
      baseHours: 2000,
      age: 'since-1993',
      wear: 'low',
      tone: base === 'stain' ? 'wood' : 'light',
      trials: index % 3 ? [] : ['child'],
    });
    const got = outcome(one);
    return got.kind === 'plan' ? [{ name: `${id} over ${base}`, one, got }] : [];
  }),
);

const idsOf = (rules: readonly SaidRule[]) => rules.map(({ id }) => id as string);

/** The step as the rules know it. */
const ruleStep = ({ kind, say = 'As the plan says.', grit, does }: PlanStep, one: Job): Step | undefined => {
  const more = does ? { does } : {};
  switch (kind) {
    case 'sand':
      return { kind: 'sand', grit: grit as 320, say, ...more };
    case 'wash':
      return { kind: 'wipe', with: 'damp-cloth', say, ...more };
    case 'wipe':
      return { kind: 'wipe', with: 'dry-cloth', say };
    case 'buff':
      return { kind: 'wipe', with: 'dry-cloth', of: 'same', say };
    case 'coat':
    case 'test-patch':
      return coatStep(one, productOf(one.product));
    default:
      return undefined;
  }
};

describe('the steps of a plan', () => {
  it('are of every kind', () => {
    expect(done.length).toBeGreaterThan(25);
    expect(new Set(done.flatMap(({ got }) => got.steps.map(({ kind }) => kind)))).toEqual(
      new Set([
        'wash',
        'test-patch',
        'sand',
        'wipe',
        'coat',
        'buff',
        'wait',
        'look',
        'light-use',
        'full-use',
      ]),
    );
  });

  it('have each caution before the first that calls for it, and a stop in one line before each that does', () => {
    let again = 0;
    for (const { name, one, got } of done) {
      const on = factsOfLaying(one, productOf(one.product));
      const told = new Set(idsOf(got.cautions));
      for (const step of got.steps) {
        const asStep = ruleStep(step, one);
        const stage = { 'full-use': 'cured', 'light-use': 'recoatable' }[step.kind as 'full-use'] as
          | 'cured'
          | undefined;
        const rules = asStep
          ? rulesForStep<SaidRule>(known, on, asStep)
          : stage
            ? Object.values(fire<SaidRule>(known, withFact(on, 'stage', stage), [])).flat()
            : [];
        const before = rules.filter(({ id, kind }) => kind !== 'adjustment' && !told.has(id));
        const lines = asStep
          ? rules.filter(({ id, kind, lead }) => kind === 'stop' && lead && told.has(id))
          : [];
        expect([name, step.kind, idsOf(step.before), idsOf(step.again)]).toEqual([
          name,
          step.kind,
          idsOf(before),
          idsOf(lines),
        ]);
        for (const { id } of before) told.add(id);
        again += lines.length;
      }
      // What holds for the whole job hangs on no step.
      for (const rule of got.cautions) expect([name, isOfSteps(rule)]).toEqual([name, false]);
    }
    expect(again).toBeGreaterThan(5);
  });

  it('are looked at by the table: wood and base show through in the first coat only', () => {
    for (const { name, one, got } of done) {
      const { family } = productOf(one.product);
      const at = (when: string, first = true) =>
        plan.looks.filter(
          (look) =>
            look.when === when &&
            (look.families?.includes(family) ?? true) &&
            (look.bases?.includes(one.base) ?? true) &&
            (first || !look.bases),
        );
      for (const step of got.steps) {
        const { kind, coat = 0, final, looks } = step;
        const wanted =
          kind === 'coat'
            ? at('laid')
            : kind === 'sand' && coat > 1
              ? at('sanded')
              : kind === 'full-use'
                ? at('handed-over')
                : kind !== 'look'
                  ? []
                  : final
                    ? at('last')
                    : [...at('dry', coat === 1), ...(coat === 2 ? at('second') : [])];
        expect([name, kind, coat, looks]).toEqual([name, kind, coat, wanted]);
      }
    }
  });

  it('follow one another, each within her hours but for waits and what only passes', () => {
    for (const { name, one, got } of done) {
      let before = one.start;
      for (const { kind, from, to, surely } of got.steps) {
        if (kind === 'light-use' || kind === 'full-use') continue;
        expect([name, kind, from >= before, to >= from]).toEqual([name, kind, true, true]);
        before = kind === 'wait' || kind === 'wash' || kind === 'test-patch' ? from : to;
        if (surely !== undefined) expect([name, kind, surely >= to]).toEqual([name, kind, true]);
        if (kind !== 'wait' && kind !== 'look') {
          const hours = [from, to].map((time) => (time % DAY) / 60_000);
          expect([name, kind, (hours[0] ?? 0) >= one.hours.from, (hours[1] ?? 0) <= one.hours.to]).toEqual([
            name,
            kind,
            true,
            true,
          ]);
        }
      }
      const coats = got.steps.filter(({ kind }) => kind === 'coat');
      expect(coats.map(({ coat }) => coat)).toEqual(got.coats.map(({ number }) => number));
      expect(coats.map(({ from, to }) => [from, to])).toEqual(got.coats.map(({ from, to }) => [from, to]));
      expect(got.steps.filter(({ kind }) => kind === 'buff').length).toBe(
        productOf(one.product).family === 'wax' ? coats.length : 0,
      );
    }
  });

  it('name what the tables say of the base, of the film between coats and of the wait', () => {
    for (const { name, one, got } of done) {
      const { family } = productOf(one.product);
      const prepare = plan.prepare.find(({ bases }) => bases.includes(one.base));
      const between = plan.between.find(({ families }) => families.includes(family));
      for (const { kind, coat = 0, grit, say, thin, hours } of got.steps) {
        const row = coat === 1 ? prepare : between;
        if (kind === 'sand')
          expect([name, coat, grit, thin ? '' : say]).toEqual([name, coat, row?.grit, thin ? '' : row?.say]);
        if (kind === 'wipe')
          expect([name, coat, say]).toEqual([name, coat, row?.grit ? undefined : row?.say]);
        if (kind === 'wash')
          expect([name, say, hours]).toEqual([
            name,
            ...plan.wash
              .filter(({ bases }) => bases.includes(one.base))
              .slice(0, 1)
              .flatMap((wash) => [wash.say, wash.hours]),
          ]);
        if (kind === 'test-patch') {
          const patch = plan['test-patch'].find(
            ({ bases, families }) => bases.includes(one.base) && (!families || families.includes(family)),
          );
          expect([name, say, hours]).toEqual([name, patch?.why, patch?.hours]);
        }
      }
    }
  });
});
