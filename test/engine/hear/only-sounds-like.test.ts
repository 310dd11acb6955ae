/**
 * Cautions by what is named, and not by what sounds like it. The posts are invented. A conversion varnish hardens with an
 * acid and gives off formaldehyde (the sources of content/rules/hardener-acid.mdx); steel wool leaves bits that rust under
 * a water-based coat (film-s128); children and the dust of old paint: the sources of the rule on lead.
 */
import { describe, expect, it } from 'vitest';
import { consider, mindOf, reply } from '#engine/hear.ts';
import { heard, known, words } from './hearing.ts';

const mind = mindOf(known);
const of = (text: string) => consider(mind, { told: {}, heard: heard(text) });
const warned = (text: string) => of(text).warnings.map(({ id }) => id);
const short = (text: string): string =>
  reply(of(text), {
    words,
    linkTo: (defect) => `/defects/${defect}/`,
    ruleAt: (rule) => `/safety/${rule}/`,
    tellAt: '/tell/',
    heard: heard(text),
    page: { title: 'The page', at: '/page/' },
  }).short;

describe('an acid-cured finish is no isocyanate', () => {
  it.each([
    'is conversion varnish dangerous',
    '2k conversion varnish, can I brush it',
    'two part conversion varnish on a table',
    'two part conversion varnish spraying at home',
  ])('%s', (text) => {
    expect(warned(text)).not.toContain('hardener-isocyanate');
    expect(warned(text)).toContain('hardener-acid');
  });
  it.each([
    '2k or conversion varnish?',
    'conversion varnish or 2k poly for a kitchen',
    'two part poly or two part conversion varnish',
    'two part polyurethane',
  ])('but what is named beside it stays one: %s', (text) =>
    expect(warned(text)).toContain('hardener-isocyanate'),
  );
  it('nor where that is asked', () => expect(warned('is conversion varnish isocyanate?')).toEqual([]));
  it('and its spraying stays forbidden first where both are named', () =>
    expect(short('two part poly or two part conversion varnish, spraying at home')).toMatch(/^No spraying/));
});

describe('a child that helps with sanding', () => {
  it.each([
    'child helping to sand',
    'can my child help sand',
    'can the kids help me sand it',
    'kids helping to sand a table',
    'my daughter wants to help with sanding the chair',
    'my kid helps me sand the old dresser',
    'is it safe to let my son sand his toy box',
  ])('%s: kept out of the dust, and lead', (text) => {
    expect(warned(text)).toEqual(expect.arrayContaining(['lead-before-sanding', 'sanding-dust']));
    expect(short(text)).toMatch(/children/i);
    expect(short(text)).toMatch(/lead/i);
  });
  it('of new wood the dust alone', () => {
    const text = 'toddler helps me sand a new pine shelf';
    expect(warned(text)).toContain('sanding-dust');
    expect(warned(text)).not.toContain('lead-before-sanding');
    expect(short(text)).toMatch(/^Keep children out/);
  });
  it.each(['the kids helped me brush the poly', 'my kid helped carry the table'])(
    'help with other work calls for none: %s',
    (text) => expect(warned(text)).not.toContain('sanding-dust'),
  );
});

describe('steel wool that is asked about is no rust that is seen', () => {
  it.each([
    'can I use steel wool between coats of water-based poly',
    'steel wool before water-based poly ok?',
    'is 0000 steel wool ok between coats?',
    'steel wool under water based finish?',
    'what do i use instead of steel wool under water finish',
  ])('%s', (text) => {
    expect(heard(text).asksFor?.page).toBe('lesson/sand-between-coats');
    expect(short(text)).toMatch(/^No steel wool before or between water-based coats.* plastic pad/);
  });
  it.each([
    'used steel wool between coats now water based clear has orange dots',
    'steel wool left rust dots',
    'steel wool touched a battery and there was a spark',
  ])('what has happened is: %s', (text) => expect(heard(text).asksFor).toBeUndefined());
});
