/** The tree as it is drawn, lying and standing: every branch once, none over another, the way taken marked. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Branch } from '#engine/model/tree.ts';
import { isAsk } from '#engine/tree.ts';
import { provenKnowledge } from '../../content/tools/knowledge.ts';
import { drawTree, linesOf, standTree, type TreeDrawing } from '../../site/build/tree-drawing.ts';

const known = provenKnowledge(process.cwd()).known;
if (!known) throw new Error('the content does not link; npm run check tells why');
const trees = known.defects.map(({ id, tree }) => ({ id, tree }));

const SCALE = { across: 164, down: 46, fork: 134 };
const STEP = { across: 12, down: 40, fork: 3 };
const WIDTH = 280;

const flat = (branch: Branch): Branch[] =>
  isAsk(branch) ? [branch, ...flat(branch.yes), ...flat(branch.no)] : [branch];

const DRAWN: readonly [string, (tree: Branch, said: (ask: string) => string | undefined) => TreeDrawing][] = [
  ['lying', (tree, said) => drawTree(tree, SCALE, said)],
  ['standing', (tree, said) => standTree(tree, STEP, WIDTH, said)],
];
const unknown = () => undefined;

it.each(DRAWN)('draws every branch of every flaw once, %s', (_way, draw) => {
  expect(trees.length).toBeGreaterThanOrEqual(60);
  for (const { id, tree } of trees) {
    const { branches } = draw(tree, unknown);
    expect(new Set(branches.map(({ branch }) => branch)), id).toEqual(new Set(flat(tree)));
    expect(branches, id).toHaveLength(flat(tree).length);
    expect(branches.map(({ number }) => number)).toEqual(branches.map((_branch, n) => n));
  }
});

it.each(DRAWN)('leaves each branch room of its own, inside the drawing, %s', (way, draw) => {
  const { across, down } = way === 'lying' ? SCALE : { across: 1, down: STEP.down };
  for (const { id, tree } of trees) {
    const { width, height, branches } = draw(tree, unknown);
    for (const [n, one] of branches.entries()) {
      expect(one.x, id).toBeGreaterThanOrEqual(0);
      expect(one.x + across, id).toBeLessThanOrEqual(width);
      expect(one.y - down / 2, id).toBeGreaterThanOrEqual(0);
      expect(one.y + down / 2, id).toBeLessThanOrEqual(height);
      for (const other of branches.slice(n + 1)) {
        // Standing, a branch has its row to itself.
        const beside = way === 'lying' && Math.abs(one.x - other.x) >= across;
        expect(beside || Math.abs(one.y - other.y) >= down, `${id}: ${n} over ${other.number}`).toBe(true);
      }
    }
  }
});

it.each(DRAWN)('draws each line from the question that the branch answers, %s', (_way, draw) => {
  for (const { tree } of trees) {
    const { branches } = draw(tree, unknown);
    expect(branches[0]).toMatchObject({ of: undefined, answer: undefined, way: '', taken: true });
    for (const { branch, of, answer, way, x, y } of branches.slice(1)) {
      const question = branches[of ?? -1];
      if (!question || !answer || !isAsk(question.branch)) throw new Error('a branch hangs on no question');
      expect(question.branch[answer]).toBe(branch);
      expect(question.x).toBeLessThan(x);
      expect(
        way.startsWith(`M${question.x + (_way === 'lying' ? SCALE.fork : STEP.fork)} ${question.y}V`),
      ).toBe(true);
      expect(way.endsWith(`V${y}H${x}`)).toBe(true);
    }
  }
});

/** Walks down by the answers, as the reader does. */
const walk = (branch: Branch, said: (ask: string) => string | undefined): Branch[] => {
  if (!isAsk(branch)) return [branch];
  const answer = said(branch.ask);
  return [branch, ...(answer === 'yes' || answer === 'no' ? walk(branch[answer], said) : [])];
};

it.each(DRAWN)('marks the way that the answers take, and no other, %s', (_way, draw) => {
  const asks = [
    ...new Set(
      trees.flatMap(({ tree }) =>
        flat(tree)
          .filter(isAsk)
          .map(({ ask }) => ask),
      ),
    ),
  ];
  const answers = fc.record(
    Object.fromEntries(asks.map((ask) => [ask, fc.constantFrom('yes', 'no', 'unsure', undefined)])),
  );
  fc.assert(
    fc.property(fc.constantFrom(...trees), answers, ({ tree }, given) => {
      const said = (ask: string) => given[ask];
      const marked = draw(tree, said).branches.filter(({ taken }) => taken);
      expect(marked.map(({ branch }) => branch)).toEqual(walk(tree, said));
    }),
    { numRuns: 200 },
  );
});

it('cuts words only between words, into two lines at most', () => {
  expect(linesOf('Is it rough?', 19, 2)).toEqual(['Is it rough?']);
  expect(linesOf('Does it look dull in low light?', 19, 2)).toEqual(['Does it look dull', 'in low light?']);
  expect(linesOf('Was the room cold, or was the air damp at night?', 19, 2)).toEqual([
    'Was the room cold,',
    'or was the air …',
  ]);
});
