/** What is grown for the bench is knowledge: it links, and hardly a proof has anything to say that it did not say before. */
import { expect, it } from 'vitest';
import { ASKED } from '#engine/knowledge/known-questions.ts';
import { isAsk, visits } from '#engine/knowledge/tree.ts';
import { link } from '#engine/link.ts';
import { everyFault } from '../../content/tools/every-fault.ts';
import { readContent } from '../../content/tools/read.ts';
import { itAtLength } from '../thorough.ts';
import { exponentOf } from './growth/fit.ts';
import { grown, grownRoot, renamed } from './growth/knowledge.ts';
import { plot } from './growth/plot.ts';
import { wordsOfCopy } from './growth/words.ts';

const entries = readContent(process.cwd());
const linkedAt = (times: number) => {
  const linked = link(grown(entries, times));
  if (!linked.ok) throw new Error(linked.issues.map(({ file, code }) => `${file} ${code}`).join('\n'));
  return linked.value;
};

it('links, three times over, with all that is not shared there three times', () => {
  const [one, three] = [linkedAt(1), linkedAt(3)];
  expect(one.defects).toHaveLength(entries.filter(({ kind }) => kind === 'defect').length);
  for (const kind of ['defects', 'remedies', 'rules', 'lessons', 'terms', 'sources'] as const)
    expect(three[kind]).toHaveLength(3 * one[kind].length);
  const shared = one.questions.filter(
    (question) => question['every-flaw'] !== undefined || Object.values<string>(ASKED).includes(question.id),
  ).length;
  expect(shared).toBeGreaterThan(0);
  expect(three.questions).toHaveLength(3 * one.questions.length - 2 * shared);
  expect(three.products).toHaveLength(one.products.length);
});

it('links a copy within itself, with as many ends in another order', () => {
  const known = linkedAt(2);
  let moved = 0;
  for (const { id, tree } of linkedAt(1).defects) {
    const copy = [...visits(known.get('defect', renamed(id, 2)).tree)].map(({ branch }) => branch);
    const own = [...visits(tree)].map(({ branch }) => branch);
    expect(copy).toHaveLength(own.length);
    const remedies = (of: typeof own) => of.flatMap((branch) => ('remedy' in branch ? [branch.remedy] : []));
    expect(remedies(copy).sort()).toEqual(
      remedies(own)
        .map((remedy) => renamed(remedy, 2))
        .sort(),
    );
    if (
      remedies(copy).join() !==
      remedies(own)
        .map((remedy) => renamed(remedy, 2))
        .join()
    )
      moved += 1;
    for (const branch of copy)
      if ('defect' in branch) expect(branch.defect.endsWith('-c2')).toBe(true);
      else if (isAsk(branch)) expect(known.has('question', branch.ask)).toBe(true);
  }
  expect(moved).toBeGreaterThan(10);
});

it('writes copies as files of content that read as they are, each under its own name', () => {
  const root = grownRoot(process.cwd(), 2);
  const two = readContent(root);
  const [one, named] = [entries.length, new Set(two.map(({ kind, id }) => `${kind}/${id}`))];
  expect(two).toHaveLength(one + [...root.texts.keys()].filter((file) => file.endsWith('.mdx')).length);
  expect(named.size).toBe(two.length);
  expect(two.filter(({ broken }) => broken)).toEqual([]);
  const linked = link(two);
  expect(linked.ok ? [] : linked.issues).toEqual([]);
  if (!linked.ok) return;
  const { defects } = linked.value;
  expect(new Set(defects.map(({ name }) => name)).size).toBe(defects.length);
  const aliases = defects.filter(({ id }) => id.endsWith('-c2')).flatMap(({ also }) => also);
  expect(aliases.length).toBeGreaterThan(50);
  expect(aliases.every((name) => name.endsWith(' zda'))).toBe(true);
});

itAtLength('comes to the end of the whole check, and says which names it did not try', () => {
  const { figures, issues, untried = 0 } = everyFault(grownRoot(process.cwd(), 3));
  expect(figures?.worst).toBeLessThanOrEqual(10);
  expect(untried).toBeGreaterThan(0);
  // Trees with their ends in another order tell faults that the first knowledge has not.
  expect(issues.length).toBeLessThan(200);
});

it('takes other words in a copy, of the same length, the same at each run', () => {
  const text = 'Cloudy patches where the brush stopped';
  expect(wordsOfCopy(text, 1)).toBe(text);
  const words = new Set<string>();
  for (let copy = 1; copy <= 100; copy++) {
    const said = wordsOfCopy(text, copy);
    expect(said).toHaveLength(text.length);
    expect(wordsOfCopy(text, copy)).toBe(said);
    for (const word of said.split(' ').filter((one) => one.length > 4)) words.add(word);
  }
  // Five long words in a hundred copies: about ten of each.
  expect(words.size).toBeGreaterThan(30);
  expect(words.size).toBeLessThanOrEqual(50);
});

it.each([
  [0, () => 7],
  [1, (n: number) => 3 * n],
  [2, (n: number) => n ** 2 / 5],
])('finds the exponent %d', (exponent, of) => {
  expect(exponentOf([1, 3, 10, 30].map((n) => [n, of(n)] as const))).toBeCloseTo(exponent, 10);
});

it('draws a curve for each figure, its name beside it', () => {
  const svg = plot(
    [
      {
        what: 'a & b',
        unit: 'ms',
        points: [
          [1, 2],
          [10, 20],
        ],
        exponent: 1,
      },
      { what: 'met once', unit: 'ms', points: [[1, 2]], exponent: Number.NaN },
    ],
    68,
  );
  expect(svg).toContain('a &amp; b: n^1.00');
  expect(svg).not.toContain('met once');
  expect(svg).not.toMatch(/NaN|undefined|Infinity/);
});
