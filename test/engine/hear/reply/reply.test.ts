/**
 * A reply to a post, built from invented findings: how sure it is said, whose orders stand in it, what is denied, and what
 * stands first. The bounds are those of our own words: a chance is never said surer than it is.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ActNow, Considered } from '#engine/hear/belief/consider.ts';
import type { ToldRule } from '#engine/hear/belief/mind.ts';
import { reply } from '#engine/hear/reply/reply.ts';
import type { ReplyOptions } from '#engine/hear/reply/reply-options.ts';
import type { Heard, HeardFact, HeardSign } from '#engine/hear/words/heard.ts';
import { known, words } from '../hearing.ts';
import { heardOf as heardIn, rule } from '../small-mind.ts';

const flaw = (defect: string, chance: number, name = `Flaw ${defect}`) => ({ defect, name, chance });
const act = (doing: string, more: Partial<ActNow> = {}): ActNow => ({
  do: doing,
  verdict: 'Verdict',
  say: 'Say one. Say two.',
  not: 'Not it.',
  again: 'Look again.',
  sure: true,
  ...more,
});
const found = (more: Partial<Considered> = {}): Considered => ({
  likely: [flaw('one', 0.95), flaw('two', 0.03), flaw('six', 0.02)],
  stage: 'cured',
  overdue: false,
  warnings: [],
  now: act('repair'),
  next: undefined,
  belief: { chances: new Float64Array(), known: new Map() },
  ...more,
});
const heardOf = (text: string, more: Partial<Heard> = {}): Heard => heardIn({ text, ...more });
const linkTo = (defect: string, stage?: string) => `@${defect}/${stage ?? '-'}`;
const say = (more: Partial<Considered> = {}, options: Partial<ReplyOptions> = {}) =>
  reply(found(more), { words, linkTo, ...options });
const fact = (name: string, value: string | number, sure = 0.9): HeardFact =>
  ({ fact: name, value, sure, rests: [], against: [] }) as unknown as HeardFact;
const sign = (from: number, to: number): HeardSign => ({
  question: 'q',
  answer: 'yes',
  sure: 0.8,
  rests: [{ from, to }],
  against: [],
});

describe('how sure it is said', () => {
  it.each([
    [1, 'That looks like flaw one.'],
    [0.9, 'That looks like flaw one.'],
    [0.89, 'Most likely that is flaw one.'],
    [0.6, 'Most likely that is flaw one.'],
    [0.59, 'That may be flaw one.'],
    [0.3, 'That may be flaw one.'],
    [0.29, 'Hard to say from here. It could be: flaw one; or flaw two; or flaw six.'],
  ])('a chance of %d', (chance, words) => {
    const { short, long } = say({ likely: [flaw('one', chance), flaw('two', 0.03), flaw('six', 0.02)] });
    for (const text of [short, long]) expect(text).toContain(words);
  });
  it('names as many as there are', () => {
    expect(say({ likely: [flaw('one', 0.2)] }).long).toContain('It could be: flaw one.');
    expect(say({ likely: [] }).long).not.toMatch(/looks like|could be|may be|undefined/);
  });
  it.each([
    ['Cloudy film', 'a cloudy film'],
    ['Uneven coat', 'an uneven coat'],
    ['Soft, thick skin', 'a soft, thick skin'],
    ['Dust in the coat', 'dust in the coat'],
    ['Hair on a film', 'hair on a film'],
    ['Wax under the finish', 'wax under the finish'],
  ])('%s is said as %s', (name, words) => {
    expect(say({ likely: [flaw('one', 0.95, name)] }).short).toContain(`That looks like ${words}.`);
  });
  it.each([
    ['Runs and sags', 'runs and sags'],
    ['Coating marks', 'coating marks'],
    ['Marks from heat', 'marks from heat'],
    ['Dull, thirsty patches in oil', 'dull, thirsty patches in oil'],
    ['Water rings, white or dark', 'water rings, white or dark'],
    ['Brush drag and laps in shellac', 'brush drag and laps in shellac'],
  ])('%s are said as %s', (name, words) => {
    const at = (chance: number) => say({ likely: [flaw('one', chance, name)] }).short;
    expect(at(0.95)).toContain(`Those look like ${words}.`);
    expect(at(0.7)).toContain(`Most likely those are ${words}.`);
    expect(at(0.4)).toContain(`Those may be ${words}.`);
  });
  it.each(['Oil coming back out of the pores', 'A coat of many spots', 'Wax that stays in lines'])(
    '%s is one',
    (name) => expect(say({ likely: [flaw('one', 0.7, name)] }).short).toContain('Most likely that is '),
  );
  it('every name of the content is said in its number', () => {
    // Told by hand from the list of names, 30 November 2026.
    const many = [
      'Brush marks',
      'Bubbles in the coat',
      'Cobwebs from spraying',
      'Cracks in the film',
      'Dull, thirsty patches in oil',
      'Dull spots',
      'Fat edges',
      'Fisheyes and craters',
      'Hairs, dust and bits in the coat',
      'Marks from heat',
      'Lap marks',
      'Missed spots',
      'Shiny and dull patches in the wax',
      'Pinholes',
      'Pools in corners and grooves',
      'Prints and things that stick',
      'Hand and finger prints in the wax',
      'Runs and sags',
      'Rust or black specks in the finish',
      'Sanding scratches and swirls',
      'Brush drag and laps in shellac',
      'Shiny rub marks',
      'Soapy or sticky streaks on a young coat',
      'Spits and stripes from a spray can',
      'Pink, ink or smoke stains coming through',
      'Streaks',
      'Water marks in young oil',
      'Water spots in the wax',
      'Smears in the wax',
      'Water rings, white or dark',
      'Witness lines',
    ];
    for (const { name } of known.defects)
      expect(say({ likely: [flaw('one', 0.7, name)] }).short, name).toContain(
        /^(?:The finish in the can has gone bad|Finish crawls and beads up|Paint comes off while waxing)$/.test(
          name,
        )
          ? `Most likely ${name[0]?.toLowerCase()}${name.slice(1)}.`
          : many.includes(name)
            ? 'Most likely those are '
            : 'Most likely that is ',
      );
  });
  it('others as likely as a tenth stand in the long one with their pages, two of them', () => {
    const { long, short } = say({
      likely: [flaw('one', 0.5), flaw('two', 0.3), flaw('six', 0.1), flaw('ten', 0.1)],
    });
    expect(long).toContain('Or flaw two: @two/cured');
    expect(long).toContain('Or flaw six: @six/cured');
    expect(long).not.toContain('ten');
    expect(short).not.toContain('@two');
    expect(say({ likely: [flaw('one', 0.5), flaw('two', 0.099)] }).long).not.toContain('Or flaw');
  });
});

describe('what to do', () => {
  it('of a repair is its verdict, the first sentence, and what not; in the long one all of it', () => {
    const { short, long } = say();
    expect(short).toContain('Verdict. Say one. Not it. Look again.');
    expect(short).not.toContain('Say two');
    expect(long).toContain('Verdict. Say one. Say two. Not it.');
    expect(short).toMatch(/What to do, step by step: @one\/cured$/);
  });
  it.each(['leave', 'wait', 'accept', 'stop'])(
    'of %s is what not to do, and why in the long one',
    (doing) => {
      const { short, long } = say({ now: act(doing) });
      expect(short).toContain('Verdict. Not it.');
      expect(short).not.toContain('Say one');
      expect(long).toContain('Verdict. Not it. Say one. Say two.');
      for (const not of ['No touch.', 'Nothing more.', 'Do not rub.', 'Don’t rub.', "Don't rub."])
        expect(say({ now: act(doing, { not }) }).short).toContain(
          `Verdict: ${not[0]?.toLowerCase()}${not.slice(1)}`,
        );
      expect(say({ now: act(doing, { not: 'Note it.' }) }).short).toContain('Verdict. Note it.');
    },
  );
  it('nobody need fear for the coat where it is left, unless something warns', () => {
    const kept = 'Nothing has to be stripped or sanded today.';
    for (const doing of ['leave', 'wait']) {
      expect(say({ now: act(doing) }).short).toContain(kept);
      expect(say({ now: act(doing) }).long).toContain(`Look again. ${kept}`);
      expect(say({ now: act(doing), warnings: [rule('r')] }).long).not.toContain(kept);
      expect(say({ now: act(doing, { sure: false }) }).long).not.toContain(kept);
    }
    for (const doing of ['accept', 'stop', 'repair'])
      expect(say({ now: act(doing) }).long).not.toContain(kept);
  });
  const wary = 'No sanding and no new coat before you know.';
  it('is no surer than the verdict: until hands are known it is left alone', () => {
    for (const [now, open] of [
      [undefined, 'how dry it is'],
      [act('repair', { sure: false }), 'what mends it'],
    ] as const) {
      const { short, long } = say({ now });
      for (const text of [short, long]) {
        expect(text).toContain(`Until we know ${open}, leave it alone. ${wary}`);
        expect(text).not.toMatch(/Verdict|Look again/);
      }
      expect(short).toMatch(/What it is, and what to do: @one\/cured$/);
      expect(say({ now }, { atOnce: 'Lift the cloth.' }).short).toContain(`Lift the cloth. ${wary}`);
    }
    expect(say({}, { atOnce: 'Lift the cloth.' }).long).not.toContain('Lift the cloth.');
  });
  it('where one flaw is sure and is left alone, that is said all the same', () => {
    for (const doing of ['leave', 'wait']) {
      const { short, long } = say({ now: act(doing, { sure: false, flaw: flaw('one', 0.95) }) });
      expect(short).toContain(`Verdict. Say one. ${wary}`);
      expect(long).toContain(`Verdict. Say one. Say two. ${wary}`);
    }
    expect(say({ now: act('repair', { sure: false, flaw: flaw('one', 0.95) }) }).short).toContain(
      'Until we know what mends it',
    );
    expect(say({ now: act('leave', { sure: false }) }).short).toContain('Until we know what mends it');
    expect(say({ now: act('leave', { sure: false }), likely: [flaw('one', 0.7)] }).short).toContain(
      'Until we know which it is',
    );
  });
  it('of a film that is wet or sets the verdict stands, sure or not, and nothing is tried on it', () => {
    const next = { kind: 'question', question: 'q', ask: 'Is it so?', how: 'Look at it.' } as const;
    for (const stage of ['wet', 'setting'] as const) {
      const { short, long } = say({ stage, next, now: act('leave', { sure: false }) });
      expect(short).toContain('Verdict. Not it.');
      expect(short).not.toContain('One thing to check');
      expect(long).toContain('One thing to check: Is it so? Look at it.');
    }
    const { short } = say({ next });
    expect(short).toContain('One thing to check: Is it so?');
    expect(short).not.toContain('Look at it.');
  });
  it('asks how dry it is, and when it was laid where that is not told', () => {
    const ask = (facts: HeardFact[]) =>
      say({ next: { kind: 'stage' } }, { heard: heardOf('x', { facts, signs: [sign(0, 1)] }) }).long;
    expect(ask([])).toContain('how dry is it, and when was the coat laid?');
    expect(ask([fact('hours-since-coat', 5, 0.5)])).toContain('and when was the coat laid?');
    expect(ask([fact('family', 'oil')])).toContain('and when was the coat laid?');
    expect(ask([fact('hours-since-coat', 5)])).toContain('how dry is it now? Do not touch it');
    expect(ask([fact('hours-since-coat', 5)])).not.toContain('when was');
    expect(say({ next: { kind: 'age' } }).long).toContain('how old is the paint or varnish below?');
    expect(say().long).not.toContain('Tell me');
  });
});

describe('what hands ask for', () => {
  const ask = (
    text: string,
    more: Partial<Considered> = {},
    heard: Partial<Heard> = {},
    options: Partial<ReplyOptions> = {},
  ) =>
    say(
      { now: act('leave'), ...more },
      { heard: heardOf(text, { signs: [sign(0, 1)], ...heard }), ...options },
    ).short;
  const film = { facts: [fact('family', 'lacquer')] };
  it('is denied first, by its own verb, two of them at most', () => {
    expect(ask('Can I sand it?', {}, film)).toMatch(/^No, do not sand it yet\./);
    expect(ask('Can I sand it, strip it or pop it?', {}, film)).toMatch(
      /^No, do not sand it and do not strip it yet\./,
    );
    for (const stage of ['wet', 'setting'] as const)
      expect(ask('Can I sand it?', { stage }, film)).toMatch(/^No, do not sand it\./);
  });
  it('is not denied where it may be right: a repair, a question about other things', () => {
    expect(ask('Can I sand it?', { now: act('repair') }, film)).not.toMatch(/^No,/);
    expect(ask('Can I sand it?', { now: act('repair', { sure: false }) }, film)).toMatch(/^No,/);
    expect(ask('Can I sand it?', { now: undefined }, film)).toMatch(/^No,/);
    expect(ask('I sanded it.', {}, film)).not.toMatch(/^No,/);
    expect(say({ now: act('leave') }).short).not.toMatch(/^No,/);
  });
  it('a cloth is left to the verdict where oil or wax, or a spill, may have to be wiped', () => {
    const open = { now: act('leave', { sure: false }) };
    for (const family of ['oil', 'hardwax-oil', 'wax'])
      expect(ask('Can I wipe it?', open, { facts: [fact('family', family)] })).not.toMatch(/^No,/);
    expect(ask('Can I wipe it?', open, film)).toMatch(/^No, do not wipe it/);
    expect(ask('Can I wipe it?', open, { facts: [fact('family', 'lacquer', 0.5)] })).not.toMatch(/^No,/);
    expect(ask('Can I wipe it?', open)).not.toMatch(/^No,/);
    const among = (values: string[]) => ({
      among: [{ fact: 'family', values, sure: 0.8, rests: [], against: [] }] as never,
    });
    expect(ask('Can I wipe it?', open, among(['lacquer', 'oil']))).not.toMatch(/^No,/);
    expect(ask('Can I wipe it?', open, among(['lacquer', 'shellac']))).toMatch(/^No,/);
    expect(ask('Can I wipe it?', open, film, { atOnce: 'Lift it.' })).not.toMatch(/^No,/);
    expect(ask('Can I wipe it or sand it?', open)).toMatch(/^No, do not sand it yet\./);
    // Where hands are known to be off, so is the cloth.
    expect(ask('Can I wipe it?', { now: act('leave') })).toMatch(/^No, do not wipe it/);
  });
  it('over wax no coat is laid', () => {
    const wax = { facts: [fact('family', 'wax')] };
    expect(ask('Can I poly over it?', {}, wax)).toMatch(/^No, lay no coat over the wax/);
    expect(ask('Can I poly over it?', {}, film)).toMatch(/^No, do not lay another coat/);
    expect(ask('Can I sand it?', {}, wax)).toMatch(/^No, do not sand it/);
  });
  it('is no answer beside a page of its own, but on a film that is wet', () => {
    const page = { title: 'P', at: '@p' };
    expect(ask('Can I sand it?', {}, film, { page })).not.toMatch(/^No,/);
    expect(ask('Can I sand it?', { stage: 'wet' }, film, { page })).toMatch(/^No,/);
  });
});

describe('dangers', () => {
  const harm = rule('h', { atOnce: ['Out now. Go.'], say: 'Call 911. Stay out.', calls: ['emergency'] });
  const ruleAt = (id: string) => `#${id}`;
  it('a rule stands first, the flaw after it, and what is over after what to do', () => {
    const { short, long } = say({ warnings: [rule('a'), rule('b'), rule('o', { isPast: true })] });
    expect(short.indexOf('First: Title a. Say a.')).toBe(0);
    expect(short.indexOf('Say b.')).toBeLessThan(short.indexOf('That looks like'));
    expect(short.indexOf('Say o.')).toBeGreaterThan(short.indexOf('Look again.'));
    expect(long.split('\n\n').slice(0, 3)).toEqual([
      'First: Title a. Say a.',
      'And: Title b. Say b.',
      'That looks like flaw one.',
    ]);
    expect(long.indexOf('Title o. Say o.')).toBeGreaterThan(long.indexOf('Verdict'));
  });
  it('a call for help leads to its rule alone, and names no flaw', () => {
    const { short, long } = say({ warnings: [harm] }, { ruleAt });
    expect(short).toBe('Out now. Go. Why, and what to do: #h');
    expect(long.split('\n\n')).toEqual([
      'Out now. Go.',
      'Title h. Call 911. Stay out.',
      'Why, and what to do: #h',
    ]);
  });
  it('without the address of a rule the page of the flaw follows', () => {
    expect(say({ warnings: [harm] }).short).toMatch(/^Out now\. Go\. .*@one\/cured$/);
  });
  it('a rule stands alone where nothing seen was told and no flaw is likely', () => {
    const alone = (chance: number, signs: readonly HeardSign[], heard = true) =>
      say(
        { likely: [flaw('one', chance)], warnings: [rule('a')] },
        { ruleAt, ...(heard && { heard: heardOf('shiny dots', { signs }) }) },
      ).short;
    expect(alone(0.59, [])).toBe('First: Title a. Say a. Why, and what to do: #a');
    expect(alone(0.6, [])).toMatch(/@one/);
    expect(alone(0.59, [sign(0, 5)])).toMatch(/@one/);
    expect(alone(0.59, [], false)).toMatch(/@one/);
  });
  it('a rule that is the page asked for stands alone', () => {
    const page = { title: 'T', at: '#a' };
    const heard = heardOf('shiny dots', { signs: [sign(0, 5)] });
    expect(say({ warnings: [rule('a')] }, { ruleAt, page, heard }).short).toMatch(/Why, and what to do: #a$/);
    expect(say({ warnings: [rule('a')] }, { ruleAt, page: { title: 'T', at: '#b' }, heard }).short).toMatch(
      /A page for that, T: #b$/,
    );
  });
  it('leaves no room for the name of the flaw where it is full, and says so', () => {
    const much = rule('a', {
      say: `${'Take care. '.repeat(1)}${'x'.repeat(430)}.`,
      lead: `${'x'.repeat(430)}.`,
    });
    const { short } = say({ warnings: [much] });
    expect(short).toContain('On the coat itself, after that: @one/cured');
    expect(short).not.toContain('looks like');
    expect(short.length).toBeLessThanOrEqual(500);
  });
  it('names no unlikely flaw beside what saves', () => {
    const save = { ...harm, say: 'Stay out.' };
    expect(say({ warnings: [save], likely: [flaw('one', 0.29)] }).short).toMatch(/after that: @one/);
    expect(say({ warnings: [save], likely: [flaw('one', 0.3)] }).short).toMatch(/step by step: @one/);
    expect(say({ warnings: [save], likely: [] }).short).toBe('Out now. Go.');
  });
});

describe('where no flaw is told', () => {
  const nothing = (more: Partial<Heard> = {}, options: Partial<ReplyOptions> = {}, chance = 0.2) =>
    say({ likely: [flaw('one', chance)] }, { heard: heardOf('What is it', more), ...options });
  it('which top coat to take leads to its page', () => {
    expect(nothing({}, { whichAt: '@w' }).short).toBe('Which top coat fits it, with the reason: @w');
  });
  it('a page that answers is named', () => {
    expect(nothing({}, { page: { title: 'Care', at: '@c' } }).short).toBe('A page for that, Care: @c');
  });
  it('what is asked for is answered in its own words, unless harm is under way', () => {
    const asksFor = { answer: 'Wait a month.', lead: 'More:', page: 'p' };
    const page = { title: 'Care', at: '@c' };
    expect(nothing({ asksFor }, { page }).short).toBe('Wait a month. More: @c');
    expect(nothing({ asksFor }, { page }).long).toBe('Wait a month.\n\nMore: @c');
    expect(nothing({ asksFor }).short).not.toContain('Wait a month.');
    const ruled = (one: ToldRule) =>
      say(
        { warnings: [one], likely: [flaw('one', 0.2)] },
        { heard: heardOf('What is it', { asksFor }), page, ruleAt: (id) => `#${id}` },
      ).short;
    expect(ruled(rule('a'))).toBe('Wait a month. First: Title a. Say a. More: @c');
    expect(ruled(rule('a', { atOnce: ['Out.'] }))).not.toContain('Wait a month.');
  });
  it('words that say too little are told to be so, and lead back', () => {
    const { short } = nothing({}, { tellAt: '@t' });
    expect(short).toMatch(
      /^From these words I cannot tell what it is\. Until we know which it is, leave it alone/,
    );
    expect(short).toMatch(/Or tell it here: @t$/);
    expect(short).not.toContain('@one');
    expect(nothing({}, { tellAt: '@t' }, 0.3).short).toContain('@one');
    expect(nothing({ signs: [sign(0, 4)] }, { tellAt: '@t' }).short).toContain('@one');
    expect(nothing({}, {}).short).toContain('@one');
    expect(say({ likely: [flaw('one', 0.2)] }, { tellAt: '@t' }).short).toContain('@one');
  });
  it('another tongue is told to be one, whatever is likely', () => {
    expect(nothing({ otherTongue: true, signs: [sign(0, 4)] }, { tellAt: '@t' }, 0.99).short).toMatch(
      /^I read only English, so I cannot tell/,
    );
  });
  it('a sign that rests on the words of a fact is nothing seen', () => {
    const over = { signs: [sign(0, 4)], facts: [{ ...fact('age', 'unknown'), rests: [{ from: 0, to: 4 }] }] };
    expect(nothing(over, { tellAt: '@t' }).short).toMatch(/^From these words/);
    const beside = {
      signs: [sign(5, 7)],
      facts: [{ ...fact('age', 'unknown'), rests: [{ from: 0, to: 4 }] }],
    };
    expect(nothing(beside, { tellAt: '@t' }).short).toContain('@one');
    const among = { fact: 'family', values: ['oil'], sure: 0.8, rests: [{ from: 0, to: 4 }], against: [] };
    expect(nothing({ signs: [sign(0, 4)], among: [among] as never }, { tellAt: '@t' }).short).toMatch(
      /^From these words/,
    );
  });
});

it('whatever is found, a short one has 500 characters at most, ends in an address, and has no hole', () => {
  const doings = fc.constantFrom('leave', 'wait', 'accept', 'stop', 'repair', 'wash-off');
  const text = fc.nat({ max: 400 }).map((length) => `${'w '.repeat(length / 2)}end.`);
  fc.assert(
    fc.property(
      fc.record({
        chance: fc.double({ min: 0, max: 1, noNaN: true }),
        stage: fc.constantFrom('wet', 'setting', 'dry-to-touch', 'cured', undefined),
        doing: doings,
        sure: fc.boolean(),
        words: text,
        warned: fc.array(text, { maxLength: 4 }),
        urgent: fc.boolean(),
      }),
      ({ chance, stage, doing, sure, words, warned, urgent }) => {
        const { short, long } = say({
          likely: [flaw('one', chance), flaw('two', (1 - chance) / 2)],
          stage,
          now: act(doing, { sure, say: words }),
          warnings: warned.map((one, at) =>
            rule(`r${at}`, { say: one, ...(urgent && !at && { atOnce: [one] }) }),
          ),
        });
        expect(short.length).toBeLessThanOrEqual(500);
        expect(short).toMatch(/@one\/\S+$/);
        expect(`${short}${long}`).not.toMatch(/undefined|\n\n\n|\n\n$|^ | {2}/);
        for (const one of warned) expect(long).toContain(one);
      },
    ),
    { numRuns: 120 },
  );
});
