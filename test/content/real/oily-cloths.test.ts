/**
 * Cloths that take up an oil which heats by itself have their stop whatever the top coat is: oil drawn out of the wood,
 * cooking oil (a fire chief's warning; NFPA's handbook lists corn and soybean oil, from memory) and oil-based primer.
 */
import { expect, it } from 'vitest';
import { type Case, emptyCase, withAnswer, withFact } from '#engine/index.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import type { Step } from '#engine/model/step.ts';
import { whatComesOffIsTold } from '#engine/prove/what-comes-off-is-told.ts';
import { rulesForStep } from '#engine/rules/rules.ts';
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

// What comes off before anything is laid: the stop stands there, and not at a coat that comes days later.
const firstOf = (remedy: string, is: (step: Step) => boolean): Step => {
  const step = known.get('remedy', remedy).steps.find(is);
  if (!step) throw new Error(`${remedy} has no such step`);
  return step;
};
const stopsAt = (step: Step, on: Case): readonly string[] =>
  rulesForStep(known, on, step).map(({ id }) => id as string);
const isOf = (kind: Step['kind']) => (step: Step) => step.kind === kind;
const oilBased = withFact(emptyCase(), 'family', 'oil-based');
const overOilPaint = withFact(withFact(emptyCase(), 'family', 'water-based'), 'base', 'oil-paint');

it.each([
  ['strip-and-start-again', isOf('strip'), oilBased],
  ['take-off-the-sticky-coat', isOf('strip'), oilBased],
  ['scrape-the-wrinkles', isOf('scrape'), oilBased],
  ['scrape-then-seal', isOf('scrape'), oilBased],
  ['cut-out-the-soft-spot', isOf('scrape'), oilBased],
  ['cut-out-the-lift', isOf('scrape'), overOilPaint],
  ['stir-strain-and-test', isOf('mix'), oilBased],
  ['discard-the-can', isOf('mix'), oilBased],
  ['cut-back-the-frost', isOf('wipe'), emptyCase()],
  ['clean-off-the-sweat', isOf('wipe'), emptyCase()],
  ['even-the-tone', (step: Step) => step.kind === 'coat' && step.product === 'stain', emptyCase()],
  ['take-the-wax-off', isOf('wipe'), ofOil],
  ['repaint-under-the-wax', isOf('wipe'), ofOil],
  ['bleach-the-waxed-wood', isOf('wipe'), ofOil],
] as const)('%s stops before its first such step', (remedy, is, on) => {
  expect(stopsAt(firstOf(remedy, is), on)).toContain('oily-rags');
});

it('misses each mark of what comes off in a repair of oil or wax', () => {
  expect([...whatComesOffIsTold(known)]).toEqual([]);
  const without = (remedy: (typeof known.remedies)[number], at: number) => ({
    ...known,
    remedies: known.remedies.map((one) =>
      one === remedy
        ? { ...one, steps: one.steps.map((step, index) => (index === at ? bare(step) : step)) }
        : one,
    ),
  });
  const bare = (step: Step): Step => {
    const { of: _, ...rest } = step as Step & { of?: string };
    return rest as Step;
  };
  const marks = [
    'cut-back-the-frost',
    'take-the-wax-off',
    'repaint-under-the-wax',
    'sand-back-the-fuzz',
  ].flatMap((id) => {
    const remedy = known.get('remedy', id);
    return remedy.steps.flatMap((step, at) =>
      'of' in step && step.of && !(step.kind === 'wipe' && step.with === 'vacuum') ? [{ remedy, at }] : [],
    );
  });
  expect(marks.length).toBeGreaterThan(8);
  for (const { remedy, at } of marks)
    expect([...whatComesOffIsTold(without(remedy, at))], `${remedy.id}, step ${at + 1}`).toHaveLength(1);
});

// A can is opened before it is stirred: no flame then, not at the coat (a fire-prevention handbook on vapor).
it.each(known.products.filter(({ family }) => ['lacquer', 'shellac', 'oil-based'].includes(family)))(
  'no flame is near when a can of $id is opened to stir it',
  ({ family }) => {
    const stirred: Step = { kind: 'mix', what: 'stir', say: 'Stir it from the bottom up.' };
    expect(stopsAt(stirred, withFact(emptyCase(), 'family', family))).toContain('vapor-and-flame');
  },
);
