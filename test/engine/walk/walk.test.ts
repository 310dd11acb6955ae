import { describe, expect, it } from 'vitest';
import { type Case, decide, emptyCase, possible, walk, withAnswer, withFact } from '#engine/index.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import { act, defect, known, question, remedy, rule } from '../small.ts';

const q = (id: string) => id as QuestionId;
const at = (stage: 'wet' | 'setting' | 'dry-to-touch' | 'recoatable' | 'cured') =>
  withFact(emptyCase(), 'stage', stage);

const tree = {
  ask: 'one',
  yes: { remedy: 'a' },
  no: { ask: 'two', yes: { remedy: 'b' }, no: { leave: 'This is how it looks.' } },
};
const small = known(question('one'), question('two'), remedy('a'), remedy('b'), defect('flaw', tree));

describe('walk', () => {
  it('asks how dry the film is before anything else', () => {
    expect(walk(small, emptyCase(), 'flaw').kind).toBe('stage');
  });

  it('stops early where every cause still possible asks for the same hands', () => {
    const walked = walk(small, at('setting'), 'flaw');
    expect(walked).toMatchObject({
      kind: 'outcome',
      certain: false,
      goOn: 'one',
      action: { do: 'leave', verdict: 'Verdict leave' },
    });
    expect(walked.leaves).toHaveLength(3);
  });

  it('goes on to the cause when asked to', () => {
    expect(walk(small, at('setting'), 'flaw', { forCause: true })).toMatchObject({
      kind: 'question',
      question: 'one',
    });
  });

  it('asks where the answer changes what to do', () => {
    expect(walk(small, at('recoatable'), 'flaw')).toMatchObject({ kind: 'question', question: 'one' });
    const second = withAnswer(at('recoatable'), q('one'), 'no');
    expect(walk(small, second, 'flaw')).toMatchObject({ kind: 'question', question: 'two' });
    expect(walk(small, withAnswer(second, q('two'), 'no'), 'flaw')).toMatchObject({
      kind: 'outcome',
      certain: true,
      action: { do: 'accept', say: 'This is how it looks.' },
    });
  });

  it('keeps both branches for cannot tell, and holds off where they ask for different hands', () => {
    const walked = walk(small, withAnswer(at('cured'), q('one'), 'unsure'), 'flaw');
    expect(walked).toMatchObject({
      kind: 'outcome',
      unsureAt: 'one',
      action: { do: 'leave', verdict: 'Verdict unsure' },
    });
    expect(walked.leaves).toHaveLength(3);
  });

  it('asks on after cannot tell where another answer can settle it, and what settles it first', () => {
    const joined = known(
      question('one'),
      question('two'),
      question('three'),
      remedy('a'),
      remedy('b'),
      remedy('c'),
      defect('flaw', {
        ask: 'one',
        yes: { ask: 'two', yes: { remedy: 'a', cause: 'Here' }, no: { remedy: 'b' } },
        no: { ask: 'three', yes: { remedy: 'a', cause: 'There' }, no: { remedy: 'a', cause: 'Elsewhere' } },
      }),
    );
    const doubts = withAnswer(at('cured'), q('one'), 'unsure');
    const asking = walk(joined, doubts, 'flaw');
    expect(asking).toMatchObject({ kind: 'question', question: 'two', doubted: ['one'] });
    const settled = walk(joined, withAnswer(doubts, q('two'), 'yes'), 'flaw');
    expect(settled).toMatchObject({
      kind: 'outcome',
      certain: false,
      alike: true,
      action: { do: 'repair', say: 'Repair by a.' },
    });
    expect(settled.leaves).toHaveLength(3);
    // Nothing joins b and a any more, so nothing more is asked.
    expect(walk(joined, withAnswer(doubts, q('two'), 'no'), 'flaw')).toMatchObject({
      kind: 'outcome',
      alike: false,
      unsureAt: 'one',
      check: { question: 'one', yes: { action: { say: 'Repair by b.' } } },
    });
  });

  it('asks no further once she could not tell twice, and names the check that settles most', () => {
    const twice = known(
      ...['one', 'two', 'three'].map((id) => question(id)),
      ...['a', 'b', 'c'].map((id) => remedy(id)),
      defect('flaw', {
        ask: 'one',
        yes: { ask: 'two', yes: { remedy: 'a' }, no: { remedy: 'b' } },
        no: { ask: 'three', yes: { remedy: 'a' }, no: { remedy: 'a', cause: 'Another' } },
      }),
    );
    const once = withAnswer(at('cured'), q('one'), 'unsure');
    const walked = walk(twice, withAnswer(once, q('two'), 'unsure'), 'flaw');
    // To know two would end it one way alone, to know one ends it the other way: of equals the first that was asked.
    expect(walked).toMatchObject({
      kind: 'outcome',
      alike: false,
      unsureAt: 'one',
      check: { question: 'one' },
    });
    const surely = known(
      ...['one', 'two', 'three'].map((id) => question(id)),
      ...['a', 'b', 'c'].map((id) => remedy(id)),
      defect('flaw', {
        ask: 'one',
        yes: { ask: 'two', yes: { remedy: 'a' }, no: { remedy: 'b' } },
        no: { ask: 'two', yes: { remedy: 'a' }, no: { remedy: 'b' } },
      }),
    );
    const both = withAnswer(withAnswer(at('cured'), q('one'), 'unsure'), q('two'), 'unsure');
    expect(walk(surely, both, 'flaw')).toMatchObject({ unsureAt: 'two', check: { question: 'two' } });
  });

  it('stays with the flaw while it is in doubt whether it is another, and hands over once it surely is', () => {
    const linked = known(
      question('one'),
      question('two'),
      remedy('a'),
      remedy('b'),
      defect('flaw', { ask: 'one', yes: { defect: 'other' }, no: { remedy: 'a' } }),
      defect('other', { ask: 'two', yes: { remedy: 'a' }, no: { remedy: 'b' } }),
    );
    const asked = (answer: 'yes' | 'unsure') =>
      walk(linked, withAnswer(at('cured'), q('one'), answer), 'flaw');
    expect(asked('unsure')).toMatchObject({ kind: 'question', question: 'two', of: 'flaw' });
    expect(asked('yes')).toMatchObject({ kind: 'question', question: 'two', of: 'other' });
  });

  it('begins no repair that one of the causes is not yet repaired by, however alike their steps', () => {
    const steps = [
      { kind: 'sand', grit: 400, say: 'Sand it level by hand.' },
      { kind: 'wipe', with: 'dry-cloth', say: 'Wipe the dust off.' },
    ];
    const begun = (...acts: readonly string[]) =>
      decide(
        known(
          question('one'),
          ...acts.map((doing, at) => remedy(`mend-${at}`, { recoatable: act(doing) }, { steps })),
          defect('flaw', { ask: 'one', yes: { remedy: 'mend-0' }, no: { remedy: 'mend-1' } }),
        ),
        withAnswer(at('recoatable'), q('one'), 'unsure'),
        'flaw',
      );
    expect(begun('repair', 'repair')).toMatchObject({ action: { do: 'repair' }, shared: { at: [0, 1] } });
    for (const acts of [
      ['repair', 'wait'],
      ['wait', 'repair'],
    ])
      expect(begun(...acts)).toMatchObject({ action: { do: 'leave' }, shared: undefined });
  });

  it('ends the way to the cause at a doubt: what other answers settle is hands, not the cause', () => {
    const doubts = withAnswer(emptyCase(), q('one'), 'unsure');
    expect(walk(small, doubts, 'flaw', { forCause: true })).toMatchObject({ kind: 'cause', unsureAt: 'one' });
  });

  it('says of a check on an open film whether its answer is of use only while the film flows', () => {
    const moves = (doing: string) =>
      known(
        question('one'),
        remedy('a', { wet: act(doing) }),
        remedy('b', { wet: act('leave') }),
        defect('flaw', { ask: 'one', yes: { remedy: 'a' }, no: { remedy: 'b' } }),
      );
    const doubts = withAnswer(at('wet'), q('one'), 'unsure');
    expect(walk(moves('lift'), doubts, 'flaw')).toMatchObject({ check: { passes: true } });
    expect(walk(moves('stop'), doubts, 'flaw')).toMatchObject({ check: { passes: false } });
    expect(walk(small, withAnswer(at('cured'), q('one'), 'unsure'), 'flaw')).toMatchObject({
      check: { passes: false },
    });
  });

  it('acts in spite of cannot tell where both branches ask for the same', () => {
    const same = known(
      question('one'),
      remedy('a'),
      defect('flaw', {
        ask: 'one',
        yes: { remedy: 'a', cause: 'This one' },
        no: { remedy: 'a', cause: 'That one' },
      }),
    );
    expect(walk(same, withAnswer(at('cured'), q('one'), 'unsure'), 'flaw')).toMatchObject({
      action: { do: 'repair' },
    });
  });

  it('does not ask what the film forbids to check, and leaves both ends open', () => {
    const careful = known(
      question('one', { 'safe-from': 'recoatable' }),
      remedy('a', { wet: act('lift') }),
      remedy('b'),
      defect('flaw', { ask: 'one', yes: { remedy: 'a' }, no: { remedy: 'b' } }),
    );
    expect(walk(careful, at('wet'), 'flaw')).toMatchObject({
      kind: 'outcome',
      goOn: undefined,
      action: { verdict: 'Verdict unsure' },
    });
    expect(walk(careful, at('recoatable'), 'flaw')).toMatchObject({ kind: 'question', question: 'one' });
  });

  it('never asks what other facts already tell, through several steps', () => {
    const linked = known(
      question('one', { known: [{ when: { two: 'yes' }, answer: 'no' }] }),
      question('two', { known: [{ when: { family: ['shellac', 'lacquer'] }, answer: 'yes' }] }),
      remedy('a'),
      remedy('b'),
      defect('flaw', { ask: 'one', yes: { remedy: 'a' }, no: { remedy: 'b' } }),
      defect('other', { ask: 'two', yes: { remedy: 'a' }, no: { remedy: 'b' } }),
    );
    const walked = walk(linked, withFact(at('cured'), 'family', 'shellac'), 'flaw');
    expect(walked).toMatchObject({ kind: 'outcome', certain: true });
    expect(walked.leaves).toMatchObject([{ remedy: 'b' }]);
    expect(walked.trace).toContainEqual({ fact: 'one', value: 'no', how: 'follows' });
  });

  it('takes rules that lean on each other in a circle as unknown', () => {
    const circle = known(
      question('one', { known: [{ when: { two: 'yes' }, answer: 'yes' }] }),
      question('two', { known: [{ when: { one: 'yes' }, answer: 'yes' }] }),
      remedy('a'),
      remedy('b'),
      defect('flaw', { ask: 'one', yes: { remedy: 'a' }, no: { remedy: 'b' } }),
      defect('other', { ask: 'two', yes: { remedy: 'a' }, no: { remedy: 'b' } }),
    );
    expect(walk(circle, at('cured'), 'flaw')).toMatchObject({ kind: 'question', question: 'one' });
  });

  it('follows a hand-over into the other tree and says whose question it is', () => {
    const linked = known(
      question('one'),
      question('two'),
      remedy('a'),
      remedy('b'),
      defect('flaw', { ask: 'one', yes: { defect: 'other' }, no: { remedy: 'a' } }),
      defect('other', { ask: 'two', yes: { remedy: 'a' }, no: { remedy: 'b' } }),
    );
    expect(walk(linked, withAnswer(at('cured'), q('one'), 'yes'), 'flaw')).toMatchObject({
      kind: 'question',
      question: 'two',
      of: 'other',
    });
    expect(possible(linked, emptyCase(), 'flaw').leaves.map((leaf) => leaf.of)).toEqual([
      'other',
      'other',
      'flaw',
    ]);
  });

  it('uses the overdue act only for a film that is overdue', () => {
    const late = known(remedy('a', { overdue: act('repair') }), defect('flaw', { remedy: 'a' }));
    expect(walk(late, at('setting'), 'flaw')).toMatchObject({ action: { do: 'leave' } });
    expect(walk(late, withFact(at('setting'), 'overdue', 'yes'), 'flaw')).toMatchObject({
      action: { do: 'repair' },
    });
    expect(walk(late, withFact(at('wet'), 'overdue', 'yes'), 'flaw')).toMatchObject({
      action: { do: 'leave' },
    });
  });

  it('fires a stop whatever the tree says, and step rules only where the steps lie ahead', () => {
    const ruled = known(
      rule('crib', { kind: 'stop', level: 'stop', open: 'When it is settled.', when: { piece: 'crib' } }),
      rule('dust', { hazards: ['dust'] }),
      rule('lead', {
        kind: 'stop',
        level: 'stop',
        open: 'When it is settled.',
        hazards: ['dust'],
        when: { age: ['before-1993', 'unknown'] },
        'unless-known-no': true,
      }),
      remedy(
        'a',
        {},
        {
          steps: [
            { kind: 'sand', grit: 320, say: 'Sand by hand, lightly.' },
            { kind: 'wipe', with: 'dry-cloth', say: 'Wipe the dust off.' },
          ],
        },
      ),
      defect('flaw', { remedy: 'a' }),
    );
    const ids = (list: readonly { id: string }[]) => list.map((one) => one.id);
    expect(ids(walk(ruled, withFact(at('setting'), 'piece', 'crib'), 'flaw').fired.stops)).toEqual(['crib']);
    expect(walk(ruled, at('setting'), 'flaw').fired.cautions).toEqual([]);
    const repair = walk(ruled, at('cured'), 'flaw').fired;
    expect(ids(repair.cautions)).toEqual(['dust']);
    expect(ids(repair.stops)).toEqual(['lead']);
    expect(ids(walk(ruled, withFact(at('cured'), 'age', 'since-1993'), 'flaw').fired.stops)).toEqual([]);
  });

  it('warns of no step that the facts leave out', () => {
    const ruled = known(
      rule('dust', { hazards: ['dust'] }),
      remedy(
        'a',
        {},
        {
          steps: [
            { kind: 'sand', grit: 320, when: { family: 'shellac' }, say: 'Sand by hand, lightly.' },
            { kind: 'wipe', with: 'dry-cloth', say: 'Wipe the dust off.' },
          ],
        },
      ),
      defect('flaw', { remedy: 'a' }, { families: ['shellac', 'wax'] }),
      defect('other', { remedy: 'a' }, { families: ['wax', 'oil'] }),
    );
    const cautions = (on: Case, flaw = 'flaw') => walk(ruled, on, flaw).fired.cautions.map(({ id }) => id);
    expect(cautions(withFact(at('cured'), 'family', 'shellac'))).toEqual(['dust']);
    expect(cautions(withFact(at('cured'), 'family', 'wax'))).toEqual([]);
    expect(cautions(at('cured'))).toEqual(['dust']);
    expect(cautions(at('cured'), 'other')).toEqual([]);
  });

  it('is pure: the case is not changed', () => {
    const on = Object.freeze(at('cured'));
    walk(small, on, 'flaw');
    expect(on).toEqual(at('cured'));
  });
});

describe('a check that decides', () => {
  const sanding = { kind: 'sand', grit: 320, say: 'Sand it level with a block.' };
  const dust = { kind: 'wipe', with: 'damp-cloth', say: 'Wipe off the dust.' };
  const coat = { kind: 'coat', product: 'same', say: 'Lay one thin coat.' };
  const alike = known(
    question('qa'),
    question('late', { 'safe-from': 'cured' }),
    remedy('thin', {}, { steps: [sanding, dust, coat] }),
    remedy('slow', {}, { steps: [sanding, dust, { kind: 'mix', what: 'stir', say: 'Stir slowly.' }, coat] }),
    remedy('strip', {}, { steps: [{ kind: 'strip', with: 'stripper', say: 'Take all of it off.' }] }),
    defect('alike', { ask: 'qa', yes: { remedy: 'thin' }, no: { remedy: 'slow' } }),
    defect('other', { ask: 'qa', yes: { remedy: 'thin' }, no: { remedy: 'strip' } }),
    defect('late-check', { ask: 'late', yes: { remedy: 'thin' }, no: { remedy: 'strip' } }),
  );
  const unsure = withAnswer(withFact(emptyCase(), 'stage', 'recoatable'), 'qa' as QuestionId, 'unsure');

  it('gives the steps that repairs share where she cannot tell, and says what both answers mean', () => {
    const walked = walk(alike, unsure, 'alike');
    expect(walked).toMatchObject({
      action: { do: 'repair', verdict: 'Verdict begin' },
      shared: { remedy: 'thin', at: [0, 1] },
      check: { question: 'qa', yes: { action: { say: 'Repair by thin.' } } },
    });
  });

  it('leaves the film alone where repairs begin with different hands', () => {
    expect(walk(alike, unsure, 'other')).toMatchObject({ action: { do: 'leave' }, shared: undefined });
  });

  it('says from when a check that would harm now can be made', () => {
    const soon = withFact(emptyCase(), 'stage', 'recoatable');
    expect(walk(alike, soon, 'late-check')).toMatchObject({ check: { question: 'late', from: 'cured' } });
  });

  it('takes a fact that comes later for the answer that she could not give', () => {
    const knows = known(
      question('qa', { known: [{ when: { family: 'oil' }, answer: 'yes' }] }),
      remedy('thin'),
      remedy('strip'),
      defect('flaw', { ask: 'qa', yes: { remedy: 'thin' }, no: { remedy: 'strip' } }),
    );
    const told = withFact(unsure, 'family', 'oil');
    expect(walk(knows, told, 'flaw')).toMatchObject({ leaves: [{ remedy: 'thin' }] });
  });
});
