/** Two questions in one message, and hours of use, of paint and of what lies below wax. Questions of our own, invented; the figures are those of the content's tables. */
import { describe, expect, it } from 'vitest';
import { consider, mindOf, reply } from '#engine/hear.ts';
import { heard, known, words } from '../hearing.ts';

const mind = mindOf(known);
const answer = (text: string): string => heard(text).asksFor?.answer ?? '';
const replyTo = (text: string) => {
  const of = heard(text);
  return reply(consider(mind, { told: {}, heard: of }), {
    words,
    heard: of,
    linkTo: (defect) => `https://halfdry.example/defects/${defect}/`,
    ruleAt: (rule) => `https://halfdry.example/safety/${rule}/`,
    tellAt: 'https://halfdry.example/tell/',
    pageAt: (page) => `https://halfdry.example/${page}/`,
    ...(of.asksFor && { page: { title: 'Page', at: `https://halfdry.example/${of.asksFor.page}/` } }),
  });
};
/** Ends of a time over all products of a kind. */
const ends = (family: string, of: 'light-use-days' | 'cure-days') => {
  const cans = known.products.filter((one) => one.family === family).map((one) => one[of]);
  return `${Math.min(...cans.map(([from]) => from))} to ${Math.max(...cans.map(([, to]) => to))}`;
};

describe('two questions', () => {
  it.each([
    [
      'How long before I recoat with oil based poly? And how many coats do I need?',
      'page/clock',
      'page/schedule',
    ],
    [
      'how many coats of water-based poly, and do I sand between?',
      'page/schedule',
      'lesson/sand-between-coats',
    ],
  ])('are both answered, the first in full: %s', (text, first, second) => {
    const of = heard(text);
    expect([of.asksFor?.page, of.alsoAsks?.page].sort()).toEqual([first, second].sort());
    const { short, long } = replyTo(text);
    expect(short.length).toBeLessThanOrEqual(500);
    expect(short).toContain(of.asksFor?.answer);
    expect(short).toMatch(/And: .* https:\S+$/);
    for (const one of [of.asksFor, of.alsoAsks]) {
      expect(long).toContain(one?.answer);
      expect(long).toContain(one?.page);
    }
  });
  it('what can hurt comes before the answer', () =>
    expect(replyTo('can oily rags catch fire? and how many coats of danish oil?').short).toMatch(
      /^First: Oily rags catch fire.*Drying oil: \d coats/,
    ));
  it('one question has one answer', () => {
    for (const text of [
      'how long does poly take to dry',
      'how many coats of shellac',
      'can I put poly over wax',
    ])
      expect(heard(text).alsoAsks).toBeUndefined();
  });
});

describe('when it may be used', () => {
  it.each([
    ['can I put the lamp back tonight, water based poly', 'water-based'],
    ['can I use the table tonight? water-based poly yesterday', 'water-based'],
    ['can we use our new table today, wiped with tung oil on friday', 'oil'],
    [
      'I finished the last coat of water based poly this morning. Can I put the lamp back on tonight?',
      'water-based',
    ],
  ])('is told by the kind: %s', (text, family) => {
    expect(answer(text)).toContain(`light use after ${ends(family, 'light-use-days')} days`);
    expect(heard(text).asksFor?.page).toBe('page/clock');
  });
  it.each(['can I use the table tonight', 'can we eat at the table tonight'])(
    'over several kinds where none is told, with the reason: %s',
    (text) => {
      expect(answer(text)).toMatch(/^It hangs on what was laid, since/);
      for (const family of ['water-based', 'oil-based', 'lacquer'])
        expect(answer(text)).toContain(ends(family, 'light-use-days'));
    },
  );
  it('nothing where it left a mark', () =>
    expect(heard('I put the lamp back yesterday and it left a ring').asksFor).toBeUndefined());
});

describe('what lies below', () => {
  it.each([
    ['how long must stain dry before top coat', /three for oil stain.*72 hours/],
    ['how long does paint need to dry before clear coat', /^Latex.*two weeks.*Oil.*72 hours/],
    ['how long after painting can I put poly on', /^Latex.*two weeks/],
    ['how long before wax over paint', /^Latex.*day.*Oil/],
    ['how long before wax over chalk paint', /overnight at least/],
  ])('paint and stain by their waits: %s', (text, says) => expect(answer(text)).toMatch(says));
  it.each([
    ['how long to wait before waxing over shellac', 'shellac'],
    ['when can I wax over lacquer', 'lacquer'],
    ['how long after water based poly can I wax it', 'water-based'],
  ])('wax waits for the film: %s', (text, family) => {
    expect(answer(text)).toContain('Wax goes over a film that is hard through');
    expect(answer(text)).toContain(`cured after ${ends(family, 'cure-days')} days`);
  });
  it('coats of one kind and then another keep their numbers apart', () =>
    expect(answer('how many coats of shellac first, then lacquer')).toMatch(
      /^Shellac: \d.*8 at most\. Lacquer: \d.*5 at most/,
    ));
});
