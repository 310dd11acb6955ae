/**
 * The next coat by the hours of a can that somebody tells of. The posts are invented; "within one hour or after 48" is
 * what a can of spray lacquer may say (wax-l24, the source of content/rules/hours-on-the-can.mdx).
 */
import { describe, expect, it } from 'vitest';
import { consider, mindOf, reply } from '#engine/hear.ts';
import { heard, known, words } from '../hearing.ts';

const answer = (text: string): string => heard(text).asksFor?.answer ?? '';
const mind = mindOf(known);

describe('the hours of her own can', () => {
  it.each([
    ['spray can says recoat within 1 hour or after 48; it is 6 hours now', '48 hours'],
    [
      'the can says within 1 hour or after 48 hours, it has been 6 hours, can I spray the next coat?',
      '48 hours',
    ],
    ['The label says recoat within 2 hours or after 24 hours. It’s been 5 hours. Can I recoat?', '24 hours'],
    ['recoat in 2 hours or wait until after 3 days, it’s been a day', '72 hours'],
  ])('nothing goes on in between: %s', (text, until) => {
    expect(answer(text)).toMatch(/^No coat now\./);
    expect(answer(text)).toContain(`Wait until ${until}`);
    expect(heard(text).asksFor?.page).toBe('rule/hours-on-the-can');
  });
  it.each([
    'can says within 30 minutes or after 24 hours. when can I recoat',
    'can says recoat within 1 hour or after 48 hours. I sprayed it 20 minutes ago. next coat?',
  ])('both times where the first is not over, or nothing is told: %s', (text) =>
    expect(answer(text)).toMatch(/goes on within (?:30 minutes|1 hour) of the last, and else not before/),
  );
  it('the later one counts in full', () =>
    expect(
      answer('The can says recoat within 1 hour or after 48. It has been 50 hours. Next coat?'),
    ).toContain('once 48 hours have passed'));
  it('a single time on it, not over and over', () => {
    expect(answer('label says wait 4 hours between coats, it has been 2 hours, can I recoat')).toMatch(
      /^Not yet\. Your can asks for 4 hours .* it has been 2 hours/,
    );
    expect(answer('label says wait 4 hours between coats, it has been 5 hours, can I recoat')).toContain(
      'once 4 hours have passed',
    );
  });
  it.each([
    'the can says dry in 4 hours, it has been 2 hours, is it still tacky?',
    'spray can says recoat within 1 hour or after 48, I sprayed at 6 hours and it wrinkled',
    'come within 1 hour or after 48',
  ])('neither of a dry film, nor where a flaw is seen, nor of two words: %s', (text) =>
    expect(answer(text)).not.toMatch(/^(?:No coat now|Not yet)/),
  );
  it('stand in a short reply behind one line of what comes before spraying', () => {
    const text = 'spray can says recoat within 1 hour or after 48; it is 6 hours now';
    const { short, long } = reply(consider(mind, { told: {}, heard: heard(text) }), {
      words,
      linkTo: (defect) => `https://halfdry.example/defects/${defect}/`,
      ruleAt: (rule) => `https://halfdry.example/safety/${rule}/`,
      tellAt: 'https://halfdry.example/tell/',
      heard: heard(text),
    });
    expect(short.length).toBeLessThanOrEqual(500);
    expect(short).toMatch(/^First: Before any spraying put every flame and spark out.*Wait until 48 hours/);
    expect(long).toContain('Wait until 48 hours');
  });
});
