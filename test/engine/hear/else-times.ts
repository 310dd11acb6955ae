/** Whether a time in brackets is told of something else than the coat, by phrases that are found as the ear would. */

import { isElse } from '#engine/hear/times/other-times.ts';
import type { Match } from '#engine/hear/words/match.ts';
import { marked } from './marked.ts';

/** What names a layer below, a label or a kind of top coat, as the ear would find it. */
const SENSES: readonly (readonly [RegExp, sense: string])[] = [
  [/^(stain|stained|primer|primed|paint|painted|glaze|sealer)$/, 'cue other-layer'],
  [/^(says|said|label)$/, 'cue other-time'],
  [/^(poly|varnish|lacquer|shellac)$/, 'fact family oil-based'],
  [/^(sticky|tacky|soft)$/, 'fact stage setting'],
];
export const isElseIn = (text: string): boolean => {
  const { words, from, to } = marked(text);
  const matches = words.flatMap(({ word }, at): Match[] =>
    SENSES.flatMap(([is, sense]) => {
      const [kind = '', ...of] = sense.split(' ');
      return is.test(word) ? [{ sense, kind, of, from: at, to: at + 1, size: 1 }] : [];
    }),
  );
  return isElse(words, matches, from, to);
};
