/** A text with some words of it in brackets: "the poly went on [two days] ago". */
import { earOf } from '#engine/hear/words/match.ts';
import { type Word, wordsIn } from '#engine/hear/words/words.ts';
import { hearing } from './hearing.ts';

/** Words that end a clause, as content/hear/language.yaml has the commonest. */
const TURNS: ReadonlySet<string> = new Set(['but', 'because', 'so', 'although', 'while', 'though']);

const { kindsOf } = earOf(hearing.lexicon);
const VOCABULARY = { spelled: (word: string) => word, turns: TURNS, kindsOf };

export type Marked = {
  readonly words: readonly Word[];
  /** The marked words: `from` to before `to`. */
  readonly from: number;
  readonly to: number;
};

export const marked = (text: string): Marked => {
  const [open, close] = [text.indexOf('['), text.indexOf(']') - 1];
  const words = wordsIn(text.replace('[', '').replace(']', ''), VOCABULARY);
  const from = words.findIndex((word) => word.from >= open);
  const to = words.findLastIndex((word) => word.to <= close) + 1;
  if (open < 0 || from < 0 || to <= from) throw new Error(`nothing is marked in "${text}"`);
  return { words, from, to };
};
