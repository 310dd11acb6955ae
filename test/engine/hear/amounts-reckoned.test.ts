/**
 * Amounts that are reckoned from sizes. Letters are invented. The figures are plain arithmetic, written out beside each:
 * area times coats over coverage; a tenth more is what the plan's table takes for a brush (common practice, no source).
 * Units: NIST SP 811 (1 in = 25.4 mm, 1 gal = 3.785 411 784 L, 1 fl oz = 29.573 53 mL).
 */
import { describe, expect, it } from 'vitest';
import { carriedTo, understand } from '#engine/hear.ts';
import { readPlan } from '../../../content/tools/plan.ts';
import { heard, hearing, known, understanding } from './hearing.ts';
import { links } from './links.ts';

const told = (text: string) => heard(text).asksFor?.answer ?? '';
const short = (text: string) => understand(understanding, { text }, links).answer.short;
const plan = readPlan(known, process.cwd());
const SQUARE_FOOT = 0.3048 ** 2;

/** The area that a reply tells first, m², whatever unit it stands in. */
const area = (text: string): number => {
  const found = /([\d.]+) (?:m²|sq ft)(?! a)/.exec(told(text));
  const isMetric = found?.[0].endsWith('m²');
  return Number(found?.[1]) * (isMetric ? 1 : SQUARE_FOOT);
};

describe('the area', () => {
  it.each([
    // 2 × 20 × 30 in = 1200 in², over 144
    ['how much shellac for two side table tops 20x30', (2 * 20 * 30) / 144],
    // π × 15² = 707 in², both faces
    ['how much varnish for a 30 inch round table top, both sides', (2 * Math.PI * 15 ** 2) / 144],
    [
      'how much varnish for a round bench top with a radius of 15 inches, both faces',
      (2 * Math.PI * 15 ** 2) / 144,
    ],
    // 5 ft 6 in × 3 ft
    [`how much oil based poly for a desk 5' 6" x 3'`, 5.5 * 3],
    ['how much lacquer do I need to buy for a panel 24 inches square', 4],
    // 10 × 200 × 80 cm, both faces
    ['how many litres of varnish for 10 doors 200 x 80 cm, front and back', (10 * 2 * 0.8 * 2) / SQUARE_FOOT],
    ['how many litres of varnish for five boards 1.8 m long and 30 cm wide', (5 * 1.8 * 0.3) / SQUARE_FOOT],
    ['how much wipe on poly for a top 36 1/2 by 18 inches', (36.5 * 18) / 144],
    [
      'how much poly do I need, 3 drawer fronts 30 x 8 inches and a top 48 x 18 inches',
      (3 * 30 * 8 + 48 * 18) / 144,
    ],
    ['how much shellac for 2 nightstands with 3 drawers each 16 x 5 inches', (6 * 16 * 5) / 144],
    ['how much shellac for 16 by 20 inch panels, 4 of them', (4 * 16 * 20) / 144],
    ['I have 4 chairs and a table 60x36, how much poly do I need for the table', (60 * 36) / 144],
    ['how much poly do I need for 14 square feet, two coats', 14],
    ['how much hardwax oil for 1.5 m2', 1.5 / SQUARE_FOOT],
    // A top of such figures is told in feet.
    ['how much oil based poly for a 3x7 table top', 3 * 7],
    ['have I got enough with a quart of varnish for a 4 x 8 bench top, one coat', 4 * 8],
  ])('of: %s', (text, squareFeet) => {
    expect(area(text) / SQUARE_FOOT).toBeCloseTo(squareFeet, squareFeet < 20 ? 1 : 0);
  });
  it.each([
    'how much varnish do I need for a 4x8 sheet',
    'how much varnish do I need for a bench made of 2x4',
    'how much varnish do I need for a chest 18x24x36',
    'how much water based poly do I need, doors 15x28',
    'how much shellac for a top 40 x 20 inches and two doors 15 x 30 inches, both sides',
    'how much poly do I need for 20 sq ft of doors and 12 sq ft of tops',
  ])('is left open where the sizes are: %s', (text) => {
    expect(told(text)).toContain('m² a liter');
    expect(told(text)).not.toMatch(/one face|both faces|for \d coats/);
  });
});

describe('the amount', () => {
  it('is by what the can covers, where that is told', () => {
    // 4 × 3 ft = 12 sq ft, both faces 24, two coats 48; at 400 sq ft a gallon 0.12 gal = 15.36 fl oz, 16.9 with a tenth
    const text =
      'how many ounces of varnish for a panel 4 ft x 3 ft, both sides, two coats, the can says 400 sq ft per gallon';
    expect(told(text)).toContain('24 sq ft (2.23 m²)');
    expect(told(text)).toContain('7.68 fl oz (227 mL) a coat, 15.4 fl oz (454 mL) for 2 coats');
    expect(told(text)).toContain('16.9 fl oz (500 mL)');
    expect(told(text)).toContain('The can wins');
  });
  it('is told in liters, and the coverage in words of its own', () => {
    // 3 × 2 × 0.9 m = 5.4 m², two coats 10.8; a liter covers 9 m²: 1.2 L
    const text =
      'how many litres for 3 flats 2 by 0.9 metres, two coats of varnish, a litre covers 9 square metres';
    expect(told(text)).toContain('5.4 m² (58.1 sq ft)');
    expect(told(text)).toContain('600 mL (20.3 fl oz) a coat, 1.2 L (40.6 fl oz) for 2 coats');
  });
  it('is else by what cans of the kind cover, as a range, with what the tool takes', () => {
    // 90 × 60 cm = 0.54 m²; shellac covers 10 to 20 m² a liter: 27 to 54 mL, with a tenth 29.7 to 59.4
    expect(told('how many ml of shellac for a 90 x 60 cm table top')).toContain(
      'Shellac takes 30 to 59 mL (1 to 2 fl oz) a coat. At the usual 10 to 20 m² a liter',
    );
    // 1.161 m² at 6.5 to 16 m² a liter, half more for what a gun loses: 109 to 268 mL
    expect(told('how much lacquer do I need to buy? The desk is 60" x 30", sprayed')).toContain(
      '(110 to 270 mL) a coat',
    );
  });
  it('takes the loss of the tool from the plan', () => {
    const of = (applicator: string) => plan.tools.find((one) => one.applicator === applicator)?.loss[1];
    expect(hearing.waits.losses).toMatchObject({ brush: of('brush'), 'spray-gun': of('spray-gun') });
  });
  it('names parts that are told without a size, and what figures without a unit were taken as', () => {
    const text = 'how much water based poly for a table with 4 legs and an apron, top 60x30, two coats';
    expect(told(text)).toContain('Not in it, for want of sizes: legs, apron.');
    expect(told(text)).toContain('60 × 30, taken as inches, one face');
    expect(told('how much shellac for a tray 12 x 18 in')).not.toMatch(/Not in it|taken as/);
  });
  it.each([
    // 18 sq ft, three coats, 8.6 to 12 m² a liter: 16 to 22 fl oz
    ['is a quart of oil based poly enough for a top 6 ft by 3 ft, 3 coats', 'A quart is enough.'],
    [
      'will half a pint of oil based poly be enough for a top 6 ft by 3 ft, 3 coats',
      'Half a pint is not enough.',
    ],
    [
      'will 18 oz of oil based poly be enough for a top 6 ft by 3 ft, 3 coats',
      '18 oz may just do: buy more.',
    ],
  ])('says whether a can does: %s', (text, says) => expect(told(text).startsWith(says)).toBe(true));
  it.each([
    'how much poly do i need for 2 nightstands tops 18x24 and sides, 3 coats',
    'how many litres of varnish to do 6 flats 2.4 by 1.2 metres both sides two coats at 12 square metres a litre',
    'how much poly for a dresser with 6 drawers 30x8 and top 48x18, 3 coats of water based',
  ])('stands in a short reply: %s', (text) => {
    expect(short(text)).toContain('sq ft');
    expect(short(text)).toContain('/page/schedule/');
    expect(short(text).length).toBeLessThanOrEqual(500);
  });
});

describe('the link to the plan', () => {
  const carried = (text: string) => carriedTo(hearing.waits, 'page/schedule', heard(text));
  it('carries sizes, faces, coats and coverage', () =>
    expect(
      carried('how many litres of varnish for 6 flats 2.4 by 1.2 metres both sides, two coats at 12 m2/l'),
    ).toMatchObject({
      units: 'metric',
      'front-count': '6',
      'front-long': '240',
      'front-wide': '120',
      both: 'front',
      'can-coats': '2',
      'can-coverage': '12',
    }));
  it('carries the air in the units of the sizes', () =>
    expect(carried('how much shellac for 3 tops 20 x 40 inches at 20 °C')).toMatchObject({
      units: 'us',
      air: '68',
      'top-long': '20',
    }));
  it('carries no size of what is round, which the form does not know', () =>
    expect(carried('how much shellac for a round top 30 inches across')).not.toHaveProperty('top-long'));
});
