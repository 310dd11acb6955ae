import { expect, it } from 'vitest';
import { type Board, slowly } from '#engine/board/field.ts';
import { pieceOf } from '#engine/board/piece.ts';
import { makeBoard, renderBoard } from '#engine/board/render.ts';
import { sawn } from '#engine/board/wood/grain.ts';
import { meanDifference, recipeOf } from './board.ts';

const oak = { base: { wood: 'oak' } };

it('lies on a piece of its own where size, ground, sheen, seed or piece differ', () => {
  const others = [
    oak,
    { base: { wood: 'walnut' } },
    { base: { paint: 'white' } },
    { ...oak, 'width-mm': 80 },
    { ...oak, sheen: 'gloss' },
    { ...oak, seed: 2 },
    { ...oak, piece: 1 },
  ].map((part) => pieceOf(recipeOf(part)));
  expect(new Set(others).size).toBe(others.length);
});

it('is the same piece whatever the flaw and the film on it', () => {
  expect(pieceOf(recipeOf({ ...oak, 'film-um': 90, features: [{ kind: 'nibs' }] }))).toBe(
    pieceOf(recipeOf(oak)),
  );
});

it('shows other grain and other light on another piece, and the flaw where it was', () => {
  const at = (piece: number, features: object[]) =>
    makeBoard(recipeOf({ ...oak, piece, features }), 160, 120);
  const ring = { kind: 'white-ring', at: [30, 22], 'diameter-mm': 20 };
  // Only an open pore, which has no film over it, keeps clear of the ring.
  const [one, other] = [0, 1].map((piece) => at(piece, [ring])) as [Board, Board];
  const closed = (i: number) => Math.min(one.height[i] ?? 0, other.height[i] ?? 0) > -1;
  const clouded = [...one.haze.keys()].filter((i) => closed(i) && (one.haze[i] ?? 0) > 0.01);
  expect(clouded.length).toBeGreaterThan(100);
  for (const i of clouded) expect(other.haze[i]).toBe(one.haze[i]);
  expect(at(1, []).red).not.toEqual(at(0, []).red);
  const seen = [0, 1].map(
    (piece) => renderBoard(recipeOf({ piece }), { light: 'raking', width: 160, height: 120 }).data,
  );
  expect(meanDifference(seen[0] as Uint8ClampedArray, seen[1] as Uint8ClampedArray)).toBeGreaterThan(2);
});

it('opens pores in bare oak, longer along the board than across it, and none in paint', () => {
  const { columns, height } = makeBoard(recipeOf({ ...oak, 'film-um': 0 }), 480, 360);
  const open = (i: number) => (height[i] ?? 0) < -6;
  const pores = [...height.keys()].filter(open);
  expect(pores.length / height.length).toBeGreaterThan(0.01);
  const goOn = (step: number) => pores.filter((i) => open(i + step)).length / pores.length;
  expect(goOn(4)).toBeGreaterThan(2 * goOn(4 * columns));
  expect(makeBoard(recipeOf({ 'film-um': 0 }), 480, 360).height.some((um) => um < -6)).toBe(false);
});

it('draws what changes slowly without a step', () => {
  const map = slowly({ columns: 50, rows: 31, pitch: 0.5 }, (x, y) => 2 * x - y);
  for (let row = 0; row < 31; row++)
    for (let column = 0; column < 50; column++)
      expect(map[row * 50 + column]).toBeCloseTo(2 * (column + 0.5) * 0.5 - (row + 0.5) * 0.5, 4);
});

it('parts the fibers at a knot, more the nearer they pass, and closes them behind it', () => {
  const straight = sawn(60, 45, 5, 7);
  const around = sawn(60, 45, 5, 7, [30, 22]);
  const moved = (x: number, y: number) => Math.abs(around.across(x, y) - straight.across(x, y));
  expect(moved(30, 30)).toBeGreaterThan(2 * moved(30, 40));
  expect(moved(30, 30)).toBeGreaterThan(4 * moved(2, 30));
  expect(moved(2, 22)).toBeLessThan(0.2);
  expect(around.knot(30, 22)).toBe(0);
  expect(straight.knot(30, 22)).toBe(Number.POSITIVE_INFINITY);
});
