import type { Manner } from '../words/manner.ts';
import type { Match } from '../words/match.ts';
import type { Word } from '../words/words.ts';
import { isTold } from './laid-since.ts';

/** What was done with a thing that a rule guards against. */
const DID =
  /^(cleaned|washed|wiped|used|sprayed|put|poured|scrubbed|rubbed|treated|bleached|rinsed|stripped|brushed|applied|spilled)$/;
/** Done now, asked or planned in the same breath. */
const AHEAD = /^(use|using|clean|cleaning|wash|washing|try|mix|mixing|apply|applying|put|again|next|more)$/;

/**
 * "A client washed it with ammonia": the step is over, and what comes before it is for the next time. Where anything of
 * it may still be ahead it is not.
 */
export const isPastStep = (words: readonly Word[], manner: Manner, { from, to }: Match): boolean => {
  const { sentence } = words[from] ?? {};
  const did = words.some(
    ({ word, clause }, at) => clause === words[from]?.clause && DID.test(word) && isTold(words, manner, at),
  );
  const ahead = words.some(
    (one, at) =>
      one.sentence === sentence &&
      (one.asks || (AHEAD.test(one.word) && !(one.word === 'put' && at < to && isTold(words, manner, at)))),
  );
  return did && !ahead && !manner.notYet({ sense: '', kind: '', of: [], from, to, size: 1 });
};

const SPRAYED = /\b(?:sprayed|shot)\b|\b(?:after|since|from|finished|done|was|were|been)\s+spraying\b/i;
/** Spraying now, as a rule, or once more. */
const SPRAYS =
  /\b(?:i|we|he|she|they|you|to|and|can|should|could|would|will|[iw]e?['’]?ll|must|gonna|not|don['’]?t)\s+(?:just\s+|still\s+|now\s+|only\s+|always\s+)?spray\b|\b(?:am|i['’]?m|are|we['’]?re|is|still|keep|keeps|now|start|started|begin|while|mid)\s+(?:now\s+|just\s+|still\s+)?spraying\b|\bspray\s+(?:another|again|more|over|it|on)\b|\b(?:another|second|next|more)\s+coats?\b[^.]*\?/i;

/** "Sprayed lacquer over it and it wrinkles": the spraying is done, and none is told to come. */
export const isSprayedAlready = (text: string): boolean => SPRAYED.test(text) && !SPRAYS.test(text);
