import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesBelow } from '../build/hash.ts';
import { followsATree, pagesAmong } from './ledger.ts';

const CANONICAL = /<link rel="canonical" href="([^"]+)"/;

/** Writes `sitemap.xml` and `robots.txt`: every page that names itself as the one to keep. */
export const writeSitemap = (dist: string, absolute: (path: string) => string): void => {
  const kept = pagesAmong(filesBelow(dist))
    // A page that follows a tree names the tree's top as the one to keep; there are thousands.
    .filter((address) => !followsATree(address))
    .map((address) => ({
      url: absolute(address),
      canonical: CANONICAL.exec(readFileSync(join(dist, address, 'index.html'), 'utf8'))?.[1],
    }))
    .filter(({ url, canonical }) => url === canonical);
  const urls = kept.map(({ url }) => `<url><loc>${url}</loc></url>`).join('\n');
  writeFileSync(
    join(dist, 'sitemap.xml'),
    `<?xml version="1.0" encoding="UTF-8"?>\n<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n${urls}\n</urlset>\n`,
  );
  writeFileSync(join(dist, 'robots.txt'), `User-agent: *\nAllow: /\nSitemap: ${absolute('/sitemap.xml')}\n`);
};
