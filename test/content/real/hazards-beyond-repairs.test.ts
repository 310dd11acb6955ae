/** Lessons, plan and clock: every step that can hurt someone has its rule before it, and a rule or mark that is dropped is missed. */
import { describe, expect, it } from 'vitest';
import { readPlan } from '../../../content/tools/plan.ts';
import { caseBook } from '../../../engine/prove/hazard-cases.ts';
import { layingHazards } from '../../../engine/prove/laying-hazards.ts';
import { hazardsOfLesson, lackedByLesson, rulesBefore } from '../../../engine/prove/lessons-are-cautioned.ts';
import { WHOLE } from '../../thorough.ts';
import { known } from './knowledge.ts';

const plan = readPlan(known, process.cwd());

describe('lessons', () => {
  it('lack no rule', () => {
    expect(known.lessons.flatMap((lesson) => lackedByLesson(known, lesson))).toEqual([]);
  });

  it('miss the only rule that guards a hazard when it is taken away', () => {
    const kept = known.lessons.flatMap((lesson) => {
      const before = rulesBefore(known, lesson);
      return [...hazardsOfLesson(lesson).keys()].flatMap((hazard) => {
        const guards = before.filter(({ hazards }) => hazards.includes(hazard)).map(({ id }) => id as string);
        const without = { ...lesson, rules: lesson.rules.filter((id) => !guards.includes(id)) };
        return lackedByLesson(known, without).some((one) => one.hazard === hazard)
          ? []
          : [`${lesson.id}: ${hazard}`];
      });
    });
    expect(kept).toEqual([]);
  });
});

describe('plan and clock', () => {
  it('lay no coat without what its steps call for', () => {
    // All products are looked at by `npm run hazards`; here one that burns, one that does not, and one whose cloths do.
    const families = ['shellac', 'water-based', 'oil-based'];
    const products = families.flatMap((family) =>
      known.products.filter((one) => one.family === family).slice(0, 1),
    );
    const few = { ...known, products };
    const { coats, holes, untold, silenced } = layingHazards(few, plan, caseBook(known));
    expect(coats).toBeGreaterThan(400);
    expect([holes, untold, silenced]).toEqual([[], [], []]);
  });

  it('miss the rule that keeps a film with isocyanate in it unsanded, over every coat that may have it', () => {
    const may = known.products.filter(({ hardeners }) => hardeners?.includes('isocyanate'));
    const rules = known.rules.filter(({ id }) => id !== 'not-sanded-before-full-cure');
    for (const product of may.slice(0, WHOLE ? 3 : 1)) {
      const bare = { ...known, rules, products: [product] };
      const { holes } = layingHazards(bare, plan, caseBook(bare));
      expect(
        holes.map(({ hazard, lacks }) => `${hazard} ${lacks}`),
        product.id,
      ).toContain('dust care');
    }
  });

  it('miss a row whose mark is taken away', () => {
    const bare = { ...plan, wash: plan.wash.map(({ does: _, ...row }) => row) };
    const few = { ...known, products: known.products.slice(0, 1) };
    expect(layingHazards(few, bare, caseBook(known)).untold).toHaveLength(2);
  });
});
