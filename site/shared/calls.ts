import type { CallPlace } from '#engine/model/calls.ts';
import type { Whom } from '#engine/model/whom.ts';

/** `tel:` and a number as it is written. */
export const telOf = (number: string): string => `tel:${number.replace(/[ -]/g, '')}`;

/** What a poison line is called. */
const poisonName = ({ name = 'Poison line' }: NonNullable<CallPlace['poison']>): string => name;

/** A country as the head of its row. */
const placeName = ({ place }: Pick<CallPlace, 'place'>): string => {
  const bare = place.replace(/^the /, '');
  return bare.charAt(0).toUpperCase() + bare.slice(1);
};

/** The words of the list of numbers to call. */
export const CALL_WORDS = {
  where: 'Where you are',
  emergency: 'Emergency',
  poison: 'Poison line',
  others: 'Somewhere else? All countries',
} as const;

/** One row of the list: a place with the number in each column; nothing where it has no such line. */
export type CallRow<P = CallPlace> = {
  readonly place: P;
  readonly name: string;
  readonly cells: readonly (
    | { readonly says: string; readonly number: string; readonly tel: string }
    | undefined
  )[];
};

/** The heads of the columns behind the place. */
export const callHeads = (whom: readonly Whom[]): readonly string[] => [
  ...(whom.includes('emergency') ? [CALL_WORDS.emergency] : []),
  ...(whom.includes('poison') ? [CALL_WORDS.poison] : []),
];

/** The rows of the list, whoever draws it. */
export const callRows = <P extends CallPlace>(
  places: readonly P[],
  whom: readonly Whom[],
): readonly CallRow<P>[] => {
  const emergency = whom.includes('emergency');
  const poison = whom.includes('poison');
  const cell = (says: string, number: string) => ({ says: `${says} `, number, tel: telOf(number) });
  return places
    .filter((place) => emergency || (poison && place.poison))
    .map((place) => ({
      place,
      name: placeName(place),
      cells: [
        ...(emergency ? [cell('Call', place.emergency)] : []),
        ...(poison ? [place.poison && cell(poisonName(place.poison), place.poison.number)] : []),
      ],
    }));
};
