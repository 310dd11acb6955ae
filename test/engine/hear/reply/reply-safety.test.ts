/**
 * What a reply says of rules, worked by hand. Invented rules.
 */
import { describe, expect, it } from 'vitest';
import type { ToldRule } from '#engine/hear/belief/mind.ts';
import { safetySaid } from '#engine/hear/reply/reply-safety.ts';
import { words } from '../hearing.ts';

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
    safetySaid({ warnings, stage }, words.says);

  it('nothing where there is none', () => {
    expect(said([])).toEqual({
      rule: undefined,
      calls: false,
      urgent: [],
      first: '',
      line: '',
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
    const call = said([{ ...harm, calls: ['emergency'] }, other, rule('c')]);
    expect(call).toMatchObject({ calls: true, urgent: ['Save one. More.', 'Save two.'] });
    expect(call.besides).toEqual(['Say c one.']);
  });
  it('whom to call is what the rule says of it, and no figure in its words', () => {
    expect(said([rule('a', { calls: ['poison'] })]).calls).toBe(true);
    expect(said([rule('a', { say: 'Call 911. Then wait.', atOnce: ['Out now. Call 911.'] })]).calls).toBe(
      false,
    );
    expect(said([rule('a', { calls: [] })]).calls).toBe(false);
    // Of a step that is over nobody is called.
    expect(said([rule('a', { calls: ['emergency'], toldLast: true })]).calls).toBe(false);
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
