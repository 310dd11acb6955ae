/** What is asked or planned before the work is no flaw that is there, and a danger in trade words is one. Letters are invented. */
import { describe, expect, it } from 'vitest';
import { understand } from '#engine/hear.ts';
import { fact, heard, understanding } from './hearing.ts';
import { links } from './links.ts';

const short = (text: string): string => understand(understanding, { text }, links).answer.short;
const CLAIMS = /Most likely|(?:That|Those) (?:looks?|may|are|is)\b|Hard to say|No, do not lay/;

describe('a question before the work', () => {
  it.each([
    'should I put water based varnish over milk paint',
    'can we brush lacquer over latex paint',
    'oil based poly goes on saturday, party is on sunday, bookcase',
    'it is 92 % humidity outside, should I wait to varnish',
    'the neighbor asks: may I seal chalk paint with shellac or must I wax it first?',
  ])('claims no flaw: %s', (text) => expect(short(text)).not.toMatch(CLAIMS));
  it('tells of layers by the plan', () => {
    expect(short('can we brush lacquer over latex paint')).toContain('Hot solvents can swell and wrinkle');
    expect(short('may I put water based poly over milk paint or wax it first?')).toMatch(
      /^No wax under it: a film over wax peels/,
    );
  });
  it('waits in air that no can allows', () =>
    expect(short('it is 92 % humidity outside, should I wait to varnish')).toMatch(
      /^Wait\. That air is outside/,
    ));
  it('hears no coat in one that goes on by and by', () =>
    expect(fact('oil based poly goes on saturday, party is on sunday', 'hours-since-coat')).toBeUndefined());
  it('is none where something is seen', () => {
    expect(short('should I sand it? the poly dried with brush marks all over')).toContain('brush marks');
    expect(heard('there are bubbles in the coat, can I lay another').asksFor?.perhaps).toBeUndefined();
  });
});

describe('words of the trade', () => {
  it.each([
    'spraying two pack clear',
    'a 2-pack varnish on the stairs',
    'twin pack lacquer with a gun',
    '2k',
    '2 part poly',
  ])('tell of a hardener: %s', (text) =>
    expect(heard(text).dangers.map(({ rule }) => rule)).toContain('hardener-isocyanate'),
  );
  it.each(['two packs of sandpaper', 'a pack of rags'])('and these do not: %s', (text) =>
    expect(heard(text).dangers).toEqual([]),
  );
});

describe('an old can', () => {
  it.each([
    'found a sealed can of lacquer from 1979, is it dangerous to open',
    'unopened tin from 1968, may I open it',
  ])('is no old paint on a piece: %s', (text) => {
    expect(fact(text, 'age')).toBeUndefined();
    expect(short(text)).toMatch(/^A can that bulges, hisses or is hot/);
  });
  it('but an old table is one, beside a can too', () => {
    expect(fact('a table from 1950, painted', 'age')?.value).toBe('before-1993');
    expect(fact('the can is new but the dresser is from 1950', 'age')?.value).toBe('before-1993');
  });
});

describe('bare degrees', () => {
  it.each([
    ['it is a hot 39 degrees in the loft', 39],
    ['41 degrees and the varnish sets too fast', 41],
    ['two litres of varnish, 36 degrees in the shed', 36],
  ])('are Celsius where it is told to be hot: %s', (text, celsius) =>
    expect(fact(text, 'air-celsius')?.value).toBe(celsius),
  );
  it('and Fahrenheit where it is cold, or nothing tells', () => {
    expect(Number(fact('cold garage, 40 degrees, poly still wet', 'air-celsius')?.value)).toBeCloseTo(4.4, 0);
    expect(Number(fact('85 degrees in the hot garage', 'air-celsius')?.value)).toBeCloseTo(29.4, 0);
  });
});

describe('degrees whose unit is not told', () => {
  it.each([
    [
      '37 degrees in the shed, the varnish dries too fast, lap marks on every board',
      'I took 37 degrees as 37 °C (99 °F).',
    ],
    ['40 degrees in the basement, the poly is milky', 'I took 40 degrees as 40 °F (4 °C).'],
    [
      'two litres of water based varnish going on thursday, 16 degrees, will it be dry by saturday',
      'I took 16 degrees as 16 °C (61 °F).',
    ],
  ])('are said back with one: %s', (text, says) => {
    expect(short(text)).toContain(says);
    expect(short(text).length).toBeLessThanOrEqual(500);
  });
  it.each([
    '37 °C in the shed, lap marks',
    '85 degrees, lap marks on the poly',
    'mitered at 45 degrees, lap marks',
  ])('and nothing is said where only one can be meant: %s', (text) =>
    expect(short(text)).not.toContain('I took'),
  );
});

describe('a child in a later clause', () => {
  it.each([
    'the clear is tacky yet and my toddler licks it',
    'poly is on since monday so that my kid doesnt get fumes',
  ])('keeps its caution: %s', (text) =>
    expect(heard(text).dangers.map(({ rule }) => rule)).toContain('cure-before-use'),
  );
  it.each([
    'the oil based clear is soft yet, what can I lay on it so my toddler doesnt breathe the fumes',
    'shellac still tacky, can I seal it in so the kids wont get chemicals',
  ])('and the coat its hands off, both in a short reply: %s', (text) => {
    expect(short(text)).toMatch(/30 days for a child/);
    expect(short(text)).toMatch(/Hands off/);
    expect(short(text).length).toBeLessThanOrEqual(500);
  });
});

describe('a question of the job finds its page', () => {
  it.each([
    ['what do I wash my brushes with after lacquer', '/lesson/which-tool/'],
    ['can I thin oil based varnish with white spirit, it is a bit thick', '/rule/thin-limit/'],
    ['how far may we dilute shellac', '/rule/thin-limit/'],
  ])('%s', (text, page) => expect(short(text)).toContain(page));
  it('the weight of a thing waits for cure', () =>
    expect(short('When is shellac safe to set a heavy vase on? I do not want to dent it.')).toMatch(
      /light use after .* cured after/,
    ));
});

describe('a room with a fresh coat', () => {
  it.each([
    'varnished the lamp table on monday, can our kids sleep in the bedroom with it',
    'the dresser smells of lacquer yet, is it ok for my baby to nap in that room',
  ])('is not slept in: %s', (text) => {
    expect(short(text)).toContain('Not while it smells');
    expect(short(text)).toContain('/rule/cure-before-use/');
  });
});

describe('what a coat is cleaned with', () => {
  it.each([
    'the bookcase is finished, may we use antibacterial wipes on it',
    'is bleach ok on the table now that it is done',
    'can I wipe the high chair down with disinfectant',
  ])('is no bleach, and that is mixed with nothing: %s', (text) => {
    expect(heard(text).asksFor?.page).toBe('rule/bleach-and-cleaners');
    expect(short(text)).toContain('never mixed with another cleaner');
  });
  it('and a stain in the wood is another thing', () =>
    expect(heard('can I use wood bleach on the black stain before I varnish').asksFor?.page).not.toBe(
      'rule/bleach-and-cleaners',
    ));
});
