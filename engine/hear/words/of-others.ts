import { oneOf } from './one-of.ts';
import type { Word } from './words.ts';

/** Who does things of their own, and is not asked about: nobody of the house. */
const OTHERS = oneOf(
  'buddy|friend|friends|neighbors?|neighbours?|uncle|boss|coworker|cousin|guy|guys|folks|people|everyone|everybody|somebody|someone|painters|contractors|dad|grandpa|brother|he|she|they|shop|teacher',
);
/** Whose it is then. */
const THEIRS = oneOf('his|hers|her|their|theirs|own');
/** What they do as a rule, or are known for. */
const HABIT = oneOf(
  'swears|uses|likes|loves|always|usually|shoots|sprays|do|does|say|recommends|recommend|prefers|used',
);
/** Whoever tells it comes into it again. */
const OURS = oneOf('i|ive|im|id|my|mine|me|we|our|ours|us|this|it');
const A_PERSON = oneOf('my|a|the|our|most|some|old|next|other|few|another|this|that');
/** What is coated that is no furniture. */
const NO_PIECE = oneOf(
  'fence|walls?|ceiling|siding|cars?|truck|motorcycles?|bikes?|deck|porch|house|room|hallway|boats?|fender|guitar',
);
const LAYING = oneOf('sprayed|painted|rolled|brushed|spraying|painting|rolling|shot|shoots|stained|did');

/** The words of the clause before word `at`, nearest last. */
const before = (words: readonly Word[], at: number): readonly Word[] =>
  words.slice(Math.max(0, at - 14), at).filter(({ clause }) => clause === words[at]?.clause);

/** "My buddy did his bar top", "the old guy put 30 coats on his", "my uncle swears by tung oil", "most folks do two coats" */
const isTheirOwn = (words: readonly Word[], from: number, to: number): boolean => {
  const said = before(words, from);
  const who = said.findLastIndex(
    ({ word }, at) =>
      OTHERS.test(word) &&
      (/^(he|she|they|folks|people|everyone|everybody|someone|somebody|painters|contractors)$/.test(word) ||
        A_PERSON.test(said[at - 1]?.word ?? '')),
  );
  if (who < 0) return false;
  const between = said.slice(who + 1);
  const after = words.slice(from, to + 6).filter(({ clause }) => clause === words[from]?.clause);
  const ours = [...between, ...after.slice(0, to - from + 4)].some(
    ({ word }, at, all) =>
      OURS.test(word) &&
      !(word === 'i' && /^(know|knew)$/.test(all[at + 1]?.word ?? '')) &&
      !(word === 'it' && at > between.length),
  );
  if (ours) return false;
  const isNamed = !/^(he|she|they)$/.test(said[who]?.word ?? '');
  const theirs = [...between, ...after].some(
    ({ word }, at, all) => THEIRS.test(word) && (word !== 'her' || isNamed) && all[at - 1]?.word !== 'said',
  );
  return theirs || (isNamed && between.some(({ word }) => HABIT.test(word)));
};

/** "the painters sprayed the walls", "he sprayed his fence": what was laid lies on no piece. */
const isOnNoPiece = (words: readonly Word[], from: number, to: number): boolean => {
  const after = words.slice(to, to + 3).filter(({ clause }) => clause === words[from]?.clause);
  return (
    words.slice(from, to).some(({ word }) => LAYING.test(word)) &&
    // "painted it white with some wall paint"
    after.some(
      ({ word }, at) => NO_PIECE.test(word) && !/^(paint|latex)$/.test(words[to + at + 1]?.word ?? ''),
    ) &&
    !after.some(({ word }) => OURS.test(word))
  );
};

const US = oneOf('i|ive|im|id|my|mine|me|we|our|ours|us');
const SOMEONE = /^(one of (them|these|you)|(someone|somebody|others|another) )/;

/** "One of them put shellac on it, and two months later": the sentence begins with somebody, and nobody of us is in it. */
const isOfSomeone = (words: readonly Word[], from: number): boolean => {
  const { sentence } = words[from] ?? {};
  let first = from;
  while (first > 0 && words[first - 1]?.sentence === sentence) first--;
  const begins = `${words[first]?.word} ${words[first + 1]?.word} ${words[first + 2]?.word}`;
  if (!SOMEONE.test(begins)) return false;
  for (let at = first; at < words.length && words[at]?.sentence === sentence; at++)
    if (US.test(words[at]?.word ?? '')) return false;
  return true;
};

/** Whether what is told at words `from` to `to` is of another's work or thing. */
export const isOfOthers = (words: readonly Word[], from: number, to: number): boolean =>
  isOfSomeone(words, from) || isTheirOwn(words, from, to) || isOnNoPiece(words, from, to);
