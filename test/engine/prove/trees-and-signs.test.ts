/**
 * Proofs of trees, signs and pages, a slip and beside it the same done right; each is told at its place. What hands may do
 * at which stage stands here once more, as the guide for authors has it (DEVELOPERS.md, "A remedy"). Invented knowledge.
 */
import { describe, expect, it } from 'vitest';
import { actionsFitTheStage, isWiped } from '#engine/prove/actions-fit-the-stage.ts';
import { boardsAreThere } from '#engine/prove/boards-are-there.ts';
import { everythingIsReached } from '#engine/prove/everything-is-reached.ts';
import { lookAlikesDiffer } from '#engine/prove/look-alikes-differ.ts';
import { noQuestionTwice } from '#engine/prove/no-question-twice.ts';
import { signsAgree } from '#engine/prove/signs-agree.ts';
import { signsCoverTheTree } from '#engine/prove/signs-cover-the-tree.ts';
import { proved } from './proved.ts';

const LEAVE = { leave: 'It is good as it is.' };
const question = (id: string, more: object = {}) => ({
  id,
  known: [],
  by: 'touch',
  boards: undefined,
  ...more,
});
const flaw = (id: string, more: object = {}) => ({
  id,
  tree: LEAVE,
  signs: {},
  families: ['lacquer'],
  boards: [{}],
  'look-alikes': [],
  'while-wet-rests-on': {},
  ...more,
});

describe('no question twice', () => {
  const told = (tree: object, questions: readonly object[] = []) =>
    proved(noQuestionTwice, {
      defects: [flaw('spot', { tree })],
      questions: ['a', 'b', 'c'].map((id) =>
        question(
          id,
          questions.find((one) => (one as { id: string }).id === id),
        ),
      ),
    });
  const ask = (id: string, yes: object, no: object) => ({ ask: id, yes, no });
  const other = { remedy: 'mend' };

  it('what was asked higher up is told at the second asking, with the answer that it had', () => {
    expect(told(ask('a', ask('b', ask('a', LEAVE, other), LEAVE), other))).toEqual([
      { file: 'spot.mdx', at: 'tree.yes.yes.ask', code: 'asked-twice', question: 'a', answer: 'yes' },
    ]);
    expect(told(ask('a', LEAVE, ask('a', LEAVE, other)))).toEqual([
      { file: 'spot.mdx', at: 'tree.no.ask', code: 'asked-twice', question: 'a', answer: 'no' },
    ]);
    expect(told(ask('a', ask('b', LEAVE, other), ask('b', other, LEAVE)))).toEqual([]);
  });
  it('what the answers above tell is known already', () => {
    const rules = [{ id: 'b', known: [{ when: { a: 'yes' }, answer: 'no' }] }];
    expect(told(ask('a', ask('b', LEAVE, other), other), rules)).toEqual([
      { file: 'spot.mdx', at: 'tree.yes.ask', code: 'known-already', question: 'b', answer: 'no' },
    ]);
    expect(told(ask('a', other, ask('b', LEAVE, other)), rules)).toEqual([]);
    expect(told(ask('b', ask('a', LEAVE, other), other), rules)).toEqual([]);
  });
  it('a question both of whose answers end alike is without consequence', () => {
    expect(told(ask('a', LEAVE, LEAVE))).toEqual([
      { file: 'spot.mdx', at: 'tree.ask', code: 'same-both-ways', question: 'a' },
    ]);
    expect(told(ask('a', LEAVE, other))).toEqual([]);
  });
});

describe('signs and trees', () => {
  const a = { ask: 'a', yes: { defect: 'rust' }, no: { ask: 'b', yes: { defect: 'rust' }, no: LEAVE } };
  it('what a tree asks has a sign', () => {
    expect(proved(signsCoverTheTree, { defects: [flaw('spot', { tree: a, signs: { a: 'yes' } })] })).toEqual([
      { file: 'spot.mdx', at: 'tree.no.ask', code: 'sign-unasked', question: 'b' },
    ]);
    expect(
      proved(signsCoverTheTree, { defects: [flaw('spot', { tree: a, signs: { a: 'yes', b: 'no' } })] }),
    ).toEqual([]);
  });
  it('a tree hands over on answers that the other flaw shows', () => {
    const told = (signs: object) =>
      proved(signsAgree, { defects: [flaw('rust', { signs }), flaw('spot', { tree: a })] }).map((one) => [
        one.at,
        one['question'],
        one['sign'],
        one['answer'],
        one['to'],
        one['by'],
      ]);
    expect(told({ a: 'yes' })).toEqual([['tree.no.yes', 'a', 'yes', 'no', 'rust', 'handover']]);
    expect(told({ a: 'no' })).toEqual([['tree.yes', 'a', 'no', 'yes', 'rust', 'handover']]);
    expect(told({ b: 'no' })).toEqual([['tree.no.yes', 'b', 'no', 'yes', 'rust', 'handover']]);
    for (const signs of [{ b: 'yes' }, { a: 'either', b: 'mostly-no' }, { a: 'mostly-yes' }, { c: 'no' }, {}])
      expect(told(signs)).toEqual([]);
  });
  it('what the kinds of top coat tell is the sign', () => {
    const questions = [
      question('oily', {
        known: [
          { when: { family: 'oil' }, answer: 'yes' },
          { when: { family: 'lacquer' }, answer: 'no' },
        ],
      }),
    ];
    const told = (sign: string | undefined, families: readonly string[]) =>
      proved(signsAgree, { questions, defects: [flaw('spot', { signs: { oily: sign }, families })] }).map(
        (one) => [one.at, one['by'], one['sign'], one['tell']],
      );
    expect(told('no', ['oil'])).toEqual([['signs.oily', 'families', 'no', 'yes']]);
    expect(told('either', ['oil'])).toEqual([['signs.oily', 'families', 'either', 'yes']]);
    expect(told('yes', ['lacquer'])).toEqual([['signs.oily', 'families', 'yes', 'no']]);
    expect(told('yes', ['oil'])).toEqual([]);
    expect(told('no', ['lacquer'])).toEqual([]);
    // Now yes, now no: neither is the sign.
    for (const sign of ['yes', 'no'])
      expect(told(sign, ['oil', 'lacquer'])).toEqual([['signs.oily', 'families', sign, 'now yes, now no']]);
    for (const sign of ['either', 'mostly-yes', 'mostly-no'])
      expect(told(sign, ['oil', 'lacquer'])).toEqual([]);
    // Of a kind that tells nothing of it, nothing follows.
    for (const sign of ['yes', 'no', 'either']) expect(told(sign, ['oil', 'wax'])).toEqual([]);
    expect(told(undefined, ['oil'])).toEqual([]);
  });
  it('look-alikes are told apart by a yes in one and a no in the other', () => {
    const told = (one: object, other: object) =>
      proved(lookAlikesDiffer, {
        defects: [
          flaw('rust', { signs: other }),
          flaw('spot', { signs: one, 'look-alikes': ['spot2', 'rust'] }),
          flaw('spot2', { signs: { a: 'no' } }),
        ],
      }).map(({ at, code, ...more }) => [at, code, more['defect'], more['other']]);
    expect(told({ a: 'yes' }, { a: 'no' })).toEqual([]);
    expect(told({ a: 'yes', b: 'no' }, { b: 'yes' })).toEqual([]);
    const alike = [['look-alikes.1', 'look-alike-same', 'spot', 'rust']];
    expect(told({ a: 'yes' }, { a: 'yes' })).toEqual(alike);
    expect(told({ a: 'yes' }, { b: 'no' })).toEqual(alike);
    expect(told({ a: 'yes' }, { a: 'mostly-no' })).toEqual(alike);
    expect(told({ a: 'yes', b: 'either' }, { b: 'no' })).toEqual(alike);
    expect(told({}, {})).toHaveLength(2);
  });
});

describe('nothing is left over', () => {
  const remedy = (id: string, next?: string) => ({
    id,
    'if-not': { say: 'Again.', ...(next && { remedy: next }) },
  });
  const claim = (source?: string) => ({ claims: [{ says: 'x' }, { says: 'y', ...(source && { source }) }] });
  const told = (lists: object) =>
    proved(everythingIsReached, lists).map(
      ({ file, at, code, kind, id }) => `${file} ${at} ${code} ${kind} ${id}`,
    );
  it('a repair is led to by a tree, or by another that failed', () => {
    const tree = { ask: 'q', yes: { remedy: 'one' }, no: LEAVE };
    const remedies = [remedy('one', 'two'), remedy('two'), remedy('six')];
    expect(told({ defects: [flaw('spot', { tree })], remedies, questions: [question('q')] })).toEqual([
      'six.mdx (file) orphan remedy six',
    ]);
  });
  it('a question is asked by a tree, or is a sign', () => {
    const tree = { ask: 'asked', yes: LEAVE, no: LEAVE };
    const questions = ['asked', 'shown', 'idle'].map((id) => question(id));
    expect(told({ defects: [flaw('spot', { tree, signs: { shown: 'no' } })], questions })).toEqual([
      'idle.mdx (file) orphan question idle',
    ]);
  });
  it.each(['defects', 'remedies', 'rules', 'products', 'lessons', 'questions'])(
    'a source bears a claim of %s',
    (plural) => {
      const bearer =
        plural === 'defects'
          ? flaw('spot', claim('book'))
          : { ...remedy('spot', 'spot'), ...question('spot'), ...claim('book') };
      const lists = { sources: [{ id: 'book' }, { id: 'idle' }], [plural]: [bearer] };
      expect(told(lists).filter((one) => one.includes('source'))).toEqual([
        'idle.mdx (file) orphan source idle',
      ]);
    },
  );
  it('or what is said while the coat is wet', () => {
    expect(
      told({
        sources: [{ id: 'book' }],
        defects: [flaw('spot', { 'while-wet-rests-on': { source: 'book' } })],
      }),
    ).toEqual([]);
    expect(told({ sources: [{ id: 'book' }], defects: [flaw('spot')] })).toEqual([
      'book.mdx (file) orphan source book',
    ]);
  });
});

describe('boards', () => {
  const told = (lists: object) =>
    proved(boardsAreThere, lists).map(({ at, code, kind, id }) => [at, code, kind, id]);
  it('every flaw has one, and every question of looking a pair or a reason', () => {
    expect(told({ defects: [flaw('spot'), flaw('rust', { boards: [] })] })).toEqual([
      ['(file)', 'no-board', 'defect', 'rust'],
    ]);
    expect(
      told({
        questions: [question('a', { by: 'look' }), question('b'), question('c', { by: 'look', boards: {} })],
      }),
    ).toEqual([['(file)', 'no-board', 'question', 'a']]);
    expect(told({ questions: [question('a', { by: 'look', 'no-boards': 'Since.' })] })).toEqual([]);
    expect(told({ questions: [question('a', { by: 'look', boards: {}, 'no-boards': 'Since.' })] })).toEqual([
      ['no-boards', 'needless-exception', undefined, undefined],
    ]);
  });
});

describe('what hands may do', () => {
  /** By the guide: of a film, and in brackets of wax and oil too. */
  const MAY: Readonly<Record<string, string>> = {
    wet: 'leave lift tip-off wick wash-off stop (wipe-back)',
    setting: 'leave stop',
    'dry-to-touch': 'leave wait accept stop (wipe-back)',
    recoatable: 'repair accept wait leave stop',
    cured: 'repair accept wait leave stop',
  };
  const ALL = 'leave wait lift tip-off wick wash-off wipe-back repair accept stop'.split(' ');
  const now = (stage: string, doing: string) =>
    Object.fromEntries(Object.keys(MAY).map((one) => [one, { do: one === stage ? doing : 'leave' }]));

  it.each(Object.entries(MAY))('to a film that is %s', (stage, may) => {
    for (const families of [['lacquer'], ['oil', 'lacquer'], ['oil', 'wax'], ['hardwax-oil'], ['wipe-on']]) {
      const isOpen = families.every((family) => family !== 'lacquer');
      for (const doing of ALL) {
        const told = proved(actionsFitTheStage, {
          defects: [flaw('spot', { families, tree: { ask: 'q', yes: { remedy: 'mend' }, no: LEAVE } })],
          remedies: [{ id: 'mend', now: now(stage, doing) }],
        });
        const words = may.split(' ');
        const fits = words.includes(doing) || (isOpen && words.includes(`(${doing})`));
        expect(told.map(({ at, code }) => [at, code])).toEqual(
          fits ? [] : [[`now.${stage}.do`, 'touches-setting']],
        );
        if (told[0]) {
          expect(told[0]).toMatchObject({ stage, doing });
          const allowed = words
            .map((one) => (isOpen ? one.replace(/[()]/g, '') : one))
            .filter((one) => !one.startsWith('('));
          expect([...(told[0]['allowed'] as string[])].sort()).toEqual(allowed.sort());
        }
      }
    }
  });
  it('a repair that no tree leads to counts as one of a film', () => {
    const told = proved(actionsFitTheStage, { remedies: [{ id: 'mend', now: now('wet', 'wipe-back') }] });
    expect(told).toHaveLength(1);
    expect(isWiped()).toBe(false);
    expect(isWiped(new Set(['oil']))).toBe(true);
    expect(isWiped(new Set(['oil', 'shellac']))).toBe(false);
  });
  it('a repair of two flaws has the kinds of both', () => {
    const tree = { remedy: 'mend' };
    const remedies = [{ id: 'mend', now: now('wet', 'wipe-back') }];
    const both = (one: string, other: string) =>
      proved(actionsFitTheStage, {
        remedies,
        defects: [flaw('a', { tree, families: [one] }), flaw('b', { tree, families: [other] })],
      });
    expect(both('oil', 'wax')).toEqual([]);
    expect(both('oil', 'lacquer')).toHaveLength(1);
    expect(both('lacquer', 'oil')).toHaveLength(1);
  });
});
