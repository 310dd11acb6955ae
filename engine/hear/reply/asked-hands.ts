import type { AskedHand, ReplyWords } from '../../model/reply-words.ts';
import { filled } from '../../plain/filled.ts';

export type AskedHands = { readonly hand: AskedHand; readonly denied: string };

/** The text with blanks where one of these patterns fits, so that all else stands where it stood. */
const blanked = (text: string, pattern: string | undefined): string =>
  pattern ? text.replace(new RegExp(pattern, 'gi'), (said) => ' '.repeat(said.length)) : text;

/**
 * What hands are asked about ("can I wipe them off?"), in the order of the words, each with the words that deny it; nothing
 * where the text only tells what was done.
 */
export const askedHands = (
  text: string,
  words: Pick<ReplyWords, 'asks' | 'hands' | 'spared' | 'them'>,
): readonly AskedHands[] => {
  const asksIn = new RegExp(words.asks, 'i');
  const spared = new RegExp(`\\b(?:${words.spared.join('|')})\\s+$`, 'i');
  const them = new RegExp(`\\b(?:${words.them.join('|')})\\b`, 'i');
  const found = new Map<AskedHand, { at: number; denied: string }>();
  let before = 0;
  for (const sentence of text.split(/(?<=[.!?\n])/)) {
    const asks = asksIn.exec(sentence);
    const rest = asks ? sentence.slice(asks.index) : '';
    for (const { hand, said, unless, denied } of rest ? words.hands : []) {
      const word = new RegExp(said, 'i').exec(blanked(rest, unless));
      if (!word || found.has(hand) || spared.test(rest.slice(0, word.index))) continue;
      const it = them.test(rest.slice(word.index)) ? 'them' : 'it';
      found.set(hand, {
        at: before + (asks?.index ?? 0) + word.index,
        denied: filled(denied, { it }),
      });
    }
    before += sentence.length;
  }
  return [...found].sort(([, a], [, b]) => a.at - b.at).map(([hand, { denied }]) => ({ hand, denied }));
};
