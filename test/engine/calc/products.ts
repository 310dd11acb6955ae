import { type DryingProduct, dryingOf } from '#engine/calc/drying/figures.ts';
import { Product } from '#engine/model/product.ts';
import { readContent } from '../../../content/tools/read.ts';

const RAW = new Map(
  readContent(process.cwd())
    .filter(({ kind }) => kind === 'product')
    .map(({ id, data }) => [id, data as Record<string, unknown>]),
);

/** A product as its file says it, unchecked: for tests that break it. */
export const rawProduct = (id: string) => structuredClone(RAW.get(id)) as Record<string, unknown>;

/** Every product in content/products by id, checked against the schema. */
export const PRODUCTS: ReadonlyMap<string, Product> = new Map(
  [...RAW].map(([id, data]) => [id, Product.parse(data)]),
);

export const product = (id: string): Product => {
  const found = PRODUCTS.get(id);
  if (!found) throw new Error(`there is no product ${id}`);
  return found;
};

export const dryingProduct = (id: string): DryingProduct => dryingOf(product(id));
