/**
 * What the layer below needs before the next, for each kind of top coat, a slip and beside it the same done right: oil paint
 * has its days (a week below lacquer and shellac, three days below water-based, else one), lacquer is tried on paint, alcohol
 * waits a week on a water-based coat, a panel is dulled whole. Common practice, no source; invented repairs.
 */
import { describe, expect, it } from 'vitest';
import { FAMILIES } from '#engine/model/family.ts';
import { coatsHoldOnCoats } from '#engine/prove/coats-on-coats.ts';
import { stepsAreInOrder } from '#engine/prove/steps-are-in-order.ts';
import { proved } from './proved.ts';

type Step = Record<string, unknown> & { kind: string; say: string };
const step = (kind: string, say: string, more: object = {}): Step => ({ kind, say, ...more });
const coat = (product: string, say = 'Lay it.', more: object = {}) => step('coat', say, { product, ...more });
const hours = (most: number, more: object = {}, say = 'Wait.') =>
  step('wait', say, { hours: [1, most], ...more });
const color = coat('base-color', 'Touch the color in.');
const tried = step('test-patch', 'Try it.', { tries: 'same', hours: [1, 2] });

const flaw = (families: readonly string[]) => ({ id: 'spot', families, tree: { remedy: 'mend' } });
const told = (families: readonly string[], steps: readonly Step[]) =>
  proved(coatsHoldOnCoats, {
    defects: families.length ? [flaw(families)] : [],
    remedies: [{ id: 'mend', steps }],
  }).map(({ at, code, what, mend }) => ({ at, code, what: String(what), mend: String(mend) }));
const has = (words: string, families: readonly string[], ...steps: readonly Step[]) =>
  told(families, steps)
    .filter(({ what }) => what.includes(words))
    .map(({ at }) => at);

describe('oil paint has its days', () => {
  const early = 'comes on the oil paint';
  const NEEDS: Readonly<Record<string, number>> = {
    lacquer: 168,
    shellac: 168,
    'water-based': 72,
    'water-lacquer': 72,
  };
  it.each(FAMILIES)('below %s', (family) => {
    const needs = NEEDS[family] ?? 24;
    for (const product of ['same', 'same-in-gloss', 'tinted-same', 'mist-of-same']) {
      expect(has(early, [family], color, hours(needs - 1), tried, coat(product))).toEqual(['steps.0']);
      expect(has(early, [family], color, hours(needs), tried, coat(product))).toEqual([]);
    }
    // What is laid in between is what comes on it, whatever she coats with.
    expect(has(early, [family], color, hours(167), coat('dewaxed-shellac'), coat('same'))).toEqual([
      'steps.0',
    ]);
    expect(has(early, [family], color, hours(71), coat('water-based'))).toEqual(['steps.0']);
    expect(has(early, [family], color, hours(72), coat('water-based'))).toEqual([]);
  });
  it('by the longest wait before the next coat, not after it, and not by one for some alone', () => {
    expect(has(early, ['oil-based'], color, hours(4), hours(30), coat('same'))).toEqual([]);
    expect(has(early, ['oil-based'], color, coat('same'), hours(30))).toEqual(['steps.0']);
    expect(
      has(early, ['oil-based'], color, hours(30, {}, 'If the color is thick, wait longer.'), coat('same')),
    ).toEqual(['steps.0']);
    expect(
      has(
        early,
        ['oil-based'],
        color,
        hours(30, { when: { base: 'oil-paint' } }, 'If thick, wait.'),
        coat('same'),
      ),
    ).toEqual([]);
    expect(
      has(early, ['oil-based'], color, step('wait', 'Wait.', { until: 'recoatable' }), coat('same')),
    ).toEqual(['steps.0']);
    expect(has(early, ['oil-based'], color, hours(4), step('look', 'Look.'))).toEqual([]);
    expect(has(early, ['oil-based'], color, coat('stain'))).toEqual([]);
    expect(has(early, ['oil-based'], coat('stain'), coat('same'))).toEqual([]);
  });
  it('where the color may be oil paint', () => {
    const of = (base: unknown) =>
      has(early, ['oil-based'], coat('base-color', 'Lay color.', { when: { base } }), coat('same'));
    expect(of('oil-paint')).toEqual(['steps.0']);
    expect(of(['latex-paint', 'oil-paint'])).toEqual(['steps.0']);
    expect(of('latex-paint')).toEqual([]);
    expect(
      has(
        early,
        ['oil-based'],
        coat('base-color', 'Lay color.', { when: { family: 'oil-based' } }),
        coat('same'),
      ),
    ).toEqual(['steps.0']);
  });
  it('is told with what comes on it and how long that waits', () => {
    const what = (family: string, ...more: readonly Step[]) =>
      told([family], [color, ...more, tried, coat('same')]).map((one) => one.what)[0];
    expect(what('lacquer')).toMatch(/^a coat of lacquer comes .* before a week has passed$/);
    expect(what('water-lacquer')).toMatch(/^a coat of water lacquer comes .* before three days have passed$/);
    expect(what('water-based')).toMatch(/^a coat that is water-based comes/);
    expect(what('wipe-on')).toMatch(/^a coat that is wipe-on comes .* before a day has passed$/);
    expect(told(['oil-based'], [color, coat('same')])[0]).toMatchObject({
      code: 'against-the-trade',
      mend: expect.stringMatching(/^right below that step, .*- color-dries-a-day/),
    });
  });
  it('is told once for kinds that need the same', () => {
    expect(told(['oil-based', 'wipe-on'], [color, coat('same')])).toHaveLength(1);
    // A repair that no tree leads to is one for every kind.
    expect(told([], [color, hours(100), tried, coat('same')]).length).toBeGreaterThan(0);
    expect(has(early, [], color, hours(168), tried, coat('same'))).toEqual([]);
  });
});

describe('lacquer on paint is tried', () => {
  const untried = 'nobody tried it';
  it('between the color and the coat', () => {
    expect(has(untried, ['lacquer'], color, hours(168), coat('same'))).toEqual(['steps.0']);
    expect(has(untried, ['lacquer'], color, hours(168), tried, coat('same'))).toEqual([]);
    expect(has(untried, ['lacquer'], tried, color, hours(168), coat('same'))).toEqual(['steps.1']);
    expect(has(untried, ['lacquer'], color, hours(168), coat('same'), tried)).toEqual(['steps.0']);
    expect(has(untried, ['shellac'], color, hours(168), coat('same'))).toEqual([]);
  });
  it('but where shellac or another film comes between', () => {
    expect(has(untried, ['lacquer'], color, hours(168), coat('dewaxed-shellac'), coat('same'))).toEqual([]);
    expect(has(untried, ['lacquer'], color, hours(168), coat('water-based'), coat('same'))).toEqual([]);
    expect(
      has(untried, ['lacquer'], color, hours(168), coat('same', 'Lay a 2-lb cut.'), coat('same')),
    ).toEqual([]);
    expect(has(untried, ['lacquer'], coat('stain'), hours(168), coat('same'))).toEqual([]);
    expect(has(untried, ['lacquer'], color, hours(168))).toEqual([]);
  });
});

describe('alcohol on a water-based coat', () => {
  const young = 'lays alcohol';
  it.each(['shellac-primer', 'dewaxed-shellac', 'stain-blocking-primer'])('waits a week: %s', (product) => {
    for (const family of ['water-based', 'water-lacquer']) {
      expect(has(young, [family], hours(167), coat(product))).toEqual(['steps.1']);
      expect(has(young, [family], hours(168), coat(product))).toEqual([]);
      expect(has(young, [family], coat(product), hours(168))).toEqual(['steps.0']);
    }
    for (const family of ['oil-based', 'lacquer', 'shellac'])
      expect(has(young, [family], coat(product))).toEqual([]);
  });
  it('but on bare wood, or in a primer that is said to be oil-based', () => {
    const strip = (more: object = {}) => step('strip', 'Strip it.', { with: 'solvent', ...more });
    expect(has(young, ['water-based'], strip(), coat('shellac-primer'))).toEqual([]);
    expect(has(young, ['water-based'], strip({ when: { family: 'wax' } }), coat('shellac-primer'))).toEqual([
      'steps.1',
    ]);
    expect(has(young, ['water-based'], coat('shellac-primer'), strip())).toEqual(['steps.0']);
    expect(has(young, ['water-based'], coat('stain-blocking-primer', 'Lay an oil-based primer.'))).toEqual(
      [],
    );
    expect(has(young, ['water-based'], coat('same'))).toEqual([]);
  });
});

describe('a panel is dulled whole', () => {
  const shines = 'coats more than was sanded';
  const spot = step('sand', 'Sand the spot.', { grit: 320 });
  const all = step('sand', 'Scuff the whole panel.', { grit: 400 });
  const panel = (product = 'same') => coat(product, 'Coat the whole panel.');
  it.each(['oil-based', 'water-based', 'wipe-on', 'water-lacquer'])('below %s', (family) => {
    expect(has(shines, [family], spot, panel())).toEqual(['steps.1']);
    expect(has(shines, [family], spot, all, panel())).toEqual([]);
    expect(has(shines, [family], all, panel())).toEqual([]);
    expect(has(shines, [family], panel())).toEqual([]);
    expect(has(shines, [family], spot, coat('same', 'Lay one thin coat.'))).toEqual(['steps.1']);
    expect(has(shines, [family], spot, coat('same', 'Lay one thin coat there.'))).toEqual([]);
    expect(has(shines, [family], spot, hours(168), panel('base-color'))).toEqual(['steps.2']);
    expect(has(shines, [family], spot, coat('stain', 'Coat the whole panel.'))).toEqual([]);
  });
  it('but under lacquer and shellac, which melt in', () => {
    for (const family of ['lacquer', 'shellac']) expect(has(shines, [family], spot, panel())).toEqual([]);
  });
  it('but where the place alone is touched, or shellac is laid, or all was covered or bared before', () => {
    const family = ['oil-based'];
    for (const say of ['Touch the whole spot.', 'Dab the face.'])
      expect(has(shines, family, spot, coat('same', say))).toEqual([]);
    expect(has(shines, family, spot, coat('same', 'Lay a 2-lb cut on the whole panel.'))).toEqual([]);
    expect(has(shines, family, spot, step('strip', 'Strip it.', { with: 'solvent' }), panel())).toEqual([]);
    expect(has(shines, family, spot, coat('shellac-primer', 'Prime the whole panel.'), panel())).toEqual([]);
    expect(has(shines, family, spot, coat('shellac-primer', 'Touch the whole panel.'), panel())).toEqual([
      'steps.2',
    ]);
    expect(has(shines, family, spot, coat('shellac-primer', 'Prime the spot.'), panel())).toEqual([
      'steps.2',
    ]);
    // The second coat of the panel holds on the first.
    expect(has(shines, family, spot, panel(), panel())).toEqual(['steps.1']);
  });
});

describe('the order on the bench', () => {
  const order = (steps: readonly Step[], begins = 'recoatable') =>
    proved(stepsAreInOrder, {
      remedies: [
        {
          id: 'mend',
          steps,
          now: Object.fromEntries(
            ['wet', 'setting', 'dry-to-touch', 'recoatable', 'cured'].map((stage) => [
              stage,
              { do: stage === begins ? 'repair' : 'leave' },
            ]),
          ),
        },
      ],
    }).map(({ at, what }) => `${at} ${what}`);
  const sand = step('sand', 'Sand.', { grit: 320 });
  const vacuum = step('wipe', 'Vacuum.', { with: 'vacuum' });
  const bleach = step('wipe', 'Bleach.', { with: 'wood-bleach' });
  const rinse = step('wipe', 'Rinse.', { with: 'damp-cloth', of: 'wood-bleach' });
  const strip = step('strip', 'Strip.', { with: 'stripper' });
  const same = coat('same');
  it('acid takes the dust with it, and a wipe any dust', () => {
    // Paint is spared the acid and its rinse, so there the dust still lies.
    expect(order([sand, bleach, rinse, same])).toEqual(['steps.3 goes on over sanding dust']);
    expect(order([sand, vacuum, bleach, rinse, same])).toEqual([]);
    expect(order([sand, step('wipe', 'Wipe.', { with: 'dry-cloth' }), same])).toEqual([]);
    expect(order([sand, step('look', 'Look.'), same])).toEqual(['steps.2 goes on over sanding dust']);
    expect(order([sand, step('mix', 'Stir.', { what: 'stir' }), same])).toHaveLength(1);
  });
  it('a coat leaves a wet film without dust, and a filler leaves what lay there', () => {
    const wait = step('wait', 'Wait.', { until: 'recoatable' });
    expect(order([same, wait, same])).toEqual([]);
    expect(order([sand, coat('grain-filler'), same])).toEqual([
      'steps.1 goes on over sanding dust',
      'steps.2 goes on over sanding dust',
    ]);
    expect(order([same, coat('grain-filler')])).toEqual(['steps.1 comes on a film that has not dried']);
  });
  it('stripping leaves hard wood, dust, and stripper where that was used', () => {
    expect(
      order([
        same,
        step('wait', 'W.', { until: 'recoatable' }),
        strip,
        step('wipe', 'Wash.', { with: 'alcohol' }),
        same,
      ]),
    ).toEqual([]);
    expect(order([step('strip', 'Scrape.', { with: 'solvent' }), same])).toEqual([
      'steps.1 goes on over sanding dust',
    ]);
    expect(order([step('strip', 'Scrape.', { with: 'solvent', does: ['stripper'] }), same])).toEqual([
      'steps.1 comes over stripper',
    ]);
    // Dust of what was stripped is there, and stripper before it.
    expect(order([strip, vacuum])).toEqual([
      'steps.1 brings a vacuum, whose motor lights vapor, to stripper',
    ]);
    expect(order([bleach, vacuum])).toEqual([]);
    expect(order([strip, step('wipe', 'Wash.', { with: 'alcohol' }), vacuum])).toEqual([]);
    expect(order([strip, step('wipe', 'Rinse.', { with: 'naphtha' }), same])).toEqual([
      'steps.2 comes over stripper',
    ]);
  });
  it('begins at the earliest stage that leads to the steps', () => {
    expect(order([sand], 'dry-to-touch')).toEqual(['steps.0 comes on a film that has not dried']);
    expect(order([sand], 'cured')).toEqual([]);
    expect(order([sand], 'none')).toEqual(['steps.0 comes on a film that has not dried']);
    expect(order([step('wait', 'W.', { until: 'cured' }), sand], 'wet')).toEqual([]);
  });
  it('holds whichever kind and part it is, and whatever is left out', () => {
    const only = (more: object) => step('wait', 'W.', { until: 'recoatable', ...more });
    expect(order([same, only({ when: { family: 'lacquer' } }), sand])).toEqual([
      'steps.2 comes on a film that has not dried',
    ]);
    expect(order([same, only({ except: { part: 'edge' } }), sand])).toEqual([
      'steps.2 comes on a film that has not dried',
    ]);
    expect(order([same, only({}), { ...sand, when: { family: 'oil' } }])).toEqual([]);
  });
});
