/**
 * What one repair says of a time, a tool or a liquid, the others say too. Shellac: one to two hours between thin coats
 * (common practice, no source). Water-based stain a day, oil stain three (the maker's sheet of content/sources/film-s7).
 * A spray can is held farther off than a gun (an article on spray lacquer, 8 to 10 in). Mineral oil never dries, so no
 * oiled top gets it below a coat (content/remedies/wash-the-wrong-oil-out). Woods that are oily: eastern red cedar, not
 * western (from memory of the US Forest Service's Wood Handbook).
 */
import { expect, it } from 'vitest';
import { known } from './knowledge.ts';

const stepsOf = known.remedies.flatMap(({ id, steps }) =>
  steps.map((step, at) => ({ id: id as string, step, before: steps[at - 1], all: steps })),
);

it('gives dewaxed shellac one to two hours below the next coat', () => {
  const waits = stepsOf.filter(
    ({ step, before }) =>
      step.kind === 'wait' && before?.kind === 'coat' && before.product === 'dewaxed-shellac',
  );
  expect(waits.length).toBeGreaterThan(10);
  // A knot sealed twice waits for its resin; a wash coat of half a pound is timed by the author it comes from.
  const others = ['clear-the-resin', 'even-the-tone'];
  for (const { id, step } of waits)
    if (step.kind === 'wait' && !others.includes(id))
      expect({ id, hours: step.hours }).toEqual({ id, hours: [1, 2] });
});

it('gives stain a day, oil stain three', () => {
  const waits = stepsOf.filter(
    ({ step }) => step.kind === 'wait' && /for water-based, .*oil stain/.test(step.say),
  );
  expect(waits.length).toBeGreaterThan(4);
  for (const { id, step } of waits)
    if (step.kind === 'wait') expect({ id, hours: step.hours }).toEqual({ id, hours: [24, 72] });
  expect(stepsOf.filter(({ step }) => /overnight for water-based stain/.test(step.say))).toEqual([]);
});

it('holds a spray can no nearer than a gun', () => {
  const near = stepsOf.filter(
    ({ step }) => /\b6( to |–)8 in\b/.test(step.say) && !/can\b.*\b8( to |–)10 in/.test(step.say),
  );
  expect(near.map(({ id }) => id)).toEqual([]);
});

it('leads no oiled top to mineral oil', () => {
  const oiled = known.defects.filter(({ families }) =>
    families.every((family) => family === 'oil' || family === 'hardwax-oil'),
  );
  expect(oiled.length).toBeGreaterThan(5);
  const reached = new Set<string>();
  const follow = (remedy: string): void => {
    if (reached.has(remedy)) return;
    reached.add(remedy);
    const next = known.get('remedy', remedy)['if-not']?.remedy;
    if (next) follow(next);
  };
  for (const { tree } of oiled)
    for (const [, remedy] of JSON.stringify(tree).matchAll(/"remedy":"([^"]+)"/g)) if (remedy) follow(remedy);
  expect(reached.size).toBeGreaterThan(10);
  const onto = [...reached].filter((id) =>
    known.get('remedy', id).steps.some(({ say }) => /mineral oil|petroleum jelly/i.test(say)),
  );
  expect(onto).toEqual([]);
});

it('counts western red cedar among no oily woods', () => {
  const oily = known.questions.filter(({ yes }) => /teak/i.test(yes) && /cedar/i.test(yes));
  expect(oily.length).toBe(2);
  for (const { yes } of oily) expect(yes).toMatch(/aromatic/);
});
