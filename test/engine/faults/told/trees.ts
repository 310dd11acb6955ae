import type { Case } from './case.ts';

/** Faults of trees of questions, each with what its sentence names. */
export const OF_TREES: readonly Case[] = [
  [{ code: 'see-cycle', path: ['one', 'two', 'one'] }, ['in a circle', 'one → two → one'], ['"remedy:"']],
  [{ code: 'see-cycle', path: ['one', 'one'] }, ['back to itself'], ['"remedy:"', '"defect:"']],
  [
    { code: 'asked-twice', question: 'qq', answer: 'yes' },
    ['"qq" was asked already', 'here: yes'],
    ['under its "yes:"'],
  ],
  [{ code: 'known-already', question: 'qq', answer: 'no' }, ['"qq"', 'answered no'], ['under its "no:"']],
  [
    { code: 'same-both-ways', question: 'qq' },
    ['both answers of "qq"', 'same end'],
    ['take the question out'],
  ],
  [
    { code: 'look-alike-same', defect: 'qone', other: 'qtwo' },
    ['"qone"', '"qtwo"', 'not be told apart'],
    ['"signs:"', 'yes', 'no'],
  ],
  [
    { code: 'sign-unasked', question: 'qq' },
    ['asks "qq"', 'under "signs:"'],
    ['qq: yes', 'qq: no', 'qq: either'],
  ],
  [
    { code: 'needless-sign', question: 'qq', sign: 'mostly-no' },
    ['"qq" is mostly-no for every flaw'],
    ['remove this line'],
  ],
  [
    { code: 'mark-untold', question: 'qq', ask: 'qask', say: ['s1', 's2'] },
    ['"qq" is yes', '(qask)'],
    ['s1, s2', '"looks:"', '"also:"', 'sign to no'],
  ],
  [
    { code: 'mark-untold', question: 'qq', ask: 'qask', say: [] },
    ['"qq" is yes', '(qask)'],
    ['after "looks:"', 'sign to no'],
  ],
  [
    { code: 'sign-differs', by: 'families', question: 'qq', sign: 'no', tell: 'yes' },
    ['qq: no', '"families:" tell yes'],
    ['change the sign, or the families'],
  ],
  [
    { code: 'sign-differs', by: 'handover', question: 'qq', sign: 'no', to: 'qto', answer: 'yes' },
    ['"qto" has qq: no', '"qq" with yes'],
    ['the "no:" side', 'content/defects/qto.mdx'],
  ],
  [
    { code: 'sign-differs', by: 'others', question: 'qq', sign: 'yes', why: 'alone', ask: 'qask' },
    ['qq: yes (qask)', 'says the opposite'],
    ['sign to no', 'under looks'],
  ],
  [
    { code: 'sign-differs', by: 'others', question: 'qq', sign: 'yes', why: 'asked', ask: 'qask' },
    ['qq: yes (qask)', 'no words here tell'],
    ['sign to no'],
  ],
  [
    { code: 'sign-differs', by: 'others', question: 'qq', sign: 'no', why: 'words', ask: 'qask' },
    ['qq: no (qask)', 'the words here tell that it is so'],
    ['sign to yes', 'mostly-no'],
  ],
];
