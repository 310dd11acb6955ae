/**
 * The lexicon of a small invented content: every phrase under its sense. Worked by hand.
 */
import { describe, expect, it } from 'vitest';
import { buildLexicon } from '#engine/hear/words/lexicon.ts';
import { patternOfWordings } from '#engine/hear/words/wordings.ts';
import { replyWordsOf } from '#engine/model/reply-words.ts';

const LANGUAGE = {
  not: ['not', 'no'],
  'not-denying': ['not only'],
  'other-tongue': ['und', 'nicht'],
  turns: ['but'],
  'not-yet': ['want to'],
  feared: ['afraid'],
  was: ['was'],
  'no-sign': ['bubble wrap'],
  'of-bodies': [],
  'is-over': ['gone'],
  below: ['over'],
  'on-top': ['with'],
  laid: ['brushed'],
  owned: ['grandmas'],
  unwiped: ['never wiped'],
  'other-time': ['says'],
  'other-layer': ['stain'],
  'asks-which': ['which coat'],
  'not-which': ['which day'],
  'asks-for': [
    { heard: ['how long'], unless: ['dots'], answer: 'A month.', lead: 'More:', page: 'p' },
    { heard: ['how clean'], unless: [], answer: 'Soap.', lead: 'Care:', page: 'q' },
  ],
  'one-slip': ['lacquer', 'shellac'],
  wordings: { time: ['how long', 'when i|we? can', "won't ... dry*"] },
  'still-drying': { answer: 'It dries.', lead: 'Later:' },
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

const FLAWS = {
  whole: ['orange skin'],
  small: ['some', 'big'],
  names: [
    { is: ['drips', 'sags'], say: ['drips', 'dripped down'], alone: ['=runs'] },
    { is: ['peels'], say: ['comes off'], alone: [] },
  ],
};

const HAND = { said: ['rub it|them'], denied: 'do not rub {it}' };
const HANDS = ['wipe', 'coat', 'sand', 'brush', 'pop', 'scrape', 'strip', 'heat', 'touch'];
const ROW = { say: 'Wait.', grade: 'common-practice' };
const REPLY = {
  sure: [{ from: 0.5, one: 'That is', several: 'Those are', whole: 'So' }],
  names: { several: ['rings'] },
  asks: ['may i'],
  spared: ['no'],
  them: ['them'],
  hands: {
    ...Object.fromEntries(HANDS.map((hand) => [hand, HAND])),
    heat: { ...HAND, unless: ['gas heater'] },
  },
  thanks: ['thank you'],
  glad: ['looks great'],
  'asks-on': ['but'],
  'not-asking': ['the advice on'],
  what: { unsure: 'It could be: {names}.' },
  hold: { open: ROW, 'which-it-is': 'which it is' },
  ask: { dry: ROW },
  lead: {},
  nothing: {},
  rules: {},
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
          'not-heard': ['oily rag doll'],
          'at-once': [
            { heard: ['rag smokes'], fires: true, unless: ['under water'] },
            { heard: ['rag warm'], fires: false, unless: [] },
          ],
        },
        { id: 'quiet', heard: [], 'not-heard': [], 'at-once': [] },
      ],
    } as never,
    {
      language: LANGUAGE,
      facts: FACTS,
      questions: QUESTIONS,
      flaws: FLAWS,
      kinds: { laying: ['brushed', 'laid'], sheen: ['satin'] },
      reply: replyWordsOf(REPLY as never, patternOfWordings),
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
  it('has the names of flaws, by the flaws that each may mean', () => {
    expect(of('flaw drips|sags')).toHaveLength(2);
    expect(of('flaw-alone drips|sags')).toEqual(['=runs']);
    expect(of('flaw peels')).toHaveLength(1);
    expect(of('flaw-alone peels')).toBeUndefined();
    expect(of('whole')).toHaveLength(1);
    expect(lexicon().small).toBe('some,big');
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
    expect(of('no-danger rags')).toEqual(['oi rag dol']);
    expect(of('no-danger quiet')).toBeUndefined();
    expect(of('calm rags 0')).toEqual(['under water']);
    expect(of('calm rags 1')).toBeUndefined();
  });
  it('has what a reply says without its grounds, and what it listens for as patterns', () => {
    const { says, hands, asks, names } = lexicon().reply;
    expect(says).toMatchObject({
      hold: { open: 'Wait.', 'which-it-is': 'which it is' },
      ask: { dry: 'Wait.' },
    });
    expect(hands.map(({ hand }) => hand)).toEqual(HANDS);
    expect(hands.filter(({ unless }) => unless).map(({ hand }) => hand)).toEqual(['heat']);
    expect(new RegExp(hands[0]?.said ?? '').test('rub them')).toBe(true);
    expect(new RegExp(asks).test('may i')).toBe(true);
    expect(names.several).toEqual(['rings']);
  });
  it('is plain data, its lists joined by commas', () => {
    const built = lexicon();
    expect(JSON.parse(JSON.stringify(built))).toEqual(built);
    expect(built).toMatchObject({
      spellings: { laquer: 'lacquer' },
      oneSlip: 'lacquer,shellac',
      kinds: { laying: 'brushed,laid', sheen: 'satin' },
      ofWork: 'laid',
      stillDrying: { answer: 'It dries.', lead: 'Later:' },
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
    });
  });
});
