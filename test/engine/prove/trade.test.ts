/**
 * Slips against the trade, one at a time, and beside each the same work done right: a coat dries before anything else, a
 * repair begins by waiting, thinner and extender keep to the sheets (Flexner 2008; a dealer's sheet), polish waits for cure
 * (Van Dyke 2021; Dresdner), fine paper between clear coats, spirits and water dry, washing before sanding, water off
 * bared chalk paint, veneer is spared, stripper is tried first (common practice, no source).
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
const coat = step('coat', { product: 'same' }, 'Lay it.');
const fine = step('sand', { grit: 320 });
const sand = (grit: number, say = 'Sand it.') => step('sand', { grit }, say);
const wipe = (by: string, say = `Wipe with ${by}.`, more: Record<string, unknown> = {}) =>
  step('wipe', { with: by, ...more }, say);
const mix = (what: string, most: number, more: Record<string, unknown> = {}, say = 'Mix it.') =>
  step('mix', { what, percent: [1, most], ...more }, say);

/** `place: what` of each slip, the place counted from 1. */
const told = (...steps: readonly Step[]): string[] =>
  [
    ...repairsKeepToTheTrade({
      remedies: [
        { id: 'mend', file: 'mend.mdx', steps, lineOf: (path: readonly unknown[]) => Number(path[1]) + 1 },
      ],
    } as never),
  ].map((issue) => `${issue.line}: ${(issue as Issue & { what: string }).what}`);
const has = (what: string, ...steps: readonly Step[]) => told(...steps).filter((one) => one.includes(what));

describe('a coat dries', () => {
  const after = 'comes right after a coat';
  const last = 'nothing comes after the last coat';
  it('before anything else is done, and at the end', () => {
    expect(has(after, wait, coat, fine)).toEqual(['3: "The sand." comes right after a coat']);
    expect(has(after, wait, coat, wait, fine)).toEqual([]);
    expect(has(last, wait, coat)).toEqual([`2: ${last}`]);
    expect(has(last, wait, coat, wait)).toEqual([]);
  });
  it('but wax, oil and filler, which are rubbed in', () => {
    for (const product of ['wax', 'oil', 'grain-filler']) {
      expect(has(last, wait, step('coat', { product }))).toEqual([]);
      expect(has(after, wait, step('coat', { product }), fine)).toEqual([]);
    }
  });
  it('two coats for different cases follow one another', () => {
    const oil = step('coat', { product: 'same', when: { family: 'oil' } });
    const wax = step('coat', { product: 'same', when: { family: 'wax' } });
    expect(has(after, wait, oil, wax, wait)).toEqual([]);
    expect(has(after, wait, step('coat', { product: 'same', except: { part: 'edge' } }), wax, wait)).toEqual(
      [],
    );
    expect(has(after, wait, coat, wax, wait)).toHaveLength(1);
    expect(has(after, wait, oil, coat, wait)).toHaveLength(1);
    expect(has(after, wait, oil, step('sand', { grit: 320, when: { family: 'wax' } }))).toHaveLength(1);
  });
});

describe('a repair begins by waiting', () => {
  const begins = 'the repair begins with';
  it.each([
    fine,
    step('scrape', { tool: 'razor' }),
    coat,
    step('test-patch', { tries: 'same' }),
    wipe('damp-cloth'),
    wipe('vacuum'),
  ])('%o', (hard) => {
    expect(has(begins, hard, wait)).toEqual([`1: the repair begins with "${hard.say}"`]);
    expect(has(begins, step('look'), hard, wait)).toHaveLength(1);
    expect(has(begins, wait, hard, wait)).toEqual([]);
  });
  it('looking, dry wiping and stripping need none', () => {
    expect(has(begins, step('look'), wipe('dry-cloth'))).toEqual([]);
    expect(has(begins, step('strip', { with: 'solvent' }))).toEqual([]);
  });
});

describe('what is mixed in', () => {
  const bears = 'at most';
  it('extender to 15 %', () => {
    expect(has(bears, mix('extender', 15))).toEqual([]);
    expect(has(bears, mix('extender', 16))).toEqual([
      '1: this step adds extender up to 16 %, and a top coat bears 15 % at most',
    ]);
  });
  it('thinner to 10 % where the kind is not told, since a water-based one bears no more', () => {
    expect(has(bears, mix('thin', 10))).toEqual([]);
    expect(has(bears, mix('thin', 11))).toEqual([
      '1: this step thins up to 11 %, and a top coat that is water-based bears 10 % at most',
    ]);
  });
  it.each([
    ['water-based', 10],
    ['water-lacquer', 10],
    ['oil-based', 10],
    ['wipe-on', 10],
    ['lacquer', 25],
    ['shellac', 25],
  ] as const)('%s to %i %%', (family, most) => {
    expect(has(bears, mix('thin', most, { when: { family } }))).toEqual([]);
    expect(has(bears, mix('thin', most + 1, { when: { family } }))).toHaveLength(1);
  });
  it('varnish to 25 % in a last coat', () => {
    expect(has(bears, mix('thin', 25, { when: { family: 'oil-based' } }, 'Thin the last coat.'))).toEqual([]);
    expect(
      has(bears, mix('thin', 26, { when: { family: 'oil-based' } }, 'Thin the last coat.')),
    ).toHaveLength(1);
    expect(
      has(bears, mix('thin', 25, { when: { family: 'wipe-on' } }, 'Thin the lasting coat.')),
    ).toHaveLength(1);
    expect(
      has(bears, mix('thin', 25, { when: { family: 'water-based' } }, 'Thin the last coat.')),
    ).toHaveLength(1);
  });
  it('a tint is held by rules, and a mix without a figure by nothing', () => {
    expect(has(bears, mix('tint', 60))).toEqual([]);
    expect(has(bears, step('mix', { what: 'stir' }))).toEqual([]);
  });
});

describe('polish', () => {
  const early = 'polished before it is cured';
  const polish = wipe('polish');
  it('waits for cure or a week', () => {
    expect(has(early, wait, polish)).toEqual([`2: the film is ${early}`]);
    expect(has(early, step('wait', { until: 'cured' }), polish)).toEqual([]);
    expect(has(early, step('wait', { hours: [168, 200] }), polish)).toEqual([]);
    expect(has(early, step('wait', { hours: [167, 200] }), polish)).toHaveLength(1);
    expect(has(early, polish, step('wait', { until: 'cured' }))).toHaveLength(1);
    expect(has(early, wait, wipe('dry-cloth'))).toEqual([]);
  });
});

describe('paper before a clear coat', () => {
  const coarse = 'is the last paper before a clear coat';
  it('is P320 or finer', () => {
    expect(has(coarse, wait, sand(280), coat, wait)).toEqual([`2: P280 ${coarse}`]);
    expect(has(coarse, wait, sand(320), coat, wait)).toEqual([]);
    expect(has(coarse, wait, sand(220), sand(320), coat, wait)).toEqual([]);
    expect(has(coarse, wait, sand(320), sand(220), coat, wait)).toEqual([`3: P220 ${coarse}`]);
    expect(has(coarse, wait, coat, wait)).toEqual([]);
  });
  it.each(['same', 'same-in-gloss', 'tinted-same', 'water-based', 'mist-of-same'])('of %s', (product) => {
    expect(has(coarse, wait, sand(220), step('coat', { product }), wait)).toHaveLength(1);
  });
  it('but a stripped piece begins afresh, and color hides more', () => {
    expect(
      has(coarse, step('strip', { with: 'scraper-and-sanding' }), sand(180, 'Sand the veneer.'), coat, wait),
    ).toEqual([]);
    expect(has(coarse, wait, sand(220), step('coat', { product: 'base-color' }), wait)).toEqual([]);
    // The second coat after stripping is like any other.
    expect(has(coarse, step('strip', { with: 'solvent' }), coat, wait, sand(220), coat, wait)).toHaveLength(
      1,
    );
  });
});

describe('what is wet', () => {
  const wet = 'comes on top of what is still wet';
  it.each(['soapy-water', 'mineral-spirits', 'wood-bleach', 'thinner'])('%s dries before a coat', (by) => {
    expect(has(wet, wait, wipe(by), coat, wait)).toEqual([`2: "Lay it." ${wet}`]);
    expect(has(wet, wait, wipe(by), step('test-patch', { tries: 'same' }))).toHaveLength(1);
    expect(has(wet, wait, wipe(by), mix('stir', 1), coat, wait)).toHaveLength(1);
    expect(has(wet, wait, wipe(by), wait, coat, wait)).toEqual([]);
    for (const dries of [
      'Wipe, let dry.',
      'It dries.',
      'Wipe until dried.',
      'Give it ten minutes.',
      'An hour.',
      'Two hours.',
      'Overnight.',
    ])
      expect(has(wet, wait, wipe(by, dries), coat, wait), dries).toEqual([]);
  });
  it('a damp cloth and spirits of wine leave nothing', () => {
    expect(has(wet, wait, wipe('damp-cloth'), coat, wait)).toEqual([]);
    expect(has(wet, wait, wipe('alcohol'), coat, wait)).toEqual([]);
  });
  it('two steps for different cases never meet', () => {
    const one = wipe('thinner', 'Wipe.', { when: { family: 'oil-based' } });
    expect(has(wet, wait, one, step('coat', { product: 'same', when: { family: 'lacquer' } }), wait)).toEqual(
      [],
    );
    expect(
      has(wet, wait, one, step('coat', { product: 'same', when: { family: 'oil-based' } }), wait),
    ).toHaveLength(1);
    expect(has(wet, wait, one, coat, wait)).toHaveLength(1);
  });
  const spirits = 'comes on spirits that are still wet';
  it.each(['mineral-spirits', 'naphtha', 'alcohol', 'thinner'])(
    '%s dries before paper and a vacuum',
    (by) => {
      expect(has(spirits, wait, wipe(by), fine)).toHaveLength(1);
      expect(has(spirits, wait, wipe(by), wipe('vacuum'))).toHaveLength(1);
      expect(has(spirits, wait, wipe(by), step('look'), fine)).toHaveLength(1);
      expect(has(spirits, wait, wipe(by), wipe('dry-cloth'), fine)).toEqual([]);
      expect(has(spirits, wait, wipe(by, 'Let it dry.'), fine)).toEqual([]);
      expect(has(spirits, wait, wipe(by, 'Wipe.', { of: 'oil' }), fine)).toEqual([]);
    },
  );
  it('water before paper is no matter here', () => {
    expect(has(spirits, wait, wipe('soapy-water'), fine)).toEqual([]);
  });
});

describe('washing', () => {
  it('comes before the sanding', () => {
    const late = 'comes after the sanding';
    expect(has(late, wait, fine, wipe('soapy-water'))).toHaveLength(1);
    expect(has(late, wait, wipe('soapy-water'), fine)).toEqual([]);
    expect(has(late, wait, fine, coat, wait, wipe('soapy-water'))).toEqual([]);
    expect(has(late, wait, fine, step('strip', { with: 'solvent' }), wipe('soapy-water'))).toEqual([]);
    expect(has(late, wait, fine, wipe('damp-cloth'))).toEqual([]);
  });
  it('brings no water to color that sanding may have bared', () => {
    const bared = 'brings water to color';
    const color = step('coat', { product: 'base-color' });
    for (const by of ['damp-cloth', 'soapy-water']) {
      expect(has(bared, wait, fine, wipe(by), color, wait)).toEqual([
        `4: "Wipe with ${by}." ${bared} that the sanding may have bared`,
      ]);
      expect(has(bared, wait, wipe(by), fine, color, wait)).toEqual([]);
      expect(has(bared, wait, wipe(by), color, wait)).toEqual([]);
      expect(has(bared, wait, fine, wipe(by), coat, wait)).toEqual([]);
    }
    expect(has(bared, wait, fine, wipe('dry-cloth'), color, wait)).toEqual([]);
    expect(has(bared, wait, fine, coat, wait, wipe('damp-cloth'), color, wait)).toEqual([]);
  });
});

describe('veneer and paint that is to stay', () => {
  it('coarse paper says what is done on veneer', () => {
    const may = 'to what may be veneer';
    expect(has(may, wait, sand(180))).toEqual([`2: "Sand it." takes P180 ${may}`]);
    expect(has(may, wait, sand(120))).toHaveLength(1);
    expect(has(may, wait, sand(220))).toEqual([]);
    expect(has(may, wait, sand(180, 'Sand it; on Veneer by hand.'))).toEqual([]);
    expect(has(may, step('look', {}, 'See whether it is veneer.'), wait, sand(180))).toEqual([]);
    expect(has(may, wait, sand(180), step('look', {}, 'See whether it is veneer.'))).toHaveLength(1);
    expect(has(may, wait, sand(180, 'Veneered or not.'))).toHaveLength(1);
  });
  it('stripper is tried on a hidden spot, unless color is laid again', () => {
    const stays = 'brings stripper to paint that is to stay';
    const strip = (say: string, more: Record<string, unknown> = { with: 'stripper' }) =>
      step('strip', more, say);
    expect(has(stays, strip('Strip it.'))).toEqual([`1: "Strip it." ${stays}`]);
    expect(has(stays, strip('Strip it.', { with: 'solvent', does: ['stripper'] }))).toHaveLength(1);
    expect(has(stays, strip('Strip it.', { with: 'solvent' }))).toEqual([]);
    expect(has(stays, strip('Over paint try it on a hidden spot first.'))).toEqual([]);
    expect(has(stays, strip('Over paint it is best. Try a hidden spot.'))).toHaveLength(1);
    for (const product of ['base-color', 'stain'])
      expect(has(stays, strip('Strip it.'), step('coat', { product }), wait)).toEqual([]);
    expect(has(stays, strip('Strip it.'), coat, wait)).toHaveLength(1);
  });
});
