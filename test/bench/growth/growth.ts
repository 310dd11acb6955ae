/**
 * The same figures while the knowledge grows a hundredfold. What takes too long at a size is not tried at the next; so
 * each curve ends where it does, and its exponent says what the next would cost. What `check` does is tried at every size.
 */

import { writeFileSync } from 'node:fs';
import { link } from '#engine/link.ts';
import { readContent } from '../../../content/tools/read.ts';
import { type Measured, readFigures } from '../figures.ts';
import type { Grown } from './figures.ts';
import { exponentOf } from './fit.ts';
import { grown } from './knowledge.ts';
import { plot } from './plot.ts';
import { SUBJECTS, sized } from './subjects.ts';

const SIZES = [1, 3, 10, 30, 100];
/** What took longer is not tried at the next size, milliseconds. */
const PATIENCE = 8_000;
export const PLOT = 'test/bench/growth.svg';

/** `--rows=check`: rows that begin so are measured; the others stay as they were measured last. */
const ROWS = process.argv.flatMap((word) =>
  word.startsWith('--rows=') ? word.slice('--rows='.length) : [],
)[0];

const measured = ({ what }: { readonly what: string }): boolean =>
  ROWS === undefined || what.startsWith(ROWS);

export const growth = async (): Promise<Measured> => {
  const last = ROWS === undefined ? undefined : readFigures().growth;
  const subjects = SUBJECTS.filter(measured);
  const entries = readContent(process.cwd());
  const linked = link(entries);
  if (!linked.ok) throw new Error('the content does not link; npm run check tells why');
  const first = linked.value;
  const points = new Map<string, [number, number][]>(subjects.map(({ what }) => [what, []]));
  const given = new Set<string>();
  for (const size of SIZES) {
    const at = sized(first, grown(entries, size), size);
    const late = new Set<string>();
    for (const { what, of, patience = PATIENCE, upTo = size } of subjects) {
      if (given.has(what) || size > upTo) continue;
      const began = performance.now();
      points.get(what)?.push([size, of(at)]);
      const took = performance.now() - began;
      if (took > patience) late.add(what);
    }
    for (const what of late) given.add(what);
    // What is asked of an index that takes too long to make is not asked either.
    if ([...late].some((what) => what.startsWith('search index')))
      for (const { what } of SUBJECTS) if (what.includes('search i')) given.add(what);
  }
  const all = SUBJECTS.map(({ what, unit }): Grown => {
    const found = points.get(what) ?? last?.growth?.grown.find((one) => one.what === what)?.points ?? [];
    return { what, unit, points: found, exponent: exponentOf(found) };
  });
  const flaws = first.defects.length;
  const nLogN = exponentOf(SIZES.map((size) => [size, size * Math.log(size * flaws)]));
  writeFileSync(PLOT, plot(all, flaws));
  return {
    rows: [],
    ...(last && {
      notes: `Only rows that begin with “${ROWS}” were measured then, the others on ${last.on}.`,
    }),
    growth: {
      sizes: SIZES,
      flaws,
      grown: all,
      memory: Math.max(1024 * process.resourceUsage().maxRSS, last?.growth?.memory ?? 0),
      nLogN,
    },
  };
};
