/** The lines that stand for the folded fields of the plan. Drafts of our own, invented. */
import { expect, it } from 'vitest';
import { coatLine, pieceLine, useLine, weatherLine } from '../../site/client/schedule/fold-lines.ts';

const DEFAULTS = {
  units: 'us',
  air: '70',
  humidity: '50',
  night: '62',
  from: '09:00',
  to: '18:00',
  days: '0,1,2,3,4,5,6',
};

it('tells all that the folded fields hold', () => {
  expect(weatherLine(DEFAULTS, true)).toBe('70 °F, 50 %, nights 62 °F, any day, 9 AM to 6 PM');
  expect(
    weatherLine(
      { ...DEFAULTS, units: 'metric', air: '21', night: '', days: '1,2', to: '17:30', sun: 'yes' },
      false,
    ),
  ).toBe('21 °C, 50 %, in the sun, Mon, Tue, 9:00 to 17:30');
  expect(weatherLine({ ...DEFAULTS, start: '2026-12-01T08:00', days: '' }, true)).toContain(
    'start 2026-12-01, 08:00',
  );
});

it('tells the usual answers that are not asked at first', () => {
  const words: Record<string, string[]> = {
    tone: ['Dark color'],
    wear: ['Hard, daily'],
    trials: ['Water', 'Hot cups'],
    sheen: ['Satin'],
    tool: ['Spray can'],
  };
  const wordsOf = (field: string) => words[field] ?? [];
  expect(pieceLine({ piece: 'Navy dresser', 'base-age': '24' }, wordsOf)).toBe(
    'Navy dresser: a dark color, dry for 24 hours, lies below.',
  );
  expect(pieceLine({ piece: '', 'base-age': '' }, wordsOf)).toBe('an old dark color lies below.');
  expect(pieceLine({ piece: 'Chair' }, () => ['Wood'])).toBe('Chair: old wood lies below.');
  const doors = { piece: 'Doors', both: 'front,top', 'front-count': '14', 'top-count': '0' };
  expect(pieceLine(doors, () => ['Wood'])).toBe(
    'Doors: old wood lies below. Both faces of doors and fronts.',
  );
  expect(useLine(wordsOf)).toBe('Used hard, daily; will meet water, hot cups');
  expect(useLine((field) => (field === 'wear' ? ['Normally'] : []))).toBe('Used normally');
  expect(coatLine({}, wordsOf)).toBe('Satin, spray can');
  expect(coatLine({ hardener: 'isocyanate' }, wordsOf)).toBe('Satin, spray can, with isocyanate in it');
});
