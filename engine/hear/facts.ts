import { CHOICES_OF_THE_PIECE } from '../model/facts.ts';
import { ageOf } from './age-told.ts';
import { familyOf, type HeardChoices } from './family.ts';
import { isCan } from './laying.ts';
import type { Manner } from './manner.ts';
import { type Ear, type Match, spanOf } from './match.ts';
import { EACH_WORD, type Mention, PLAIN, settled, withoutBeaten } from './mention.ts';
import { isOfOthers } from './of-others.ts';
import { oneOf } from './one-of.ts';
import { isLaid, isOfBelow, namesTop, placeOf } from './place.ts';
import type { Span, Word } from './words.ts';

/** Phrases that tell a fact, the longer before those inside it: "oil based stain" is no oil. */
export const claimed = (matches: readonly Match[]): Match[] => {
  const telling = matches
    .filter(
      ({ kind, of }) =>
        kind === 'none' || kind === 'among' || (kind === 'fact' && of[0] !== 'stage' && of[0] !== 'overdue'),
    )
    .sort(
      (a, b) =>
        b.size - a.size ||
        Number(b.kind === 'none') - Number(a.kind === 'none') ||
        a.to - a.from - (b.to - b.from) ||
        a.from - b.from,
    );
  const kept: Match[] = [];
  for (const match of telling) {
    const covered = kept.some((other) => {
      if (other.from >= match.to || match.from >= other.to) return false;
      const inside = other.from <= match.from && match.to <= other.to;
      if (other.kind === 'none') return inside && other.size >= match.size;
      if (other.size <= match.size) return false;
      // "sprayed water based lacquer" is one kind, though two phrases end in it.
      return other.of[0] === match.of[0] || (inside && isLayer(other, match));
    });
    if (!covered) kept.push(match);
  }
  return kept.filter(({ kind }) => kind !== 'none');
};

/** What is said of the layer below is not said of the top coat. */
const isLayer = (longer: Match, match: Match): boolean =>
  // "dark wax" is no dark base
  (longer.of[0] === 'family' && match.of[0] === 'base-tone') ||
  // "antique white cabinets" are no antiques
  (longer.of[0] === 'base-tone' && /^(valuable|unknown)$/.test(match.of[1] ?? '')) ||
  (longer.of[0] === 'base' && (match.of[0] === 'family' || match.kind === 'among')) ||
  (longer.of[0] === 'family' && match.of[0] === 'base');

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

/** "stripped", "sanded down", "sanded the old varnish off" */
const isStripped = (words: readonly Word[]): boolean =>
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
      (MADE.test(word) &&
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

/** "took the original stain off", "it needs the old varnish and stain taken off" */
const isTakenOff = (words: readonly Word[], { from, to }: Match): boolean => {
  const { part } = words[from] ?? {};
  const near = (start: number, end: number, what: RegExp) =>
    words.slice(Math.max(0, start), end).some((word) => word.part === part && what.test(word.word));
  return (
    near(to, to + 3, /^(off|away|removed)$/) &&
    (near(
      from - 6,
      from,
      /^(took|take|taking|strip|stripped|stripping|remove|sand|sanded|sanding|get|got|getting|needs?)$/,
    ) ||
      near(to, to + 2, /^(taken|came|coming|sanded|stripped)$/))
  );
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

/** "semi gloss wall latex, then a clear": the sheen of the paint is not that of the top coat. */
const isSheenOfPaint = (words: readonly Word[], matches: readonly Match[], { to, from }: Match): boolean =>
  words
    .slice(to, to + 2)
    .some(
      ({ word, part }) =>
        part === words[from]?.part && /^(latex|enamel|emulsion|paint|wall|trim|undercoat)$/.test(word),
    ) && namesTop(words, matches);

const said = (words: readonly Word[], from: number, count: number): string =>
  words
    .slice(from, from + count)
    .map(({ word }) => word)
    .join(' ');

const GUESSED = oneOf(
  'think|thinking|assume|guess|could|might|maybe|probably|perhaps|suppose|suspect|usually|normally',
);

/** "could be shellac", "lacquer I assume", "I usually finish with oil": guessed, or told of other times. */
const isGuessed = (words: readonly Word[], { from, to }: Match): boolean => {
  const near = words.slice(Math.max(0, from - 5), to + 4);
  return near.some(({ word, clause }) => clause === words[from]?.clause && GUESSED.test(word));
};

/** "Won’t stick to my old dresser": denied is what it does, and not the piece that it does it to. */
const isOnWhat = (words: readonly Word[], denied: number, { from }: Match): boolean =>
  /^(wont|doesnt|dont|didnt|cant|cannot|never|wouldnt|isnt|not)$/.test(words[denied]?.word ?? '') &&
  words.slice(denied + 2, from).some(({ word }) => /^(to|on|off|from|onto)$/.test(word));

/** What was stripped off is no longer below the stain. */
const isLeft =
  (told: readonly Mention[]) =>
  ({ value }: Mention): boolean =>
    value !== 'old-finish' || !told.some((one) => one.value === 'stain' || one.value === 'bare-wood');

const COLORING = oneOf('stain|stained|stains|staining|dye|dyed');

/** What the thing is made of, and what was laid on it before: "I want to touch up a cherry bench". */
const isOfTheThing = (words: readonly Word[], { of: [fact, value], from, to }: Match): boolean =>
  (fact === 'base-tone' &&
    value === 'wood' &&
    !words.slice(Math.max(0, from - 3), to + 1).some(({ word }) => COLORING.test(word))) ||
  (fact === 'base' && (value === 'old-finish' || value === 'laminate'));

/** The facts of choice that a text tells. */
export const choicesOf = (
  ear: Ear,
  text: string,
  words: readonly Word[],
  matches: readonly Match[],
  manner: Manner,
): HeardChoices => {
  const mentions = new Map<string, Mention[]>();
  const against = new Map<string, Span[]>();
  for (const match of claimed(matches)) {
    const [fact = '', value = ''] = match.of;
    const key = match.kind === 'among' ? 'among' : fact;
    const span = spanOf(words, match);
    // "should I oil my oak table": the table and its wood are there, whatever is to be done to it.
    const isThere = fact === 'piece' || fact === 'age' || isOfTheThing(words, match);
    const denied = manner.denied(match);
    const isDenied = denied !== undefined && !(isThere && isOnWhat(words, denied, match));
    if (isDenied || (!isThere && (manner.notYet(match) || manner.feared(match)))) {
      against.set(fact, [...(against.get(fact) ?? []), span]);
      continue;
    }
    if ((fact === 'family' && isOfBelow(words, match)) || isOfOthers(words, match.from, match.to)) continue;
    if (fact === 'base' && value === 'stain' && isTakenOff(words, match)) continue;
    if (fact === 'sheen' && isSheenOfPaint(words, matches, match)) continue;
    // "one day old poly" is no old finish
    const [before] = [words[match.from - 1]?.word ?? ''];
    if (words[match.from]?.word === 'old' && /^(minute|hour|day|week|month)s?$/.test(before)) continue;
    // "polyurethane (oil)"
    const kind = words[match.to - 1]?.word ?? '';
    const named = /^(poly|polyur|urethane|varnish)/.test(words[match.from - 1]?.word ?? '');
    if (named && match.size === 1 && kind === 'oil') {
      const oil = { value: 'oil-based', weight: PLAIN + EACH_WORD, span, place: undefined, laid: true };
      mentions.set('family', [...(mentions.get('family') ?? []), oil]);
      continue;
    }
    // What was wiped on need be no wipe-on varnish.
    if (value === 'wipe-on' && /^(wiped|wipe it|wipe them)/.test(said(words, match.from, 2))) continue;
    if (fact === 'family' && isGuessed(words, match)) {
      against.set(fact, [...(against.get(fact) ?? []), span]);
      continue;
    }
    const place = placeOf(ear, words, match);
    const weight = PLAIN + EACH_WORD * (match.size - 1) + (fact === 'base' && place === 'below' ? 0.1 : 0);
    const laid = isLaid(words, match);
    mentions.set(key, [...(mentions.get(key) ?? []), { value, weight, span, place, laid }]);
  }
  const family = familyOf(
    mentions.get('family') ?? [],
    mentions.get('among') ?? [],
    against.get('family') ?? [],
  );
  const choices = CHOICES_OF_THE_PIECE.flatMap((fact) => {
    let told = mentions.get(fact) ?? [];
    if (fact === 'age')
      told = [...told, ...ageOf(text)].filter(({ span }) => !isAgeOfTheCan(words, matches, span));
    if (fact === 'base-tone' && isPainted(words)) told = told.filter(({ value }) => value !== 'wood');
    // "refinishing" tells of an old finish only where nothing else is told
    if (fact === 'base' && told.some(({ value }) => value !== 'old-finish'))
      told = told.filter(({ span }) => text.slice(span.from, span.to).toLowerCase() !== 'refinishing');
    if (fact === 'base' && isStripped(words)) told = told.filter(isLeft(told));
    // "primed from cans, then painted with a gun": what the primer was laid with is not what the coat was.
    if (fact === 'applicator') {
      const ofCoat = told.filter(({ span }) => !isOfPrimer(words, span));
      if (ofCoat.length) told = ofCoat;
    }
    // Under a primer no wood is left bare.
    if (fact === 'base' && words.some(({ word }) => PRIMER.test(word)))
      told = told.filter(({ value }) => value !== 'bare-wood');
    const made = fact === 'base' && told.length === 0 ? madeOf(words, matches) : undefined;
    if (made) told = [{ value: 'bare-wood', weight: PLAIN, span: made, place: undefined }];
    if (fact === 'piece') {
      const named = PIECES.find((piece) => told.some(({ value }) => value === piece));
      told = told.filter(({ value }) => value === named);
    }
    return settled(fact, withoutBeaten(fact, told), against.get(fact) ?? []);
  });
  return { facts: [...family.facts, ...choices], among: family.among };
};
