/** Words that make a share of a hundred the humidity of the air, form by form, and such as make it something else. Phrases of our own. */
import { describe, expect, it } from 'vitest';
import { humidities } from '#engine/hear/measures/humidity.ts';

describe('humidity', () => {
  const share = (text: string) => humidities(text)[0]?.low;
  it.each(['humidity', 'dehumidifier', 'humidifier', 'dehumidity', 'hum', 'rh', 'hygrometer'])(
    '%s 70',
    (name) => {
      expect(share(`${name} 70`)).toBeCloseTo(0.68, 9);
      expect(share(`${name} was about 70`)).toBeCloseTo(0.68, 9);
      expect(share(`${name}, 70`)).toBeUndefined();
      expect(share(`qu${name} 70`)).toBeUndefined();
      expect(share(`${name} of all that there is in here 70`)).toBeUndefined();
      for (const behind of [
        '°',
        'º',
        'degrees',
        'f',
        'c',
        'years',
        'hours',
        'days',
        'minutes',
        'coats',
        'grit',
        "'s",
      ])
        expect(share(`${name} 70 ${behind}`), behind).toBeUndefined();
    },
  );
  it.each(['%', ' %', ' percent', '%rh', '% relative', '% humid'])('70%s', (unit) => {
    expect(share(`70${unit}, humid`)).toBeCloseTo(0.68, 9);
  });
  it.each([
    'humid',
    'hum',
    'hygrometer',
    'rh',
    'moist air',
    'damp',
    'weather station',
    '68 f',
    '68°F',
    '20 c',
    'degrees',
  ])('a share near "%s" is of the air', (near) => {
    expect(share(`${near} and 70 %`)).toBeCloseTo(0.68, 9);
    expect(share(`70 %, ${near}`)).toBeCloseTo(0.68, 9);
    expect(share(`${near} and then there was nothing else of that kind but 70 %`)).toBeUndefined();
  });
  it.each(['retarder', 'thinner', 'cut', 'water', 'mix', 'diluted', 'off'])(
    'a share of %s is none',
    (what) => {
      expect(share(`damp, 70 % ${what}`)).toBeUndefined();
      expect(share(`damp, 70 % here and now, then ${what}`)).toBeCloseTo(0.68, 9);
    },
  );
  it.each([
    ['15', 0.13],
    ['14', undefined],
    ['100', 0.98],
    ['101', undefined],
  ] as const)('from 15 to 100: %s', (figure, low) => {
    if (low === undefined) expect(share(`humid ${figure} %`)).toBeUndefined();
    else expect(share(`humid ${figure} %`)).toBeCloseTo(low, 9);
  });
});
