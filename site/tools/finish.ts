import type { Retired } from '#engine/link.ts';
import { absolute, FOLDER } from '../build/address.ts';
import { writeHeaders } from './headers.ts';
import { checkLedger } from './ledger.ts';
import { writeRedirects } from './redirects.ts';
import { writeSitemap } from './sitemap.ts';
import { writeWorker } from './worker.ts';

/**
 * What a build needs beyond its pages and pictures: old addresses, the sitemap, headers for the host, the worker.
 * Throws where an address that was ever published would be lost. Each step rests on the ones above it.
 */
export const finish = async (dist: string, retired: Retired): Promise<void> => {
  writeRedirects(dist, retired, FOLDER);
  writeSitemap(dist, (address) => absolute(FOLDER + address.slice(1)));
  writeHeaders(dist, FOLDER);
  await writeWorker(dist);
  const added = checkLedger(dist);
  if (added.length)
    console.warn(
      `${added.length} addresses are new (${added.slice(0, 3).join(', ')}${added.length > 3 ? ' …' : ''}). ` +
        'Before you publish: npm run addresses',
    );
};
