import type { JobCard } from '../model/job-card.ts';
import type { Trial } from '../schedule/job.ts';

/** Where the card does not say what the buyer does to it, its kind tells the hardest that is usual. */
const USUAL: Readonly<Record<JobCard['kind'], readonly Trial[]>> = {
  furniture: [],
  tabletop: ['water', 'heat'],
  'food-surface': ['food'],
  'childs-item': ['child'],
  crib: ['child'],
  valuable: [],
};

/** What the piece will have to stand; never less than its kind demands of a child's or a food piece. */
export const trialsOf = ({ trials, kind }: Pick<JobCard, 'trials' | 'kind'>): readonly Trial[] =>
  trials && kind !== 'childs-item' && kind !== 'food-surface' && kind !== 'crib'
    ? trials
    : [...new Set([...USUAL[kind], ...(trials ?? [])])];
