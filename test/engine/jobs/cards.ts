/** The real products and tables, a plain card to vary, and cards at random that the schema allows. */
import fc from 'fast-check';
import { clockProduct } from '#engine/clock.ts';
import type { CardCoat, JobCard, Products } from '#engine/jobs.ts';
import { CARD_LISTS, CARD_VERSION } from '#engine/model/card-limits.ts';
import { FACTS } from '#engine/model/facts.ts';
import { readCare } from '../../../content/tools/care.ts';
import { known } from '../schedule/sheet.ts';

export { DAY, HOUR, job, known, MINUTE, plan } from '../schedule/sheet.ts';
export const care = readCare(known, process.cwd());
export const products: Products = Object.fromEntries(
  known.products.map((product) => [product.id, clockProduct(product)]),
);
export const PRODUCTS = Object.keys(products);

/** An instant well after 1970, so that times may go back. */
export const START = 1_700_000_000_000;

export const coat = (more: Partial<CardCoat> = {}): CardCoat => ({
  id: 'coat-1',
  laidAt: START,
  product: 'water-based-polyurethane',
  celsius: 23,
  relativeHumidity: 0.5,
  applicator: 'brush',
  ...more,
});

export const card = (more: Partial<JobCard> = {}): JobCard => ({
  version: CARD_VERSION,
  id: 'card-1',
  madeAt: START,
  changedAt: START,
  name: 'Navy dresser',
  kind: 'furniture',
  base: 'latex-paint',
  tone: 'dark',
  age: 'since-1993',
  sheen: 'satin',
  product: 'water-based-polyurethane',
  coats: [coat()],
  flaws: [],
  repairs: [],
  photos: [],
  notes: '',
  ...more,
});

const id = fc.oneof(fc.stringMatching(/^[a-z0-9-]{1,4}$/), fc.constantFrom('x', 'y', 'z'));
const instant = fc.integer({ min: START, max: START + 1e10 });
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 2 });
/** Few times, so that a correction and a removal often meet in the same millisecond. */
const turn = fc.integer({ min: START, max: START + 4 });
const changedAt = maybe(turn);
const bare = <T extends object>(value: T): T =>
  Object.fromEntries(Object.entries(value).filter(([, inner]) => inner !== undefined)) as T;

const label = fc
  .record({
    minutes: fc.constantFrom<object>(
      {},
      { recoat: { from: 120, to: 240 } },
      { handle: { from: 300, to: 540 }, recoat: { from: 240, to: 240 } },
      { 'light-use': { from: 4320, to: 7200 }, cure: { from: 10080, to: 30240 } },
    ),
    squareMetersPerLiter: maybe(fc.double({ min: 2, max: 60, noNaN: true })),
    volumeSolids: maybe(fc.double({ min: 0.05, max: 1, noNaN: true })),
  })
  .map(bare);

export const anyCoat: fc.Arbitrary<CardCoat> = fc
  .record({
    id,
    changedAt,
    laidAt: instant,
    product: fc.constantFrom(...PRODUCTS, 'gone-from-the-shelf'),
    label: maybe(label),
    celsius: fc.double({ min: -30, max: 50, noNaN: true }),
    relativeHumidity: fc.double({ min: 0, max: 1, noNaN: true }),
    surfaceCelsius: maybe(fc.double({ min: -30, max: 50, noNaN: true })),
    applicator: maybe(fc.constantFrom(...FACTS.applicator.values)),
    hardener: maybe(fc.constantFrom(...FACTS.hardener.values)),
    amount: maybe(
      fc.record({
        milliliters: fc.double({ min: 1, max: 1000, noNaN: true }),
        squareMeters: fc.double({ min: 0.1, max: 10, noNaN: true }),
      }),
    ),
    note: maybe(fc.string({ maxLength: 20 })),
  })
  .map((one) => bare(one) as CardCoat);

const flaw = fc
  .record({
    id,
    changedAt,
    foundAt: instant,
    defect: fc.constantFrom('bubbles', 'lap-marks'),
    coat: maybe(id),
    answers: fc.constantFrom([], [['white-or-milky', 'yes']]),
    part: maybe(fc.constantFrom(...FACTS.part.values)),
    settledAt: maybe(instant),
  })
  .map(bare);
const repair = fc
  .record({
    id,
    changedAt,
    doneAt: instant,
    remedy: fc.constant('shave-the-run'),
    flaw: maybe(id),
    laidNoCoat: maybe(fc.constant(true as const)),
  })
  .map(bare);
const photo = fc
  .record({ id, changedAt, takenAt: instant, width: fc.constant(1024), height: fc.constant(768) })
  .map(bare);
const list = <T extends { id: string }>(of: fc.Arbitrary<T>) =>
  fc.uniqueArray(of, { selector: (one) => one.id, maxLength: 6 });

const removal = fc.record({ list: fc.constantFrom(...CARD_LISTS), id, at: turn });

/** A card as the schema allows it, of few ids, so that two of them often meet. */
export const anyCard = fc
  .record({
    version: fc.constant(CARD_VERSION),
    id: fc.constantFrom('a', 'b', 'c', 'd'),
    madeAt: instant,
    changedAt: fc.oneof(instant, fc.constant(START + 7)),
    name: fc.constantFrom('Dresser', 'Table', 'Chair'),
    kind: fc.constantFrom(...FACTS.piece.values),
    base: fc.constantFrom(...FACTS.base.values),
    tone: fc.constantFrom(...FACTS['base-tone'].values),
    age: fc.constantFrom(...FACTS.age.values, 'none'),
    sheen: maybe(fc.constantFrom(...FACTS.sheen.values)),
    product: maybe(fc.constantFrom(...PRODUCTS)),
    label: maybe(label),
    coats: list(anyCoat),
    flaws: list(flaw),
    repairs: list(repair),
    photos: list(photo),
    notes: fc.string({ maxLength: 10 }),
    night: maybe(fc.record({ celsius: fc.double({ min: -30, max: 50, noNaN: true }) })),
    removed: maybe(fc.uniqueArray(removal, { selector: ({ list, id }) => `${list} ${id}`, maxLength: 4 })),
    finishedAt: maybe(instant),
    handedOverAt: maybe(instant),
  })
  .map((one) => {
    const there = (list: string, id: string) =>
      (one as unknown as Record<string, { id: string }[]>)[list]?.some((item) => item.id === id);
    const removed = one.removed?.filter(({ list, id }) => !there(list, id));
    return bare({ ...one, removed }) as unknown as JobCard;
  });
