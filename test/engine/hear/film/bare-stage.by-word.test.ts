/**
 * How dry it is, as the last words of a query. Sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { bareStage } from '#engine/hear/film/bare-stage.ts';
import type { Match } from '#engine/hear/words/match.ts';
import { read } from '../small-ear.ts';

const matchAt = (from: number, to: number, kind: string, of: readonly string[] = []): Match => ({
  sense: `${kind} ${of.join(' ')}`,
  kind,
  of,
  from,
  to,
  size: to - from,
});

describe('how dry it is, as the last words of a query', () => {
  /** `seen` and `alone` are the words, from 0, that tell a sign and end the query. */
  const stage = (
    text: string,
    alone: readonly [number, number],
    ...seen: readonly (readonly [number, number, string?])[]
  ) =>
    bareStage(read(text).words, [
      matchAt(...alone, 'alone', ['wet']),
      ...seen.map(([from, to, kind = 'sign']) =>
        matchAt(from, to, kind, kind === 'fact' ? ['base', 'stain'] : ['q', 'yes']),
      ),
    ])?.stage;
  it('behind a comma, or right behind what is seen', () => {
    expect(stage('milky, wet', [1, 2], [0, 1])).toBe('wet');
    expect(stage('milky wet', [1, 2], [0, 1])).toBe('wet');
    expect(stage('milky on stain wet', [3, 4], [0, 1], [2, 3, 'fact'])).toBe('wet');
    expect(stage('milky on it wet', [3, 4], [0, 1])).toBeUndefined();
  });
  it('not where nothing is seen, where it is part of what is seen, asked, or told at length', () => {
    expect(stage('today, wet', [1, 2])).toBeUndefined();
    expect(stage('stain wet', [1, 2], [0, 1, 'fact'])).toBeUndefined();
    expect(stage('milky wet', [1, 2], [0, 2])).toBeUndefined();
    expect(stage('milky wet?', [1, 2], [0, 1])).toBeUndefined();
    expect(stage('wet milky', [0, 1], [1, 2])).toBeUndefined();
    expect(stage('one two three four five six seven milky, wet', [8, 9], [7, 8])).toBe('wet');
    expect(stage('one two three four five six seven eight milky, wet', [9, 10], [8, 9])).toBeUndefined();
    expect(bareStage([], [])).toBeUndefined();
  });
  it('the fewest words first, and only words side by side', () => {
    const { words } = read('milky, still wet');
    const both = [
      matchAt(0, 1, 'sign', ['q', 'yes']),
      matchAt(1, 3, 'alone', ['setting']),
      matchAt(2, 3, 'alone', ['wet']),
    ];
    expect(bareStage(words, both)?.stage).toBe('setting');
    expect(bareStage(words, [both[0] as Match, { ...(both[1] as Match), size: 1 }])).toBeUndefined();
    expect(
      bareStage(read('milky wet').words, [
        matchAt(0, 1, 'sign', ['q', 'yes']),
        matchAt(1, 2, 'alone', ['wet']),
      ])?.span,
    ).toEqual({ from: 6, to: 9 });
  });
});
