import type { CallPlace } from '#engine/model/calls.ts';
import { NUMBERS } from '#engine/model/whom.ts';
import { telOf } from './calls.ts';

/** A number that is called in an emergency: the US one, or a free line with its area code. */
const NUMBER = /(\b911\b|\b1(?:-\d{3}){2}-\d{4}\b)/;

/** A stretch of a text; a number that can be dialed has its address. */
type Stretch = { readonly text: string; readonly tel?: string };

/** The number that is dialed in a place instead of one of the US; nothing where it is the same, or not known. */
const insteadOf = (
  number: string,
  place: Pick<CallPlace, 'emergency' | 'poison'> | undefined,
): string | undefined => {
  const own =
    number === NUMBERS.emergency
      ? place?.emergency
      : number === NUMBERS.poison
        ? place?.poison?.number
        : undefined;
  return own === number ? undefined : own;
};

/**
 * A text cut at the numbers in it, so that each is dialed with one tap and never broken over two lines. Where she dials
 * another one, hers stands before it.
 */
export const dialedIn = (text: string, place?: Pick<CallPlace, 'emergency' | 'poison'>): readonly Stretch[] =>
  text.split(NUMBER).flatMap((part, at): Stretch[] => {
    if (at % 2 === 0) return [{ text: part }];
    const own = insteadOf(part, place);
    return [
      ...(own === undefined ? [] : [{ text: own, tel: telOf(own) }, { text: ' where you are, ' }]),
      { text: part, tel: telOf(part) },
    ];
  });
