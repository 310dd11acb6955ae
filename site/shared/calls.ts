import type { CallPlace } from '#engine/model/calls.ts';

/** `tel:` and a number as it is written. */
export const telOf = (number: string): string => `tel:${number.replace(/[ -]/g, '')}`;

/** What a poison line is called. */
export const poisonName = ({ name = 'Poison line' }: NonNullable<CallPlace['poison']>): string => name;

/** A country as the head of its row. */
export const placeName = ({ place }: Pick<CallPlace, 'place'>): string => {
  const bare = place.replace(/^the /, '');
  return bare.charAt(0).toUpperCase() + bare.slice(1);
};
