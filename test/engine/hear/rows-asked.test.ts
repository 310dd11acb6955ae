/** Coats, sanding between them and what goes over what, where that is asked. Questions of our own, invented. */
import { describe, expect, it } from 'vitest';
import { readPlan } from '../../../content/tools/plan.ts';
import { heard, known } from './hearing.ts';

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
  ])('is told by the row that forbids it or makes it wait: %s', (text, says) =>
    expect(told(text)).toContain(says),
  );
  it('where no row does, nothing is promised', () => {
    expect(told('can I put water based poly over shellac')).toBe(
      'What lies below has to be hard and clean first, and a hidden patch comes before the piece.',
    );
  });
});

it.each([
  'how many coats of chalk paint on a dresser',
  'do I sand between coats of 2k lacquer',
  'I see a hair in the third coat. how many coats of wipe on poly should it have?',
  'I put poly over wax and it peels, can I put shellac over it',
])('of paint, of two parts and beside a flaw the tables say nothing: %s', (text) =>
  expect(told(text)).not.toMatch(/at most|roll\.|will peel|hidden patch/),
);

it.each([
  ['Can I paint over shellac?', 'What lies below has to be hard and clean first'],
  ['can I paint over wax', 'A film over wax will peel'],
])('paint is told of, too: %s', (text, says) => expect(told(text)).toContain(says));
