/** What a page says of how many questions there may be holds for every way through the tree, each counted by itself. */
import { expect, it } from 'vitest';
import { addressOf, nodesOf, readAddress, type TreeNode } from '#engine/index.ts';
import { countOf } from '../../site/build/count.ts';
import { known } from '../content/real/knowledge.ts';

/** The most that a page names: "up to 4 in all", "Question 2 of 4", "the last"; nothing while many may be left. */
const mostOf = (count: string, number: number): number | undefined => {
  if (count.endsWith(', the last')) return number;
  const [, most] = /, up to (\d+) in all$/.exec(count) ?? / of (\d+)$/.exec(count) ?? [];
  return most === undefined ? undefined : Number(most);
};

/** From here on a page has few enough ways behind it to be told one by one. */
const FAR_IN = 4;

/** Every way from a page, answered yes or no, as how many questions it has asked in all; none where another flaw takes over. */
const waysFrom = (
  nodes: ReadonlyMap<string, TreeNode>,
  address: readonly string[],
): readonly number[] | 'leaves' => {
  const node = nodes.get(address.join('/'));
  const { stage, answers } = readAddress(known, address);
  if (node?.handover !== undefined) return 'leaves';
  if (node?.walked.kind !== 'question') return [answers.length];
  const { question } = node.walked;
  const [yes, no] = (['yes', 'no'] as const).map((answer) =>
    waysFrom(nodes, addressOf(stage, [...answers, [question, answer]])),
  );
  if (!yes || !no || yes === 'leaves' || no === 'leaves') return 'leaves';
  return [...yes, ...no];
};

it('names the most that any way asks, and no more', () => {
  let named = 0;
  for (const { id } of known.defects) {
    const nodes = new Map([...nodesOf(known, id)].map((node) => [node.address.join('/'), node]));
    for (const node of nodes.values()) {
      if (node.walked.kind !== 'question' || node.handover !== undefined) continue;
      const ways = node.address.length < FAR_IN ? 'leaves' : waysFrom(nodes, node.address);
      if (ways === 'leaves') continue;
      const number = readAddress(known, node.address).answers.length + 1;
      const says = countOf(known, id, node);
      const most = mostOf(says, number);
      if (most === undefined) continue;
      named += 1;
      expect(most, `${id}/${node.address.join('/')}: ${says}`).toBe(Math.max(...ways));
    }
  }
  expect(named).toBeGreaterThan(300);
});

it('never says more after a Yes or a No than it said before', () => {
  const nodes = [...nodesOf(known, 'bubbles')].filter(
    ({ walked, handover, address }) =>
      walked.kind === 'question' && !handover && !address.join().includes('unsure'),
  );
  let compared = 0;
  for (const node of nodes) {
    const { stage, answers } = readAddress(known, node.address);
    const before = nodes.find(
      ({ address }) =>
        answers.length && address.join('/') === addressOf(stage, answers.slice(0, -1)).join('/'),
    );
    if (!before) continue;
    const [was, is] = [before, node].map((one) =>
      mostOf(countOf(known, 'bubbles', one), readAddress(known, one.address).answers.length + 1),
    );
    if (was === undefined) continue;
    expect(is, node.address.join('/')).toBeLessThanOrEqual(was);
    compared += 1;
  }
  expect(compared).toBeGreaterThan(10);
});

it('counts what a flaw asks to which another leads', () => {
  // Bubbles of the stroke are asked about what may lead to craters, which asks its own.
  const after = [...nodesOf(known, 'bubbles')].filter(({ address }) => address[0] === 'stage-recoatable');
  const at = (path: string) => after.find(({ address }) => address.join('/') === path);
  const first = at('stage-recoatable');
  const leading = at('stage-recoatable/there-while-coating-yes/drew-back-yes');
  const third = at('stage-recoatable/there-while-coating-yes/drew-back-no');
  expect(leading?.handover).toBe('fisheyes');
  expect(first && countOf(known, 'bubbles', first)).toBe('Question 1');
  expect(third && countOf(known, 'bubbles', third)).toMatch(
    /^Question 3(?:|, up to \d+ in all|, the last| of \d+)$/,
  );
});
