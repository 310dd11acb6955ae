/**
 * What is told where a walk stands, by a plain reading written here again: which repairs, which cautions by themselves, which
 * check, and what it all rests on.
 */
import { describe, expect, it } from 'vitest';
import {
  type Case,
  cautionsApart,
  decide,
  emptyCase,
  remediesTold,
  resolve,
  STAGES,
  walk,
  withAnswer,
  withFact,
} from '#engine/index.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import { factsOfStep } from '#engine/rules/hazards.ts';
import { known as real } from '../../content/real/knowledge.ts';
import { defect, known, question, remedy } from '../small.ts';

const ANSWERS = ['yes', 'no', 'unsure'] as const;

/** The first stops of every second flaw, with the stage told and without. */
const stops = real.defects
  .filter((_, at) => at % 2 === 1)
  .flatMap(({ id }, at) =>
    [undefined, STAGES[at % STAGES.length], 'cured' as const].flatMap((stage) => {
      const found: { id: string; on: Case; forCause: boolean }[] = [];
      const waiting: Case[] = [stage ? withFact(emptyCase(), 'stage', stage) : emptyCase()];
      for (let on = waiting.shift(); on && found.length < 7; on = waiting.shift()) {
        found.push({ id, on, forCause: stage === undefined });
        const walked = walk(real, on, id, { forCause: stage === undefined });
        if (walked.kind === 'question')
          for (const answer of ANSWERS) waiting.push(withAnswer(on, walked.question, answer));
      }
      return found;
    }),
  );

describe('at the stops of the real trees', () => {
  it('the repairs of an outcome that repairs are told, of a cause all of its own, and of a question none', () => {
    const kinds = new Set<string>();
    for (const { id, on, forCause } of stops) {
      const walked = walk(real, on, id, { forCause });
      const own = [
        ...new Set(walked.leaves.flatMap((leaf) => ('remedy' in leaf ? [leaf.remedy as string] : []))),
      ];
      const wanted =
        walked.kind === 'cause'
          ? own
          : walked.kind !== 'outcome'
            ? []
            : walked.shared
              ? [walked.shared.remedy]
              : walked.action.do === 'repair'
                ? own
                : [];
      kinds.add(
        `${walked.kind} ${wanted.length > 0} ${walked.kind === 'outcome' && walked.shared !== undefined}`,
      );
      expect([id, remediesTold(walked)]).toEqual([id, wanted]);
    }
    expect([...kinds].sort()).toEqual([
      'cause false false',
      'cause true false',
      'outcome false false',
      'outcome true false',
      'outcome true true',
      'question false false',
    ]);
  });

  it('where a walk stands is told with what belongs to that, and nothing else', () => {
    const always = ['families', 'fired', 'kind', 'leaves'];
    const decided = { stage: [], question: ['of', 'question'], cause: [], outcome: ['action', 'shared'] };
    const left = ['certain', 'check', 'unsureAt'];
    const told = {
      stage: [],
      question: ['doubted', 'from'],
      cause: left,
      outcome: [...left, 'alike', 'goOn'],
    };
    const keys = (one: object) => Object.keys(one).sort();
    const [first] = real.defects;
    if (!first) throw new Error('a flaw');
    const open = { id: first.id as string, on: emptyCase(), forCause: false };
    for (const { id, on, forCause } of [open, ...stops]) {
      const walked = walk(real, on, id, { forCause });
      const { kind } = walked;
      expect([id, kind, keys(decide(real, on, id, { forCause }))]).toEqual([
        id,
        kind,
        [...always, ...decided[kind]].sort(),
      ]);
      expect([id, kind, keys(walked)]).toEqual([
        id,
        kind,
        [...always, ...decided[kind], ...told[kind], 'trace'].sort(),
      ]);
    }
    expect(walk(real, emptyCase(), first.id).kind).toBe('stage');
  });

  it('a check is named where hands hold off for it, and not where more is asked for the cause alone', () => {
    const seen = new Set<boolean>();
    for (const { id, on, forCause } of stops) {
      const walked = walk(real, on, id, { forCause });
      if (walked.kind !== 'outcome' || !walked.goOn) continue;
      const decided = walked.alike || walked.shared !== undefined;
      seen.add(decided);
      expect([id, walked.check === undefined]).toEqual([id, decided]);
    }
    expect(seen).toContain(true);
    // A first question that this film forbids, and one behind it that changes nothing now.
    const held = known(
      question('late', { 'safe-from': 'cured' }),
      question('now'),
      remedy('a', { wet: { do: 'lift', say: 'Lift it out.', not: 'Not twice.' } }),
      remedy('b'),
      defect('flaw', {
        ask: 'late',
        yes: { remedy: 'a' },
        no: { ask: 'now', yes: { remedy: 'b' }, no: { remedy: 'b', cause: 'Another' } },
      }),
    );
    const wet = withFact(emptyCase(), 'stage', 'wet');
    expect(walk(held, wet, 'flaw')).toMatchObject({
      kind: 'outcome',
      alike: false,
      goOn: 'now',
      action: { do: 'leave' },
      check: { question: 'late', from: 'cured' },
    });
    // What can not be checked on this film is what decides, though another could be asked first and changes nothing.
    const behind = known(
      question('late', { 'safe-from': 'cured' }),
      question('now'),
      remedy('a', { wet: { do: 'lift', say: 'Lift it out.', not: 'Not twice.' } }),
      remedy('b'),
      defect('flaw', {
        ask: 'now',
        yes: { ask: 'late', yes: { remedy: 'a' }, no: { remedy: 'b' } },
        no: { ask: 'late', yes: { remedy: 'a' }, no: { remedy: 'b', cause: 'Another' } },
      }),
    );
    expect(walk(behind, wet, 'flaw')).toMatchObject({
      kind: 'outcome',
      alike: false,
      goOn: 'now',
      check: { question: 'late', from: 'cured' },
    });
    const alike = walk(held, withFact(emptyCase(), 'stage', 'setting'), 'flaw');
    expect(alike).toMatchObject({ kind: 'outcome', alike: true, goOn: 'now' });
    expect(alike).toHaveProperty('check', undefined);
  });

  it('a caution stands by itself where no step that is told has it before it', () => {
    let apart = 0;
    for (const { id, on, forCause } of stops.filter((_, at) => at % 4 === 0)) {
      const of = withFact(on, 'piece', 'food-surface');
      const walked = walk(real, of, id, { forCause });
      const shared = walked.kind === 'outcome' ? walked.shared : undefined;
      const before = new Set<string>();
      for (const one of remediesTold(walked))
        for (const step of resolve(real, one, of, walked.families))
          if (!shared || shared.at.includes(step.at))
            for (const { id: told } of step.before) before.add(told);
      const found = cautionsApart(real, of, walked).map((one) => one.id as string);
      expect(found).toEqual(
        walked.fired.cautions.map((one) => one.id as string).filter((one) => !before.has(one)),
      );
      apart += found.length;
    }
    expect(apart).toBeGreaterThan(2);
  });
});

it('a walk has gone over into another tree only where all before its question is answered', () => {
  const over = known(
    ...['one', 'two', 'three', 'four'].map((id) => question(id)),
    remedy('a'),
    remedy('b'),
    defect('flaw', { ask: 'one', yes: { defect: 'other' }, no: { remedy: 'b' } }),
    defect('other', {
      ask: 'two',
      yes: { ask: 'three', yes: { remedy: 'a' }, no: { remedy: 'b' } },
      no: { ask: 'four', yes: { remedy: 'a' }, no: { remedy: 'a', cause: 'Another' } },
    }),
  );
  const gone = withAnswer(withFact(emptyCase(), 'stage', 'cured'), 'one' as QuestionId, 'yes');
  expect(walk(over, gone, 'flaw')).toMatchObject({ kind: 'question', question: 'two', of: 'other' });
  // In doubt of two, three is asked, which lies behind it.
  expect(walk(over, withAnswer(gone, 'two' as QuestionId, 'unsure'), 'flaw')).toMatchObject({
    kind: 'question',
    question: 'three',
    of: 'flaw',
  });
  expect(walk(over, withAnswer(gone, 'two' as QuestionId, 'yes'), 'flaw')).toMatchObject({
    question: 'three',
    of: 'other',
  });
});

it('a stop at an answer names what it rests on, and where it is told by other facts, that it follows', () => {
  const follows = known(
    question('one', { known: [{ when: { family: 'wax' }, answer: 'yes' }] }),
    remedy('a'),
    remedy('b'),
    defect('flaw', { ask: 'one', yes: { remedy: 'a' }, no: { remedy: 'b' } }),
  );
  const told = withFact(withFact(emptyCase(), 'stage', 'cured', 'computed'), 'family', 'wax');
  expect(walk(follows, told, 'flaw').trace).toEqual([
    { fact: 'stage', value: 'cured', how: 'computed' },
    { fact: 'one', value: 'yes', how: 'follows' },
  ]);
  const answered = withAnswer(emptyCase(), 'one' as QuestionId, 'no');
  expect(walk(follows, answered, 'flaw', { forCause: true }).trace).toEqual([
    { fact: 'one', value: 'no', how: 'answered' },
  ]);
  expect([...factsOfStep({ kind: 'look', say: 'Look at it closely.' }).keys()]).toEqual([]);
});
