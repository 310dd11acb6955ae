/**
 * What a step can do to someone, written down by hand from what safety data sheets and agencies say of the materials:
 * spirits, alcohol and thinner give vapor and go through skin; drying oils heat by themselves in a cloth; oxalic acid and
 * stripper have cautions of their own; hardeners are isocyanates or acids; a spray makes mist. Cases of our own.
 */
import { describe, expect, it } from 'vitest';
import type { Case } from '#engine/case/case.ts';
import { holds } from '#engine/case/condition.ts';
import { FACTS } from '#engine/model/facts.ts';
import type { Family } from '#engine/model/family.ts';
import type { Step } from '#engine/model/step.ts';
import { factsOfStep, hazardRows, hazardsOf, meansOf, surelyOf, toldBy } from '#engine/rules/hazards.ts';
import { contradicted, LEAVE_OUT } from '#engine/steps/contradictions.ts';
import { known as knowing, remedy } from '../small.ts';

const known = knowing(remedy('mend'));
const step = (kind: string, more: Record<string, unknown> = {}, say = 'Do it as it is done.'): Step =>
  ({ kind, say, ...more }) as unknown as Step;
const told = (facts: Record<string, string>): Case =>
  Object.fromEntries(
    Object.entries(facts).map(([name, value]) => [name, { value, how: 'told' as const }]),
  ) as Case;
/** `hazard` where it surely does it, `hazard?` where it may. */
const does = (one: Step, facts: Record<string, string> = {}, families: readonly Family[] = []) =>
  [...hazardsOf(known, told(facts), one, families)]
    .map(([hazard, truth]) => (truth === 'yes' ? hazard : `${hazard}?`))
    .sort();
const list = (words: string) => words.split(' ').filter(Boolean).sort();

const WATER = {
  family: 'water-based',
  hardener: 'none',
  applicator: 'brush',
  base: 'latex-paint',
  'was-sprayed': 'no',
};
const OILY = { ...WATER, family: 'oil-based' };
const LAC = { ...WATER, family: 'lacquer' };
const SHEL = { ...WATER, family: 'shellac' };

describe('rinsing the acid of wood bleach off', () => {
  it('has the acid in its water', () => {
    expect(does(step('wipe', { with: 'damp-cloth', of: 'wood-bleach' }), WATER)).toEqual(['oxalic-acid']);
  });
});

describe('wiping', () => {
  it.each<[string, Record<string, string>, string]>([
    ['dry-cloth', WATER, ''],
    ['damp-cloth', WATER, ''],
    ['soapy-water', WATER, ''],
    ['polish', WATER, ''],
    ['vacuum', WATER, ''],
    // The dust of an oily film heats up in the bag.
    ['vacuum', OILY, 'oily-cloth'],
    ['vacuum', LAC, ''],
    ['mineral-spirits', WATER, 'vapor solvent-on-skin waste'],
    ['alcohol', WATER, 'vapor solvent-on-skin waste'],
    ['naphtha', WATER, 'vapor solvent-on-skin waste'],
    ['lacquer-retarder', WATER, 'vapor solvent-on-skin waste'],
    // Water thins a water-based coat.
    ['thinner', WATER, ''],
    ['thinner', { ...WATER, family: 'water-lacquer' }, ''],
    ['thinner', LAC, 'much-vapor vapor solvent-on-skin waste'],
    ['fresh-oil', { ...WATER, family: 'oil' }, 'mouth-contact oily-cloth vapor?'],
    ['fresh-oil', { ...WATER, family: 'hardwax-oil' }, 'mouth-contact oily-cloth vapor'],
    [
      'fresh-oil',
      { ...WATER, family: 'hardwax-oil', hardener: 'isocyanate' },
      'hardener mouth-contact oily-cloth vapor',
    ],
    ['fresh-wax', { 'tin-lists-oil': 'yes' }, 'mouth-contact oily-cloth vapor'],
    ['clear-wax', { 'tin-lists-oil': 'no' }, 'mouth-contact vapor'],
    ['wood-bleach', WATER, 'oxalic-acid waste'],
  ])('with %s, %o', (material, facts, wanted) => {
    expect(does(step('wipe', { with: material }), facts)).toEqual(list(wanted));
  });

  it('what comes off soft heats up in the cloth', () => {
    const off = (of: string, facts: Record<string, string>) =>
      does(step('wipe', { with: 'dry-cloth', of }), facts);
    expect(off('oil', WATER)).toEqual(['oily-cloth']);
    expect(off('same', OILY)).toEqual(['oily-cloth']);
    for (const family of ['wipe-on', 'oil', 'hardwax-oil'])
      expect(off('same', { ...WATER, family })).toEqual(['oily-cloth']);
    expect(off('same', WATER)).toEqual([]);
    expect(off('same', { ...WATER, family: 'wax', 'tin-lists-oil': 'yes' })).toEqual(['oily-cloth']);
    expect(off('same', { ...WATER, family: 'wax', 'tin-lists-oil': 'no' })).toEqual([]);
    expect(off('base-color', { ...WATER, base: 'oil-paint' })).toEqual(['oily-cloth']);
    expect(off('base-color', { ...WATER, base: 'stain' })).toEqual(['oily-cloth']);
    expect(off('base-color', OILY)).toEqual(['oily-cloth']);
    expect(off('base-color', WATER)).toEqual([]);
    // A vacuum that takes up what is named takes up that.
    expect(does(step('wipe', { with: 'vacuum', of: 'oil' }), WATER)).toEqual(['oily-cloth']);
    expect(does(step('wait', { of: 'stain' }), WATER)).toEqual([]);
  });
});

describe('laying', () => {
  it.each<[string, Record<string, string>, string]>([
    ['same', WATER, 'mouth-contact'],
    ['same', { ...WATER, hardener: 'isocyanate' }, 'hardener mouth-contact'],
    ['same', { ...WATER, hardener: 'acid' }, 'hardener mouth-contact'],
    ['same', OILY, 'mouth-contact oily-cloth vapor'],
    ['same', LAC, 'mouth-contact solvent-on-skin vapor'],
    ['same', SHEL, 'mouth-contact solvent-on-skin vapor'],
    ['same', { ...WATER, family: 'wax', 'tin-lists-oil': 'no' }, 'mouth-contact vapor'],
    ['same', { ...WATER, family: 'oil' }, 'mouth-contact oily-cloth vapor?'],
    ['same-in-gloss', OILY, 'mouth-contact oily-cloth vapor'],
    ['tinted-same', OILY, 'mouth-contact oily-cloth vapor'],
    ['water-based', OILY, 'mouth-contact'],
    // A can that names a hardener has it whatever the can is thinned with.
    ['water-based', { ...WATER, hardener: 'isocyanate' }, 'hardener mouth-contact'],
    ['dewaxed-shellac', WATER, 'mouth-contact solvent-on-skin vapor'],
    ['shellac-primer', WATER, 'mouth-contact solvent-on-skin vapor'],
    ['stain-blocking-primer', WATER, 'mouth-contact oily-cloth? vapor'],
    ['stain', WATER, 'mouth-contact oily-cloth vapor?'],
    ['base-color', WATER, 'mouth-contact'],
    ['base-color', { ...WATER, base: 'oil-paint' }, 'mouth-contact oily-cloth vapor'],
    ['grain-filler', WATER, 'oily-cloth? vapor?'],
    ['wax', { 'tin-lists-oil': 'yes' }, 'mouth-contact oily-cloth vapor'],
    ['oil', { ...WATER, family: 'oil' }, 'mouth-contact oily-cloth vapor?'],
  ])('%s, %o', (product, facts, wanted) => {
    expect(does(step('coat', { product }), facts)).toEqual(list(wanted));
    // A spot of it does the same.
    expect(does(step('test-patch', { tries: product }), facts)).toEqual(list(wanted));
  });

  it('by spray makes mist, and a coat of it', () => {
    const sprayed = { ...WATER, applicator: 'spray-gun' };
    expect(does(step('coat', { product: 'same' }), sprayed)).toEqual(list('mist mouth-contact sprayed-coat'));
    expect(does(step('coat', { product: 'same' }), { ...WATER, applicator: 'aerosol' })).toEqual(
      list('mist mouth-contact sprayed-coat'),
    );
    expect(does(step('coat', { product: 'same', by: 'hand' }), sprayed)).toEqual(['mouth-contact']);
    expect(does(step('coat', { product: 'same', by: 'spray' }), WATER)).toEqual(
      list('mist mouth-contact sprayed-coat'),
    );
    expect(does(step('coat', { product: 'mist-of-same' }), WATER)).toEqual(
      list('mist mouth-contact sprayed-coat'),
    );
    expect(does(step('test-patch', { tries: 'same' }), sprayed)).toEqual(list('mist mouth-contact'));
    expect(does(step('wipe', { with: 'alcohol', by: 'spray' }), WATER)).toContain('mist');
    // What is not laid as she lays her top coat is laid by hand unless it says so.
    expect(does(step('coat', { product: 'base-color' }), sprayed)).toEqual(['mouth-contact']);
    for (const product of ['same', 'same-in-gloss', 'tinted-same', 'water-based'])
      expect(does(step('coat', { product }), sprayed)).toContain('mist');
    // How the old coat was laid tells of the next, unless a tool is named.
    const unnamed = { family: 'water-based', hardener: 'none', base: 'latex-paint', 'was-sprayed': 'yes' };
    expect(does(step('coat', { product: 'same' }), unnamed).join()).toContain('mist');
    for (const applicator of ['brush', 'roller', 'pad', 'sponge', 'cloth'])
      expect(does(step('coat', { product: 'same' }), { ...unnamed, applicator })).toEqual(['mouth-contact']);
  });
});

describe('tools', () => {
  it.each<[Step, Record<string, string>, string]>([
    [step('sand', { grit: 180 }), WATER, 'dust old-film'],
    [step('sand', { grit: 280 }), WATER, 'dust old-film'],
    [step('sand', { grit: 320 }), WATER, 'dust old-film-in-reach'],
    [step('sand', { grit: 600 }), WATER, 'dust old-film-in-reach'],
    [step('scrape', { tool: 'razor' }), WATER, 'blade old-film'],
    [step('scrape', { tool: 'card-scraper' }), WATER, 'blade old-film'],
    [step('scrape', { tool: 'plastic-scraper' }), WATER, 'old-film'],
    [step('scrape', { tool: 'razor' }), OILY, 'blade oily-cloth old-film'],
    [step('scrape', { tool: 'tweezers' }), OILY, ''],
    [step('scrape', { tool: 'soft-brush' }), OILY, ''],
    [step('strip', { with: 'scraper-and-sanding' }), WATER, 'blade dust old-film'],
    [step('strip', { with: 'stripper' }), WATER, 'much-vapor old-film stripper vapor waste'],
    [step('strip', { with: 'solvent' }), WATER, 'much-vapor old-film solvent-on-skin vapor waste'],
    [step('strip', { with: 'solvent' }), OILY, 'much-vapor oily-cloth old-film solvent-on-skin vapor waste'],
    [step('look'), OILY, ''],
    [step('wait', { hours: [1, 2] }), OILY, ''],
    [step('ask-professional', { who: 'someone' }), OILY, ''],
    [step('test-patch', { tries: 'tape' }), WATER, ''],
    [step('look', { does: ['heat'] }), WATER, 'heat'],
  ])('%o', (one, facts, wanted) => {
    expect(does(one, facts)).toEqual(list(wanted));
  });
});

describe('mixing', () => {
  it.each<[string, Record<string, string>, string]>([
    ['stir', WATER, ''],
    ['stir', { ...WATER, hardener: 'acid' }, 'hardener'],
    ['stir', OILY, 'vapor'],
    ['stir', { ...WATER, family: 'oil' }, 'vapor?'],
    ['smear', OILY, 'oily-cloth vapor'],
    ['tint', WATER, 'tint'],
    ['tint', OILY, 'tint vapor'],
    ['thin', WATER, 'thin'],
    ['thin', LAC, 'solvent-on-skin thin vapor'],
    ['extender', WATER, 'extend'],
    ['extender', OILY, 'extend vapor'],
    ['fresh-batch', WATER, 'waste'],
    ['fresh-batch', SHEL, 'vapor waste'],
    ['wood-bleach', WATER, 'oxalic-acid waste'],
  ])('%s, %o', (what, facts, wanted) => {
    expect(does(step('mix', { what }), facts)).toEqual(list(wanted));
  });
});

describe('each kind of top coat', () => {
  // Cans that name spirits, alcohol or thinner; what goes through gloves; what heats up in a cloth.
  it.each<[Family, string, string, string, string]>([
    ['water-based', 'mouth-contact', '', 'thin', ''],
    ['water-lacquer', 'mouth-contact', '', 'thin', ''],
    ['oil-based', 'mouth-contact oily-cloth vapor', 'vapor', 'solvent-on-skin thin vapor', 'oily-cloth'],
    ['wipe-on', 'mouth-contact oily-cloth vapor', 'vapor', 'solvent-on-skin thin vapor', 'oily-cloth'],
    ['shellac', 'mouth-contact solvent-on-skin vapor', 'vapor', 'solvent-on-skin thin vapor', ''],
    ['lacquer', 'mouth-contact solvent-on-skin vapor', 'vapor', 'solvent-on-skin thin vapor', ''],
    ['wax', 'mouth-contact oily-cloth? vapor', 'vapor', 'solvent-on-skin thin vapor', 'oily-cloth?'],
    ['oil', 'mouth-contact oily-cloth vapor?', 'vapor?', 'thin vapor?', 'oily-cloth'],
    ['hardwax-oil', 'mouth-contact oily-cloth vapor', 'vapor', 'solvent-on-skin thin vapor', 'oily-cloth'],
  ])('%s is laid, stirred, thinned and scraped off', (family, laid, stirred, thinned, scraped) => {
    const facts = { family, hardener: 'none', applicator: 'brush', base: 'latex-paint', 'was-sprayed': 'no' };
    expect(does(step('coat', { product: 'same' }), facts)).toEqual(list(laid));
    expect(does(step('mix', { what: 'stir' }), facts)).toEqual(list(stirred));
    expect(does(step('mix', { what: 'thin' }), facts)).toEqual(list(thinned));
    expect(does(step('scrape', { tool: 'plastic-scraper' }), facts)).toEqual(list(`${scraped} old-film`));
    const water = family === 'water-based' || family === 'water-lacquer';
    expect(does(step('wipe', { with: 'thinner' }), facts)).toEqual(
      list(water ? '' : 'much-vapor solvent-on-skin vapor waste'),
    );
    // A can that comes with a second part has it opened by all of these.
    for (const hardener of ['isocyanate', 'acid'])
      for (const one of [
        step('coat', { product: 'same' }),
        step('mix', { what: 'stir' }),
        step('mix', { what: 'smear' }),
      ])
        expect(does(one, { ...facts, hardener })).toContain('hardener');
  });
  it('over every base: old color that is oily comes off, and is laid again, as oil', () => {
    for (const base of FACTS.base.values) {
      const oily = base === 'oil-paint' || base === 'stain';
      const facts = { ...WATER, base };
      expect(does(step('wipe', { with: 'dry-cloth', of: 'base-color' }), facts)).toEqual(
        oily ? ['oily-cloth'] : [],
      );
      expect(does(step('coat', { product: 'base-color' }), facts)).toEqual(
        list(oily ? 'mouth-contact oily-cloth vapor' : 'mouth-contact'),
      );
    }
  });
  it('by every tool: a gun and a can spray it', () => {
    for (const applicator of FACTS.applicator.values) {
      const sprayed = applicator === 'spray-gun' || applicator === 'aerosol';
      expect(does(step('coat', { product: 'same' }), { ...WATER, applicator })).toEqual(
        list(sprayed ? 'mist mouth-contact sprayed-coat' : 'mouth-contact'),
      );
    }
  });
});

describe('where less is known', () => {
  const coat = step('coat', { product: 'same', by: 'hand' });
  it('what hangs on an unknown fact may be', () => {
    expect(does(coat)).toEqual(list('mouth-contact hardener? vapor? solvent-on-skin? oily-cloth?'));
  });
  it('of several kinds that it may be, all must do it for sure, one for perhaps', () => {
    const rest = { hardener: 'none', applicator: 'brush' };
    expect(does(coat, rest, ['oil-based', 'wipe-on'])).toEqual(list('mouth-contact vapor oily-cloth'));
    expect(does(coat, rest, ['oil-based', 'water-based'])).toEqual(list('mouth-contact vapor? oily-cloth?'));
    expect(does(coat, rest, ['water-based'])).toEqual(['mouth-contact']);
    // What is told goes before.
    expect(does(coat, { ...rest, family: 'water-based' }, ['oil-based'])).toEqual(['mouth-contact']);
  });
  it('a step tells surely, for some facts, and perhaps', () => {
    expect([...surelyOf(coat)]).toEqual(['mouth-contact']);
    expect([...toldBy(coat)].sort()).toEqual(list('mouth-contact hardener vapor solvent-on-skin oily-cloth'));
    expect([...toldBy(step('coat', { product: 'grain-filler' }))]).toEqual([]);
    expect([...surelyOf(step('coat', { product: 'grain-filler' }))]).toEqual([]);
    const facts = factsOfStep(coat);
    expect(facts.get('hardener')).toEqual(['hardener']);
    expect(facts.get('mouth-contact')).toEqual([]);
    expect(new Set(facts.get('oily-cloth'))).toEqual(new Set(['family', 'tin-lists-oil']));
    expect(facts.get('vapor')).toEqual(['family', 'family']);
  });
  it('is listed once for a step', () => {
    expect(hazardRows(coat)).toBe(hazardRows(coat));
  });
  it('works with its cloth, product, tool or what it tries', () => {
    expect(meansOf(step('wipe', { with: 'alcohol' }))).toEqual(['alcohol']);
    expect(meansOf(step('strip', { with: 'solvent' }))).toEqual(['solvent']);
    expect(meansOf(step('coat', { product: 'wax' }))).toEqual(['wax']);
    expect(meansOf(step('test-patch', { tries: 'tape' }))).toEqual(['tape']);
    expect(meansOf(step('mix', { what: 'wood-bleach' }))).toEqual(['wood-bleach']);
    expect(meansOf(step('mix', { what: 'stir' }))).toEqual([]);
    expect(meansOf(step('look'))).toEqual([]);
  });
});

describe('a step that something told leaves out', () => {
  const out = (one: Step, facts: Record<string, string>) =>
    contradicted(one, (condition) => holds(condition, (fact) => facts[fact]));
  it.each(['stir', 'smear', 'thin', 'extender', 'fresh-batch'])('%s in a spray can', (what) => {
    expect(out(step('mix', { what }), { applicator: 'aerosol' })).toBe(true);
    expect(out(step('mix', { what }), { applicator: 'spray-gun' })).toBe(false);
    expect(out(step('mix', { what }), {})).toBe(false);
  });
  it('a tint asks for other words instead', () => {
    expect(out(step('mix', { what: 'tint' }), { applicator: 'aerosol' })).toBe(false);
  });
  it.each(['bare-wood', 'chalk-paint', 'milk-paint', 'latex-paint', 'oil-paint', 'laminate'])(
    'stain on %s',
    (base) => {
      for (const one of [
        step('coat', { product: 'stain' }),
        step('test-patch', { tries: 'stain' }),
        step('wait', { of: 'stain' }),
      ]) {
        expect(out(one, { base })).toBe(true);
        expect(out(one, { base: 'stain' })).toBe(false);
      }
      expect(out(step('coat', { product: 'same' }), { base })).toBe(false);
      expect(out(step('test-patch', { tries: 'same' }), { base })).toBe(false);
      expect(out(step('wait', { hours: [1, 1] }), { base })).toBe(false);
    },
  );
  it.each(['chalk-paint', 'milk-paint', 'latex-paint', 'oil-paint', 'laminate'])(
    'wood bleach on %s',
    (base) => {
      const rinse = (say: string) => step('wipe', { with: 'damp-cloth', of: 'wood-bleach' }, say);
      for (const one of [
        step('wipe', { with: 'wood-bleach' }),
        step('mix', { what: 'wood-bleach' }),
        rinse('Its crystals are acid: rinse.'),
        // Whatever its words are.
        rinse('Wash it three times.'),
      ]) {
        expect(out(one, { base })).toBe(true);
        expect(out(one, { base: 'bare-wood' })).toBe(false);
      }
      expect(out(step('wipe', { with: 'damp-cloth' }, 'Its crystals are acid: rinse.'), { base })).toBe(
        false,
      );
      expect(out(step('wipe', { with: 'damp-cloth', of: 'base-color' }), { base })).toBe(false);
    },
  );
  it('each single fact that does is listed as a case', () => {
    const facts = LEAVE_OUT.map(({ told: one }) =>
      JSON.stringify(Object.entries(one).map(([name, { value }]) => [name, value])),
    );
    expect(facts).toContain('[["applicator","aerosol"]]');
    expect(facts).toContain('[["base","bare-wood"]]');
    expect(facts).toHaveLength(1 + 6 + 5);
  });
});
