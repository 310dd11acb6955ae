/** What is not there, or only sounds like a sign, stands in the way of no answer. Sentences are our own. */
import { describe, expect, it } from 'vitest';
import { understand } from '#engine/hear.ts';
import { answerLinks } from '../../../../content/tools/answer-links.ts';
import { heard, sign, understanding } from '../hearing.ts';

const short = (text: string): string => understand(understanding, { text }, answerLinks).answer.short;

describe('a question beside a word that sounds like a sign', () => {
  it.each([
    'May water based varnish go over shellac? The whole family comes at Easter.',
    'The whole street is watching me. Can polyurethane go over shellac?',
    'Does water based poly hold over shellac? I have the whole weekend for it.',
  ])('is answered: %s', (text) => {
    expect(short(text)).toMatch(/Only dewaxed shellac holds another film/);
    expect(short(text)).not.toMatch(/could be|looks like/);
  });

  it('still tells of what is seen', () =>
    expect(short('The water based poly over the shellac peels off. Was that wrong?')).toMatch(/peeling/));

  it.each(['I am a bit of a beginner', 'could I have a bit of advice', 'a bit of help, please'])(
    'is no sign: %s',
    (text) => expect(heard(text).signs).toEqual([]),
  );
  it('hears bits that lie in the coat', () =>
    expect(sign('the varnish has bits in it', 'small-and-separate')).toBe('yes'));
});

describe('a heater without a flame', () => {
  it.each([
    'The radiator heater keeps the room at 68 F while the oil poly dries',
    'lacquer on the table, and an oil filled radiator heater in the room',
    'my oil filled heater runs next to the varnish',
  ])('is no danger: %s', (text) =>
    expect(heard(text).dangers.map(({ rule }) => rule)).not.toContain('vapor-and-flame'),
  );
  it.each([
    'gas heater next to the wet lacquer',
    'the electric heater glows next to the varnish',
    'a lit candle stands next to the shellac',
  ])('any other is one: %s', (text) =>
    expect([...heard(text).dangers, ...heard(text).urgent].map(({ rule }) => rule)).toContain(
      'vapor-and-flame',
    ),
  );
});
