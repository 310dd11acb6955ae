/** The way that the browser finds with its small part of the knowledge is the way that was built. */
import { expect, it } from 'vitest';
import { nodesOf, partOf } from '#engine/index.ts';
import { walkData } from '../../site/shared/walk-data.ts';
import { addressFor } from '../../site/shared/way.ts';
import { known } from '../content/real/knowledge.ts';

it.each(known.defects.map(({ id }) => id))('%s: leads to every page by its own answers', (defect) => {
  const sent: ReturnType<typeof walkData> = JSON.parse(JSON.stringify(walkData(known, defect)));
  const small = partOf(sent);
  for (const { address, stage, on } of nodesOf(known, defect))
    expect(addressFor(small, defect, stage, on)).toEqual(address);
});
