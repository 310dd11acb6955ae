import { asksWhich } from './asked/asks-which.ts';
import { isStillDrying } from './asked/still-drying.ts';
import type { Waits } from './asked/waits.ts';
import { askedIn } from './asked-in.ts';
import type { DryHours } from './film/dry-hours.ts';
import { takenAs } from './measures/measures.ts';
import { dangersOf, urgentOf } from './signs/dangers.ts';
import { namesOf } from './signs/names.ts';
import { signsOf } from './signs/signs.ts';
import { toldOfCoat } from './told-of-coat.ts';
import { inTyped, plainBlanks } from './words/blanks.ts';
import type { Heard, HeardFact, HeardSign } from './words/heard.ts';
import type { Lexicon } from './words/lexicon.ts';
import { mannerOf } from './words/manner.ts';
import { earOf, matchesIn, spanOf } from './words/match.ts';
import { isOtherTongue } from './words/other-tongue.ts';
import { isTopNoun } from './words/top-words.ts';
import { type Span, wordsIn } from './words/words.ts';

/** The ear: the words of the content, how long each kind of coat takes to dry, and what is said of it where that is asked. */
export type Hearing = { readonly lexicon: Lexicon; readonly dry: DryHours; readonly waits: Waits };

/** Coats that are asked about are not laid, and a coat is at no stage that is asked for. */
const isAskedAbout = ({ fact, rests }: HeardFact, asking: readonly Span[]): boolean =>
  fact === 'coat-number' ||
  (fact === 'stage' && rests.every((one) => asking.some(({ from, to }) => from <= one.from && one.to <= to)));

/** Whoever asks what a word means says no more than that. */
const FEW_WORDS = 8;

const heardIn = ({ lexicon, dry, waits }: Hearing, text: string): Heard => {
  const ear = earOf(lexicon);
  const words = wordsIn(text, ear);
  const matches = matchesIn(ear, words);
  const manner = mannerOf(ear, words, matches);
  const post = { ear, words, matches, manner };
  const told = toldOfCoat(post, text, dry);
  const signs = signsOf(ear, words, matches, manner);
  const named = words.filter(isTopNoun).map(({ from, to }) => ({ from, to }));
  // "I don't want my kid to get scratched": these words tell of no coat, so no flaw is weighed by them either.
  const aside = matches
    .filter(
      ({ kind, of: [what], from, to, size }) =>
        kind === 'no-sign' && what === 'of-bodies' && to - from === size,
    )
    .map((match) => spanOf(words, match));
  const called = namesOf(ear.small, words, matches, manner);
  const dangers = dangersOf(words, matches, manner);
  const { isAnswered, asking, ...asked } = askedIn({ lexicon, waits }, post, text, {
    told,
    signs,
    called,
    named,
    dangers,
  });
  const { facts, among, families } = told;
  const taken = takenAs(lexicon.tables, text, facts);
  const { names, feared } = called;
  return {
    text,
    facts: isAnswered ? facts.filter((one) => !isAskedAbout(one, asking)) : facts,
    among,
    signs,
    names,
    ...(feared.length && { feared }),
    named,
    ...(aside.length && { aside }),
    ...(taken && { taken }),
    ...asked,
    ...(isStillDrying(words, matches, { facts, among, signs, named }, families, dry) && {
      stillDrying: lexicon.stillDrying,
    }),
    dangers,
    urgent: urgentOf(words, matches, manner),
    asksWhich: asksWhich(matches),
    asksWord: words.length <= FEW_WORDS && ear.says('means', text) && !ear.says('not-means', text),
    otherTongue: isOtherTongue(lexicon.otherTongue, text),
  };
};

/**
 * Facts and signs of a text, two words or a whole post, each with the words that it rests on, how sure it is, and what
 * speaks against it. Pure; any text is taken, and what lies beyond the first 6,000 characters is not read.
 */
export const hear = (hearing: Hearing, text: string): Heard => {
  const plain = plainBlanks(text);
  return plain ? inTyped(heardIn(hearing, plain.text), text, plain) : heardIn(hearing, text);
};

/** The answers alone that a text gives unasked, without its facts and times. */
export const hearSigns = (lexicon: Lexicon, text: string): readonly HeardSign[] => {
  const ear = earOf(lexicon);
  const words = wordsIn(text, ear);
  const matches = matchesIn(ear, words);
  return signsOf(ear, words, matches, mannerOf(ear, words, matches));
};
