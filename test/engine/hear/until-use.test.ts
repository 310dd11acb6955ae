/**
 * When a piece may be used, and what a buyer is told of it: bare, dry and aired until it is cured, and the days of its kind
 * as the products give them. Letters are invented. One maker gives 7 days to light use and 21 (water-based) or 30
 * (oil-based) to full cure (the claim of the rule on use before cure).
 */
import { describe, expect, it } from 'vitest';
import { understand } from '#engine/hear.ts';
import { hearing, understanding } from './hearing.ts';
import { links } from './links.ts';

const short = (text: string): string => understand(understanding, { text }, links).answer.short;
const BARE = /^Until it is cured keep it bare, dry and aired/;

describe('what is asked of use', () => {
  it.each([
    [
      'The desk goes out on Friday, oil-based varnish. What shall I tell the buyer about using it?',
      /21 to 30 days/,
    ],
    [
      'Last coat of water-based varnish 6 days ago. My client would like to lay a runner. Too early?',
      /21 to 30 days/,
    ],
    ['When can my customer put her lamp on the dresser? Shellac.', /7 to 28 days/],
    ['The owner wants to set her sewing machine on it on day 6, water-based poly. Too early?', /3 to 7 days/],
    ['Could she lay a doily and a plant pot on the lacquer after three days', /1 to 3 days/],
    ['how long till my tv can go on it, water based poly, two coats', /3 to 7 days/],
    [
      'How long before the lamp goes back on the water-based clear? The tin says dry in 2 hours.',
      /3 to 7 days/,
    ],
    ['What do I write to my client about when she may use the sideboard? Oil-based varnish', /3 to 10 days/],
    ['Is a week too soon for a tablecloth on oil-based varnish?', /3 to 10 days/],
  ])('is bare until cured, with the days of its kind: %s', (text, days) => {
    expect(short(text)).toMatch(BARE);
    expect(short(text)).toMatch(days);
    expect(short(text)).toMatch(/\/clock\//);
  });
  it.each([
    'When I put the lamp on it after a week the base stuck',
    'I set my laptop on it too early and now there is a print',
    'customer put a lamp on it after 3 days and it left a print',
    'tablecloth stuck to my varnish, it was 5 days old',
    'a vase left a white ring on my table, poly 6 days old',
    'how long before I can sand the second coat of poly',
    'too early for another coat? oil-based varnish',
    'My daughter would like to lay a second coat of shellac',
  ])('is not heard where a mark or another coat is told: %s', (text) =>
    expect(short(text)).not.toMatch(BARE),
  );
  it('leaves the shortest days to no kind but its own', () => {
    const { kinds } = hearing.waits;
    expect(kinds['oil-based']?.cure.map((hours) => hours / 24)).toEqual([21, 30]);
    expect(kinds['water-based']?.use.map((hours) => hours / 24)).toEqual([3, 7]);
  });
});
