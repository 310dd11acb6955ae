/**
 * A plan with isocyanate in its top coat: no film of it is sanded, none of it is sprayed, and where its hours leave no time
 * for an unsanded coat it is a no. The rules are content/rules/not-sanded-before-full-cure.mdx and not-sprayed-at-home.mdx;
 * the jobs are invented.
 */
import { describe, expect, it } from 'vitest';
import { type Job, type Planned, sayStep } from '#engine/schedule.ts';
import { WORDS } from '../clock/words.ts';
import { job, known, outcome, planned, productOf } from './sheet.ts';

const PERHAPS = WORDS['two-part'].perhaps;
const MAY = known.products.filter(({ hardeners }) => hardeners?.includes('isocyanate')).map(({ id }) => id);
/** With a tool that is no spray, where there is one, over bare wood, which bears every finish. */
const of = (product: string, hardener: Job['hardener'], more: Partial<Job> = {}): Job => {
  const tools = Object.keys(productOf(product)['wet-film-micrometers']) as Job['applicator'][];
  const [applicator = 'brush'] = tools.toSorted((one) => (/spray|aerosol/.test(one) ? 1 : -1));
  return job({ product, hardener, base: 'bare-wood', tone: 'wood', trials: [], applicator, ...more });
};
const ruleIds = ({ steps, cautions }: Planned): string[] =>
  [...cautions, ...steps.flatMap(({ before, again }) => [...before, ...again])].map(({ id }) => id);
const between = ({ steps }: Planned) => steps.filter(({ kind, coat = 0 }) => kind === 'sand' && coat > 1);

describe.each(MAY)('%s', (product) => {
  const sprays = /spray|aerosol/.test(of(product, 'none').applicator);

  it('with isocyanate in it is wiped, not sanded, between its coats, or is a no', () => {
    const got = outcome(of(product, 'isocyanate'));
    if (sprays) {
      expect(got.kind).toBe('no');
      return;
    }
    if (got.kind === 'no') throw new Error(got.why.map(({ says }) => says).join(' '));
    expect(between(got)).toEqual([]);
    const unsanded = got.steps.filter((step) => step.unsanded);
    expect(unsanded.map(({ kind }) => kind)).toEqual(got.coats.slice(1).map(() => 'wipe'));
    for (const step of unsanded)
      expect([WORDS['two-part'].ready, WORDS['two-part'].late]).toContain(sayStep(WORDS, step));
    expect(ruleIds(got)).toContain('hardener-isocyanate');
    // The base is sanded before the first coat: none of it lies there yet.
    expect(got.steps.some(({ kind, coat }) => kind === 'sand' && coat === 1)).toBe(true);
    expect(ruleIds(got)).not.toContain('not-sanded-before-full-cure');
  });

  it('of which nothing is said has one line by each sanding of its film', () => {
    // By a can that lets a coat on at any time: else one goes on while the film is too soft for it.
    const label = { minutes: { 'no-coat': { from: 0, to: 0 } } };
    const got = planned(of(product, undefined, { label }));
    const sanded = between(got);
    expect(sanded.length).toBe(got.coats.length - 1);
    for (const step of sanded) expect(sayStep(WORDS, step)).toContain(PERHAPS);
    for (const step of between(planned(of(product, 'none', { label }))))
      expect(sayStep(WORDS, step)).not.toContain(PERHAPS);
  });
});

it('is not sprayed with isocyanate in it, by gun or from a can', () => {
  for (const one of [
    of('water-based-polyurethane', 'isocyanate', { applicator: 'spray-gun' }),
    of('aerosol-lacquer', 'isocyanate'),
  ]) {
    const got = outcome(one);
    expect(got.kind).toBe('no');
    if (got.kind === 'no') expect(got.why.map(({ rule }) => rule)).toContain('not-sprayed-at-home');
    expect(outcome({ ...one, hardener: 'none' }).kind).toBe('plan');
  }
});

it('is a no where its hours leave a film too old for an unsanded coat', () => {
  const days = [true, false, false, false, false, false, false];
  const weekly = (hardener: Job['hardener']) =>
    of('water-based-polyurethane', hardener, { hours: { from: 9 * 60, to: 11 * 60, days } });
  const got = outcome(weekly('isocyanate'));
  expect(got.kind === 'no' && got.why[0].says).toMatch(/too long to be coated unsanded/);
  expect(outcome(weekly('none')).kind).toBe('plan');
});
