import { CLOCK, HOME, JOBS, LEARN, SCHEDULE, segmentsOf } from './urls.ts';

/** The five rooms of the house, in the order of the header, and the first segments of the addresses that belong to each. */
export const ROOMS = [
  { name: 'Look', url: HOME, tops: ['', 'search', 'tell', 'see', 'defects', 'remedies', 'r'] },
  { name: 'Clock', url: CLOCK, tops: ['clock'] },
  { name: 'Plan', url: SCHEDULE, tops: ['schedule', 'which-coat'] },
  { name: 'Cards', url: JOBS, tops: ['jobs'] },
  { name: 'Learn', url: LEARN, tops: ['learn', 'first-coat', 'glossary'] },
] as const;

/** The room that an address of the site lies in; none for what is about the site itself. */
export const roomOf = (path: string): (typeof ROOMS)[number] | undefined => {
  const [top = ''] = segmentsOf(path);
  return ROOMS.find(({ tops }) => tops.some((one) => one === top));
};
