import { TWO_PART_WORDS } from './hardener.ts';
import { LEAD_WORDS } from './lead.ts';
import type { Running } from './reading.ts';

/** What is said where a film is never to be sanded as it is, in the place of every word on sanding. */
export type Unsanded = {
  /** Dry to the touch, and not ready. */
  readonly soft: string;
  /** While the next coat holds on it as it is. */
  readonly ready: string;
  /** Once it may hold on a dulled film alone. */
  readonly late: string;
  /** Then in large. */
  readonly stop: string;
  /** Then in a few words: behind the name of its piece, `from now on` or `later than this`. */
  readonly due: string;
};

const OVER_LEAD: Unsanded = {
  ...LEAD_WORDS,
  stop: 'No sanding and no further coat: test for lead first',
  due: 'no further coat before a lead test',
};
const OF_TWO_PARTS: Unsanded = {
  ...TWO_PART_WORDS,
  stop: 'No sanding before full cure: coat it only if its can still allows',
  due: 'no sanding before full cure',
};

/** Why nothing says that a film is sanded: old paint below that may hold lead, then isocyanate in it. */
export const unsandedFor = ({
  sanded,
  lead,
  twoPart,
}: Pick<Running, 'sanded' | 'lead' | 'twoPart'>): Unsanded | undefined => {
  if (!sanded) return undefined;
  if (lead) return OVER_LEAD;
  return twoPart === 'surely' ? OF_TWO_PARTS : undefined;
};
