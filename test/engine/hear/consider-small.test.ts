/**
 * Where it stands, on a small invented mind: what is asked first, when a verdict is given, whose hands are sure, and which
 * rule comes first. Chances are worked by hand.
 */
import { describe, expect, it } from 'vitest';
import { consider } from '#engine/hear/belief/consider.ts';
import type { Mind, ToldFacts } from '#engine/hear/belief/mind.ts';
import { STAGES } from '#engine/model/stage.ts';
import { heardOf, mind, rule } from './small-mind.ts';

const small = mind();
const of = (told: ToldFacts, more: object = {}, on: Mind = small) => consider(on, { told, ...more });
const likely = (prior: readonly number[]) => mind({ matrix: { ...small.matrix, prior } });

describe('what is asked', () => {
  it('is the stage before all else, and no hands are told without it', () => {
    expect(of({})).toMatchObject({ stage: undefined, now: undefined, next: { kind: 'stage' } });
    expect(of({ round: 'yes', long: 'no' }).next).toEqual({ kind: 'stage' });
  });
  it('is then the age, where old paint may lie below', () => {
    expect(of({ stage: 'cured', base: 'old-finish' }).next).toEqual({ kind: 'age' });
    expect(of({ stage: 'cured', piece: 'valuable' }).next).toEqual({ kind: 'age' });
    expect(of({ stage: 'cured', base: 'old-finish', age: 'unknown' }).next?.kind).toBe('question');
    expect(of({ stage: 'cured', base: 'stain' }).next?.kind).toBe('question');
    expect(of({ stage: 'wet', base: 'old-finish' }).next).toBeUndefined();
    expect(of({ stage: 'dry-to-touch', base: 'old-finish' }).now).toBeDefined();
  });
  it('is a question with its words, until one flaw is as good as sure', () => {
    expect(of({ stage: 'cured' }).next).toEqual({
      kind: 'question',
      question: 'round',
      ask: 'Round?',
      how: 'Look.',
    });
    const sure = of({ stage: 'cured' }, {}, likely([0.901, 0.04, 0.03, 0.029]));
    expect(sure.next).toBeUndefined();
    expect(sure.now?.flaw?.defect).toBe('bubbles');
    expect(of({ stage: 'cured' }, {}, likely([0.89, 0.05, 0.03, 0.03])).now?.flaw).toBeUndefined();
  });
  it('ends once eight were answered, stage and age among them', () => {
    const many = mind({
      matrix: {
        ...small.matrix,
        questions: Array.from({ length: 12 }, (_, at) => `q${at}`),
        signs: Array.from({ length: 12 }, () => '1010'),
        effort: Array(12).fill(1),
      },
      questions: Array.from({ length: 12 }, () => small.questions[0]) as Mind['questions'],
    });
    const told = (count: number) =>
      Object.fromEntries(Array.from({ length: count }, (_, at) => [`q${at}`, 'unsure']));
    expect(of({ stage: 'cured', ...told(6) }, {}, many).next?.kind).toBe('question');
    expect(of({ stage: 'cured', ...told(7) }, {}, many).next).toBeUndefined();
    expect(of({ stage: 'cured', age: 'unknown', ...told(6) }, {}, many).next).toBeUndefined();
    expect(of({ stage: 'cured', family: 'oil', sheen: 'flat', ...told(6) }, {}, many).next?.kind).toBe(
      'question',
    );
    // A stage that was heard was not asked for.
    const heard = heardOf({ facts: [{ fact: 'stage', value: 'cured', sure: 0.9, rests: [], against: [] }] });
    expect(of(told(7), { heard }, many).next?.kind).toBe('question');
    expect(of(told(8), { heard }, many).next).toBeUndefined();
  });
  it('lists the likeliest first, of equals by name', () => {
    expect(of({}).likely.map(({ defect }) => defect)).toEqual(['bubbles', 'cracks', 'dust', 'haze']);
    expect(of({}, {}, likely([0.25, 0.25, 0.25, 0.25])).likely.map(({ name }) => name)).toEqual([
      'Bubbles',
      'Cracks',
      'Dust',
      'Haze',
    ]);
    expect(of({}, {}, likely([0.1, 0.2, 0.3, 0.4])).likely.map(({ defect }) => defect)).toEqual([
      'haze',
      'dust',
      'cracks',
      'bubbles',
    ]);
    expect(of({ round: 'yes' }).likely[0]).toMatchObject({ defect: 'bubbles', name: 'Bubbles' });
  });
});

describe('hands', () => {
  it('are those that most of the likely flaws ask for; a flaw that may ask for two shares itself', () => {
    // Filling: bubbles and half of the dust, 0.5; sanding: cracks and the other half, 0.4.
    const { now } = of({ stage: 'cured' });
    expect(now).toMatchObject({ do: 'repair', sure: false });
    expect(of({ stage: 'cured' }, {}, likely([0.851, 0.05, 0, 0.099])).now?.sure).toBe(true);
    expect(of({ stage: 'cured' }, {}, likely([0.84, 0.06, 0, 0.1])).now?.sure).toBe(false);
    expect(of({ stage: 'cured' }, {}, likely([0.8, 0.05, 0.1, 0.05])).now?.sure).toBe(true);
    expect(of({ stage: 'cured' }, {}, likely([0.1, 0.1, 0, 0.8])).now?.do).toBe('leave');
    // Of equals the first.
    expect(of({ stage: 'cured' }, {}, likely([0.5, 0, 0, 0.5])).now?.do).toBe('leave');
  });
  it('hang on the stage', () => {
    expect(of({ stage: 'wet' }).now).toMatchObject({ do: 'leave', sure: true });
    expect(of({ stage: 'dry-to-touch' }).now).toMatchObject({ do: 'wait', sure: true });
    for (const stage of STAGES) expect(of({ stage }).stage).toBe(stage);
  });
  it('of a film that is overdue have a row of their own, while it is soft', () => {
    for (const stage of ['setting', 'dry-to-touch'] as const)
      expect(of({ stage, overdue: 'yes' })).toMatchObject({ overdue: true, now: { do: 'stop', sure: true } });
    expect(of({ stage: 'wet', overdue: 'yes' }).now?.do).toBe('leave');
    expect(of({ stage: 'cured', overdue: 'yes' }).now?.do).toBe('repair');
    expect(of({ stage: 'dry-to-touch', overdue: 'no' })).toMatchObject({
      overdue: false,
      now: { do: 'wait' },
    });
  });
});

describe('a coat that is wet or sets', () => {
  /** Setting: cracks are left, dust is waited for, bubbles too; of a question that parts them the hands hang. */
  const open = mind({
    hands: small.hands.map((row, at) => (at === 1 ? [[0], [3], [3], [0]] : row)),
    matrix: {
      ...small.matrix,
      prior: [0.25, 0.25, 0.25, 0.25],
      questions: ['parts', 'alike', 'hard'],
      signs: ['0110', '0101', '0110'],
      effort: [1, 1, 3],
    },
    questions: small.questions.slice(0, 3),
  });
  it('is asked what tells of the hands, the easier of equals, and no more than two', () => {
    expect(of({ stage: 'setting' }, {}, open).next).toMatchObject({ question: 'parts' });
    const hard = mind({
      ...open,
      matrix: { ...open.matrix, effort: [3, 1, 1] },
      questions: [0, 1, 0].map((at) => small.questions[at]) as Mind['questions'],
    });
    expect(of({ stage: 'setting' }, {}, hard).next).toMatchObject({ question: 'hard' });
    expect(of({ stage: 'setting', parts: 'unsure' }, {}, open).next).toBeUndefined();
    expect(of({ stage: 'setting', x: 'yes', y: 'no' }, {}, open).next).toBeUndefined();
    expect(of({ stage: 'setting', x: 'yes' }, {}, open).next).toMatchObject({ question: 'parts' });
    expect(of({ stage: 'setting', x: 'perhaps', y: 'some' }, {}, open).next).toMatchObject({
      question: 'parts',
    });
  });
  it('gets its verdict where hands are sure, and is left alone where none are', () => {
    const after = of({ stage: 'setting', parts: 'yes' }, {}, open);
    expect(after).toMatchObject({ now: { do: 'wait', sure: true }, next: undefined });
    const doubt = of({ stage: 'setting', parts: 'unsure' }, {}, open);
    expect(doubt).toMatchObject({ now: { do: 'leave', sure: false }, next: undefined });
    const unknown = mind({ ...open, acts: ['wash', ...open.acts.slice(1)] });
    expect(of({ stage: 'setting', parts: 'unsure' }, {}, unknown).now).toMatchObject({ sure: false });
    expect(of({ stage: 'setting' }, {}, open).now?.sure).toBe(false);
  });
  it('is asked nothing that harms it, and nothing where all flaws ask for the same hands', () => {
    const touched = mind({
      ...open,
      questions: [2, 1, 3].map((at) => small.questions[at]) as Mind['questions'],
    });
    expect(of({ stage: 'setting' }, {}, touched).next).toBeUndefined();
    expect(of({ stage: 'wet' }).next).toBeUndefined();
  });
  it('that is overdue is no fresh coat', () => {
    expect(of({ stage: 'setting', overdue: 'yes' }, {}, open).next).toMatchObject({ kind: 'question' });
  });
});

describe('rules', () => {
  const ids = (told: ToldFacts, on: Mind, more: object = {}) =>
    of(told, more, on).warnings.map(({ id }) => id);
  const fired = (id: string, more: object = {}) => ({
    ...rule(id),
    when: { family: 'oil' },
    isLenient: false,
    ...more,
  });
  it('are fired by facts: a lenient one by what is not known, a second condition besides', () => {
    const on = mind({
      fired: [
        fired('plain'),
        fired('lenient', { isLenient: true }),
        fired('both', { and: { applicator: 'spray-gun' } }),
        fired('other', { when: { family: 'wax' } }),
      ] as never,
    });
    expect(ids({}, on)).toEqual(['lenient']);
    expect(ids({ family: 'oil' }, on)).toEqual(['plain', 'lenient']);
    expect(ids({ family: 'oil', applicator: 'spray-gun' }, on)).toEqual(['plain', 'lenient', 'both']);
    expect(ids({ family: 'oil', applicator: 'brush' }, on)).toEqual(['plain', 'lenient']);
    expect(ids({ family: 'lacquer' }, on)).toEqual([]);
  });
  const danger = (id: string, past?: boolean) => ({
    rule: id,
    rests: [],
    ...(past !== undefined && { past }),
  });
  it('are called for by words, each once, stops before cautions, harm under way before both', () => {
    const on = mind({
      dangers: [
        rule('care'),
        rule('stop', { isStop: true }),
        rule('harm', { atOnce: ['First.', 'Second.'] }),
        rule('unsaid'),
      ],
      fired: [fired('care'), fired('fact-stop', { isStop: true })] as never,
    });
    const heard = heardOf({
      dangers: ['care', 'stop', 'harm'].map((id) => danger(id)),
      urgent: [{ rule: 'harm', at: 1 }],
    });
    expect(ids({}, on, { heard })).toEqual(['harm', 'stop', 'care']);
    expect(ids({ family: 'oil' }, on, { heard })).toEqual(['harm', 'stop', 'fact-stop', 'care']);
    const [harm] = of({}, { heard }, on).warnings;
    expect(harm?.atOnce).toEqual(['Second.']);
    // A case that was not told is not brought, and without one the rule is a caution.
    const calm = heardOf({ dangers: [danger('stop'), danger('harm')] });
    expect(ids({}, on, { heard: calm })).toEqual(['stop', 'harm']);
    expect(of({}, { heard: calm }, on).warnings[1]).not.toHaveProperty('atOnce');
    // Of two harms the one that stops comes first; each case is brought once.
    const two = mind({
      dangers: [rule('harm', { atOnce: ['A.'] }), rule('halt', { isStop: true, atOnce: ['B.', 'B.'] })],
    });
    const both = heardOf({
      dangers: [danger('harm'), danger('halt')],
      urgent: [
        { rule: 'harm', at: 0 },
        { rule: 'halt', at: 0 },
        { rule: 'halt', at: 1 },
      ],
    });
    expect(ids({}, two, { heard: both })).toEqual(['halt', 'harm']);
    expect(of({}, { heard: both }, two).warnings[0]?.atOnce).toEqual(['B.']);
  });
  it('of a step that is over are told last, in words for then', () => {
    const on = mind({
      dangers: [
        rule('over', { isStop: true, done: 'Done now.', lead: 'Lead.' }),
        rule('care'),
        rule('bare', { isStop: true }),
      ],
    });
    const heard = (past: boolean | undefined) =>
      heardOf({ dangers: [danger('over', past), danger('care', true), danger('bare', true)] });
    const { warnings } = of({}, { heard: heard(true) }, on);
    expect(warnings.map(({ id }) => id)).toEqual(['bare', 'care', 'over']);
    expect(warnings[2]).toMatchObject({ say: 'Done now.', isStop: false, isPast: true });
    expect(warnings[2]).not.toHaveProperty('lead');
    for (const past of [false, undefined])
      expect(ids({}, on, { heard: heard(past) })).toEqual(['over', 'bare', 'care']);
    // Harm that is under way is not over.
    const harm = mind({ dangers: [rule('over', { done: 'Done now.', atOnce: ['Out.'] })] });
    const under = heardOf({ dangers: [danger('over', true)], urgent: [{ rule: 'over', at: 0 }] });
    expect(of({}, { heard: under }, harm).warnings[0]).toMatchObject({ say: 'Say over.', atOnce: ['Out.'] });
  });
  it('that guard spraying are over once it was sprayed, and for the next one once it is dry', () => {
    const on = mind({
      fired: [fired('spray', { isStop: true, done: 'Air the room.', ofStep: true }), fired('care')] as never,
    });
    const text = (words: string) => ({ heard: heardOf({ text: words }) });
    expect(of({ family: 'oil' }, text('I sprayed it'), on).warnings.map(({ id, say }) => [id, say])).toEqual([
      ['care', 'Say care.'],
      ['spray', 'Air the room.'],
    ]);
    expect(ids({ family: 'oil' }, on, text('I am spraying it'))).toEqual(['spray', 'care']);
    const dry = of({ family: 'oil', stage: 'cured' }, text('I sprayed it'), on).warnings;
    expect(dry.map(({ id, say }) => [id, say])).toEqual([
      ['care', 'Say care.'],
      ['spray', 'Say spray.'],
    ]);
    expect(ids({ family: 'oil', stage: 'wet' }, on)).toEqual(['spray', 'care']);
  });
  it('that let looking wait leave nothing to ask', () => {
    const on = mind({ fired: [fired('mold', { waits: ['look'] })] as never });
    expect(of({ stage: 'cured', family: 'oil' }, {}, on).next).toBeUndefined();
    expect(of({ stage: 'cured', family: 'lacquer' }, {}, on).next?.kind).toBe('question');
    const touch = mind({ fired: [fired('lead', { waits: ['touch'] })] as never });
    expect(of({ stage: 'cured', family: 'oil' }, {}, touch).next).toMatchObject({ question: 'round' });
  });
});
