/** Bytes of every page as a host packs it, beside one flight of the network. */
import { gzipSync } from 'node:zlib';
import { builtPages } from '../../site/built.ts';
import { median } from '../measure.ts';
import type { Row } from '../row.ts';

/** Ten segments, also where a tunnel shortens them: see test/site/weight.test.ts. */
export const FLIGHT = 13_000;

const STYLE = /<style[^>]*>(.*?)<\/style>/gs;

export const weights = (): readonly Row[] => {
  const pages = builtPages();
  const packed = pages.map(({ html }) => gzipSync(html, { level: 6 }).length).sort((a, b) => a - b);
  // Of one page in so many: to pack all of them again would take as long again.
  const bare = median(
    pages
      .filter((_, at) => at % 10 === 0)
      .map(({ html }) => gzipSync(html.replace(STYLE, ''), { level: 6 }).length),
  );
  const bytes = pages.reduce((sum, { html }) => sum + Buffer.byteLength(html), 0);
  const styles = pages.reduce(
    (sum, { html }) => sum + [...html.matchAll(STYLE)].reduce((all, [text]) => all + text.length, 0),
    0,
  );
  const most = packed.at(-1) ?? Number.NaN;
  const middle = median(packed);
  const line = (name: string, value: number, more: Partial<Row> = {}): Row => ({
    what: '',
    name,
    value,
    unit: 'bytes',
    ...more,
  });
  return [
    line('one flight', FLIGHT, { what: 'bytes of a page, gz' }),
    line(`the median of ${pages.length} pages`, middle, {
      ratio: [middle / FLIGHT, middle / FLIGHT, middle / FLIGHT],
    }),
    line('the median without the styles within it', bare, {
      ratio: [bare / FLIGHT, bare / FLIGHT, bare / FLIGHT],
    }),
    line('the heaviest', most, {
      ratio: [most / FLIGHT, most / FLIGHT, most / FLIGHT],
      goal: { most: FLIGHT, of: 'value' },
    }),
    line('all pages', bytes, { what: 'bytes of the site, as they lie there' }),
    line('of them styles within the pages', styles),
  ];
};
