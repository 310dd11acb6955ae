import type { FactName } from '../../model/facts.ts';
import { isCan } from '../words/laying.ts';
import type { Match } from '../words/match.ts';
import { type Mention, PLAIN } from '../words/mention.ts';
import { oneOf } from '../words/one-of.ts';
import { HALF } from '../words/sure.ts';
import { isTop } from '../words/top-words.ts';
import { isKind, type Span, type Word } from '../words/words.ts';
import { ageOf } from './age-told.ts';
import type { PostRead } from './choice-mentions.ts';

/** Where several pieces are named, the one that demands most care is meant. */
const PIECES = ['crib', 'food-surface', 'childs-item', 'valuable', 'tabletop', 'furniture'];

const PAINT = oneOf('paint|painted|painting|repainted|primer|primed');

/** Under paint no wood shows. */
const isPainted = (words: readonly Word[]): boolean =>
  words.some(
    ({ word, part }, at) =>
      PAINT.test(word) &&
      !(
        words[at + 1]?.part === part &&
        /^(thinner|stripper|scraper|store|brush)$/.test(words[at + 1]?.word ?? '')
      ),
  );

const STRIPPED = oneOf('stripped|stripping|stripper|bare|removed');
const SANDED = oneOf('sanded|scraped|took|ground|planed');

/** "sanded MOST of the old clear off, not all", "did not get all of the old finish off" */
const isPartlyLeft = (words: readonly Word[]): boolean =>
  words.some(
    ({ word, clause }, at) =>
      (word === 'most' &&
        words[at + 1]?.word === 'of' &&
        words.slice(at, at + 8).some((next) => next.word === 'off' && next.clause === clause)) ||
      (word === 'not' &&
        words
          .slice(at, at + 5)
          .some(
            (next, index, near) => next.word === 'all' && /^(of|the|off)$/.test(near[index + 1]?.word ?? ''),
          ) &&
        words.slice(at, at + 10).some((next) => next.word === 'off' && next.clause === clause)),
  );

/** "stripped", "sanded down", "sanded the old varnish off" */
const isStripped = (words: readonly Word[]): boolean =>
  !isPartlyLeft(words) &&
  words.some(({ word, part }, at) => {
    if (STRIPPED.test(word)) return true;
    if (!SANDED.test(word)) return false;
    const after = words.slice(at + 1, at + 7).filter((next) => next.part === part);
    const off = after.findIndex((next) => /^(off|away)$/.test(next.word));
    return (
      /^(off|down|well|back|through|completely|all)$/.test(after[0]?.word ?? '') ||
      (off > 0 && after.slice(0, off).some((next) => OLD_LAYER.test(next.word)))
    );
  });
/** What lies there before the work begins. */
const OLD_LAYER =
  /^(old|existing|original|finish|varnish|lacquer|poly|polyurethane|shellac|paint|everything|all|it)$/;

const MADE = /^(built|made|turned|milled|building|turning|handmade|homemade)$/;
const RAW_WOOD = /^(slab|burl|lathe|lumber|unfinished|unstained)$/;
/** What would lie on new wood, or tells that it is not new. */
const ON_WOOD =
  /^(paint|paints|painted|painting|primer|primed|stain|stains|stained|staining|dye|dyed|old|older|existing|previous|refinish|refinished|refinishing|redo|redoing|redid|antique|vintage|laminate|melamine|mdf|chipboard|filler|milk|chalk|latex|enamel|color|whitewash|whitewashed)$/;

/** Words of a thing that was made of wood, by whoever tells of it, and of nothing laid on it but its finish. */
const madeOf = (words: readonly Word[], matches: readonly Match[]): Span | undefined => {
  if (words.some(({ word }) => ON_WOOD.test(word))) return undefined;
  const made = words.findIndex(
    ({ word, part }, at) =>
      RAW_WOOD.test(word) ||
      // "built-in shelves" were made by nobody who tells of it
      (MADE.test(word) &&
        !(word === 'built' && words[at + 1]?.word === 'in') &&
        matches.some(
          ({ kind, of, from }) =>
            kind === 'fact' &&
            (of[0] === 'piece' || of[1] === 'wood') &&
            from > at &&
            from < at + 7 &&
            words[from]?.part === part,
        )),
  );
  const found = words[made];
  return found && { from: found.from, to: found.to };
};

/** "a sealed can": no "can I". */
const isSealed = (words: readonly Word[], at: number): boolean =>
  words[at]?.word === 'can' &&
  (/^(sealed|unopened|closed|half|one)$/.test(words[at - 1]?.word ?? '') || words[at + 1]?.word === 'of');

/** "an unopened can of 1985": the sentence is of a can, and of no piece that is as old. */
const isAgeOfTheCan = (words: readonly Word[], matches: readonly Match[], { from }: Span): boolean => {
  const sentence = words.findLast((word) => word.from <= from)?.sentence;
  const isOfIt = (at: number) => words[at]?.sentence === sentence;
  return (
    words.some((_, at) => isOfIt(at) && (isCan(words, at) || isSealed(words, at))) &&
    !matches.some(
      ({ kind, of, from: at }) => kind === 'fact' && of[0] === 'piece' && of[1] !== 'valuable' && isOfIt(at),
    )
  );
};

const PRIMER = oneOf('primer|primed');

/** Whether only a primer is named between the commas where a tool stands. */
const isOfPrimer = (words: readonly Word[], { from }: Span): boolean => {
  const at = words.findIndex((word) => word.from >= from);
  const own = words.filter(({ part }) => part === words[at]?.part);
  return (
    own.some(({ word }) => /^(primed|primer|priming)$/.test(word)) &&
    !own.some(({ word }) => /^(coats?|poly|varnish|lacquer|clear|paint|painted|finish|shellac)$/.test(word))
  );
};

/** What was stripped off is no longer below the stain. */
const isLeft =
  (told: readonly Mention[]) =>
  ({ value }: Mention): boolean =>
    value !== 'old-finish' || !told.some((one) => one.value === 'stain' || one.value === 'bare-wood');

/**
 * "The treads took the stain badly. I have a gel to wipe over it": in a story what lies below is told before what was laid
 * on it. Where work is told, and no coat behind the stain, it may itself be the last.
 */
const isUnderNothing =
  (words: readonly Word[], told: readonly Mention[]) =>
  ({ value, place }: Mention): boolean => {
    if (value !== 'stain' || place === 'below') return false;
    const stains = told.filter((one) => one.value === 'stain');
    const first = Math.min(...stains.map(({ span }) => span.from));
    const isOwn = (word: Word) => stains.some(({ span }) => word.from >= span.from && word.to <= span.to);
    const sentence = words.find(({ from }) => from >= first)?.sentence;
    const isStory = words.some(
      (word) => word.sentence !== sentence && isKind(word, 'worked-dry', 'work-on-finish') && !isOwn(word),
    );
    return isStory && !words.some((word) => word.from > first && isTop(word) && !isOwn(word));
  };

type Narrowed = (told: readonly Mention[], post: PostRead, text: string) => readonly Mention[];

const ofAge: Narrowed = (told, { words, matches }, text) =>
  [...told, ...ageOf(text)].filter(({ span }) => !isAgeOfTheCan(words, matches, span));

/** "It was a deep red, and I painted it white", "cream over a dark brown": what is over it is what shows. */
const isCovered =
  (words: readonly Word[], told: readonly Mention[]) =>
  ({ span, value }: Mention): boolean => {
    const others = told.filter((one) => one.value !== value);
    const at = words.findIndex(({ from }) => from >= span.from);
    const near = words.slice(Math.max(0, at - 3), at).filter(({ part }) => part === words[at]?.part);
    const isAt = (one: Mention) => words.findIndex(({ from }) => from >= one.span.from);
    if (near.some(({ word }) => word === 'over'))
      return others.some((one) => one.span.from < span.from && words[isAt(one)]?.part === words[at]?.part);
    return (
      near.some(({ word }) => /^(was|were|been)$/.test(word)) &&
      others.some(
        (one) => one.span.from > span.to && /^(painted|repainted)$/.test(words[isAt(one)]?.word ?? ''),
      )
    );
  };

const ofTone: Narrowed = (all, { words }) => {
  const isUnder = isCovered(words, all);
  const told = all.filter((one) => !isUnder(one));
  return isPainted(words) ? told.filter(({ value }) => value !== 'wood') : told;
};

const ofBase: Narrowed = (all, { words, matches }, text) => {
  let told = all;
  // "refinishing" tells of an old finish only where nothing else is told
  if (told.some(({ value }) => value !== 'old-finish'))
    told = told.filter(({ span }) => text.slice(span.from, span.to).toLowerCase() !== 'refinishing');
  if (isStripped(words)) told = told.filter(isLeft(told));
  // Under a primer no wood is left bare.
  if (words.some(({ word }) => PRIMER.test(word))) told = told.filter(({ value }) => value !== 'bare-wood');
  const isBare = isUnderNothing(words, told);
  told = told.map((one) => (isBare(one) ? { ...one, weight: HALF } : one));
  const made = told.length === 0 ? madeOf(words, matches) : undefined;
  return made ? [{ value: 'bare-wood', weight: PLAIN, span: made, place: undefined }] : told;
};

/** "primed from cans, then painted with a gun": what the primer was laid with is not what the coat was. */
const ofApplicator: Narrowed = (told, { words }) => {
  const ofCoat = told.filter(({ span }) => !isOfPrimer(words, span));
  const left = ofCoat.length ? ofCoat : told;
  // "the wipe-on kind, with a foam brush": so it may be called, whatever it is laid with
  const isCalled = ({ span }: Mention) => words.find(({ from }) => from >= span.from)?.word === 'wipe';
  return left.some((one) => !isCalled(one) && one.value !== 'cloth')
    ? left.map((one) => (isCalled(one) ? { ...one, weight: HALF } : one))
    : left;
};

/** "The cutting board left a mark on the table", "set my child's cup on the desk": what stands on the piece is none. */
const isOnIt =
  (words: readonly Word[], told: readonly Mention[]) =>
  ({ span }: Mention): boolean => {
    const from = words.findIndex((word) => word.from >= span.to);
    const behind = words.slice(from, from + 8).filter(({ clause }) => clause === words[from - 1]?.clause);
    const on = behind.findIndex(({ word }) => /^(on|onto)$/.test(word));
    if (from < 0 || on < 0 || !/^(the|a|an|my|our|her|his|their|its)$/.test(behind[on + 1]?.word ?? ''))
      return false;
    const there = behind.slice(on + 1, on + 5);
    return told.some((one) => there.some((word) => word.from >= one.span.from && word.to <= one.span.to));
  };

const ofPiece: Narrowed = (all, { words }) => {
  const isThing = isOnIt(words, all);
  const told = all.filter((one) => !isThing(one));
  const named = PIECES.find((piece) => told.some(({ value }) => value === piece));
  return told.filter(({ value }) => value === named);
};

const NARROWED: Partial<Record<FactName, Narrowed>> = {
  age: ofAge,
  'base-tone': ofTone,
  base: ofBase,
  applicator: ofApplicator,
  piece: ofPiece,
};

/** What is left of what was told of a fact once the whole post is read. */
export const narrowed = (
  fact: FactName,
  told: readonly Mention[],
  post: PostRead,
  text: string,
): readonly Mention[] => NARROWED[fact]?.(told, post, text) ?? told;
