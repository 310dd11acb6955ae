/** Figures that a letter tells of the air, a surface or a wet film, and what is reckoned of them. Letters are invented. */
import { describe, expect, it } from 'vitest';
import { understand } from '#engine/hear.ts';
import { heard, understanding } from '../hearing.ts';
import { links } from '../links.ts';

const short = (text: string): string => understand(understanding, { text }, links).answer.short;

/** Rule of the trade "3 °C or 5 °F" above the dew point (MIL-HDBK-1110, from memory); the 20 °F for fast solvents stands with its source in the lesson. */
describe('a surface beside the dew point', () => {
  it.each([
    [
      'Dew point is 55 °F and the door reads 58 °F, should I brush poly?',
      /^Not yet: it is 3 °F \(2 °C\) above/,
    ],
    ['dew point 12 °C, surface is 11 °C. ok to varnish?', /^Not yet: it is no degrees at all above/],
    ['dew point of 50 F, the panel measures 62 F, may I brush varnish on it', /^It is 12 °F \(7 °C\) above/],
  ])('is told: %s', (text, says) => expect(short(text)).toMatch(says));
  it('asks more of finishes that dry fast', () => {
    expect(short('dew point 48 °F, the wood is 60 °F, may I brush shellac')).toContain('20 °F (11 °C)');
    expect(short('dew point 48 °F, the wood is 60 °F, may I brush oil based poly')).not.toContain('20 °F');
  });
  it('is no air', () =>
    expect(heard('The dew point is 50 °F and the panel measures 62 °F.').facts).not.toContainEqual(
      expect.objectContaining({ fact: 'air-celsius', sure: 0.92 }),
    ));
});

/** Dry film is wet film times solids by volume (MIL-HDBK-1110, 2.1.5): 5 × 0.4 = 2; 2 / 0.4 = 5; 100 × 0.3 = 30. */
describe('a wet film that was measured', () => {
  it.each([
    [
      'wet film of 5 mils at 40 % solids, can wants 2 mils dry. right?',
      /^5 mil .* leaves 2 mil .* near enough\./,
    ],
    ['My comb says 8 mils wet. 40 percent solids by volume, dry film of 2 mils per coat', /60 % too heavy/],
    ['2.5 mils wet, the solids are 40 %, they ask for 2 mils dry', /50 % thinner/],
    [
      '100 microns wet, solids by volume 30 percent, how much is left',
      /^100 µm .* leaves 30 µm \(1.2 mil\) dry\./,
    ],
    // 1.5 / 0.32 = 4.69; 40 / 0.5 = 80
    [
      'the data sheet says 1.5 mils dry and 32% solids by volume. how thick should it be wet?',
      /^1.5 mil \(38 µm\) dry at 32 % solids by volume is laid 4.7 mil \(119 µm\) wet\./,
    ],
    ['solids are 50 percent, sheet wants 40 microns dry, what do I lay', /is laid 80 µm \(3.1 mil\) wet\./],
  ])('%s', (text, says) => expect(short(text)).toMatch(says));
  it('names no brush marks for the comb', () =>
    expect(short('comb gauge reads 6 mils wet at 35 percent solids')).not.toMatch(/brush marks/i));
});
