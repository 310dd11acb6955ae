import { oneOf } from './one-of.ts';

/** What a top coat is called: the nouns that stand for it, whatever it is made of. */
const NOUN =
  'coats?|finish|topcoat|clear|poly|polyurethane|urethane|varnish|lacquer|shellac|sealer|wax|oil|acrylic|epoxy';

/** A noun of a top coat. */
export const TOP_NOUN = oneOf(NOUN);

/** A noun of a top coat, or a word of having laid one. */
export const TOP = oneOf(`${NOUN}|coated|finished|refinished|polyed|varnished|lacquered|waxed|oiled`);

/** A noun of a top coat, or what its sheen is called: "two of satin". */
export const TOP_OR_SHEEN = oneOf(`${NOUN}|satin|gloss|matte|flat`);
