/** Building pages: this site, beside bare Astro with as many trivial pages of the same size, and a loop over a template. */
import type { Measured } from '../figures.ts';
import type { Row } from '../row.ts';
import { type Built, built } from './run.ts';

/** One page in so many of each kind: some 500, some 2,000, and all. */
const STEPS = [15, 4, 1];

const rowsFor = (step: number): readonly Row[] => {
  const site = built({ kind: 'site', oneIn: step });
  const same = { pages: site.pages, bytes: site.bytes };
  const bare = built({ kind: 'astro', ...same });
  const loop = built({ kind: 'loop', ...same });
  const line = (what: string, name: string, one: Built, of: 'ms' | 'memory', most?: number): Row => {
    const ratio = one[of] / bare[of];
    return {
      what,
      name,
      value: of === 'ms' ? one.ms * 1e6 : one.memory,
      unit: of === 'ms' ? 'ns' : 'bytes',
      ...(!what && { ratio: [ratio, ratio, ratio] as const }),
      ...(most !== undefined && { goal: { most, of: 'ratio' as const } }),
    };
  };
  const pages = `${site.pages.toLocaleString('en-US')} pages of ${Math.round(site.bytes / 1e3)} kB`;
  return [
    line(`${pages}, time`, 'bare Astro, trivial pages', bare, 'ms'),
    line('', 'this site, pictures left out', site, 'ms', 1.5),
    line('', 'a loop over a template', loop, 'ms'),
    line(`${pages}, memory`, 'bare Astro, trivial pages', bare, 'memory'),
    line('', 'this site, pictures left out', site, 'memory', 1.5),
    line('', 'a loop over a template', loop, 'memory'),
  ];
};

export const builds = async (): Promise<Measured> => ({ rows: STEPS.flatMap(rowsFor) });
