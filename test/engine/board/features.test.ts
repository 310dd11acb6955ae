import { describe, expect, it } from 'vitest';
import { makeBoard, renderBoard } from '#engine/board/render.ts';
import { FEATURE_KINDS, type FeatureKind } from '#engine/model/board/recipe.ts';
import { THOROUGH, WHOLE } from '../../thorough.ts';
import { meanDifference, ON_WHITE, recipeOf } from './board.ts';

const view = (light: 'raking' | 'facing') => ({ light, width: 160, height: 120 });
/** mm a pixel of a 60 mm board. */
const MM = 60 / 160;
const drawn = FEATURE_KINDS.filter((kind) => kind !== 'none');
/** Draws each once, however often it is looked at; anew each time where the program may have changed in between. */
const onceEach = <A extends readonly string[], R>(draw: (...of: A) => R) => {
  if (WHOLE) return draw;
  const drawnSoFar = new Map<string, R>();
  return (...of: A): R => {
    const name = of.join();
    const one = drawnSoFar.get(name) ?? draw(...of);
    drawnSoFar.set(name, one);
    return one;
  };
};
/** Every third in the short run; what each looks like is kept (kept-boards.test.ts). */
const oneInSo = (kinds: readonly FeatureKind[]) => (THOROUGH ? kinds : kinds.filter((_, at) => at % 3 === 0));
/** Without a flaw, drawn once for all that are held against it. */
const good = onceEach(
  (paint: 'white' | 'navy', light: 'raking' | 'facing') =>
    renderBoard(recipeOf({ base: { paint } }), view(light)).data,
);
describe.each(oneInSo(drawn))('%s', (kind) => {
  const paint = ON_WHITE.includes(kind) ? 'white' : 'navy';
  const flawed = recipeOf({ base: { paint }, features: [{ kind }] });
  const seen = onceEach((light: 'raking' | 'facing') => renderBoard(flawed, view(light)).data);

  it('changes the picture in raking or facing light', () => {
    const changes = (['raking', 'facing'] as const).map((light) => {
      const [a, b] = [good(paint, light), seen(light)];
      let changed = 0;
      for (let i = 0; i < a.length; i += 4)
        if (Math.max(...[0, 1, 2].map((c) => Math.abs((a[i + c] ?? 0) - (b[i + c] ?? 0)))) >= 8) changed++;
      return changed;
    });
    expect(Math.max(...changes)).toBeGreaterThan(30);
  });

  it.each([8, 300])('keeps its maps within physical bounds on a board %d mm wide', (width) => {
    const board = makeBoard({ ...flawed, 'width-mm': width }, 80, 60);
    for (const map of [board.film, board.haze, board.roughness, board.red, board.green, board.blue])
      expect(map.every((value) => value >= 0 && Number.isFinite(value))).toBe(true);
    expect(board.height.every(Number.isFinite)).toBe(true);
    for (const map of [board.red, board.green, board.blue]) expect(Math.max(...map)).toBeLessThanOrEqual(1);
  });

  it('has the same bytes for the same seed and others for another', () => {
    const once = seen('raking');
    expect(meanDifference(renderBoard(flawed, view('raking')).data, once)).toBe(0);
    expect(meanDifference(renderBoard({ ...flawed, seed: 2 }, view('raking')).data, once)).toBeGreaterThan(0);
  });
});

const PLACED: readonly FeatureKind[] = [
  'white-ring',
  'heat-mark',
  'sand-through',
  'print',
  'dull-spot',
  'burnish',
  'holiday',
  'peel',
  'hair',
  'drag',
];

describe.each(PLACED)('%s at a place', (kind) => {
  it.each([
    [18, 22],
    [42, 22],
  ])('lies around %d, %d mm and not elsewhere', (x, y) => {
    const small: Record<string, object> = {
      'white-ring': { 'diameter-mm': 16 },
      'heat-mark': { 'diameter-mm': 16 },
      print: { 'size-mm': 14 },
      'dull-spot': { 'diameter-mm': 16 },
      burnish: { 'length-mm': 18, 'width-mm': 7 },
      holiday: { 'length-mm': 18 },
      peel: { 'size-mm': 12 },
      hair: { 'length-mm': 14 },
      drag: { 'length-mm': 16 },
    };
    const sheen = kind === 'burnish' ? 'matte' : 'satin';
    const [a, b] = [[], [{ kind, at: [x, y], ...small[kind] }]].map(
      (features) => renderBoard(recipeOf({ sheen, features }), view('raking')).data,
    );
    if (!a || !b) throw new Error('two pictures');
    const near = (pixel: number) => {
      const [px, py] = [((pixel % 160) + 0.5) * MM, (Math.floor(pixel / 160) + 0.5) * MM];
      return Math.hypot(px - x, py - y) < 14;
    };
    const inside = meanDifference(a, b, near);
    expect(inside).toBeGreaterThan(0.15);
    expect(meanDifference(a, b, (pixel) => !near(pixel))).toBeLessThan(inside / 4);
  });
});
