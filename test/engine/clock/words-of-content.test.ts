/**
 * The clock says nothing that does not stand in content/clock.yaml, and every sentence of that table is said of some coat.
 * In place of each sentence its own name stands, with its places: what is left beside these is times and figures. The
 * coats, the air and the cards are invented.
 */
import { expect, it } from 'vitest';
import { sayProblem } from '#engine/calc/say-problem.ts';
import { sayWeather } from '#engine/calc/say-weather.ts';
import { weatherVerdict } from '#engine/calc/weather.ts';
import {
  askAboutLabel,
  type ClockWords,
  checkCoat,
  clockDoubt,
  clockNow,
  clockProduct,
  dueOf,
  type LaidCoat,
  labelHere,
  type NowWords,
  remindersOf,
  rightAgain,
  sayDoubt,
  sayNow,
  sayReasons,
  unsandedFor,
} from '#engine/clock.ts';
import { adviceOf, layersOf, newCard, sayLayer, sayLayers } from '#engine/jobs.ts';
import type { CardCoat, JobCard } from '#engine/model/job-card.ts';
import { placesIn } from '#engine/plain/filled.ts';
import { DAY_MS, HOUR_MS, MINUTE_MS } from '#engine/plain/time.ts';
import { sayStep } from '#engine/schedule.ts';
import { readPlan } from '../../../content/tools/plan.ts';
import { known } from '../../content/real/knowledge.ts';
import { WORDS } from './words.ts';

const { sanding } = readPlan(known, process.cwd());
const IDS = Object.entries(WORDS).flatMap(([group, rows]) => Object.keys(rows).map((id) => `${group}.${id}`));
const named = (name: string, says: string): string =>
  `⟦${[name, ...placesIn(says).map((place) => `{${place}}`)].join(' ')}⟧`;
/** Every sentence replaced by its own name. */
const NAMED = Object.fromEntries(
  Object.entries(WORDS).map(([group, rows]) => [
    group,
    Object.fromEntries(Object.entries<string>(rows).map(([id, says]) => [id, named(`${group}.${id}`, says)])),
  ]),
) as ClockWords;

const LAID = Date.UTC(2026, 4, 8, 14);
const STYLE = { timeZone: 'UTC', hour12: false, units: 'us' } as const;
const products = Object.fromEntries(known.products.map((product) => [product.id, clockProduct(product)]));
const WARM = { celsius: 21, relativeHumidity: 0.5 };
/** The first of each kind; what is said hangs on the kind. */
const ONE_A_FAMILY = [...Map.groupBy(known.products, ({ family }) => family).values()].flatMap(
  ([first]) => first?.id ?? [],
);
const minutes = { touch: { from: 5, to: 5 }, recoat: { from: 9, to: 12 } };
const two = [1, 2].map((coatNumber) => ({
  id: `below-${coatNumber}`,
  piece: 'P',
  laidAt: LAID - (3 - coatNumber) * DAY_MS,
  coatNumber,
  ...WARM,
}));
const MORE: readonly Partial<LaidCoat>[] = [
  {},
  { age: 'unknown' },
  { hardener: 'isocyanate' },
  { hardener: 'none', coatNumber: 3 },
  { last: true, hardener: 'none' },
  { flaw: 'open' },
  { flaw: 'repaired' },
  { celsius: 4 },
  { relativeHumidity: 0.99 },
  { celsius: 18, night: { celsius: 9 } },
  { celsius: 18, night: { celsius: -8 } },
  { label: { minutes } },
  { label: { minutes, climate: WARM } },
  { label: { minutes, climate: { celsius: 30, relativeHumidity: 0.5 } } },
  { label: { minutes, climate: WARM }, amount: { milliliters: 300, squareMeters: 1 } },
  { celsius: 29, label: { minutes } },
  { amount: { milliliters: 40, squareMeters: 1 } },
];
const AT = [-DAY_MS, 0, 7 * MINUTE_MS, 25 * MINUTE_MS, ...[1, 2, 5, 9, 30].map((hours) => hours * HOUR_MS)];
const LATER = [4, 9, 30, 90, 300].map((days) => days * DAY_MS);

function* coats(): Generator<LaidCoat> {
  for (const product of ONE_A_FAMILY)
    for (const more of MORE) {
      const coat = { id: 'top', piece: 'P', product, laidAt: LAID, coatNumber: 1, ...WARM, ...more };
      yield coat;
      if (coat.coatNumber > 2) {
        const below = two.map((one) => ({ ...one, product }));
        yield { ...coat, below };
        yield { ...coat, below: two.map((one) => ({ ...one, product: 'oil-based-polyurethane' })) };
        yield { ...coat, below, amount: { milliliters: 500, squareMeters: 1.5 } };
      }
    }
}

/** What is said of one coat at one time. What the calculators say of the air is theirs. */
function* saidOf(coat: LaidCoat, now: number): Generator<string> {
  const product = products[coat.product];
  if (!product) throw new Error(coat.product);
  const reading = clockNow(product, coat, now, products);
  const air = reading.kind === 'refused' ? sayProblem(reading.problem, STYLE.units) : '';
  const { verdict, why }: NowWords = sayNow(NAMED, reading, now, STYLE);
  yield verdict;
  yield why.replace(air, '');
  yield dueOf(NAMED, reading, now, STYLE).says;
  if (reading.kind === 'refused') yield rightAgain(NAMED, reading);
  if (reading.kind !== 'running') return;
  for (const { title, detail } of remindersOf(NAMED, reading, coat, now)) {
    yield title.replace('P: ', '');
    yield detail;
  }
  for (const { says } of labelHere(NAMED, coat, reading, 'us')) yield says;
  yield* Object.values(unsandedFor(NAMED, reading) ?? {});
  for (const moment of Object.values(reading.moments)) yield sayReasons(NAMED, moment.reasons);
}

/** Every air that speaks against some coat, and what is said of it before the coat is laid and while it dries. */
function* saidOfWeather(): Generator<string> {
  for (const product of known.products)
    for (const celsius of [2, 12, 16, 21, 45])
      for (const relativeHumidity of [0.1, 0.3, 0.5, 0.7, 0.95])
        for (const more of [{}, { surfaceCelsius: celsius - 9 }, { inSun: true }, { warmingUp: true }]) {
          const judged = weatherVerdict(product, { celsius, relativeHumidity, ...more });
          for (const reason of judged.ok ? judged.value.reasons : [])
            for (const moment of ['before', 'during'] as const) yield sayWeather(NAMED, reason, moment);
        }
}

function* all(): Generator<string> {
  yield* saidOfWeather();
  for (const coat of coats()) for (const at of [...AT, ...LATER]) yield* saidOf(coat, LAID + at);
  for (const product of Object.values(products))
    for (const { says } of askAboutLabel(NAMED, product, { minutes })) yield says;
  const poly = 'water-based-polyurethane';
  const coat: LaidCoat = { id: 'top', piece: 'P', product: poly, laidAt: LAID, coatNumber: 1, ...WARM };
  for (const more of [
    { laidAt: Number.NaN },
    { laidAt: LAID + DAY_MS },
    { laidAt: LAID - 300 * DAY_MS },
    { coatNumber: 0 },
    { amount: { milliliters: 1, squareMeters: 9 } },
  ])
    for (const { says } of checkCoat(
      NAMED,
      clockProduct(known.get('product', poly)),
      { ...coat, ...more },
      LAID,
      STYLE,
    ))
      yield says;
  for (const [seen, now] of [
    [0, 1000],
    [LAID + DAY_MS, LAID],
    [LAID - 200 * DAY_MS, LAID],
  ] as const) {
    const doubt = clockDoubt(seen, now);
    if (doubt) yield sayDoubt(NAMED, doubt, now, STYLE);
  }
  const onCard = (laid: Partial<CardCoat>, age: JobCard['age'] = 'none'): JobCard => {
    const coats = [{ id: 'top', product: poly, laidAt: LAID, ...WARM, ...laid }];
    const piece = { name: 'P', kind: 'furniture', base: 'bare-wood', tone: 'wood', sheen: 'satin' } as const;
    return newCard({ ...piece, age, product: poly, coats }, 'card', 0);
  };
  for (const age of ['unknown', 'none'] as const) {
    const card = onCard({ hardener: 'isocyanate' }, age);
    yield adviceOf(sanding, NAMED, layersOf(card, products), age).says;
  }
  for (const laid of [
    {},
    { applicator: 'brush' as const },
    { amount: { milliliters: 90, squareMeters: 1 } },
    { label: { minutes: {}, squareMetersPerLiter: 9, volumeSolids: 0.4 } },
    { product: 'gone-from-the-shelf' },
  ]) {
    const film = layersOf(onCard(laid), products);
    yield sayLayers(NAMED, film);
    for (const layer of film.layers) yield sayLayer(NAMED, layer);
  }
  yield sayLayers(NAMED, layersOf({ ...onCard({}), coats: [] }, products));
  for (const unsanded of ['ready', 'late'] as const) yield sayStep(NAMED, { unsanded });
  for (const must of [undefined, 'surely'] as const)
    yield sayStep(NAMED, { thin: true, ifOnePart: true, must });
}

const INNERMOST = /⟦([a-z.-]+)[^⟦⟧]*⟧/g;
/** The hour, the day, the degrees: what the clock fills in, or says behind a verdict. */
const LEFT = /^(?: until [^⟦⟧.]*| , [^⟦⟧]* at the earliest|[ .,])*$/;

it('says what stands in the content, and all of it', () => {
  const met = new Set<string>();
  const others = new Set<string>();
  for (const said of new Set(all())) {
    let rest = said;
    for (let before = ''; before !== rest; ) {
      before = rest;
      rest = rest.replace(INNERMOST, (_whole, name: string) => {
        met.add(name);
        return '';
      });
    }
    if (!LEFT.test(rest)) others.add(rest);
  }
  expect([...others]).toEqual([]);
  expect(IDS.filter((id) => !met.has(id))).toEqual([]);
});
