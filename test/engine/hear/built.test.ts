/**
 * What the ear and the belief are built from, made of small invented knowledge: every phrase under its sense, every rule
 * that facts or words call for, and hands for every stage. Worked by hand.
 */
import { describe, expect, it } from 'vitest';
import { buildLexicon } from '#engine/hear/lexicon.ts';
import { mindOf } from '#engine/hear/mind.ts';
import { STAGES } from '#engine/model/stage.ts';
import { act, defect, known, question, remedy, rule } from '../small.ts';

const LANGUAGE = {
  not: ['not', 'no'],
  'not-denying': ['not only'],
  'other-tongue': ['und', 'nicht'],
  turns: ['but'],
  'not-yet': ['want to'],
  feared: ['afraid'],
  was: ['was'],
  'no-sign': ['bubble wrap'],
  'is-over': ['gone'],
  below: ['over'],
  'on-top': ['with'],
  laid: ['brushed'],
  owned: ['grandmas'],
  'other-time': ['says'],
  'other-layer': ['stain'],
  'asks-which': ['which coat'],
  'not-which': ['which day'],
  'asks-for': [
    { heard: ['how long'], unless: ['dots'], answer: 'A month.', lead: 'More:', page: 'p' },
    { heard: ['how clean'], unless: [], answer: 'Soap.', lead: 'Care:', page: 'q' },
  ],
  'one-slip': ['lacquer', 'shellac'],
  alone: { wet: ['wet'], cured: ['hard'] },
  times: { overnight: [8, 12, 16] },
  numbers: { two: 2 },
  units: { day: 24 },
  ago: ['ago', 'back'],
  'air-celsius': { freezing: 0 },
  'relative-humidity': { damp: 0.8 },
};
const FACTS = {
  family: { oil: ['tung oil'], among: [{ say: 'poly', values: ['oil-based', 'water-based'] }] },
  sheen: { gloss: ['gloss', 'glossy'] },
  'base-tone': {},
  base: { stain: ['stained', 'staining|stain'] },
  applicator: {},
  age: {},
  piece: {},
  hardener: {},
  part: {},
  stage: { wet: ['=wet coat'] },
  overdue: { yes: ['never dried'] },
  'no-fact': ['table salt'],
};
const QUESTIONS = {
  round: { yes: ['bubbles', 'dots'], no: [] },
  laid: { of: 'work', yes: ['thick coat'], no: ['thin coat'] },
};

const lexicon = () =>
  buildLexicon(
    {
      products: [
        { family: 'oil', name: 'Danish Oil (2-part)', also: ['Teak Oil'] },
        { family: 'wax', name: 'Paste wax', also: [] },
      ],
      rules: [
        {
          id: 'rags',
          heard: ['oily rag'],
          'at-once': [
            { heard: ['rag smokes'], calls: true },
            { heard: ['rag warm'], calls: false },
          ],
        },
        { id: 'quiet', heard: [], 'at-once': [] },
      ],
    } as never,
    {
      language: LANGUAGE,
      facts: FACTS,
      questions: QUESTIONS,
      kinds: { laying: ['brushed', 'laid'], sheen: ['satin'] },
    } as never,
    { spellings: { laquer: 'lacquer' } } as never,
  );

describe('the lexicon', () => {
  const of = (sense: string) =>
    lexicon()
      .senses.find(([name]) => name === sense)?.[1]
      .split(',');
  it('has every phrase under its sense, by the stems of its words, each once', () => {
    expect(of('fact family oil')).toEqual(['tung oil', 'danish oil 2 part', 'teak oil']);
    // Two forms of one word are one phrase.
    expect(of('fact sheen gloss')).toHaveLength(1);
    expect(of('fact base stain')).toEqual(['stain']);
    expect(of('fact stage wet')).toEqual(['=wet coat']);
    expect(of('fact overdue yes')?.[0]).toMatch(/^never /);
    expect(of('among family oil-based|water-based')).toHaveLength(1);
    expect(of('none')?.[0]?.split(' ')).toHaveLength(2);
    expect(of('no-sign')).toHaveLength(1);
    expect(of('sign round yes')).toHaveLength(2);
    expect(of('sign laid yes')).toEqual(['thick coat']);
    expect(of('sign laid no')).toEqual(['thin coat']);
    expect(of('alone wet')).toEqual(['wet']);
    expect(of('alone cured')).toEqual(['hard']);
    expect(of('times 8 12 16')).toHaveLength(1);
    expect(of('air-celsius 0')).toHaveLength(1);
    expect(of('relative-humidity 0.8')).toEqual(['damp']);
    for (const cue of [
      'not-denying',
      'not-yet',
      'feared',
      'is-over',
      'other-time',
      'other-layer',
      'owned',
      'asks-which',
      'not-which',
    ])
      expect(of(`cue ${cue}`), cue).toHaveLength(1);
    expect(of('cue asks-for 0')?.[0]).toMatch(/^how /);
    expect(of('cue not-for 0')).toHaveLength(1);
    expect(of('cue asks-for 1')).toHaveLength(1);
  });
  it('has no sense without a phrase, and kinds of products that no author named', () => {
    expect(of('cue not-for 1')).toBeUndefined();
    expect(of('sign round no')).toBeUndefined();
    expect(of('danger quiet')).toBeUndefined();
    // A product alone names no kind that the table of facts does not have.
    expect(of('fact family wax')).toBeUndefined();
    expect(lexicon().senses.every(([sense, phrases]) => sense && phrases)).toBe(true);
  });
  it('has rules by what calls for them, and their cases by number', () => {
    expect(of('danger rags')).toHaveLength(2);
    expect(of('urgent rags 0')).toHaveLength(1);
    expect(of('urgent rags 1')).toHaveLength(1);
    expect(of('danger rags')).toContain(of('urgent rags 0')?.[0]);
    expect(of('danger rags')).not.toContain(of('urgent rags 1')?.[0]);
  });
  it('is plain data, its lists joined by commas', () => {
    const built = lexicon();
    expect(JSON.parse(JSON.stringify(built))).toEqual(built);
    expect(built).toMatchObject({
      spellings: { laquer: 'lacquer' },
      oneSlip: 'lacquer,shellac',
      ofWork: 'laid',
      asksFor: [
        { answer: 'A month.', lead: 'More:', page: 'p' },
        { answer: 'Soap.', lead: 'Care:', page: 'q' },
      ],
      turns: 'but',
      not: 'not,no',
      otherTongue: 'und,nicht',
      below: 'over',
      onTop: 'with',
      laid: 'brushed',
      ago: 'ago,back',
      was: 'was',
      numbers: { two: 2 },
      units: { day: 24 },
      kinds: { laying: 'brushed,laid', sheen: 'satin' },
    });
  });
});

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
        'at-once': [{ heard: ['smoke'], say: 'Out with everyone, now.', calls: true }],
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
