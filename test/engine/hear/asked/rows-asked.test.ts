/** Coats, sanding between them and what goes over what, where that is asked. Questions of our own, invented. */
import { describe, expect, it } from 'vitest';
import { readPlan } from '../../../../content/tools/plan.ts';
import { heard, known } from '../hearing.ts';

const plan = readPlan(known, process.cwd());
const asked = (text: string) => heard(text).asksFor;
const told = (text: string) => asked(text)?.answer ?? '';

describe('how many coats', () => {
  it.each([
    ['How many coats of tung oil does a table need?', 'oil'],
    ['how many coats of shellac', 'shellac'],
    ['what number of coats of water based poly for a desk', 'water-based'],
  ])('are those of the plan: %s', (text, family) => {
    const row = plan.coats.find(({ families, products }) => !products && families.includes(family as 'oil'));
    expect(told(text)).toContain(`${row?.wear.normal} for everyday use`);
    expect(told(text)).toContain(`${row?.most} at most`);
    expect(asked(text)?.page).toBe('page/schedule');
  });
  it('from spray cans there are more, and thinner ones', () => {
    const row = plan.coats.find(({ products }) => products?.some((id) => String(id) === 'aerosol-lacquer'));
    expect(told('how many coats of lacquer from a spray can')).toBe(
      `Lacquer: ${row?.wear.low} coats where it is little used, ${row?.wear.normal} for everyday use, ${row?.wear.high} in hard wear, ${row?.most} at most. Thin ones; the can wins.`,
    );
    expect(told('how many coats of lacquer')).not.toContain(`${row?.most} at most`);
  });
  it('where each wear takes as many, one number does', () =>
    expect(told('how many coats of wax')).toBe('Wax: 2 coats. Thin ones; the can wins.'));
});

describe('what is sanded between coats', () => {
  it.each([
    ['do I need to sand between coats of lacquer?', 'lacquer'],
    ['what grit between coats of shellac', 'shellac'],
    ['should I sand water based poly between coats', 'water-based'],
    ['do I have to sand before the next coat of danish oil', 'oil'],
  ])('is told by the kind: %s', (text, family) => {
    const row = plan.between.find(({ families }) => families.includes(family as 'oil'));
    expect(told(text).toLowerCase()).toContain(row?.say.toLowerCase());
    expect(told(text).includes(`P${row?.grit}`)).toBe(row?.grit !== undefined);
    expect(asked(text)?.page).toBe('lesson/sand-between-coats');
  });
});

describe('what goes over what', () => {
  it.each([
    ['can I put poly over wax', 'A film over wax will peel'],
    ['can i put danish oil over polyurethane', 'On a film it cannot soak in'],
    ['can I spray lacquer over oil based poly', 'wrinkles in seconds'],
    ['is it ok to put shellac over water based poly', 'softens a young water-based film'],
    ['how long should danish oil dry before poly', 'may crawl'],
    ['can I put oil poly over shellac that has wax in it', 'Only dewaxed shellac holds another film'],
    ['Can I put lacquer over oil based varnish?', 'wrinkles in seconds'],
    [
      'Can I use lacquer over water based poly, and should I sand between?',
      'softens a young water-based film',
    ],
  ])('is told by the row that forbids it or makes it wait: %s', (text, says) =>
    expect(told(text)).toContain(says),
  );
  it('where no row does, nothing is promised', () => {
    expect(told('can I put wax over water based poly')).toBe(
      'Only once what lies below has fully cured, is clean and is dulled, and after a patch on a hidden spot.',
    );
  });
});

describe('no paper is named for a film that may be young', () => {
  it.each([
    'Second coat of oil poly went on an hour ago. Do I sand between coats?',
    'do i sand between coats of oil poly, i put it on an hour ago',
    'I brushed shellac 5 minutes ago, what grit between coats?',
    'do I sand between coats, the water based poly is still wet',
    'Do I have to sand between coats of oil poly if I recoat within 6 hours?',
    'I laid the first coat of lacquer at noon, should I sand before the next coat?',
    'my shellac is tacky, do I need to sand between coats',
  ])('%s', (text) => expect(told(text)).not.toMatch(/\bP\d/));
  it('and where it is, its time stands before it', () =>
    expect(told('what grit between coats of oil poly')).toMatch(
      /^Oil-based varnish: not before .* hours; then P/,
    ));
});

it.each([
  'How many coats of polyurethane can I put on in a day',
  'How many coats can I still put on today, shellac',
])('the coats of one day are not those of the whole piece: %s', (text) =>
  expect(told(text)).not.toMatch(/at most/),
);

it.each([
  'how many coats of chalk paint on a dresser',
  'do I sand between coats of 2k lacquer',
  'I see a hair in the third coat. how many coats of wipe on poly should it have?',
  'I put poly over wax and it peels, can I put shellac over it',
])('of paint, of two parts and beside a flaw the tables say nothing: %s', (text) =>
  expect(told(text)).not.toMatch(/at most|roll\.|will peel|hidden patch/),
);

it.each([
  ['Can I paint over shellac?', 'Only once what lies below has fully cured'],
  ['can I paint over wax', 'A film over wax will peel'],
])('paint is told of, too: %s', (text, says) => expect(told(text)).toContain(says));
