import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layersOf, sayLayers } from '#engine/jobs.ts';
import { WORDS } from '../clock/words.ts';
import { anyCard, card, coat, products } from './cards.ts';

/**
 * Worked examples of film and coverage from published texts: volume solids, dry film µm, m² per liter. Sheets round;
 * the tolerance is that of the row or 3 %.
 */
const COVERAGE: readonly [solids: number, dry: number, coverage: number, source: string][] = [
  [0.65, 125, 5.2, 'general information on theoretical spreading rate'],
  [0.44, 20, 22, "a maker's data sheet, alkyd top coat"],
  [0.44, 30, 14.7, "a maker's data sheet, alkyd top coat"],
  [0.44, 40, 11, "a maker's data sheet, alkyd top coat"],
  [0.48, 35, 13.7, "a maker's data sheet, alkyd enamel"],
  [0.48, 50, 9.6, "a maker's data sheet, alkyd enamel"],
  [0.48, 75, 6.4, "a maker's data sheet, alkyd enamel"],
  [0.47, 40, 11.8, "a maker's data sheet, semigloss alkyd, 2006"],
  [0.47, 60, 7.7, "a maker's data sheet, semigloss alkyd, 2006"],
  [0.56, 80, 7.1, "a maker's data sheet, high-solids alkyd, 2017"],
  [0.56, 100, 5.6, "a maker's data sheet, high-solids alkyd, 2017"],
  [0.23, 23, 10, "a maker's data sheet, water-borne acrylic joinery lacquer, 2014"],
];

/** Wet film to dry film, µm. */
const WET: readonly [solids: number, wet: number, dry: number, source: string][] = [
  [0.44, 45, 20, "a maker's data sheet, alkyd top coat"],
  [0.44, 90, 40, "a maker's data sheet, alkyd top coat"],
  [0.48, 73, 35, "a maker's data sheet, alkyd enamel"],
  [0.48, 104, 50, "a maker's data sheet, alkyd enamel"],
  [0.48, 156, 75, "a maker's data sheet, alkyd enamel"],
  [0.47, 85, 40, "a maker's data sheet, semigloss alkyd, 2006"],
  [0.47, 130, 60, "a maker's data sheet, semigloss alkyd, 2006"],
  [0.56, 140, 80, "a maker's data sheet, high-solids alkyd, 2017"],
  [0.56, 180, 100, "a maker's data sheet, high-solids alkyd, 2017"],
  [0.35, 80, 28, "a maker's data sheet, water-based satin white, 2018"],
  [0.23, 100, 23, "a maker's data sheet, water-borne acrylic joinery lacquer, 2014"],
  [0.23, 70, 16, "a maker's data sheet, water-borne acrylic joinery lacquer, 2014"],
  [0.16, 127, 20.3, "a maker's data sheet, nitrocellulose lacquer, 5 mil wet"],
];

const near = (value: number | undefined, wanted: number, share = 0.03) => {
  expect(value).toBeGreaterThanOrEqual(wanted * (1 - share));
  expect(value).toBeLessThanOrEqual(wanted * (1 + share));
};
const topOf = (one: ReturnType<typeof coat>) => layersOf(card({ coats: [one] }), products).layers[0];

describe('the film of a card', () => {
  for (const [solids, dry, coverage, source] of COVERAGE)
    it(`${coverage} m²/L at ${solids} solids makes ${dry} µm (${source})`, () => {
      const top = topOf(
        coat({ label: { minutes: {}, squareMetersPerLiter: coverage, volumeSolids: solids } }),
      );
      near(top?.wet, 1000 / coverage, 1e-9);
      near(top?.dry?.from, dry);
      near(top?.dry?.to, dry);
    });

  for (const [solids, wet, dry, source] of WET)
    it(`${wet} µm wet at ${solids} solids makes ${dry} µm dry (${source})`, () => {
      const amount = { milliliters: wet * 2, squareMeters: 2 };
      near(topOf(coat({ amount, label: { minutes: {}, volumeSolids: solids } }))?.dry?.from, dry);
    });

  it('knows 400 square feet a gallon as 4 mil wet (a forum thread on the thickness of a coat)', () => {
    near(topOf(coat({ label: { minutes: {}, squareMetersPerLiter: 400 / 40.7458 } }))?.wet, 101.9, 0.005);
  });

  it('believes the can first, then the amount, then the tool, then the usual film, and says which', () => {
    const amount = { milliliters: 90, squareMeters: 1 };
    const label = { minutes: {}, squareMetersPerLiter: 12.5 };
    expect(topOf(coat({ label, amount }))).toMatchObject({ ground: 'label', wet: 80 });
    expect(topOf(coat({ amount }))).toMatchObject({ ground: 'amount', wet: 90 });
    // The middle of what the product file gives for a brush, 65 to 100 µm.
    expect(topOf(coat())).toMatchObject({ ground: 'tool', wet: Math.sqrt(6500) });
    const { applicator: _brush, ...untold } = coat();
    const usual = layersOf(card({ coats: [untold] }), products);
    expect(usual.layers[0]?.ground).toBe('usual');
    expect(sayLayers(WORDS, usual)).toContain('1 coat reckoned with the usual film');
  });

  it('does not reckon with a product that it does not know, and says so', () => {
    const film = layersOf(card({ coats: [coat(), coat({ id: 'd', product: 'constructor' })] }), products);
    expect(film.unknown).toBe(1);
    expect(sayLayers(WORDS, film)).toContain('1 coat is not known');
    expect(film.total).toEqual(film.layers[0]?.dry);
  });

  it('takes the label of the card for the planned product only', () => {
    const label = { minutes: {}, squareMetersPerLiter: 20 };
    const [mine, other] = layersOf(
      card({ label, coats: [coat(), coat({ id: 'b', laidAt: coat().laidAt + 1, product: 'shellac' })] }),
      products,
    ).layers;
    expect(mine?.ground).toBe('label');
    expect(other?.ground).toBe('tool');
  });

  it('adds up: the total is the sum of the layers, and one more coat never makes it thinner', () => {
    fc.assert(
      fc.property(anyCard, (one) => {
        const { layers, total } = layersOf(one, products);
        const sum = layers.reduce((all, { dry }) => all + (dry?.to ?? 0), 0);
        expect(total.to).toBeCloseTo(sum, 6);
        expect(total.from).toBeLessThanOrEqual(total.to);
        const fewer = layersOf({ ...one, coats: one.coats.slice(1) }, products);
        expect(fewer.total.to).toBeLessThanOrEqual(total.to + 1e-9);
      }),
    );
  });
});
