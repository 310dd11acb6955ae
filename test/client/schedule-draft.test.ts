/** What the planner reads from its form, without a form. All values are our own. */
import { describe, expect, it } from 'vitest';
import { linkOf, notOffered, readJob, readLink } from '../../site/client/schedule/draft.ts';
import { keepable } from '../../site/client/shared/form/form.ts';

/** A Monday, on this device's calendar. */
const NOW = new Date(2027, 2, 8, 9, 3).getTime();
const DRESSER = {
  units: 'us',
  preset: 'dresser',
  piece: ' Navy dresser ',
  kind: 'furniture',
  'top-count': '1',
  'top-long': '40',
  'top-wide': '20',
  'side-count': '0',
  'side-long': 'far',
  base: 'latex-paint',
  'base-age': '24',
  tone: 'dark',
  age: 'none',
  wear: 'normal',
  trials: 'water,heat',
  product: 'water-based-polyurethane',
  sheen: 'satin',
  tool: 'brush',
  air: '70',
  humidity: '50',
  night: '62',
  from: '09:00',
  to: '18:00',
  days: '1,2,3',
};
const faultsOf = (change: Readonly<Record<string, string>>) =>
  readJob({ ...DRESSER, ...change }, NOW).faults.map(({ field }) => field);

describe('the form of a plan', () => {
  it('hands on what is mixed in, and nothing where that is not said', () => {
    expect(readJob({ ...DRESSER, hardener: 'isocyanate' }, NOW).job?.hardener).toBe('isocyanate');
    expect(readJob({ ...DRESSER, hardener: '' }, NOW).job).not.toHaveProperty('hardener');
    expect(linkOf({ ...DRESSER, hardener: '' })).not.toContain('hardener');
    expect(readLink(linkOf({ ...DRESSER, hardener: 'acid' }))?.draft['hardener']).toBe('acid');
    expect(faultsOf({ hardener: 'glue' })).toEqual(['hardener']);
  });

  it('hands on the hours in which the can lets no coat on, and asks for both ends', () => {
    const minutes = (change: Readonly<Record<string, string>>) =>
      readJob({ ...DRESSER, ...change }, NOW).job?.label?.minutes;
    expect(minutes({ 'can-no-coat': '8', 'can-no-coat-to': '48' })).toEqual({
      'no-coat': { from: 480, to: 2880 },
    });
    expect(minutes({ 'can-no-coat': '0' })).toEqual({ 'no-coat': { from: 0, to: 0 } });
    expect(faultsOf({ 'can-no-coat': '8' })).toEqual(['can-no-coat']);
    expect(faultsOf({ 'can-no-coat-to': '48' })).toEqual(['can-no-coat']);
    expect(faultsOf({ 'can-no-coat': '48', 'can-no-coat-to': '8' })).toEqual(['can-no-coat']);
    expect(faultsOf({ 'can-recoat': '10', 'can-no-coat': '8', 'can-no-coat-to': '48' })).toEqual([
      'can-no-coat',
    ]);
  });

  it('hands on from when the can lets it be handled, and tells of one that can not be', () => {
    const { minutes } = readJob({ ...DRESSER, 'can-handle': '5' }, NOW).job?.label ?? {};
    expect(minutes).toEqual({ handle: { from: 300, to: 300 } });
    // Dry to the touch after ten hours, and handled after five.
    expect(faultsOf({ 'can-touch': '600', 'can-handle': '5' })).toEqual(['can-handle']);
    expect(faultsOf({ 'can-touch': '600', 'can-recoat': '5' })).toEqual(['can-recoat']);
  });

  it('hands on which parts are coated on both faces, of those that are there', () => {
    const both = (change: Readonly<Record<string, string>>) =>
      readJob({ ...DRESSER, ...change }, NOW).job?.both;
    expect(readJob(DRESSER, NOW).job).not.toHaveProperty('both');
    expect(both({ both: '' })).toBeUndefined();
    expect(both({ both: 'top' })).toEqual({ parts: ['top'], turned: 'each-coat' });
    expect(both({ both: 'top', turned: 'each-face' })).toEqual({ parts: ['top'], turned: 'each-face' });
    // The dresser of this draft has no front.
    expect(both({ both: 'front,top' })).toEqual({ parts: ['top'], turned: 'each-coat' });
    expect(both({ both: 'front' })).toBeUndefined();
    expect(faultsOf({ both: 'leg' })).toEqual(['both']);
    expect(faultsOf({ both: 'top', turned: 'never' })).toEqual(['turned']);
  });

  it('tells of a link whose faces or turning are not offered, whatever the order of the ticks', () => {
    const shown = { ...DRESSER, both: 'front,top', turned: 'each-coat' };
    const lost = (
      linked: Readonly<Record<string, string>>,
      there: Readonly<Record<string, string>> = shown,
    ) => notOffered({ ...DRESSER, ...linked }, there).map(({ field }) => field);
    expect(lost({ both: 'top,front' })).toEqual([]);
    expect(lost({ both: 'front,top,leg' })).toEqual(['both']);
    expect(lost({ both: 'front,top', turned: 'twice' })).toEqual(['turned']);
    // An old link tells nothing of it, and one face has no turning.
    expect(lost({}, DRESSER)).toEqual([]);
    expect(lost({ turned: 'each-face' }, DRESSER)).toEqual([]);
  });

  it('is read in metric units, beginning at the next five minutes', () => {
    const { job, faults } = readJob(DRESSER, NOW);
    expect(faults).toEqual([]);
    expect(job).toMatchObject({
      piece: 'Navy dresser',
      parts: { top: { count: 1, long: 1016, wide: 508 }, side: { count: 0, long: 0, wide: 0 } },
      baseHours: 24,
      trials: ['water', 'heat'],
      day: { relativeHumidity: 0.5 },
      start: new Date(2027, 2, 8, 9, 5).getTime(),
      hours: { from: 540, to: 1080, days: [false, true, true, true, false, false, false] },
      inSun: false,
    });
    expect(job?.day.celsius).toBeCloseTo(21.11, 2);
    expect(job).not.toHaveProperty('label');
  });

  it('says the same in either unit', () => {
    const metric = { ...DRESSER, units: 'metric', 'top-long': '101,6', 'top-wide': '50.8' };
    const { job } = readJob({ ...metric, air: '21.1111', night: '16.6667' }, NOW);
    const { job: us } = readJob(DRESSER, NOW);
    expect(job?.day.celsius).toBeCloseTo(us?.day.celsius ?? 0, 3);
    expect(job?.parts.top.long).toBeCloseTo(us?.parts.top.long ?? 0, 6);
  });

  it('reads the can: times in their units, shares of one, and its limits', () => {
    const can = {
      'can-recoat': '2',
      'can-light': '1',
      'can-solids': '30',
      'can-damp': '80',
      'can-cold': '50',
    };
    expect(readJob({ ...DRESSER, ...can }, NOW).job?.label).toMatchObject({
      minutes: { recoat: { from: 120, to: 120 }, 'light-use': { from: 1440, to: 1440 } },
      volumeSolids: 0.3,
      limits: { celsius: { from: 10, to: 35 }, relativeHumidity: { to: 0.8 } },
    });
  });

  it.each([
    ['a word for a number', { air: 'warm' }, ['air']],
    ['a humidity beyond all', { humidity: '500' }, ['humidity']],
    ['half a coat', { 'can-coats': '1.5' }, ['can-coats']],
    ['a face without a size', { 'top-wide': '' }, ['top']],
    ['a face larger than a wall', { 'top-wide': '400' }, ['top']],
    ['no face at all', { 'top-count': '0' }, ['top']],
    ['limits that cross', { 'can-cold': '70', 'can-hot': '60' }, ['can-hot']],
    ['times in the wrong order', { 'can-touch': '600', 'can-recoat': '1' }, ['can-recoat']],
    ['hours that end before they begin', { to: '08:00' }, ['to']],
    ['no day of work', { days: '' }, ['days']],
    ['a promise before the start', { promised: '2027-03-07' }, ['promised']],
    ['a base that nobody knows', { base: 'marble' }, ['base']],
  ])('tells %s beside its field', (_, change, fields) => {
    expect(faultsOf(change)).toEqual(fields);
  });

  it('takes a promise for the day of the start: its end is meant', () => {
    expect(readJob({ ...DRESSER, promised: '2027-03-08' }, NOW).job?.promised).toBe(
      new Date(2027, 2, 8, 23, 59).getTime(),
    );
  });
});

it('goes into a link and comes back', () => {
  expect(readLink(`#${linkOf(DRESSER)}`)).toEqual({ draft: DRESSER, cut: false });
  expect(readLink('#x=1&product=oil')).toBeUndefined();
});

it('takes a name of 80 letters, tells one that is longer, and cuts it in an old link', () => {
  const named = (letters: number) => 'n'.repeat(letters);
  expect(readJob({ ...DRESSER, piece: named(80) }, NOW).job?.piece).toBe(named(80));
  const { job, faults } = readJob({ ...DRESSER, piece: named(300) }, NOW);
  expect(job).toBeUndefined();
  expect(faults).toEqual([{ field: 'piece', says: 'A name takes 80 letters at most.' }]);
  const read = readLink(`#${linkOf({ ...DRESSER, piece: named(300) })}`);
  expect(read).toMatchObject({ cut: true, draft: { piece: named(80) } });
  expect(readJob(read?.draft ?? {}, NOW).faults).toEqual([]);
  // What is too long for any field would not be read back, so it is not kept.
  expect(keepable({ ...DRESSER, piece: named(300) })).not.toHaveProperty('piece');
});

it('tells what a link names that the form does not offer', () => {
  const { draft = {} } = readLink(`#${linkOf({ ...DRESSER, base: '__proto__' })}`) ?? {};
  const told = notOffered(draft, DRESSER);
  expect(told.map(({ field }) => field)).toEqual(['base']);
  expect(notOffered({ ...DRESSER, preset: 'gone' }, DRESSER)).toEqual([]);
});

it('names the years that a start may lie in', () => {
  for (const start of ['9999-01-01T09:00', '1926-01-01T09:00'])
    expect(readJob({ ...DRESSER, start }, NOW).faults[0]?.says).toContain('from 1970 to 2199');
});
