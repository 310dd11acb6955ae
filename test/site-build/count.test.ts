/** What a page says of how many questions are usual is what most ways through the tree ask, each counted by itself. */
import { expect, it } from 'vitest';
import { addressOf, nodesOf, readAddress, type TreeNode } from '#engine/index.ts';
import { countOf } from '../../site/build/count.ts';
import { known } from '../content/real/knowledge.ts';

/** The bounds that a page names: "usually 3 or 4 in all", "usually 4 in all", "usually the last". */
const boundsOf = (count: string, number: number): readonly [number, number] | undefined => {
  if (count.endsWith('usually the last')) return [number, number];
  const [, least, most = least] = /usually (\d+)(?: (?:or|to) (\d+))? in all$/.exec(count) ?? [];
  return least === undefined ? undefined : [Number(least), Number(most)];
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
  // Both are as likely, however many ways lie behind each.
  return [
    ...yes.flatMap((way) => Array<number>(no.length).fill(way)),
    ...no.flatMap((way) => Array<number>(yes.length).fill(way)),
  ];
};

it('names bounds that at least half of all ways keep, and no wider than they are met', () => {
  let named = 0;
  for (const { id } of known.defects) {
    const nodes = new Map([...nodesOf(known, id)].map((node) => [node.address.join('/'), node]));
    for (const node of nodes.values()) {
      if (node.walked.kind !== 'question' || node.handover !== undefined) continue;
      const ways = node.address.length < FAR_IN ? 'leaves' : waysFrom(nodes, node.address);
      if (ways === 'leaves') continue;
      const number = readAddress(known, node.address).answers.length + 1;
      const says = countOf(known, id, node);
      const bounds = boundsOf(says, number);
      if (!bounds) continue;
      named += 1;
      const within = ways.filter((way) => way >= bounds[0] && way <= bounds[1]).length / ways.length;
      expect(within, `${id}/${node.address.join('/')}: ${says}`).toBeGreaterThanOrEqual(0.5);
      expect(ways, says).toContain(bounds[0]);
      expect(ways, says).toContain(bounds[1]);
    }
  }
  expect(named).toBeGreaterThan(300);
});

it('counts what a flaw asks to which another leads', () => {
  // Bubbles of the stroke are asked about what may lead to craters, which asks its own.
  const after = [...nodesOf(known, 'bubbles')].filter(({ address }) => address[0] === 'stage-recoatable');
  const at = (path: string) => after.find(({ address }) => address.join('/') === path);
  const first = at('stage-recoatable');
  const leading = at('stage-recoatable/there-while-coating-yes/drew-back-yes');
  const third = at('stage-recoatable/there-while-coating-yes/drew-back-no');
  expect(leading?.handover).toBe('fisheyes');
  expect(first && countOf(known, 'bubbles', first)).toMatch(/^Question 1, usually \d+ (or|to) \d+ in all$/);
  expect(third && countOf(known, 'bubbles', third)).toMatch(/^Question 3, usually /);
});
