/**
 * The order of work on the bench, a slip and beside it the same work done right, a pair for each side of a rule. Common
 * practice, no source. Invented repairs.
 */
import { describe, expect, it } from 'vitest';
import type { Issue } from '#engine/faults/issue.ts';
import { repairsKeepToTheTrade } from '#engine/prove/repairs-keep-to-the-trade.ts';

type Step = Record<string, unknown> & { kind: string; say: string };
const step = (kind: string, more: Record<string, unknown> = {}, say = `The ${kind}.`): Step => ({
  kind,
  say,
  ...more,
});
const wait = step('wait', { until: 'recoatable' });
const hours = step('wait', { hours: [4, 8] }, 'Wait hours.');
const coat = step('coat', { product: 'same' });
const sand = (grit = 320, say = 'Sand it.') => step('sand', { grit }, say);
const wipe = (by: string, say = `Go over with ${by}.`) => step('wipe', { with: by }, say);
const vacuum = wipe('vacuum', 'Vacuum.');
const cloth = wipe('dry-cloth');
const scrape = step('scrape', { tool: 'razor' });
const strip = step('strip', { with: 'scraper-and-sanding' });
const look = step('look');
const stir = step('mix', { what: 'stir' });
const tries = (what: string, more: Record<string, unknown> = {}) =>
  step('test-patch', { tries: what, hours: [1, 2], ...more }, 'Try it.');

const places = (what: string, ...steps: readonly Step[]): number[] =>
  [
    ...repairsKeepToTheTrade({
      remedies: [
        { id: 'mend', file: 'mend.mdx', steps, lineOf: (path: readonly unknown[]) => Number(path[1]) + 1 },
      ],
    } as never),
  ].flatMap((issue) => ((issue as Issue & { what: string }).what.includes(what) ? [issue.line] : []));

/** Each: what is told, steps, and the places of the slips, counted from 1. */
const CASES: readonly (readonly [
  what: string,
  slips: readonly (readonly [readonly Step[], readonly number[]])[],
])[] = [
  [
    'counts from the day the coat was laid',
    [
      [[sand(), step('wait', { from: 'coat', hours: [4, 8] })], [2]],
      [[step('wait', { from: 'coat', hours: [4, 8] }), sand()], []],
      [[hours, step('wait', { from: 'coat', hours: [4, 8] })], []],
      [[sand(), coat, step('wait', { from: 'coat', hours: [4, 8] })], []],
      [[sand(), hours], []],
    ],
  ],
  [
    'while the sanding dust still lies',
    [
      [[wait, sand(), hours], [3]],
      [[wait, sand(), vacuum, hours], []],
      [[wait, sand(), cloth, hours], []],
      [[wait, sand(), coat, wait], []],
      [[wait, sand(), strip, hours], []],
      [[wait, scrape, hours], []],
    ],
  ],
  [
    'after a cloth has gone over the dust',
    [
      [[wait, sand(), cloth, vacuum], [4]],
      [[wait, scrape, cloth, vacuum], [4]],
      [[wait, sand(), vacuum, cloth], []],
      [[wait, cloth, sand(), vacuum], []],
      [[wait, sand(), cloth, coat, wait, vacuum], []],
      [[wait, sand(), vacuum, vacuum], []],
      [[wait, cloth, vacuum], []],
    ],
  ],
  [
    'comes before anything has made dust',
    [
      [[wait, vacuum, sand(), vacuum], [2]],
      [[wait, vacuum, scrape, vacuum], [2]],
      [[wait, vacuum, strip, vacuum], [2]],
      [[wait, sand(), vacuum, sand(), vacuum], []],
      [[wait, vacuum, coat, wait], []],
      [[wait, sand(), vacuum, coat, wait, vacuum, sand(), vacuum], [6]],
      [[wait, cloth, sand(), vacuum], []],
    ],
  ],
  [
    'it cuts its scratches in again',
    [
      [[wait, sand(320), sand(220)], [3]],
      [[wait, sand(220), sand(320)], []],
      [[wait, sand(320), sand(320)], []],
      [[wait, sand(320), vacuum, sand(220)], [4]],
      [[wait, sand(320), coat, wait, sand(220)], []],
      [[wait, sand(320), strip, sand(220)], []],
      // Papers for rubbing out may be tried first.
      [[wait, sand(800), sand(400)], []],
      [[wait, sand(600), sand(400)], [3]],
    ],
  ],
  [
    '"The scrape." comes after the sanding',
    [
      [[wait, sand(), scrape], [3]],
      [[wait, scrape, sand()], []],
      [[wait, sand(), coat, wait, scrape], []],
      [[wait, sand(), strip, scrape], []],
    ],
  ],
  [
    'is on the piece already',
    [
      [[wait, coat, wait, tries('same')], [4]],
      [[wait, tries('same'), coat, wait], []],
      [[wait, wipe('alcohol'), tries('alcohol')], [3]],
      [[wait, step('strip', { with: 'stripper' }), tries('stripper')], [3]],
      [[wait, wipe('alcohol'), tries('naphtha')], []],
      [
        [
          wait,
          step('coat', { product: 'same', when: { family: 'oil' } }),
          wait,
          tries('same', { when: { family: 'wax' } }),
        ],
        [],
      ],
    ],
  ],
  [
    'lays the trial on sanding dust',
    [
      [[wait, sand(), tries('same')], [3]],
      [[wait, strip, tries('same')], [3]],
      [[wait, sand(), vacuum, tries('same')], []],
      [[wait, scrape, tries('same')], []],
      [[wait, vacuum, sand(), tries('same')], [4]],
    ],
  ],
  [
    'is not wiped off in the next step',
    [
      [[wait, step('coat', { product: 'oil' }, 'Lay it.'), wait], [2]],
      [[wait, step('coat', { product: 'wax' }, 'Lay it.'), look], [2]],
      [[wait, wipe('fresh-oil', 'Lay it.'), look], [2]],
      [[wait, step('coat', { product: 'oil' }, 'Lay it.'), cloth], []],
      [[wait, step('coat', { product: 'oil' }, 'Lay it.'), sand()], []],
      [[wait, step('coat', { product: 'oil' }, 'Lay it and wipe it off.'), wait], []],
      [[wait, step('coat', { product: 'wax' }, 'Lay it, then buff it.'), wait], []],
      [[wait, coat, wait], []],
      [[wait, wipe('alcohol'), look], []],
      [[wait, step('coat', { product: 'oil' }, 'Lay it.')], [2]],
    ],
  ],
  [
    'but nothing above it does that',
    [
      [[wait, sand(320, 'Sand it once more.')], [2]],
      [[wait, sand(320, 'Sand it again.')], [2]],
      [[wait, sand(320, 'Sand the whole top again.'), sand()], [2]],
      [[wait, sand(), sand(320, 'Sand it once more.')], []],
      [[wait, step('look', {}, 'Look at it again.')], []],
      [[wait, step('wait', { hours: [1, 2] }, 'Let it dry again.')], []],
      [[wait, sand(320, 'Again sand it.')], []],
    ],
  ],
  [
    'does not stand below what it repeats',
    [
      [[wait, sand(), cloth, sand(320, 'Do it with the other side.')], [4]],
      [[wait, sand(), sand(320, 'Do that on the edge.')], []],
      [[wait, sand(), look, sand(320, 'Repeat it.')], []],
      [[wait, cloth, sand(320, 'Repeat this.')], [3]],
      [[wait, cloth, step('look', {}, 'Do it in low light.')], []],
      [[wait, cloth, sand(320, 'Doing it helps.')], []],
    ],
  ],
  [
    'comes after a wait',
    [
      [[wait, wipe('dry-cloth', 'Wipe it off at once.')], [2]],
      [[wait, coat, wipe('dry-cloth', 'Buff it at once.')], []],
      [[wait, wipe('dry-cloth', 'Blot it at once.')], [2]],
      [[wait, wipe('dry-cloth', 'Wipe it, not at once.')], []],
      [[wait, wipe('dry-cloth', 'Wipe it off.')], []],
      [[wait, sand(320, 'Wipe it at once.')], []],
    ],
  ],
  [
    'once more before that was done once',
    [
      [[wait, step('look', {}, 'If it is rough, sand it once more.'), sand()], [2]],
      [[wait, sand(), step('look', {}, 'If it is rough, sand it once more.')], []],
      [[wait, sand(), step('look', {}, 'If it is rough, sand it once more.'), sand()], []],
      [[wait, step('look', {}, 'Rinse again.'), cloth], []],
      [[wait, step('look', {}, 'Rinse them again.'), wipe('damp-cloth', 'Rinse it.')], [2]],
      [[wait, step('look', {}, 'Look.'), sand()], []],
    ],
  ],
  [
    'after the last look',
    [
      [[wait, coat, look, wait], [4]],
      [[wait, coat, wait, look], []],
      [[wait, look, coat, wait], []],
      [[look, wait, look], []],
    ],
  ],
  [
    'comes between the stirring and the coat',
    [
      [[wait, stir, sand(), coat, wait], [2]],
      [[wait, stir, wait, coat, wait], [2]],
      [[wait, stir, coat, wait], []],
      [[wait, stir, step('mix', { what: 'tint' }), coat, wait], []],
      [[wait, stir, tries('same')], []],
      [[wait, stir, look, coat, wait], []],
      [[wait, step('mix', { what: 'tint' }), sand()], []],
      [[wait, stir], []],
    ],
  ],
  [
    'is never taken off',
    [
      [[wait, sand()], [2]],
      [[wait, sand(), look], [2]],
      [[wait, sand(), vacuum], []],
      [[wait, sand(), coat, wait], []],
      [[wait, sand(), strip], []],
      [[wait, vacuum, sand()], [3]],
      [[wait, look], []],
    ],
  ],
  [
    'waits for nothing',
    [
      [[wait, look, hours], [3]],
      [[wait, sand(), vacuum, hours], [4]],
      [[wait, coat, hours], []],
      [[wait, strip, hours], []],
      [[wait, tries('same'), hours], []],
      [[wait, scrape, hours], []],
      [[wait, cloth, hours], []],
      [[wait, hours], []],
      [[look, hours], []],
      [[wait, look, wait], []],
      [[wait, look, step('wait', { hours: [4, 8], when: { family: 'oil' } })], []],
      [[wait, coat, wait, look, hours], [5]],
    ],
  ],
];

describe.each(CASES)('%s', (what, slips) => {
  it.each(slips.map(([steps, wanted]) => ({ steps, wanted, name: steps.map(({ say }) => say).join(' ') })))(
    '$name',
    ({ steps, wanted }) => {
      expect(places(what, ...steps)).toEqual(wanted);
    },
  );
});
