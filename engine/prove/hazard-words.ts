import type { Hazard } from '../model/hazard.ts';

/** What is said not to be done, and what is only named as a yardstick, does nothing. */
const NOT_DONE =
  /\b(never|not|no|without|don[’']t|instead of|keep off|away from|out of the (sun|wind))\b[^.;:]*|\b(until|than)\b[^.;:,]*|\bwait\b[^.]*\bpowder\b[^.]*/gi;

/** What keeps an order safe forbids nothing of it: the order goes on behind it. */
const NO_FLAME =
  /\b(and |with )?no (flame|spark)s?( (or|and) no (flame|spark)s?| or sparks?)?( near| in the room)?( it)?,?/gi;

/** Words that tell a hazard by themselves. A step that uses them has the hazard by its kind, its means or a mark. */
const WORDS: readonly (readonly [Hazard, RegExp])[] = [
  [
    'mist',
    /\b(spray|mist)(ed|ing)? (a|an|one|two|three|it|on|over|first|lacquer|the)\b|\bor spray\b|\b(try a card|on cardboard)\b/i,
  ],
  [
    'old-film',
    // Alcohol that lies on an old shellac opens it down to what it lies on.
    /\bbrush (on alcohol|alcohol on)\b|\b(scrape|shave|chip|strip) (it|the|off|all|on|with|down|firm|flush)\b|\bcut (it|a|six|through|around a)\b|\bsix cuts\b|\bcross cut\b/i,
  ],
  [
    'dust',
    /\b(sand|scuff) (it|the|off|them|flush|with|lightly|and|on|out|again|by)\b|\bfiller dry and smooth\b|\bback of a sheet of sandpaper\b/i,
  ],
  [
    'blade',
    /\b(razor|scalpel|card scraper|single-edge)\b|\bcut (it|a|six|around)\b|\bsix cuts\b|\bcross cut\b/i,
  ],
  [
    'vapor',
    /\b(mineral spirits|naphtha|denatured alcohol|(on|of) alcohol|lacquer thinner|acetone|turpentine|retarder|thinner leave|vapor out)\b/i,
  ],
  [
    'solvent-on-skin',
    // A pad of thin shellac is held in the hand.
    /\b(mineral spirits|naphtha|denatured alcohol|lacquer thinner|acetone|turpentine|retarder|charge the pad)\b|\b(pad|wipe)( or brush)? (on )?(a|one|shellac)\b[^.]*\b(shellac|cut|alcohol)\b/i,
  ],
  [
    'oily-cloth',
    /\b(linseed|drying oil|drop of oil|fresh oil|same oil|danish oil|oil-based( stain-blocking)? primer)\b|\bstain (it|the|all|this)\b/i,
  ],
  // A cloth full for each part of a panel, and then again; stripper lies on by the cup, and vapor stays in a case.
  [
    'much-vapor',
    /\b(flood a cloth|soaked in|old wax off with mineral spirits|cloth full of|(three|five) rounds|or four rounds|mineral spirits[^:;]*fresh cloth each time|mineral spirits\b.*\brepeat\b|(use|with|on) (a )?(paint )?stripper|wet (it|a part|the whole)\b[^.;:]* with (mineral spirits|naphtha)|the inside\b[^.;:]*(mineral spirits|naphtha))\b/i,
  ],
  ['stripper', /\b(use|with|on) (a )?(paint )?stripper\b/i],
  ['oxalic-acid', /\b(oxalic|wood bleach)\b/i],
  ['caustic', /\b(lye|caustic|peroxide|ammonia)\b/i],
  [
    'heat',
    /\b(heat gun|hair dryer|clothes iron|warm(, \w+)? room|even room warmth|the same warmth|in a room at \d+|warm (the|it|up)|keep the room at|heat the)\b|\b(keep|leave|give|bring|needs|wait|let|move)\b[^.;:]*\b(warm\b|warmth to\b|\d+( to |–)\d+ °F|at \d+ °F)/i,
  ],
  ['mold-spores', /\bHEPA\b/i],
  ['waste', /\bthrow (it|that|them|the)\b|\bcan goes out\b/i],
];

/** What is said to be done: without what is not to be done, and without yardsticks. */
export const orderedIn = (say: string): string => say.replace(NO_FLAME, '').replace(NOT_DONE, ' ');

/** What is laid as a film, and what it is taken from. */
const FINISH = '(?:coats?|finish|shellac|stain|wax|oil|primer|polyurethane|varnish|lacquer|color|paint)';
/** Orders to lay a coat or to open, stir, strain or charge from a can, whatever they are called. */
const LAYS = new RegExp(
  [
    `\\b(?:lay|brush on|pad on|roll on|spray|rub on|stir in|mix in|mix) (?!(?:gun|can|polish)s?\\b)[^.;:,]*\\b${FINISH}\\b`,
    '\\b(?:coat|recoat|prime|stain) (?:it|them|this|all|a (?:\\w+ )?(?:patch|spot))\\b|\\bspray (?:it|a (?:test )?card|one|a light)\\b|\\btry a card\\b',
    '(?<!before )\\b(?:one|a|two|another)(?: more| last| light| thin| very thin)* coats?\\b',
    `\\bgel stain\\b|\\b(?:film|coat) of (?:paste )?${FINISH}\\b`,
    '\\btouch (?:it|them|the [\\w ]+|that) in\\b|\\bsealed with\\b',
    '\\b(?:stir|strain|decant) (?:it|them|a|the|this|from|slowly)\\b|\\bopen (?:a|the|your|one) (?:fresh |new )?(?:can|tin|jar)\\b|\\bthrough a strainer\\b',
    '\\bsmear\\b[^.;:]*\\b(?:on|from)\\b[^.;:]*\\b(?:glass|can|jar)\\b|\\bcharge (?:it|the pad)\\b|\\bskin out\\b',
  ].join('|'),
  'i',
);

/** The order in a text that lays something on or opens a can, or undefined. */
export const laidOrOpenedIn = (say: string): string | undefined => orderedIn(say).match(LAYS)?.[0];

/** The hazards that the words of an order tell, each with the word that tells it. */
export const hazardsSaid = (say: string): ReadonlyMap<Hazard, string> => {
  const ordered = orderedIn(say);
  const found = new Map<Hazard, string>();
  for (const [hazard, words] of WORDS) {
    const word = ordered.match(words)?.[0];
    if (word) found.set(hazard, word);
  }
  return found;
};
