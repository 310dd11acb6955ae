/** The way on to the cause keeps what is told, and asks nothing that harms the film as it is. */
import { expect, it } from 'vitest';
import { addressOf, canCheck, nextQuestion, nodesOf, readAddress, withAnswer } from '#engine/index.ts';
import { wayToCause } from '../../site/shared/way.ts';
import { known } from '../content/real/knowledge.ts';

const ends = known.defects.flatMap(({ id }) =>
  [...nodesOf(known, id)].flatMap((node) =>
    node.walked.kind === 'outcome' && node.walked.goOn ? [{ id, node }] : [],
  ),
);

it('leads to a page that is there', () => {
  expect(ends.length).toBeGreaterThan(100);
  const pagesOf = new Map(
    known.defects.map(({ id }) => [
      id,
      new Set([...nodesOf(known, id)].map(({ address }) => address.join('/'))),
    ]),
  );
  const lost = ends.flatMap(({ id, node }) => {
    const way = wayToCause(known, id, node.on);
    return way && !pagesOf.get(id)?.has(way.join('/')) ? [[id, ...way].join('/')] : [];
  });
  expect(lost).toEqual([]);
});

it('asks no question that may not be asked of this film, and none that is answered', () => {
  const amiss = ends.flatMap(({ id, node }) => {
    const way = wayToCause(known, id, node.on);
    if (!way) return [];
    const here = readAddress(known, way).answers.reduce((so, [q, a]) => withAnswer(so, q, a), {});
    const next = nextQuestion(known, here, id, { forCause: true });
    const given = next && node.on[next.question];
    return !next || given || !canCheck(known, node.on, next.question)
      ? [`${[id, ...node.address].join('/')} → ${way.join('/')}`]
      : [];
  });
  expect(amiss).toEqual([]);
});

it('does not ask of a dry film whether it was laid just now', () => {
  const [dry] = ends.filter(({ id, node }) => id === 'brush-marks' && node.stage === 'dry-to-touch');
  expect(dry && wayToCause(known, 'brush-marks', dry.node.on)).toEqual(
    addressOf(undefined, [['just-laid', 'no']]),
  );
});
