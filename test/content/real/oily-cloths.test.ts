/**
 * Cloths that take up an oil which heats by itself have their stop whatever the top coat is: oil drawn out of the wood,
 * cooking oil (a fire chief's warning; NFPA's handbook lists corn and soybean oil, from memory) and oil-based primer.
 */
import { expect, it } from 'vitest';
import { type Case, emptyCase, withAnswer, withFact } from '#engine/index.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import { rulesForStep } from '#engine/rules.ts';
import { known } from './knowledge.ts';

/** Water-based finish alone makes no oily cloth, so what fires here is the step's own. */
const on = withFact(emptyCase(), 'family', 'water-based');
const stopsOf = (remedy: string): readonly string[] =>
  known
    .get('remedy', remedy)
    .steps.flatMap((step) => rulesForStep(known, on, step).map(({ id }) => id as string));

it.each([
  'wash-the-wrong-oil-out',
  'seal-off-the-oil',
  'block-the-dye',
  'lift-the-skin',
  'feed-the-dry-spots',
])('%s has the stop of oily rags', (remedy) => {
  expect(stopsOf(remedy)).toContain('oily-rags');
});

it('is not said of a repair with water-based finish alone', () => {
  expect(stopsOf('sand-and-recoat')).not.toContain('oily-rags');
});

// What hardens by taking up oxygen gives off heat as it does (common practice, no source).
it.each(
  known.products.filter(({ family }) => family !== 'wax').map((product) => [product.id, product] as const),
)('%s: its cloths have the stop if it takes up oxygen, and only then', (_id, { family, mechanism }) => {
  const rules = rulesForStep(known, withFact(emptyCase(), 'family', family), {
    kind: 'coat',
    product: 'same',
    thin: true,
    say: 'Lay one thin coat.',
  });
  expect(rules.some(({ id }) => id === 'oily-rags')).toBe(
    ['oxidation', 'oil', 'oil-wax'].includes(mechanism),
  );
});

// A paste wax may hold drying oil (common practice, no source): where the tin is not read, its buffing cloth is told of.
const buffed = known.remedies.filter(({ steps }) =>
  steps.some(
    (step) => step.kind === 'wipe' && step.with === 'dry-cloth' && /^buff (one|firmly)/i.test(step.say),
  ),
);
const waxed = withFact(emptyCase(), 'family', 'wax');
const ofOil = withAnswer(waxed, 'tin-lists-oil' as QuestionId, 'yes');
const saidOf = ({ steps }: (typeof buffed)[number], on: Case): readonly string[] =>
  steps.flatMap((step) => rulesForStep(known, on, step).map(({ id }) => id as string));

it('finds the repairs that buff soft wax', () => {
  expect(buffed.map(({ id }) => id as string)).toEqual(
    expect.arrayContaining(['buff-it-again', 'warm-it-and-buff', 'wait-till-it-dulls']),
  );
});

it.each(buffed.map((remedy) => [remedy.id, remedy] as const))(
  '%s tells of the cloth that takes up wax',
  (_id, remedy) => {
    expect(saidOf(remedy, waxed)).toContain('what-is-in-the-can');
    expect(saidOf(remedy, ofOil)).toContain('oily-rags');
  },
);
