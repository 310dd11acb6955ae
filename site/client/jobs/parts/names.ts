import { entryOf } from '#engine/plain/entry-of.ts';
import { plainId } from '../../shared/plain-id.ts';
import type { JobsData } from './data.ts';

/** What a thing is called. */
export const nameIn = (names: Readonly<Record<string, string>>, id: string): string =>
  entryOf(names, id) ?? plainId(id);

/** What a product is called. */
export const productNameOf = ({ products }: Pick<JobsData, 'products'>, id: string): string =>
  entryOf(products, id)?.name ?? plainId(id);
