import { plainId } from '../../shared/plain-id.ts';
import type { JobsData } from './data.ts';

/** The entry of a table by its key; a key that every object has by birth, such as `constructor`, is none. */
export const entryOf = <T>(table: Readonly<Record<string, T>>, key: string | undefined): T | undefined =>
  key !== undefined && Object.hasOwn(table, key) ? table[key] : undefined;

/** What a thing is called. */
export const nameIn = (names: Readonly<Record<string, string>>, id: string): string =>
  entryOf(names, id) ?? plainId(id);

/** What a product is called. */
export const productNameOf = ({ products }: Pick<JobsData, 'products'>, id: string): string =>
  entryOf(products, id)?.name ?? plainId(id);

/** `1 card`, `2 cards`. */
export const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? '' : 's'}`;
