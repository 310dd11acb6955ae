/** What can be measured in a minute, without a browser and without a built site. */
import { linkedKnowledge } from '../../../content/tools/knowledge.ts';
import type { Measured } from '../figures.ts';
import { rowsOf } from '../row.ts';
import { beliefRows } from './belief.ts';
import { boardRace } from './boards.ts';
import { byteRows } from './bytes.ts';
import { races } from './races.ts';
import { searchQuality } from './search.ts';

export const quick = async (): Promise<Measured> => {
  const { known } = linkedKnowledge(process.cwd());
  if (!known) throw new Error('the content does not link; npm run check tells why');
  return {
    rows: [
      ...(await races(known)),
      ...beliefRows(known),
      ...rowsOf('a board of 480 × 360', await boardRace(known)),
      ...(await byteRows(known)),
    ],
    search: searchQuality(known),
  };
};
