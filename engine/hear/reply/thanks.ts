import type { ReplyWords } from '../../model/reply-words.ts';
import type { Heard } from '../words/heard.ts';

/** A longer one tells a story. */
const LONGEST = 200;

const has = (text: string, pattern: string): boolean => new RegExp(pattern, 'i').test(text);

/** Whether somebody thanks. */
export const isThanks = ({ text }: Pick<Heard, 'text'>, { thanks }: Pick<ReplyWords, 'thanks'>): boolean =>
  has(text, thanks);

/** Thanks or praise and nothing more: nobody asks, and nothing stands there that has to be mended. */
export const isContent = (
  { text, names }: Pick<Heard, 'text' | 'names'>,
  words: Pick<ReplyWords, 'thanks' | 'glad' | 'asksOn' | 'notAsking'>,
): boolean => {
  const asking = text.replace(new RegExp(words.notAsking, 'gi'), '');
  return (
    text.length <= LONGEST &&
    !text.includes('?') &&
    !has(asking, words.asksOn) &&
    (isThanks({ text }, words) || (has(text, words.glad) && !names.some(({ denied }) => !denied)))
  );
};
