/** How the sentences of a reply are cut and joined, by laws, and what they say of rules, worked by hand. Invented rules. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ToldRule } from '#engine/hear/mind.ts';
import { safetySaid } from '#engine/hear/reply-safety.ts';
import { fitted } from '#engine/hear/reply-words.ts';
import { ended, firstSentence, lower } from '#engine/plain/text.ts';

const part = fc.string({ unit: fc.constantFrom(...'ab .'), maxLength: 12 });

describe('what fits', () => {
  it('is never longer than it may be, keeps the order, drops whole parts alone, and always ends in the last', () => {
    fc.assert(
      fc.property(fc.array(part, { maxLength: 6 }), part, fc.nat({ max: 40 }), (parts, last, most) => {
        const text = fitted(parts, last, most);
        expect(text.endsWith(last)).toBe(true);
        expect(text.length).toBeLessThanOrEqual(Math.max(most, last.length));
        // Kept one by one: each that still fits, as someone would try them with scissors.
        let kept = last;
        let head = '';
        for (const one of parts.filter(Boolean)) {
          const tried = [head, one].filter(Boolean).join(' ');
          if (`${tried} ${last}`.length > most) continue;
          head = tried;
          kept = last ? `${tried} ${last}` : tried;
        }
        expect(text).toBe(kept);
      }),
      { numRuns: 150 },
    );
    expect(fitted(['', 'a', ''], 'b', 9)).toBe('a b');
    expect(fitted(['aaaa', 'b'], 'c', 4)).toBe('b c');
    expect(fitted(['a'], 'b', 3)).toBe('a b');
    expect(fitted(['a'], 'b', 2)).toBe('b');
    expect(fitted([], '', 9)).toBe('');
  });
});

describe('a sentence', () => {
  it.each([
    ['One. Two.', 'One.'],
    ['One! Two', 'One!'],
    ['One? Two', 'One?'],
    ['0.5 mm is thin. More is thick.', '0.5 mm is thin.'],
    ['No stop', 'No stop'],
    ['Ends.', 'Ends.'],
    ['', ''],
  ])('of "%s" the first is "%s"', (text, first) => {
    expect(firstSentence(text)).toBe(first);
  });
  it('ends with a stop of its own, or gets one', () => {
    for (const text of ['Stop.', 'Stop!', 'Stop?']) expect(ended(text)).toBe(text);
    expect(ended('Stop')).toBe('Stop.');
    expect(ended('Stop. Now')).toBe('Stop. Now.');
  });
  it('goes on in a small letter, the rest as it was', () => {
    expect(lower('Runs and Sags')).toBe('runs and Sags');
    expect(lower('')).toBe('');
  });
});

describe('what is said of rules', () => {
  const rule = (id: string, more: Partial<ToldRule> = {}): ToldRule => ({
    id,
    title: `Title ${id}`,
    say: `Say ${id} one. Say ${id} two.`,
    defers: 'The label wins.',
    isStop: false,
    ...more,
  });
  const said = (warnings: readonly ToldRule[], stage?: 'wet' | 'setting' | 'dry-to-touch' | 'cured') =>
    safetySaid({ warnings, stage });

  it('nothing where there is none', () => {
    expect(said([])).toEqual({
      rule: undefined,
      calls: false,
      urgent: [],
      first: '',
      besides: [],
      later: [],
      all: [],
      allLater: [],
    });
  });
  it('the most pressing with its title, a stop by its own first sentence, a caution by its one line', () => {
    expect(said([rule('a', { lead: 'Lead a. More.' })]).first).toBe('First: Title a. Lead a.');
    expect(said([rule('a', { lead: 'Lead a. More.', isStop: true })]).first).toBe(
      'First: Title a. Say a one.',
    );
    expect(said([rule('a')]).first).toBe('First: Title a. Say a one.');
    // A title that asks says nothing before its answer.
    expect(said([rule('a', { title: 'Safe?', lead: 'Lead a.', isStop: true })]).first).toBe('First: Lead a.');
    expect(said([rule('a', { title: 'Stop!' })]).first).toBe('First: Stop! Say a one.');
  });
  it('two more in a sentence each, all of them in the long one', () => {
    const { besides, all } = said(['a', 'b', 'c', 'd'].map((id) => rule(id)));
    expect(besides).toEqual(['Say b one.', 'Say c one.']);
    expect(all).toEqual([
      'First: Title a. Say a one. Say a two.',
      'And: Title b. Say b one. Say b two.',
      'And: Title c. Say c one. Say c two.',
      'And: Title d. Say d one. Say d two.',
    ]);
  });
  it('what saves comes before all, one case of it, two where help is called, and then no other harm beside', () => {
    const harm = rule('a', { atOnce: ['Save one. More.', 'Save two.', 'Save three.'] });
    const other = rule('b', { atOnce: ['Other first. More.'] });
    const plain = said([harm, other, rule('c')]);
    expect(plain).toMatchObject({ calls: false, first: '', urgent: ['Save one. More.'] });
    expect(plain.besides).toEqual(['Other first.', 'Say c one.']);
    expect(plain.all).toEqual(
      [
        'Save one. More.',
        'Save two.',
        'Save three.',
        'Title a. Say a one. Say a two.',
        'And: Title b. Other first. More. Say b one. Say b two.',
        'And: Title c. Say c one. Say c two.',
      ].slice(0, plain.all.length),
    );
    expect(plain.all).toHaveLength(6);
    const call = said([{ ...harm, say: 'Call 911. Then wait.' }, other, rule('c')]);
    expect(call).toMatchObject({ calls: true, urgent: ['Save one. More.', 'Save two.'] });
    expect(call.besides).toEqual(['Say c one.']);
    // 911 without a case that is under way calls nobody.
    expect(said([rule('a', { say: 'Call 911.' })]).calls).toBe(false);
    expect(said([rule('a', { say: 'Part 9113.', atOnce: ['x'] })]).calls).toBe(false);
  });
  it('what guards a step that is over comes behind what to do', () => {
    const over = rule('o', { isPast: true });
    const step = rule('s', { ofStep: true });
    const first = said([over, rule('a')]);
    expect(first.rule?.id).toBe('a');
    expect(first.later).toEqual(['Say o one.']);
    expect(first.allLater).toEqual(['Title o. Say o one. Say o two.']);
    for (const stage of ['wet', 'setting', undefined] as const)
      expect(said([step], stage)).toMatchObject({ later: [], rule: { id: 's' } });
    for (const stage of ['dry-to-touch', 'cured'] as const)
      expect(said([step], stage)).toMatchObject({ later: ['Say s one.'], rule: undefined, first: '' });
  });
});
