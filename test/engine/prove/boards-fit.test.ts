/**
 * A board shows what it says: on the piece, no finer than its 480 pixels, and of the size that the words give; measures
 * reckoned by hand (1 cm is 10 mm). Invented boards.
 */
import { describe, expect, it } from 'vitest';
import { boardFaults, boardsFit } from '#engine/prove/boards-fit.ts';
import { proved } from './proved.ts';

type Feature = Record<string, unknown>;
const board = (features: readonly Feature[], more: object = {}) => ({
  'width-mm': 100,
  base: { wood: 'oak' },
  features,
  alt: 'A board.',
  ...more,
});
const found = (recipe: object, text = ''): readonly Record<string, unknown>[] =>
  [...boardFaults(recipe as never, text)].map(([fault, path]) => ({ ...fault, path: path.join('.') }));
const codes = (recipe: object, text = '') => found(recipe, text).map(({ code, path }) => `${code} ${path}`);

describe('on the piece', () => {
  it('nothing is laid beyond its edges; it is three quarters as high as wide', () => {
    const at = (x: number, y: number) => codes(board([{ kind: 'drop' }, { kind: 'drop', at: [x, y] }]));
    for (const [x, y] of [
      [0, 0],
      [100, 75],
      [50, 20],
    ] as const)
      expect(at(x, y)).toEqual([]);
    for (const [x, y] of [
      [100.1, 0],
      [0, 75.1],
      [120, 90],
    ] as const)
      expect(at(x, y)).toEqual(['off-the-board features.1.at']);
    expect(found(board([{ kind: 'drop', at: [120, 20] }]))[0]).toMatchObject({
      kind: 'drop',
      at: [120, 20],
      wide: 100,
      high: 75,
    });
    expect(codes(board([{ kind: 'drop', at: undefined }]))).toEqual([]);
  });
  it('nothing is larger than it', () => {
    expect(codes(board([{ kind: 'a' }, { kind: 'ring', 'diameter-mm': 100 }]))).toEqual([]);
    const [large] = found(board([{ kind: 'a' }, { kind: 'ring', 'diameter-mm': 120 }]));
    expect(large).toMatchObject({
      code: 'not-shown',
      path: 'features.1.diameter-mm',
      kind: 'ring',
      field: 'diameter-mm',
      mm: 120,
      why: 'large',
      bound: 100,
      board: 120,
      wide: 100,
    });
    // From the least of two on; no board is wider than 300 mm.
    expect(codes(board([{ kind: 'ring', 'diameter-mm': [90, 120] }]))).toEqual([]);
    expect(found(board([{ kind: 'ring', 'diameter-mm': [300, 320] }]))[0]?.['board']).toBe(300);
    expect(found(board([{ kind: 'ring', 'diameter-mm': 301 }]))[0]?.['board']).toBeUndefined();
    expect(codes(board([{ kind: 'ring', diameter: 500, count: 900 }]))).toEqual([]);
  });
  it('nothing is finer than one of 480 pixels', () => {
    // 100 mm across 480 pixels: 0.208 mm each.
    expect(codes(board([{ kind: 'nibs', 'size-mm': 0.21 }]))).toEqual([]);
    const [fine] = found(board([{ kind: 'nibs', 'size-mm': 0.2 }]));
    expect(fine).toMatchObject({
      code: 'not-shown',
      path: 'features.0.size-mm',
      mm: 0.2,
      why: 'fine',
      bound: 0.21,
      board: 96,
    });
    // By the most of two; nothing is no size.
    expect(codes(board([{ kind: 'nibs', 'size-mm': [0.1, 0.3] }]))).toEqual([]);
    expect(codes(board([{ kind: 'nibs', 'size-mm': [0.1, 0.2] }]))).toHaveLength(1);
    expect(codes(board([{ kind: 'nibs', 'size-mm': 0 }]))).toEqual([]);
    // No board is narrower than 8 mm.
    expect(found(board([{ kind: 'nibs', 'size-mm': 8 / 480 }]))[0]?.['board']).toBe(8);
    expect(found(board([{ kind: 'nibs', 'size-mm': 0.015 }]))[0]?.['board']).toBeUndefined();
  });
});

describe('as the words say', () => {
  const ring = (size: unknown, alt = 'A board.') =>
    board(
      [
        { kind: 'a' },
        {
          kind: 'ring',
          'diameter-mm': size,
          'length-mm': 50,
          'spacing-mm': 20,
          'inset-mm': 9,
          'pitch-mm': 33,
        },
      ],
      { alt },
    );
  it('a measure is that of the field that the words behind it name', () => {
    for (const [text, isRight] of [
      ['rings 5 mm across', true],
      ['rings 5 mm wide', true],
      ['rings 5 mm in diameter', true],
      ['rings 6 mm across', false],
      ['rings 0.5 cm across', true],
      ['rings 4–6 mm across', true],
      ['rings 4 to 6 mm across', true],
      ['rings 4-6 mm across', true],
      ['rings 6-8 mm across', false],
      ['rings (5 mm) across', true],
      ['rings (6 mm) across', false],
      ['rings up to 6 mm across', true],
      ['rings under 6 mm across', true],
      ['rings below 6 mm across', true],
      ['rings no more than 6 mm across', true],
      ['rings no bigger than 6 mm across', true],
      ['rings up to 4 mm across', false],
      ['50 mm long', true],
      ['5 cm long', true],
      ['40 mm long', false],
      ['20 mm apart', true],
      ['33 mm apart', true],
      ['25 mm apart', false],
      ['20 mm from each other', true],
      ['9 mm in from the edge', true],
      ['8 mm in from the edge', false],
      // No words of a field stand behind it.
      ['6 mm', true],
      ['6 mm thick', true],
      ['1/6 mm across', true],
      ['60 m across', true],
    ] as const) {
      expect(codes(ring(5), text).length, text).toBe(isRight ? 0 : 1);
      expect(codes(ring(5, text)).length, text).toBe(isRight ? 0 : 1);
    }
  });
  it('is told at the field, with whose words they are and what is drawn', () => {
    const lone = board([{ kind: 'ring', 'diameter-mm': [5, 7] }]);
    expect(found(lone, 'rings 9 mm in diameter')).toEqual([
      {
        code: 'size-differs',
        said: '9 mm',
        in: 'looks',
        field: 'diameter-mm',
        drawn: [5, 7],
        path: 'features.0.diameter-mm',
      },
    ]);
    expect(found({ ...lone, alt: 'Rings 8 to 9 mm across.' })[0]).toMatchObject({
      said: '8 to 9 mm',
      in: 'alt',
    });
    for (const touching of ['rings 7 mm across', 'rings 4–5 mm across', 'rings 6 mm across'])
      expect(found(lone, touching)).toEqual([]);
    expect(codes(board([{ kind: 'ring', 'depth-mm': 5 }]), 'rings 9 mm across')).toEqual([]);
  });
  it('one of several features is enough', () => {
    const two = board([
      { kind: 'ring', 'diameter-mm': 5 },
      { kind: 'ring', 'diameter-mm': 9 },
    ]);
    expect(codes(two, 'rings 9 mm across')).toEqual([]);
    expect(codes(two, 'rings 7 mm across')).toEqual(['size-differs features.0.diameter-mm']);
    expect(codes(two, 'rings 7 mm across, others 9 mm across, some 6 mm across')).toHaveLength(2);
  });
});

it('boards of flaws are held to what is said of the flaw, those of questions to their own words', () => {
  const wrong = board([{ kind: 'ring', 'diameter-mm': 5 }]);
  const told = proved(boardsFit, {
    defects: [{ id: 'spot', looks: 'Rings 9 mm across.', boards: [board([]), wrong] }],
    questions: [
      { id: 'round', boards: { yes: wrong, no: { ...wrong, alt: 'Rings 8 mm across.' } } },
      { id: 'none', boards: undefined },
    ],
  });
  expect(told.map(({ file, at, code }) => `${file} ${at} ${code}`)).toEqual([
    'spot.mdx boards.1.features.0.diameter-mm size-differs',
    'round.mdx boards.no.features.0.diameter-mm size-differs',
  ]);
});
