import { AIR_CELSIUS } from '../calc/air.ts';
import { type Label, LONGEST_LABEL_MINUTES } from '../calc/drying/label.ts';
import { MECHANISMS } from '../calc/drying/mechanism.ts';
import { PRINTED } from '../calc/drying/milestone.ts';
import { AMOUNT, LATEST_INSTANT, MOST } from '../model/card-limits.ts';
import { FACTS } from '../model/facts.ts';
import { FAMILIES } from '../model/family.ts';
import { isOneOf } from '../plain/entry-of.ts';
import { isRecord } from '../plain/record.ts';
import type { ClockProduct, LaidCoat } from './coat.ts';

/** What one browser keeps for the clock. The figures go with the coat, so that every page can read it offline. */
export type ClockStore = {
  readonly version: 1;
  readonly coats: readonly LaidCoat[];
  readonly products: Readonly<Record<string, ClockProduct>>;
  /** The coat that she chose to answer in the walks; where she chose none, it is the wettest. */
  readonly current: string | undefined;
  /** When the clock of the device was last read. */
  readonly seenAt: number;
};

export const emptyStore = (): ClockStore => ({
  version: 1,
  coats: [],
  products: {},
  current: undefined,
  seenAt: 0,
});

/** So many coats are kept on one clock; a workshop has a dozen. */
export const MOST_ON_CLOCK = 100;

const within = (value: unknown, least: number, most: number): boolean =>
  typeof value === 'number' && value >= least && value <= most;
const maybe = (value: unknown, is: (there: unknown) => boolean): boolean => value === undefined || is(value);
const isText = (value: unknown): boolean => typeof value === 'string' && value.length <= 200;
const oneOf =
  (values: readonly string[]) =>
  (value: unknown): boolean =>
    isOneOf(values, value);
const isClimate = (value: unknown): boolean =>
  isRecord(value) &&
  within(value['celsius'], ...AIR_CELSIUS.kept) &&
  within(value['relativeHumidity'], 0, 1) &&
  maybe(value['surfaceCelsius'], (surface) => within(surface, ...AIR_CELSIUS.kept));
const isFromTo = (value: unknown, least: number, most: number): boolean =>
  isRecord(value) && within(value['from'], least, most) && within(value['to'], Number(value['from']), most);
/** Any number that can be reckoned with, as on a card. */
const isLimit = (value: unknown): boolean => isFromTo(value, -Number.MAX_VALUE, Number.MAX_VALUE);
const isLimits = (value: unknown): boolean =>
  isRecord(value) && maybe(value['celsius'], isLimit) && maybe(value['relativeHumidity'], isLimit);
const isNight = (value: unknown): boolean =>
  isRecord(value) &&
  within(value['celsius'], ...AIR_CELSIUS.laid) &&
  maybe(value['relativeHumidity'], (damp) => within(damp, 0, 1));
/** What the can says, as far as the clock reads it; a card's can may say more. */
const isLabel = (value: unknown): value is Label =>
  isRecord(value) &&
  isRecord(value['minutes']) &&
  Object.entries(value['minutes']).every(
    ([milestone, span]) => isOneOf(PRINTED, milestone) && isFromTo(span, 0, LONGEST_LABEL_MINUTES),
  ) &&
  maybe(value['climate'], isClimate) &&
  maybe(value['limits'], isLimits);
const isAmount = (value: unknown): boolean =>
  isRecord(value) &&
  within(value['milliliters'], AMOUNT.milliliters.min, AMOUNT.milliliters.max) &&
  within(value['squareMeters'], AMOUNT.squareMeters.min, AMOUNT.squareMeters.max);
/**
 * A choice must be one that conditions know: any other would be taken for a no, and a caution that hangs on it would
 * go.
 */
const isCoat = (value: unknown): value is LaidCoat =>
  isRecord(value) &&
  ['id', 'piece', 'product'].every((key) => isText(value[key])) &&
  within(value['laidAt'], 0, LATEST_INSTANT) &&
  within(value['celsius'], ...AIR_CELSIUS.kept) &&
  within(value['relativeHumidity'], 0, 1) &&
  within(value['coatNumber'], 1, MOST.coats) &&
  maybe(value['surfaceCelsius'], (surface) => within(surface, ...AIR_CELSIUS.kept)) &&
  maybe(value['night'], isNight) &&
  maybe(value['card'], isText) &&
  maybe(value['applicator'], oneOf(FACTS.applicator.values)) &&
  maybe(value['baseTone'], oneOf(FACTS['base-tone'].values)) &&
  maybe(value['sheen'], oneOf(FACTS.sheen.values)) &&
  maybe(value['hardener'], oneOf(FACTS.hardener.values)) &&
  maybe(value['age'], oneOf([...FACTS.age.values, 'none'])) &&
  maybe(value['last'], (last) => typeof last === 'boolean') &&
  maybe(value['flaw'], (flaw) => flaw === 'open' || flaw === 'repaired') &&
  maybe(value['label'], isLabel) &&
  maybe(value['amount'], isAmount) &&
  maybe(value['below'], (below) => Array.isArray(below) && below.every(isCoat));
const isSpan = (value: unknown): boolean =>
  Array.isArray(value) && value.length === 2 && value.every((end) => Number.isFinite(end));
const isWeather = (value: unknown): boolean =>
  isRecord(value) && isSpan(value['celsius']) && isSpan(value['humidity']);
const isProduct = (value: unknown): value is ClockProduct =>
  isRecord(value) &&
  isText(value['name']) &&
  isOneOf(FAMILIES, value['family']) &&
  isOneOf(MECHANISMS, value['mechanism']) &&
  ['open-minutes', 'touch-minutes', 'recoat-hours', 'light-use-days', 'cure-days', 'volume-solids'].every(
    (key) => isSpan(value[key]),
  ) &&
  ['sand-if-beyond-hours', 'no-coat-hours', 'film-formation-celsius'].every((key) =>
    maybe(value[key], isSpan),
  ) &&
  maybe(
    value['hardeners'],
    (hardeners) => Array.isArray(hardeners) && hardeners.every((one) => isOneOf(FACTS.hardener.values, one)),
  ) &&
  Number.isFinite(value['reference-wet-film-micrometers']) &&
  isWeather(value['limits']) &&
  isWeather(value['best']) &&
  isRecord(value['wet-film-micrometers']) &&
  Object.entries(value['wet-film-micrometers']).every(
    ([applicator, film]) => isOneOf(FACTS.applicator.values, applicator) && isSpan(film),
  );

/** What was kept, as far as it reads; `lost` counts the coats that do not. */
export const readStore = (kept: unknown): { readonly store: ClockStore; readonly lost: number } => {
  if (!isRecord(kept) || kept['version'] !== 1 || !Array.isArray(kept['coats']))
    return { store: emptyStore(), lost: kept === null || kept === undefined ? 0 : 1 };
  const coats = kept['coats'].filter(isCoat);
  const products = isRecord(kept['products']) ? kept['products'] : {};
  const { current, seenAt } = kept;
  return {
    store: {
      version: 1,
      coats,
      products: Object.fromEntries(
        Object.entries(products).flatMap(([id, product]) => (isProduct(product) ? [[id, product]] : [])),
      ),
      current: typeof current === 'string' ? current : undefined,
      seenAt: typeof seenAt === 'number' && Number.isFinite(seenAt) ? seenAt : 0,
    },
    lost: kept['coats'].length - coats.length,
  };
};
