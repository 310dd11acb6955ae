/** No board changes unseen. Where a change is meant: `node test/engine/board/kept-boards.ts`, and look at the boards. */
import { describe, expect, it } from 'vitest';
import { changedCells, KEPT_BOARDS, readKeptBoards, seenOf } from './kept-boards.ts';

const kept = readKeptBoards();
const RENEW = 'where that is meant: node test/engine/board/kept-boards.ts';

describe('what boards look like', () => {
  it.each(KEPT_BOARDS)('$name looks as it did', ({ name, recipe }) => {
    const was = kept.get(name);
    if (!was) throw new Error(`${name} is new; ${RENEW}`);
    const changed = changedCells(was, seenOf(recipe));
    expect(changed && `${name}: ${changed}; ${RENEW}`).toBeUndefined();
  });

  it('is kept of no board that is gone', () => {
    const names = KEPT_BOARDS.map(({ name }) => name);
    expect([...kept.keys()].filter((name) => !names.includes(name))).toEqual([]);
  });

  it('tells a board from the same with half its flaw', () => {
    const board = KEPT_BOARDS.find(({ recipe }) => recipe.features.some(({ kind }) => kind === 'blush'));
    if (!board) throw new Error('no board shows it');
    const weaker = board.recipe.features.map((one) =>
      'strength' in one ? { ...one, strength: one.strength / 2 } : one,
    );
    const [was, is] = [seenOf(board.recipe), seenOf({ ...board.recipe, features: weaker })];
    expect(changedCells(was, was)).toBeUndefined();
    expect(changedCells(was, is)).toMatch(
      /^\d+ cells changed; most of all .* in row \d+, column \d+: it was/,
    );
  });
});
