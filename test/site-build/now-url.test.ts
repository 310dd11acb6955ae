import { describe, expect, it } from 'vitest';
import { nodesOf, STANDINGS } from '#engine/index.ts';
import { howDryUrl, nodeUrl, nowUrl } from '../../site/shared/urls.ts';
import { known } from '../content/real/knowledge.ts';

describe('the way to what to do now', () => {
  it('leads to a page that is built, for every flaw and however it stands', () => {
    for (const { id } of known.defects) {
      const built = new Set([...nodesOf(known, id)].map(({ address }) => nodeUrl(id, address)));
      for (const standing of [...STANDINGS, undefined]) {
        const url = nowUrl(id, standing);
        expect(url === howDryUrl(id) || built.has(url), url).toBe(true);
      }
    }
  });
});
