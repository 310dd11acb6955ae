/** The hours that are asked for. Questions of our own, invented; the figures are those of the content's tables. */
import { describe, expect, it } from 'vitest';
import { known } from '../../../content/real/knowledge.ts';
import { heard } from '../hearing.ts';

const asked = (text: string) => heard(text).asksFor;
const told = (text: string) => asked(text)?.answer ?? '';
/** Ends of a time over all products of a kind. */
const ends = (family: string, of: 'recoat-hours' | 'cure-days') => {
  const cans = known.products.filter((one) => one.family === family).map((one) => one[of]);
  return `${Math.min(...cans.map(([from]) => from))} to ${Math.max(...cans.map(([, to]) => to))}`;
};

describe('hours that are asked for', () => {
  it.each([
    [
      'how long between coats of water based poly',
      'Water-based clear takes the next coat after',
      'water-based',
    ],
    ['how soon can I recoat shellac', 'Shellac takes the next coat after', 'shellac'],
    [
      'when can I sand the first coat of oil poly',
      'Oil-based varnish takes the next coat after',
      'oil-based',
    ],
    ['oil based poly 4 hours ago can I put another coat on tonight', 'Oil-based varnish takes', 'oil-based'],
    [
      'I brushed oil based poly yesterday at noon. When can I put on the second coat?',
      'Oil-based',
      'oil-based',
    ],
  ])('are those of the kind until the next coat: %s', (text, says, family) => {
    expect(told(text)).toContain(says);
    expect(told(text)).toContain(`${ends(family, 'recoat-hours')} hours`);
    expect(asked(text)?.page).toBe('page/clock');
  });
  it.each([
    ['rolled water based poly on Friday and plan to scuff it tonight', 'water-based'],
    ['brushed a coat of oil poly last night, hoping to recoat this evening', 'oil-based'],
  ])('are meant by the work that is ahead of a coat that lies there: %s', (text, family) => {
    expect(told(text)).toContain(`${ends(family, 'recoat-hours')} hours`);
    expect(asked(text)?.page).toBe('page/clock');
  });
  it('are not meant where no coat was laid, or what is below the skin is soft', () => {
    expect(told('planning to scuff and varnish my desk tomorrow')).not.toContain('takes the next coat');
    expect(told('the surface is firm but gummy underneath, when may I sand')).not.toContain('takes the next');
  });
  it('of a kind that is left open each is told', () => {
    const text = told('how long before the second coat of poly over stained oak');
    for (const name of ['Oil-based varnish', 'water-based clear', 'wipe-on varnish'])
      expect(text).toContain(name);
  });
  it.each([
    ['how long till shellac is cured', 'shellac'],
    ['how long before I can use my table finished with lacquer', 'lacquer'],
    ['when can she put her TV back, it was finished with water based poly', 'water-based'],
  ])('until it is cured: %s', (text, family) =>
    expect(told(text)).toContain(`cured after ${ends(family, 'cure-days')} days`),
  );
  it('until it is dry', () =>
    expect(told('how long does tung oil take to dry')).toMatch(
      /^Drying oil is dry to the touch after .* cured after/,
    ));
  it.each([
    ['how long must the stain dry under lacquer', 'A day at the least, three for oil stain'],
    ['how long before I can put water based poly over oil based stain', 'One maker asks for 72 hours'],
    ['how long should chalk paint dry before waxing', 'overnight at least'],
    ['how long to let latex paint dry before poly', 'two weeks is the cautious figure'],
    ['how long after oil based stain can I spray water based lacquer? I don’t want it to peel', '72 hours'],
    ['how long to wait before water based poly over danish oil', 'three days at the least'],
  ])('of what lies below, in the words of the plan: %s', (text, says) => {
    expect(told(text).toLowerCase()).toContain(says.toLowerCase());
    expect(asked(text)?.page).toBe('page/schedule');
  });
  it.each([
    'poly still tacky after 3 days when can i recoat',
    'My first coat of polyurethane has bubbles. How long before I can sand it and put on another coat?',
    'how long between coats of spray paint',
    'how long does shellac last in the can',
    'how long before the hardener sets in 2k lacquer and I can recoat',
    'I brushed on a second coat of poly and it went cloudy',
  ])('nothing where a flaw, a can, paint or two parts are meant: %s', (text) =>
    expect(told(text)).not.toMatch(/next coat after|cured after|Before the next layer/),
  );
  it('of several kinds no more is said than a short reply holds', () => {
    const text = told('how long does varnish need to dry in a garage at 60 degrees');
    expect(text).toMatch(/^Oil-based varnish is dry to the touch after/);
    expect(text.length).toBeLessThan(440);
  });
  it.each([
    'how long does varnish need to dry in a cold garage at 45 degrees',
    'dry time on water based poly in my damp basement at 85% humidity',
  ])('none in air that most cans allow no coat in: %s', (text) =>
    expect(told(text)).not.toMatch(/dry to the touch/),
  );
  it('one wait where the kind on top is told, the strict one', () => {
    expect(told('how long before I can put shellac over milk paint')).toMatch(/a week/);
    expect(told('how long before I can put shellac over milk paint')).not.toMatch(/overnight|a day/);
  });
  it.each([
    ['how long after the last coat of shellac till it is cured', /Shellac takes light use/],
    [
      'how long do I wait before I sand oil poly that I put on last night',
      /takes the next coat after 12 to 24 hours/,
    ],
  ])('also of the last coat and of last night: %s', (text, says) => expect(told(text)).toMatch(says));
  it('what is not so yet is no stage', () => {
    const stage = heard('how long till shellac is cured').facts.find(({ fact }) => fact === 'stage');
    expect(stage).toBeUndefined();
  });
});

describe('what a child uses', () => {
  it.each([
    ['how soon can my toddler use the desk, last coat of oil based poly went on yesterday', 'oil-based'],
    ['how long until the kids can sit on the stool, I did the final coat of shellac on monday', 'shellac'],
    [
      'how long before my daughter can play at the table, water based poly, last coat saturday',
      'water-based',
    ],
  ])('waits for cure, and no earlier hour is told: %s', (text, family) => {
    expect(told(text)).toContain(ends(family, 'cure-days'));
    expect(told(text)).not.toMatch(/next coat|light use/);
  });
});

describe('a coat by its number', () => {
  it.each([
    'first coat of shellac at 8, it is 11 now, can I do coat 2',
    'shellac, first coat is 2 hours old, ok for coat two?',
    'laid shellac at 8 this morning, can I brush the second now that it is 10',
  ])('is the next coat: %s', (text) => {
    expect(told(text)).toContain(`Shellac takes the next coat after ${ends('shellac', 'recoat-hours')}`);
  });
});
