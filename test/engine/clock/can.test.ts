/** Times that were typed from the can: asked about where they are far off, and said as they become here. */
import { expect, it } from 'vitest';
import { askAboutLabel, labelHere } from '#engine/clock.ts';
import { product } from '../calc/products.ts';
import { coat, poly, running } from './running-coat.ts';
import { WORDS } from './words.ts';

it('asks about a time of the label that lies far from all cans of its kind', () => {
  const oil = product('oil-based-polyurethane');
  const minutes = {
    touch: { from: 30, to: 30 },
    recoat: { from: 60, to: 60 },
    cure: { from: 4320, to: 4320 },
  };
  expect(askAboutLabel(WORDS, oil, { minutes }).map(({ milestone }) => milestone)).toEqual([
    'touch',
    'recoat',
    'cure',
  ]);
  expect(askAboutLabel(WORDS, oil, { minutes })[1]?.says).toBe(
    'Oil-based polyurethane: the time to recoat is 12–24 h on most cans, and you typed 60 min. Is it this can, and this unit?',
  );
  // A fast can, and its own figures.
  expect(askAboutLabel(WORDS, poly, { minutes: { recoat: { from: 60, to: 60 } } })).toEqual([]);
  expect(askAboutLabel(WORDS, poly, undefined)).toEqual([]);
});

it('says what the can’s time becomes here', () => {
  const label = {
    minutes: { recoat: { from: 120, to: 120 } },
    climate: { celsius: 25, relativeHumidity: 0.5 },
  };
  const cold = { ...coat, label, celsius: 11, relativeHumidity: 0.8 };
  const [said] = labelHere(WORDS, cold, running(cold), 'us');
  expect(said?.says).toMatch(
    /^Your can’s 2 h \(at the can’s 77 °F \(25 °C\), 50 %\) becomes [\d.]+–[\d.]+ h in this air\.$/,
  );
  expect(said?.here.to).toBeGreaterThan(240);
  const own = { ...coat, label, celsius: 25 };
  expect(labelHere(WORDS, own, running(own))[0]?.says).toBe('By your can: 2 h.');
});
