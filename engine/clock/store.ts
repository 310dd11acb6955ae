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

type Raw = Readonly<Record<string, unknown>>;
const isObject = (value: unknown): value is Raw => typeof value === 'object' && value !== null;
const isCoat = (value: unknown): value is LaidCoat =>
  isObject(value) &&
  ['id', 'piece', 'product'].every((key) => typeof value[key] === 'string') &&
  ['laidAt', 'celsius', 'relativeHumidity', 'coatNumber'].every((key) => Number.isFinite(value[key])) &&
  (value['card'] === undefined || typeof value['card'] === 'string') &&
  (value['label'] === undefined || (isObject(value['label']) && isObject(value['label']['minutes'])));
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
        Object.entries(products).filter(([, product]) => isProduct(product)),
      ) as ClockStore['products'],
      current: typeof current === 'string' ? current : undefined,
      seenAt: typeof seenAt === 'number' && Number.isFinite(seenAt) ? seenAt : 0,
    },
    lost: kept['coats'].length - coats.length,
  };
};
