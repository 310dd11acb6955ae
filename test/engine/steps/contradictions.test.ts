/**
 * Steps that can not be right where something is told, a sentence for each, and beside it one that can. Common practice:
 * a block rubs an edge through, soapy water whitens shellac, water lifts chalk paint at any age, a coat that is sprayed is
 * not brushed, steel wool rusts below a water-based finish.
 */
import { describe, expect, it } from 'vitest';
import type { Step } from '#engine/model/step.ts';
import { CONTRADICTIONS } from '#engine/steps/contradictions.ts';

const step = (kind: string, say: string, more: Record<string, unknown> = {}): Step =>
  ({ kind, say, ...more }) as unknown as Step;
/** What speaks against a step that is not simply left out. */
const against = (one: Step): string[] =>
  CONTRADICTIONS.filter(({ leftOut, step: fits }) => !leftOut && fits(one)).map(({ why }) =>
    why.split(' ').slice(0, 3).join(' '),
  );
const toldOf = (one: Step) =>
  CONTRADICTIONS.filter(({ leftOut, step: fits }) => !leftOut && fits(one)).map(({ told }) => told);

const sand = (say: string) => step('sand', say, { grit: 320 });
const wash = (say: string, by = 'soapy-water') => step('wipe', say, { with: by });
const coat = (say: string, more: Record<string, unknown> = {}) =>
  step('coat', say, { product: 'same', ...more });

describe('sanding', () => {
  it.each(['Sand it with a block.', 'Sand it on a hard block of cork.', 'Take a sander.'])('%s', (say) => {
    expect(against(sand(say))).toEqual(['sands with a']);
    expect(toldOf(sand(say))).toEqual([{ part: ['edge', 'inside-corner', 'carving', 'leg'] }]);
    expect(against(step('look', say))).toEqual([]);
  });
  it.each([
    'Sand it by hand, no block.',
    'Sand it without a block.',
    'Sand it by hand.',
    'Keep blocked paper away.',
  ])('%s: fine', (say) => {
    expect(against(sand(say))).toEqual([]);
  });
  it('wet paper with soap whitens shellac, unless the step says what is taken there', () => {
    expect(against(sand('Wet it with soapy water.'))).toEqual(['wets shellac with']);
    expect(toldOf(sand('Wet it with soapy water.'))).toEqual([{ family: 'shellac' }]);
    expect(against(sand('Wet it with soapy water, on shellac with oil.'))).toEqual([]);
    expect(against(wash('Wipe it with soapy water.'))).toEqual([]);
  });
});

describe('washing', () => {
  it.each(['Wash it and rinse.', 'Go over it with clean water.', 'Go over it with clear water.'])(
    '%s',
    (say) => {
      expect(against(wash(say))).toEqual(['washes with running']);
      expect(toldOf(wash(say))).toEqual([{ base: ['chalk-paint', 'milk-paint'] }]);
      expect(against(wash(say, 'damp-cloth'))).toEqual([]);
      expect(against(sand(say))).toEqual([]);
    },
  );
  it.each([
    'Wash it and rinse, chalk paint with a cloth that is hardly damp.',
    'Rinse it with a wrung-out cloth.',
    'Rinse it with a wrung out cloth.',
    'Rinse the bare wood.',
    'Wash it.',
  ])('%s: fine', (say) => {
    expect(against(wash(say))).toEqual([]);
  });
});

describe('laying her own coat', () => {
  it.each([
    'Lay it with a brush.',
    'Two brushes of it.',
    'With a roller.',
    'With a pad.',
    'With a foam tool.',
    'In long strokes.',
    'One stroke.',
    'With a rag.',
    'With a cloth.',
  ])('%s is no spraying', (say) => {
    expect(against(coat(say))).toEqual(['tells how to']);
    expect(toldOf(coat(say))).toEqual([{ applicator: ['spray-gun', 'aerosol'] }]);
  });
  it.each([
    'Spray it.',
    'It is sprayed on.',
    'A light mist.',
    'Hold the gun still.',
    'One pass.',
    'Two passes.',
    'Clean the nozzle.',
  ])('%s is no brushing', (say) => {
    expect(against(coat(say))).toEqual(['tells how to']);
    expect(toldOf(coat(say))).toEqual([{ applicator: ['brush', 'roller', 'pad', 'sponge', 'cloth'] }]);
  });
  it.each(['Lay a thin coat.', 'Lay it with a brush, or spray it.'])('%s is for both', (say) => {
    expect(against(coat(say))).toEqual([]);
  });
  it('what is not hers to lay as she likes, or surely by one of both, is no matter', () => {
    expect(against(coat('Lay it with a brush.', { product: 'dewaxed-shellac' }))).toEqual([]);
    expect(against(coat('Lay it with a brush.', { by: 'hand' }))).toEqual([]);
    expect(against(coat('Spray it.', { by: 'spray' }))).toEqual([]);
    for (const product of ['same', 'same-in-gloss', 'tinted-same'])
      expect(against(coat('Spray it.', { product }))).toHaveLength(1);
  });
  it('surely by hand names the tool that lays all of it', () => {
    expect(against(coat('Lay it thinly.', { by: 'hand' }))).toEqual(['has by: hand']);
    expect(against(coat('Lay it with a soft brush.', { by: 'hand' }))).toEqual([]);
    // A tool for details alone lays nothing of the rest.
    expect(against(coat('Lay it thinly, in details with a brush.', { by: 'hand' }))).toEqual([
      'has by: hand',
    ]);
    expect(against(coat('With a pad, in the corners with a brush.', { by: 'hand' }))).toEqual([]);
    expect(against(coat('Lay it thinly.', { by: 'hand', product: 'oil' }))).toEqual([]);
  });
});

describe('a spray can is not opened', () => {
  it('a tint says what to take in its place', () => {
    const tint = (say: string) => step('mix', say, { what: 'tint' });
    expect(against(tint('Stir in a drop.'))).toEqual(['tints what may']);
    expect(toldOf(tint('Stir in a drop.'))).toEqual([{ applicator: 'aerosol' }]);
    expect(against(tint('Stir in a drop; in place of a spray can take a brush.'))).toEqual([]);
    expect(against(step('mix', 'Stir it.', { what: 'stir' }))).toEqual([]);
  });
});

describe('steel wool', () => {
  it('rusts below a water-based finish', () => {
    expect(against(step('look', 'Rub it with steel wool.'))).toEqual(['names steel wool,']);
    expect(toldOf(step('look', 'Rub it with Steel wool.'))).toEqual([
      { family: ['water-based', 'water-lacquer'] },
    ]);
  });
  it.each([
    'No steel wool.',
    'Do not take steel wool.',
    'Never steel wool.',
    'A pad instead of steel wool.',
    'Rub it without any steel wool.',
    'Rub it with a pad.',
  ])('%s: fine', (say) => {
    expect(against(step('look', say))).toEqual([]);
  });
  it('a denial of something else denies nothing', () => {
    expect(against(step('look', 'Do not press. Rub it with steel wool.'))).toHaveLength(1);
  });
});

it('each that is not left out says what to do', () => {
  for (const { leftOut, mend, why } of CONTRADICTIONS) {
    expect(why.length).toBeGreaterThan(10);
    expect(Boolean(mend)).toBe(!leftOut);
  }
});
