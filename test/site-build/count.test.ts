/** The count of questions is a promise: no way on from a page, whatever is answered, asks more than it says. */
import { expect, it } from 'vitest';
import { nodesOf, readAddress } from '#engine/index.ts';
import { countOf } from '../../site/build/count.ts';
import { known } from '../content/real/knowledge.ts';

const promiseOf = (count: string): number | undefined => {
  const [, most] = /of at most (\d+)$/.exec(count) ?? [];
  return most === undefined ? undefined : Number(most);
};

it('is held on every way on through the tree of its flaw', () => {
  const broken: string[] = [];
  let promises = 0;
  for (const { id } of known.defects) {
    const nodes = [...nodesOf(known, id)].filter(
      ({ walked, handover }) => walked.kind === 'question' && handover === undefined,
    );
    const asked = nodes.map((node) => ({
      at: node.address.filter((part) => part !== 'cause').join('/'),
      number: readAddress(known, node.address).answers.length + 1,
      most: promiseOf(countOf(known, id, node)),
    }));
    for (const { at, most } of asked) {
      if (most === undefined) continue;
      promises += 1;
      for (const later of asked)
        if (
          (at === '' || later.at === at || later.at.startsWith(`${at}/`)) &&
          !(at === '' && later.at.startsWith('stage-'))
        )
          if (later.number > most || (later.most ?? 0) > most)
            broken.push(`${id}/${at}: at most ${most}, but ${later.at}`);
    }
  }
  expect(broken).toEqual([]);
  expect(promises).toBeGreaterThan(500);
});

it('counts what a flaw asks to which another leads', () => {
  // Bubbles that are ready for a coat begin with what may lead to craters, which asks its own.
  const [first, ...after] = [...nodesOf(known, 'bubbles')].filter(
    ({ address }) => address[0] === 'stage-recoatable',
  );
  const second = after.find(({ address }) => address.join('/') === 'stage-recoatable/drew-back-no');
  expect(first && countOf(known, 'bubbles', first)).toMatch(/^Question 1 of at most \d+$/);
  expect(second && countOf(known, 'bubbles', second)).toBe('Question 2 of at most 4');
});
