import { type Case, far, near } from './case.ts';

/** Faults of names and links, each with what its sentence names. */
export const OF_NAMES: readonly Case[] = [
  [{ code: 'dead-link', kind: 'remedy', id: 'qid', ...near }, ['no remedy "qid"'], ['"qnear"']],
  [
    { code: 'dead-link', kind: 'remedy', id: 'qid', ...far },
    ['no remedy "qid"'],
    ['content/remedies', 'content/remedies/qid.mdx'],
  ],
  [
    { code: 'dead-link', kind: 'source', id: 'qid', ...near, title: 'qtitle' },
    ['no source "qid"'],
    ['"qnear" (qtitle)', 'content/sources'],
  ],
  [{ code: 'dead-link', kind: 'source', id: 'qid', ...near }, ['no source "qid"'], ['"qnear";']],
  [
    { code: 'dead-link', kind: 'source', id: 'qid', ...far },
    ['no source "qid"'],
    ['content/sources/qid.mdx'],
  ],
  [
    { code: 'unknown-name', what: 'shared step', name: 'qname', ...near, in: 'content/steps.yaml' },
    ['no shared step "qname"'],
    ['"qnear"', 'content/steps.yaml'],
  ],
  [
    { code: 'unknown-name', what: 'shared step', name: 'qname', ...far, in: 'content/steps.yaml' },
    ['"qname"'],
    ['add it to content/steps.yaml'],
  ],
  [
    { code: 'still-there', kind: 'defect', id: 'qid' },
    ['defect "qid" is retired', 'content/defects/qid.mdx'],
    ['delete this line', 'delete that file'],
  ],
  [
    {
      code: 'near-name',
      kind: 'term',
      id: 'qid',
      name: 'qn',
      other: { id: 'qother', name: 'qothername' },
      isNew: true,
    },
    ['term', '"qother" (qothername)'],
    ['delete this file', 'rename this file'],
  ],
  [
    {
      code: 'near-name',
      kind: 'term',
      id: 'qid',
      name: 'qn',
      other: { id: 'qother', name: 'qothername' },
      isNew: false,
    },
    ['term "qid"', '"qother" (qothername)'],
    ['keep the older', 'rename it'],
  ],
  [
    { code: 'unused-name', what: 'shared step', name: 'qname', ...far },
    ['shared step "qname"'],
    ['- qname under "steps:"', 'delete this entry'],
  ],
  [
    { code: 'unused-name', what: 'kind of repair', name: 'qname', ...far },
    ['kind of repair "qname"'],
    ['as: qname below "now:"', 'delete this entry'],
  ],
  [
    { code: 'unused-name', what: 'kind of repair', name: 'qname', ...near },
    ['"qname"'],
    ['"qnear"', 'as: qname'],
  ],
  [
    { code: 'retired-link', kind: 'rule', id: 'qid', now: 'qnow' },
    ['rule "qid" was retired'],
    ['write "qnow"'],
  ],
  [
    { code: 'orphan', kind: 'question', id: 'qid' },
    ['no flaw asks', '"qid"'],
    ['ask: qid, yes: …, no: …', 'under "tree:"', 'delete this file'],
  ],
  [{ code: 'orphan', kind: 'source', id: 'qid' }, ['no claim', '"qid"'], ['source: qid', 'delete this file']],
  [
    { code: 'orphan', kind: 'remedy', id: 'qid' },
    ['no flaw leads to the remedy "qid"'],
    ['{ remedy: qid }', 'delete this file'],
  ],
  [
    { code: 'unreachable-defect', by: 'signs', defect: 'qd', other: 'qo' },
    ['does not come to "qd"', '"qo" comes first'],
    ['"signs:"', '"qd" yes', '"qo" no'],
  ],
  [
    { code: 'unreachable-defect', by: 'signs', defect: 'qd', other: undefined },
    ['does not come to "qd"'],
    ['"signs:"', 'otherwise than other flaws'],
  ],
  [
    { code: 'unreachable-defect', by: 'look-alike', defect: 'qd', other: 'qo' },
    ['look like "qd"'],
    ['"look-alikes:"', 'for example qo'],
  ],
  [
    { code: 'unreachable-defect', by: 'look-alike', defect: 'qd', other: undefined },
    ['look like "qd"'],
    ['"look-alikes:"'],
  ],
  [
    { code: 'unreachable-defect', by: 'name', typed: 'qt', found: ['p1', 'p2'] },
    ['types "qt"', 'p1, p2'],
    ['this page alone'],
  ],
  [
    { code: 'unreachable-defect', by: 'other name', typed: 'qt', found: [] },
    ['types "qt"', 'first three'],
    ['this page alone', 'take it out'],
  ],
  [
    { code: 'lost-address', address: '/qa/', kind: 'term', id: 'qid', ...near },
    ['/qa/', 'no term "qid"'],
    ['content/terms/qid.mdx', 'content/retired.yaml', 'term/qid: qnear'],
  ],
  [
    { code: 'lost-address', address: '/qa/', kind: 'term', id: 'qid', ...far },
    ['/qa/'],
    ['term/qid: the-name-of-its-file'],
  ],
];
