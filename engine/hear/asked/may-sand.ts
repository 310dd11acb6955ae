import type { HeardFact } from '../words/heard.ts';

/** Whoever tells of a time or a state beside sanding has a coat there that may be young. */
const MAY_BE_YOUNG =
  /\b(?:hours?|hrs?|minutes?|mins?|today|tonight|this (?:morning|afternoon|evening)|just|now|still|wet|damp|tacky|sticky|soft|fresh|yet|noon|midnight|yesterday|ago|since|\d ?[ap]m)\b/i;
/** Dust and vapor are nothing for a child. */
const WITH_A_CHILD =
  /\b(?:kids?|child|children|toddler|baby|son|daughter|grandson|granddaughter|grandkids|pregnant|(?:\d+|one|two|three|four|five|six|seven|eight|nine|ten)[- ]year[- ]olds?)\b/i;

const tellsOfCoat = ({ fact, value }: HeardFact): boolean =>
  fact === 'hours-since-coat' || (fact === 'stage' && value !== 'cured');

/**
 * Whether a text may be told how to sand: not where the film may be young, whatever the words that say so belong to,
 * and not where a child is told of. There the stage has the word.
 */
export const maySand = (text: string, facts: readonly HeardFact[]): boolean =>
  !facts.some(tellsOfCoat) && !MAY_BE_YOUNG.test(text) && !WITH_A_CHILD.test(text);
