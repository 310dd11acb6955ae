/**
 * The night of a plan that nobody told: 5 °C colder than the day, as the table of nights has it (an unheated room in a
 * mild season: common practice, no source); 5 °C are 9 °F, since a degree of the one is 9/5 of the other. A film that
 * hardens by a reaction is slower in the cold (Arrhenius), so a colder night is never ready sooner.
 */
import { describe, expect, it } from 'vitest';
import { PLAN_FIELDS } from '../../site/client/schedule/fields.ts';
import { nightFollowing, sayOfNight, usualNight } from '../../site/client/schedule/night.ts';
import { draftTurner } from '../../site/client/shared/form/form.ts';
import { codes, HOUR, job, plan, planned } from '../engine/schedule/sheet.ts';

const COLDER = plan.night['supposed-colder'];
const US = { units: 'us', air: '70', night: '61' };

it('is 9 °F, 5 °C, colder than the day', () => {
  expect(COLDER).toBe(5);
  expect(usualNight({ units: 'us', air: '58' }, COLDER)).toBe('49');
  expect(usualNight({ units: 'metric', air: '14,4' }, COLDER)).toBe('9.4');
  expect(usualNight({ units: 'metric', air: '3' }, COLDER)).toBe('-2');
  expect(usualNight({ units: 'us', air: '' }, COLDER)).toBeUndefined();
  expect(usualNight({ units: 'us', air: 'cool' }, COLDER)).toBeUndefined();
});

describe('follows the day', () => {
  it('down and up, step by step, and is never warmer than it', () => {
    let draft = US;
    for (const air of ['58', '45.5', '90', '64']) {
      const night = nightFollowing({ ...draft, air }, draft.air, COLDER);
      expect(Number(night)).toBeCloseTo(Number(air) - 9, 6);
      draft = { ...draft, air, night: night ?? '' };
    }
  });

  it('until she sets it herself, warmer or colder', () => {
    for (const night of ['62', '50', '70'])
      expect(nightFollowing({ ...US, air: '58', night }, '70', COLDER)).toBeUndefined();
    expect(nightFollowing({ ...US, air: '58', night: '' }, '70', COLDER)).toBe('49');
    expect(nightFollowing({ ...US, air: '' }, '70', COLDER)).toBeUndefined();
  });

  it('in either unit: what is rounded as units are turned is not hers', () => {
    const turned = draftTurner(PLAN_FIELDS);
    for (let air = 40; air <= 95; air++) {
      const metric = {
        ...US,
        ...turned({ ...US, air: String(air), night: String(air - 9), units: 'metric' }, 'metric'),
      };
      const night = nightFollowing({ ...metric, units: 'metric', air: '10' }, metric.air, COLDER);
      expect(night, `${air} °F`).toBe('5');
    }
  });
});

it('is asked about where it is warmer than the day, and named where nobody told it', () => {
  const say = (day: number, night: number, us = true) =>
    sayOfNight({ celsius: day }, { celsius: night }, COLDER, us);
  expect(say(14.4, 16.7)).toMatch(/^The night is warmer than the day: is that so\?/);
  expect(say(14.44, 9.44)).toBe(
    'Until you set it, the night is taken to be 9 °F (5 °C) colder than the day.',
  );
  expect(say(20, 15, false)).toContain('5 °C (9 °F) colder');
  expect(say(14.4, 14.4)).toBeUndefined();
  expect(say(21, 12)).toBeUndefined();
});

describe('oil-based polyurethane in a cool room', () => {
  const by = (celsius: number, night: number) =>
    job({
      base: 'stain',
      baseHours: 500,
      tone: 'wood',
      product: 'oil-based-polyurethane',
      day: { celsius, relativeHumidity: 0.5 },
      night: { celsius: night },
    });
  it('waits longer in the night that follows than in the one that stood there once', () => {
    // 66 °F by day; 62 °F by night, whatever the day, and 57 °F as it follows.
    const readyAt = (night: number) => planned(by(18.89, night)).coats[0]?.recoat.to ?? 0;
    expect(readyAt(13.89)).toBeGreaterThan(readyAt(16.67) + HOUR);
  });

  it('has no plan at 58 °F with a night below the 55 °F that it is laid at (film-s12)', () => {
    expect(codes(by(14.44, 16.67))).toBe('plan');
    expect(codes(by(14.44, 9.44))).toBe('drying');
  });
});
