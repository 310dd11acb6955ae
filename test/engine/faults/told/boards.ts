import type { Case } from './case.ts';

/** Faults of boards, each with what its sentence names. */
export const OF_BOARDS: readonly Case[] = [
  [
    { code: 'no-board', kind: 'defect', id: 'qid' },
    ['no picture', '"qid"'],
    ['boards: [{ base: { wood: oak }, features: [], alt: … }]', 'npm run board'],
  ],
  [
    { code: 'no-board', kind: 'question', id: 'qid' },
    ['no picture', '"qid"'],
    ['boards: { yes: { base: { wood: oak }, features: [], alt: … }, no: {', 'no-boards:'],
  ],
  [
    { code: 'off-the-board', kind: 'qkind', at: [51, 7], wide: 50, high: 37.5 },
    ['"qkind" is laid at 51, 7 mm', '50 mm wide and 37.5 mm high'],
    ['at:'],
  ],
  [
    {
      code: 'not-shown',
      kind: 'qkind',
      field: 'qf',
      mm: 400,
      wide: 50,
      why: 'large',
      bound: 50,
      board: undefined,
    },
    ['"qkind" has qf 400', 'larger', '50 mm wide'],
    ['write 50 or less'],
  ],
  [
    { code: 'not-shown', kind: 'qkind', field: 'qf', mm: 90, wide: 50, why: 'large', bound: 50, board: 90 },
    ['"qkind" has qf 90'],
    ['write 50 or less', 'width-mm: 90 or more'],
  ],
  [
    {
      code: 'not-shown',
      kind: 'qkind',
      field: 'qf',
      mm: 0.1,
      wide: 300,
      why: 'fine',
      bound: 0.63,
      board: 48,
    },
    ['qf 0.1', 'too fine', '300 mm wide'],
    ['write 0.63 or more', 'width-mm: 48 or less'],
  ],
  [
    { code: 'size-differs', said: '3 mm', in: 'looks', field: 'qf', drawn: [1, 2] },
    ['"looks:" say 3 mm', 'qf is 1 to 2'],
    ['the same measure'],
  ],
  [
    { code: 'size-differs', said: '3 mm', in: 'alt', field: 'qf', drawn: [2, 2] },
    ['"alt:" say 3 mm', 'qf is 2'],
    ['the same measure'],
  ],
];
