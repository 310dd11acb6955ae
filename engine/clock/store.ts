import type { ClockProduct, LaidCoat } from './coat.ts';

/** What one browser keeps for the clock. The figures go with the coat, so that every page can read it offline. */
export type ClockStore = {
  readonly version: 1;
  readonly coats: readonly LaidCoat[];
  readonly products: Readonly<Record<string, ClockProduct>>;
  /** The piece that she is looking at: its coat answers in the walks. */
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
/** No can promises more than three years, in minutes. */
const LONGEST_LABEL = 3 * 365 * 1440;
/** Epoch milliseconds, 1970 to 2200. */
const LATEST = 7_258_118_400_000;

type Raw = Readonly<Record<string, unknown>>;
const isObject = (value: unknown): value is Raw => typeof value === 'object' && value !== null;
const within = (value: unknown, least: number, most: number): boolean =>
  typeof value === 'number' && value >= least && value <= most;
const maybe = (value: unknown, is: (there: unknown) => boolean): boolean => value === undefined || is(value);
const isText = (value: unknown): boolean => typeof value === 'string' && value.length <= 200;
const isClimate = (value: unknown): boolean =>
  isObject(value) && within(value['celsius'], -30, 60) && within(value['relativeHumidity'], 0, 1);
const isLabel = (value: unknown): boolean =>
  isObject(value) &&
  isObject(value['minutes']) &&
  Object.values(value['minutes']).every(
    (span) =>
      isObject(span) &&
      within(span['from'], 0, LONGEST_LABEL) &&
      within(span['to'], Number(span['from']), LONGEST_LABEL),
  ) &&
  maybe(value['climate'], isClimate);
const isAmount = (value: unknown): boolean =>
  isObject(value) && within(value['milliliters'], 0.01, 1e6) && within(value['squareMeters'], 1e-4, 1e4);
const isCoat = (value: unknown): value is LaidCoat =>
  isObject(value) &&
  ['id', 'piece', 'product'].every((key) => isText(value[key])) &&
  within(value['laidAt'], 0, LATEST) &&
  within(value['celsius'], -30, 60) &&
  within(value['relativeHumidity'], 0, 1) &&
  within(value['coatNumber'], 1, 100) &&
  maybe(value['surfaceCelsius'], (surface) => within(surface, -30, 60)) &&
  ['card', 'applicator', 'baseTone', 'sheen'].every((key) => maybe(value[key], isText)) &&
  maybe(value['last'], (last) => typeof last === 'boolean') &&
  maybe(value['label'], isLabel) &&
  maybe(value['amount'], isAmount) &&
  maybe(value['below'], (below) => Array.isArray(below) && below.every(isCoat));
const isSpan = (value: unknown): boolean =>
  Array.isArray(value) && value.length === 2 && value.every((end) => Number.isFinite(end));
const isProduct = (value: unknown): boolean =>
  isObject(value) &&
  ['open-minutes', 'touch-minutes', 'recoat-hours', 'light-use-days', 'cure-days', 'volume-solids'].every(
    (key) => isSpan(value[key]),
  ) &&
  isObject(value['limits']) &&
  isSpan(value['limits']['celsius']) &&
  isSpan(value['limits']['humidity']) &&
  isObject(value['best']) &&
  isObject(value['wet-film-micrometers']);

/** What was kept, as far as it reads; `lost` counts the coats that do not. */
export const readStore = (kept: unknown): { readonly store: ClockStore; readonly lost: number } => {
  if (!isObject(kept) || kept['version'] !== 1 || !Array.isArray(kept['coats']))
    return { store: emptyStore(), lost: kept === null || kept === undefined ? 0 : 1 };
  const coats = kept['coats'].filter(isCoat);
  const products = isObject(kept['products']) ? kept['products'] : {};
  const { current, seenAt } = kept;
  return {
    store: {
      version: 1,
      coats,
      products: Object.fromEntries(
        Object.entries(products).filter(([id, product]) => Object.hasOwn(products, id) && isProduct(product)),
      ) as ClockStore['products'],
      current: typeof current === 'string' ? current : undefined,
      seenAt: typeof seenAt === 'number' && Number.isFinite(seenAt) ? seenAt : 0,
    },
    lost: kept['coats'].length - coats.length,
  };
};
