import { readdirSync, readFileSync } from 'node:fs';
import { type DryingProduct, dryingOf } from '#engine/calc/drying/figures.ts';
import { Product } from '#engine/model/product.ts';
import { parseFrontMatter } from '../../../content/tools/read.ts';

const FOLDER = new URL('../../../content/products/', import.meta.url);

const read = (file: string) => parseFrontMatter(readFileSync(new URL(file, FOLDER), 'utf8')).data;

/** What stands in a product's front matter, unchecked: for tests that break it. */
export const rawProduct = (id: string) => read(`${id}.mdx`) as Record<string, unknown>;

/** Every product in content/products by id, checked against the schema. */
export const PRODUCTS: ReadonlyMap<string, Product> = new Map(
  readdirSync(FOLDER)
    .filter((file) => file.endsWith('.mdx'))
    .map((file) => [file.slice(0, -'.mdx'.length), Product.parse(read(file))]),
);

export const product = (id: string): Product => {
  const found = PRODUCTS.get(id);
  if (!found) throw new Error(`there is no product ${id}`);
  return found;
};

export const dryingProduct = (id: string): DryingProduct => dryingOf(product(id));
