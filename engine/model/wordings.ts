import { z } from 'zod';

/**
 * Wordings that are looked for in a sentence as it is typed, word beside word. `a|b` is either word, `word*` one that
 * begins so, `a|b?` may be missing, `_` is any word, and `...` stands for all words up to the next one that is named.
 */
const WORD = String.raw`[a-z0-9][a-z0-9'-]*\*?`;
const STEP = String.raw`(?:_|${WORD}(?:\|${WORD})*)\??`;
export const Wording = z.coerce
  .string()
  .regex(
    new RegExp(String.raw`^${STEP}(?: (?:\.\.\. )?${STEP})*$`),
    'write words in small letters: a|b is either word, word* one that begins so, a|b? may be missing, _ is any word, ... any words in between',
  )
  .refine((wording) => !/\?$/.test(wording), 'the last word must not be one that may be missing');

/** What the wordings of each kind ask for or tell of. */
const WORDINGS = {
  time: 'What asks for a time.',
  'next-coat': 'The time until the next coat, or until it is sanded.',
  'after-last': 'After the last coat: no other follows.',
  late: 'Whether it is too late for the next coat.',
  cured: 'The time until it is hard.',
  use: 'Whether it may be used, or things stand on it, by a day or an hour.',
  'of-child': 'A child uses it: it waits until it is cured, and no earlier hour is told.',
  dry: 'The time until it is dry.',
  'goes-over': 'A wait for what lies below: it dries, or something comes over it.',
  'not-time': 'Times of something else: of a can, a mixture, a stripper, of what is wrong.',
  'of-paint': 'Where no kind of top coat is named: another coat.',
  'work-ahead': 'Sanding or another coat that she means to begin, where a coat is laid.',
  'paint-below': 'A wait for paint, whose kind is not told.',
  waxes: 'Wax comes over what lies there.',
  means: 'What a word of the trade means.',
  'not-means': 'It is asked of a thing that is there.',
  'and-asks': 'A second question in one sentence.',
  'how-many': 'How many coats.',
  'in-order': 'One kind is laid before another: coats of each are asked for.',
  sands: 'Whether and how it is sanded between coats.',
  over: 'What goes over what.',
  'wax-first': 'Wax is meant to come before a film: none lies there.',
  paints: 'Paint over a top coat.',
  'not-rows': 'With these other rules hold, and no coat counts for color.',
  'of-a-day': 'Coats of one day, or those that are left.',
  'from-cans': 'Coats from spray cans.',
  amount: 'How much of a coat is needed, or how far a can goes.',
  enough: 'Whether a can that is told is enough.',
  'not-amount': 'An amount of something else: of flakes, thinner, a mixture.',
  hot: 'It is hot where the work is done, or a coat dries too fast: bare degrees that may be either are °C.',
  metric: 'Somebody tells in metric units: bare degrees that may be either are °C.',
  'night-ahead': 'The night that comes: a coat that dries through it meets its cold.',
  planned: 'A plan is told: times in it are of no coat that lies there.',
  done: 'Some of it is done already.',
  ahead: 'What is asked or planned is not done yet: no flaw of it is there.',
} as const;
export type WordingKind = keyof typeof WORDINGS;

export const Wordings = z.strictObject(
  Object.fromEntries(
    Object.entries(WORDINGS).map(([kind, what]) => [kind, z.array(Wording).min(1).describe(what)]),
  ) as Record<WordingKind, z.ZodArray<typeof Wording>>,
);
export type Wordings = z.infer<typeof Wordings>;
