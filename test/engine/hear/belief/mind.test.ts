/**
 * What the belief is built from, made of small invented knowledge: rules that facts or words call for, hands for every
 * stage. Worked by hand.
 */
import { describe, expect, it } from 'vitest';
import { mindOf } from '#engine/hear/belief/mind.ts';
import { STAGES } from '#engine/model/stage.ts';
import { act, defect, known, question, remedy, rule } from '../../small.ts';

describe('the mind', () => {
  const ask = { ask: 'round', yes: { remedy: 'one' }, no: { remedy: 'two' } };
  const entries = [
    question('round', {
      'safe-from': 'dry-to-touch',
      how: 'Look along it.',
      known: [{ when: { family: 'oil' }, answer: 'no' }],
    }),
    remedy('one', { overdue: act('stop') }),
    remedy('two', { wet: act('lift'), cured: act('accept') }),
    defect('dots', ask, { signs: { round: 'yes' }, families: ['lacquer'] }),
    defect('haze', { remedy: 'two' }, { signs: { round: 'no' } }),
  ];
  const mind = (...rules: readonly Record<string, unknown>[]) =>
    mindOf(known(...entries, ...rules.map(({ id, ...data }) => rule(id as string, data))));

  it('has names, kinds and questions in the order of the table', () => {
    const { matrix, names, families, questions } = mind();
    expect(matrix.defects).toEqual(['dots', 'haze']);
    expect(names).toEqual(['Flaw dots', 'Flaw haze']);
    expect(families).toEqual([['lacquer'], ['water-based']]);
    expect(questions).toEqual([
      {
        ask: 'Is it round?',
        how: 'Look along it.',
        by: 'look',
        safeFrom: 'dry-to-touch',
        known: [{ when: { family: 'oil' }, answer: 'no' }],
      },
    ]);
  });
  it('has hands for every stage, and for a film that is overdue', () => {
    const { hands, acts, words } = mind();
    expect(hands).toHaveLength(STAGES.length + 1);
    const of = (row: number, flaw: number) => hands[row]?.[flaw]?.map((mark) => acts[mark]);
    // Wet: one may be left and the other lifted; a flaw that may be either has both.
    expect(of(0, 0)?.sort()).toEqual(['leave', 'lift']);
    expect(of(0, 1)).toEqual(['lift']);
    expect(of(1, 0)).toEqual(['leave']);
    expect(of(2, 0)).toEqual(['wait']);
    expect(of(3, 0)?.sort()).toEqual(['repair:one', 'repair:two']);
    expect(of(3, 1)).toEqual(['repair:two']);
    expect(of(4, 1)).toEqual(['accept']);
    expect(of(5, 0)?.sort()).toEqual(['stop:one', 'wait']);
    for (const row of hands)
      for (const marks of row) expect([...marks]).toEqual([...new Set(marks)].sort((a, b) => a - b));
    const repair = words[acts.indexOf('repair:two')];
    expect(repair).toEqual({
      do: 'repair',
      verdict: 'Verdict repair',
      say: 'Invented for a test of the engine.',
      not: 'Not against repair.',
      again: 'Look again later.',
      remedy: 'two',
    });
    expect(words[acts.indexOf('lift')]).toEqual({
      do: 'lift',
      verdict: 'Verdict lift',
      say: 'General words for lift.',
      not: 'Not against lift.',
      again: 'Look again later.',
    });
  });
  const stop = { kind: 'stop', level: 'stop', open: 'When it is settled for good.' };
  it('has the rules that facts alone fire: stops, and cautions that always stand', () => {
    const when = { family: 'oil' };
    const { fired } = mind(
      { id: 'a-stop', ...stop, when, hazards: ['dust'] },
      { id: 'b-always', when, always: true },
      { id: 'c-step', when, hazards: ['dust'] },
      { id: 'd-not', ...stop, when: { not: { family: 'oil' } }, hazards: ['dust'] },
      { id: 'e-spray', ...stop, when, hazards: ['mist'], sure: 'yes' },
      { id: 'f-mist', ...stop, when, hazards: ['mist'] },
      { id: 'g-lenient', ...stop, when, hazards: ['dust'], 'unless-known-no': true },
    );
    expect(fired.map(({ id }) => id)).toEqual(['a-stop', 'b-always', 'e-spray', 'f-mist', 'g-lenient']);
    expect(fired.map(({ isStop }) => isStop)).toEqual([true, false, true, true, true]);
    expect(fired.map(({ isLenient }) => isLenient)).toEqual([false, false, false, false, true]);
    expect(fired.map(({ ofStep = false }) => ofStep)).toEqual([false, false, true, false, false]);
    expect(fired[2]?.and).toBeDefined();
    expect(fired[0]).not.toHaveProperty('and');
    expect(fired[0]?.when).toEqual(when);
  });
  it('has the rules that words call for: what has happened, stops, and the rest', () => {
    const heard = ['some words'];
    const { dangers } = mind(
      { id: 'a-care', heard, hazards: ['dust'] },
      {
        id: 'b-stop',
        ...stop,
        heard,
        hazards: ['dust'],
        lead: 'One line of it, for now.',
        done: 'Over now, so do that.',
      },
      { id: 'c-harm', ...stop, heard, 'at-once': [{ heard: ['smoke'], say: 'Out with everyone, now.' }] },
      { id: 'd-silent', hazards: ['dust'] },
      {
        id: 'e-calls',
        hazards: ['dust'],
        'at-once': [{ heard: ['smoke'], say: 'Out with everyone, now.', fires: true }],
      },
      { id: 'f-case', hazards: ['dust'], 'at-once': [{ heard: ['smoke'], say: 'Out with everyone, now.' }] },
    );
    expect(dangers.map(({ id }) => id)).toEqual(['c-harm', 'b-stop', 'a-care', 'e-calls']);
    expect(dangers[0]?.atOnce).toEqual(['Out with everyone, now.']);
    expect(dangers[1]).toMatchObject({
      isStop: true,
      lead: 'One line of it, for now.',
      done: 'Over now, so do that.',
      title: 'A caution',
      say: 'Take care with this, calmly.',
      defers: 'The label wins.',
    });
    expect(dangers[2]).not.toHaveProperty('lead');
    expect(dangers[2]).not.toHaveProperty('atOnce');
    expect(dangers[2]).not.toHaveProperty('done');
    expect(dangers[2]).not.toHaveProperty('waits');
  });
});
