/**
 * Every case of a step, on small invented rules: which caution is lacking, in which case, and in how many; counted by hand.
 * That sanding, blades and spray cans call for what they do here is told in needs.test.ts, with its sources.
 */
import { describe, expect, it } from 'vitest';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { caseBook } from '#engine/prove/hazard-cases.ts';
import { familiesByRemedy, hazardsAreCautioned } from '#engine/prove/hazards-are-cautioned.ts';
import { lackedByLesson, lessonsAreCautioned, rulesBefore } from '#engine/prove/lessons-are-cautioned.ts';
import { tintsStayWithinLimits } from '#engine/prove/tints-stay-within-limits.ts';
import { defect, known, question, remedy, rule } from '../small.ts';

const STOP = { kind: 'stop', level: 'stop', open: 'When it is settled for good.' };
const NEEDED = [question('first-coat-on-bare-wood'), question('was-sprayed'), question('tin-lists-oil')];
type Rule = Record<string, unknown> & { id: string };
const made = (...rules: readonly Rule[]): Knowledge =>
  known(...NEEDED, ...rules.map(({ id, ...data }) => rule(id, data)));
const holes = (on: Knowledge, step: object, families: readonly string[] = [], at: object = {}) =>
  caseBook(on)
    .holesOf(step as never, families as never, at as never)
    .map(({ hazard, lacks, in: told, cases }) => `${hazard} ${lacks} ${cases}: ${told}`);

const blade = { kind: 'scrape', tool: 'tweezers', say: 'Take it out.', does: ['blade'] };
const acid = { kind: 'look', say: 'Look at it.', does: ['oxalic-acid'] };

describe('a step that hangs on no fact', () => {
  it('lacks its caution in any case', () => {
    expect(holes(made(), acid)).toEqual(['oxalic-acid care 1: any case']);
    expect(holes(made({ id: 'care', hazards: ['oxalic-acid'] }), acid)).toEqual([]);
    // A stop is no caution, and one of another hazard is none of this.
    expect(holes(made({ id: 'stop', ...STOP, hazards: ['oxalic-acid'] }), acid)).toEqual([
      'oxalic-acid care 1: any case',
    ]);
    expect(holes(made({ id: 'care', hazards: ['heat'] }), acid)).toEqual(['oxalic-acid care 1: any case']);
    expect(holes(made({ id: 'note', level: 'note', hazards: ['oxalic-acid'] }), acid)).toEqual([
      'oxalic-acid care 1: any case',
    ]);
  });
  it('lacks it in the cases that a rule leaves out, counted', () => {
    const on = made({ id: 'care', hazards: ['oxalic-acid'], when: { hardener: ['isocyanate', 'acid'] } });
    // Not told, none, isocyanate, acid: the first two are left out.
    expect(holes(on, acid)).toEqual(['oxalic-acid care 2: hardener not told']);
    const open = made({
      id: 'care',
      hazards: ['oxalic-acid'],
      when: { hardener: ['isocyanate', 'acid'] },
      'unless-known-no': true,
    });
    expect(holes(open, acid)).toEqual(['oxalic-acid care 1: hardener none']);
    const both = made(
      { id: 'one', hazards: ['oxalic-acid'], when: { hardener: 'isocyanate' } },
      {
        id: 'two',
        hazards: ['oxalic-acid'],
        when: { not: { hardener: 'isocyanate' } },
        'unless-known-no': true,
      },
    );
    expect(holes(both, acid)).toEqual([]);
  });
  it('is looked at where a fact is told already in that case alone', () => {
    const on = made({ id: 'care', hazards: ['oxalic-acid'], when: { hardener: 'acid' } });
    const told = (value: string) => holes(on, acid, [], { hardener: { value, how: 'told' } });
    expect(told('acid')).toEqual([]);
    expect(told('none')).toEqual(['oxalic-acid care 1: hardener none']);
    expect(holes(on, acid)).toHaveLength(1);
  });
});

describe('a step that hangs on facts', () => {
  const sand = { kind: 'sand', grit: 120, say: 'Sand it.' };
  const told = (rules: readonly Rule[]) => holes(made(...rules), sand);
  it('lacks all that its hazards call for, with the first case where it does', () => {
    const all = told([]);
    expect(all.map((one) => one.split(' ').slice(0, 2).join(' ')).sort()).toEqual([
      'dust care',
      'dust stop',
      'old-film stop',
    ]);
    // Isocyanate in the film calls for the stop and for a second care; in every case there is none.
    expect(all.find((one) => one.startsWith('dust stop'))).toBe('dust stop 1: hardener isocyanate');
    expect(all.find((one) => one.startsWith('dust care'))).toBe('dust care 3: any case');
    // Of age (not told, old, new), first coat on bare wood (not told, yes, no), base (not told, bare, other) and coats
    // (not told, told): 18 of old paint; where nobody told of its age 12 that are not the first, but the two of coats on
    // bare wood.
    expect(all.find((one) => one.startsWith('old-film'))).toBe(
      'old-film stop 28: age not told, first-coat-on-bare-wood not told, base not told, coat-number not told',
    );
  });
  it('is sound under the rules for them', () => {
    expect(
      told([
        {
          id: 'lead',
          ...STOP,
          hazards: ['old-film'],
          when: { not: { age: 'since-1993' } },
          'unless-known-no': true,
        },
        { id: 'dust', hazards: ['dust'] },
        { id: 'iso', ...STOP, hazards: ['dust'], when: { hardener: 'isocyanate' } },
        { id: 'not-yet', hazards: ['dust'], when: { hardener: 'isocyanate' } },
      ]),
    ).toEqual([]);
  });
});

describe('a fact that only a rule names', () => {
  const sand = { kind: 'scrape', tool: 'plastic-scraper', say: 'Scrape it.' };
  const asks = (line: object) => ({
    id: 'ask',
    ...STOP,
    hazards: ['old-film'],
    when: { not: { any: [{ age: 'since-1993' }, line] } },
    'unless-known-no': true,
  });
  const stops = (on: Knowledge) => holes(on, sand).filter((one) => one.startsWith('old-film'));
  it('is varied: a rule that it takes back is missed there', () => {
    // The sheen decides nothing of what is called for: 3 of 3 ages, 2 answers (not told, no), gloss.
    const [hole, ...others] = stops(made(asks({ sheen: 'gloss' })));
    expect(others).toEqual([]);
    expect(hole).toMatch(/^old-film stop \d+: .*sheen gloss/);
    // Of coats on bare wood the need lets it go, and of coats on a stain it does not.
    expect(stops(made(asks({ base: 'bare-wood', 'coat-number': { above: 0 }, age: 'since-1993' })))).toEqual(
      [],
    );
    expect(stops(made(asks({ base: 'stain', 'coat-number': { above: 0 } })))).toEqual([
      expect.stringMatching(/base stain.*coat-number 1/),
    ]);
  });
  it('is varied with what answers it, where it is a question', () => {
    const on = known(
      ...NEEDED,
      question('cold', { known: [{ when: { 'surface-celsius': { below: 5 } }, answer: 'yes' }] }),
      rule('care', { hazards: ['oxalic-acid'], when: { not: { cold: 'yes' } }, 'unless-known-no': true }),
    );
    // Told cold: of three surfaces (not told, below, not below) each; not told: of the one that is below.
    expect(holes(on, acid)).toEqual(['oxalic-acid care 4: cold not told, surface-celsius -20']);
  });
});

describe('the book of cases', () => {
  it('looks once at steps that do the same', () => {
    const book = caseBook(made());
    book.holesOf(acid as never, []);
    const { looked } = book;
    expect(looked).toBe(1);
    book.holesOf({ ...acid, say: 'Look at it once more.' } as never, []);
    expect(book.looked).toBe(looked);
    book.holesOf(blade as never, []);
    expect(book.looked).toBeGreaterThan(looked);
  });
});

describe('repairs of flaws', () => {
  const flaw = (id: string, families: readonly string[]) => defect(id, { remedy: 'mend' }, { families });
  const steps = [
    { kind: 'look', say: 'Look at the surface.' },
    { kind: 'look', say: 'Look at it well.', does: ['oxalic-acid'] },
  ];
  it('are told of each step that lacks something, once', () => {
    const on = known(
      ...NEEDED,
      flaw('a', ['oil']),
      flaw('b', ['lacquer']),
      remedy('mend', {}, { steps }),
      rule('heat', { hazards: ['heat'] }),
    );
    expect([...hazardsAreCautioned(on)]).toEqual([
      {
        file: 'content/remedy/mend.mdx',
        line: 1,
        code: 'no-caution',
        of: 'step',
        step: 'Look at it well.',
        hazard: 'oxalic-acid',
        lacks: 'care',
        in: 'any case',
        rule: undefined,
        like: 'heat',
      },
    ]);
  });
  it('have the kinds of each flaw that leads to them, and none for their own page', () => {
    const on = known(
      flaw('a', ['oil']),
      flaw('b', ['oil']),
      flaw('c', ['lacquer', 'shellac']),
      remedy('mend'),
      remedy('rest'),
    );
    const lists = familiesByRemedy(on);
    expect(lists.get('mend')).toEqual([[], ['oil'], ['lacquer', 'shellac']]);
    expect(lists.get('rest')).toEqual([[]]);
  });
  it('tint no further than every rule allows', () => {
    const limit = (id: string, most: number) =>
      rule(id, {
        kind: 'adjustment',
        level: 'note',
        when: { stage: 'cured' },
        limit: { what: 'tint-percent', most },
      });
    const mix = (most: number) =>
      remedy(
        'mend',
        {},
        { steps: [{ kind: 'mix', what: 'tint', percent: [1, most], say: 'Mix the tint in.' }] },
      );
    const found = (most: number) =>
      [...tintsStayWithinLimits(known(mix(most), limit('ten', 10), limit('five', 5)))].map(
        (one) => (one as unknown as { rule: string }).rule,
      );
    expect(found(5)).toEqual([]);
    expect(found(6)).toEqual(['five']);
    expect(found(11).sort()).toEqual(['five', 'ten']);
  });
});

describe('lessons', () => {
  const lesson = (
    needs: readonly string[],
    rules: readonly string[],
    practice: readonly string[] = ['Look at it.'],
  ) => ({ id: 'l', file: 'l.mdx', lineOf: () => 7, title: 'A lesson', needs, rules, practice }) as never;
  const on = made(
    { id: 'dust', hazards: ['dust'] },
    { id: 'blade-note', level: 'note', hazards: ['blade'] },
    { id: 'lead', ...STOP, hazards: ['old-film', 'old-film-in-reach'] },
    { id: 'heat', hazards: ['heat'] },
  );
  const lacks = (needs: readonly string[], rules: readonly string[], practice?: readonly string[]) =>
    lackedByLesson(on, lesson(needs, rules, practice)).map(({ hazard, lacks: what }) => `${hazard} ${what}`);
  it('name a rule as weighty as each hazard of their practice calls for', () => {
    expect(lacks(['a new board and P320'], [])).toEqual(['dust care']);
    expect(lacks(['a new board and P320'], ['dust'])).toEqual([]);
    expect(lacks(['a new board and P320'], ['heat'])).toEqual(['dust care']);
    expect(lacks(['an old door and P320'], ['dust'])).toEqual(['old-film stop']);
    expect(lacks(['an old door and P320'], ['dust', 'lead'])).toEqual([]);
    // A note is less than a caution.
    expect(lacks(['a new board and a blade'], ['blade-note'])).toEqual(['blade care']);
    expect(lacks(['a new board'], [])).toEqual([]);
    expect(lacks(['a new board'], [], ['Sand it by hand.'])).toEqual(['dust care']);
  });
  it('have their rules before the practice, stops first, and none that guards nothing there', () => {
    const before = (rules: readonly string[]) =>
      rulesBefore(on, lesson(['an old door and P320'], rules)).map(({ id }) => id);
    expect(before(['dust', 'lead'])).toEqual(['lead', 'dust']);
    expect(before(['lead', 'dust'])).toEqual(['lead', 'dust']);
    expect(before(['heat', 'dust'])).toEqual(['dust']);
  });
  it('are told what they lack, with a rule to name', () => {
    const all = { ...on, lessons: [lesson(['an old door and P320'], [])] } as unknown as Knowledge;
    const told = [...lessonsAreCautioned(all)];
    expect(
      told.map((one) => (one as unknown as { hazard: string; rule?: { id: string } }).rule?.id).sort(),
    ).toEqual(['dust', 'lead']);
    expect(told[0]).toMatchObject({
      file: 'l.mdx',
      line: 7,
      code: 'no-caution',
      of: 'lesson',
      step: 'A lesson',
      in: 'any case',
    });
  });
});
