import type { Knowledge } from '#engine/index.ts';
import type { Retired } from '#engine/link.ts';
import { absolute, BASE, spoken } from '../lib/place.ts';
import { allCards, writeCards } from './cards.ts';
import { writeHeaders } from './headers.ts';
import { checkLedger } from './ledger.ts';
import { rebase } from './rebase.ts';
import { writeRedirects } from './redirects.ts';
import { writeSitemap } from './sitemap.ts';
import { writeWorker } from './worker.ts';

/**
 * What a build needs beyond its pages: cards, old addresses, the sitemap, headers for the host, the worker.
 * Throws where an address that was ever published would be lost. Each step rests on the ones above it.
 */
export const finish = async (dist: string, known: Knowledge, retired: Retired): Promise<void> => {
  await writeCards(dist, allCards(known, spoken));
  writeRedirects(dist, retired, BASE);
  writeSitemap(dist, absolute);
  rebase(dist, BASE);
  writeHeaders(dist, BASE);
  writeWorker(dist);
  const added = checkLedger(dist);
  if (added.length)
    console.warn(
      `${added.length} addresses are new (${added.slice(0, 3).join(', ')}${added.length > 3 ? ' …' : ''}). ` +
        'Before you publish: npx node site/tools/ledger.ts',
    );
};
