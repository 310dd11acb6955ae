import type { FactName } from '../model/facts.ts';
import type { HeardAmong, HeardFact } from './heard.ts';
import type { Manner } from './manner.ts';
import { type Ear, type Match, spanOf } from './match.ts';
import type { Span, Word } from './words.ts';

/** Phrases that tell a fact, the longer before those inside it: "oil based stain" is no oil. */
const claimed = (matches: readonly Match[]): Match[] => {
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
  (longer.of[0] === 'base' && match.of[0] === 'family') ||
  (longer.of[0] === 'family' && match.of[0] === 'base');

/** Words looked at before a layer for its place. */
const LOOKS_BACK = 3;

type Place = 'below' | 'top' | undefined;

const placeOf = (ear: Ear, words: readonly Word[], { from, to }: Match): Place => {
  const { part = -1 } = words[from] ?? {};
  for (let at = from - 1; at >= from - LOOKS_BACK; at--) {
    const word = words[at];
    if (!word || word.part !== part) break;
    // "sealed with clear"
    if (word.word === 'sealed' && words[at + 1]?.word === 'with') return 'top';
    if (ear.below.has(word.word)) return 'below';
    if (ear.onTop.has(word.word)) return 'top';
  }
  const after = words[to];
  // "oil under the seat" lies on its underside.
  const ofPlace = /^(the|a|my|our|its)$/.test(words[to + 1]?.word ?? '');
  if (
    after?.part === part &&
    !ofPlace &&
    /^(underneath|below|beneath|under|first|primer|sealer|base)$/.test(after.word)
  )
    return 'below';
  if (after?.part === part && /^(over|topcoat|finish|on)$/.test(after.word)) return 'top';
  return undefined;
};

type Mention = {
  readonly value: string;
  readonly weight: number;
  readonly span: Span;
  readonly place: Place;
  /** Said to have been laid: "two coats of", "brushed", "went on". */
  readonly laid?: boolean;
};

const LAID_BEFORE =
  /^(\d+|two|three|four|five|six|several|coats?|coated|layers?|brushed|brush|rolled|sprayed|wiped|padded|rubbed|applied|put|laid|finished|sealed|topcoated|then|poured|recoated|used|gave|followed)$/;
const LAID_AFTER = /^(on|went|top|coats?|last|yesterday|ago)$/;

const isLaid = (words: readonly Word[], { from, to }: Match): boolean => {
  const part = words[from]?.part;
  const has = (start: number, end: number, what: RegExp) =>
    words.slice(Math.max(0, start), end).some((word) => word.part === part && what.test(word.word));
  return has(from - 6, to, LAID_BEFORE) || has(to, to + 2, LAID_AFTER);
};

const PLAIN = 0.72;
const EACH_WORD = 0.08;
const MOST_SURE = 0.95;

/** The value of a fact that the mentions speak for most; the others stand against it. */
const settled = (fact: FactName, mentions: readonly Mention[], against: readonly Span[]): HeardFact[] => {
  const weights = new Map<string, number>();
  for (const { value, weight } of mentions)
    weights.set(value, Math.max(weights.get(value) ?? 0, weight) + 0.02);
  const [best, next] = [...weights].sort((a, b) => b[1] - a[1]);
  if (!best) return [];
  const [value, weight] = best;
  const rival = next && weight - next[1] < 0.1 ? 0.75 : next ? 0.92 : 1;
  const others = mentions.filter((one) => one.value !== value).map(({ span }) => span);
  return [
    {
      fact,
      value,
      sure: Math.min(MOST_SURE, weight) * rival,
      rests: mentions.filter((one) => one.value === value).map(({ span }) => span),
      against: [...others, ...against],
    },
  ];
};

/** Facts of one choice each, but for the kind of top coat and the stage. */
const CHOICES = ['sheen', 'base-tone', 'base', 'applicator', 'age', 'piece', 'hardener'] as const;
/** Where several pieces are named, the one that demands most care is meant. */
const PIECES = ['crib', 'food-surface', 'childs-item', 'valuable', 'tabletop', 'furniture'];

/** "80 years old", "a hundred years old"; decades in words. */
const YEARS_OLD = /\b(\d{2,3}|hundred|fifty|sixty|seventy|eighty|ninety)[ -]years?[ -]old\b/gi;
const SURELY_OLD_YEARS = 40;
const DECADE =
  /(?<!\b(?:in the|low|mid|high|upper|lower|around) )\b(?:twenties|thirties|forties|fifties|sixties|seventies|eighties)\b(?! (?:inside|outside|in the|degree))/gi;
const YEAR = /\b(1[89]\d\d|20[0-4]\d)(?:['’]?s)?\b/g;
const OLD_BEFORE = 1993;

const isOf1993 = (found: string): string => (Number(found) < OLD_BEFORE ? 'before-1993' : 'since-1993');

const ageOf = (text: string): Mention[] => {
  const mention = (found: RegExpExecArray, value: string, weight: number): Mention => ({
    value,
    weight,
    span: { from: found.index, to: found.index + found[0].length },
    place: undefined,
  });
  return [
    ...[...text.matchAll(YEAR)].map((found) => mention(found, isOf1993(found[1] ?? ''), PLAIN)),
    ...[...text.matchAll(DECADE)].map((found) => mention(found, 'before-1993', PLAIN)),
    ...[...text.matchAll(YEARS_OLD)]
      .filter((found) => !(Number(found[1]) < SURELY_OLD_YEARS))
      .map((found) => mention(found, 'before-1993', PLAIN)),
  ];
};

/** Under paint no wood shows. */
const isPainted = (words: readonly Word[]): boolean =>
  words.some(
    ({ word, part }, at) =>
      /^(paint|painted|painting|repainted|primer|primed)$/.test(word) &&
      !(
        words[at + 1]?.part === part &&
        /^(thinner|stripper|scraper|store|brush)$/.test(words[at + 1]?.word ?? '')
      ),
  );

const isStripped = (words: readonly Word[]): boolean =>
  words.some(
    ({ word }, at) =>
      /^(stripped|stripping|stripper|bare)$/.test(word) ||
      (word === 'sanded' && /^(off|down|well|back|through|completely|all)$/.test(words[at + 1]?.word ?? '')),
  );

/** What was stripped off is no longer below the stain. */
const isLeft =
  (told: readonly Mention[]) =>
  ({ value }: Mention): boolean =>
    value !== 'old-finish' || !told.some((one) => one.value === 'stain');

export type HeardChoices = { readonly facts: readonly HeardFact[]; readonly among: readonly HeardAmong[] };

/** Of what is told beside each other, the first of each pair is meant: paint lies over the wood and the old finish. */
const BEATS: Readonly<Partial<Record<FactName, readonly (readonly [string, readonly string[]])[]>>> = {
  'base-tone': [
    ['dark', ['wood']],
    ['light', ['wood']],
  ],
  base: [
    ['chalk-paint', ['old-finish', 'bare-wood', 'stain']],
    ['milk-paint', ['old-finish', 'bare-wood', 'stain']],
    ['latex-paint', ['old-finish', 'bare-wood']],
    ['oil-paint', ['old-finish', 'bare-wood']],
    ['stain', ['bare-wood']],
  ],
  age: [['before-1993', ['unknown', 'since-1993']]],
  // The short name is said of the long one: "water based lacquer … the lacquer peels".
  family: [
    ['water-lacquer', ['lacquer']],
    ['hardwax-oil', ['oil', 'wax']],
  ],
  applicator: [
    ['aerosol', ['spray-gun']],
    ['sponge', ['brush']],
  ],
};

const withoutBeaten = (fact: FactName, told: readonly Mention[]): Mention[] => {
  const beaten = (BEATS[fact] ?? []).flatMap(([value, others]) =>
    told.some((one) => one.value === value) ? others : [],
  );
  return told.filter(({ value }) => !beaten.includes(value));
};

/** Films that wax is rubbed over; the wax is then no top coat of its own. */
const FILMS = ['water-based', 'oil-based', 'wipe-on', 'shellac', 'lacquer', 'water-lacquer'];

/** What the kind named last, and the one laid last, is ahead of the others. */
const NAMED_LAST = 0.06;
const LAID_LAST = 0.22;

/** What is often laid or left below another coat. */
const isUnderlay = (family: string): boolean => ['wax', 'shellac', 'oil', 'lacquer'].includes(family);

/** The kind of top coat, and kinds that are left open. Of several, the one said to lie on top; else the last named. */
const familyOf = (
  all: readonly Mention[],
  open: readonly Mention[],
  against: readonly Span[],
): HeardChoices => {
  const film = all.some(({ value, place }) => FILMS.includes(value) && place !== 'below');
  const kinds = withoutBeaten('family', all);
  const mentions = film ? kinds.filter(({ value }) => value !== 'wax') : kinds;
  const top = mentions.filter(({ place }) => place === 'top');
  const free = mentions.filter(({ place }) => place !== 'below');
  // A kind left open that lies on top ("poly over shellac") shuts out a closed one below it.
  const openOnTop = open.filter(({ place }) => place !== 'below');
  const chosen = top.length ? top : free;
  if (chosen.length === 0 || (openOnTop.length > 0 && top.length === 0 && free.length === 0)) {
    const [first] = openOnTop.length ? openOnTop : open;
    const lastBelow = openOnTop.length ? [] : mentions;
    if (!first)
      return {
        facts: settled(
          'family',
          lastBelow.map((one) => ({ ...one, weight: 0.55 })),
          against,
        ),
        among: [],
      };
    return {
      facts: [],
      among: [
        {
          fact: 'family',
          values: first.value.split('|'),
          sure: 0.8,
          rests: [first.span],
          against: [...against, ...mentions.map(({ span }) => span)],
        },
      ],
    };
  }
  // Of several kinds the one that was laid last lies on top; one that is only named counts less.
  const last = chosen.findLast(({ laid }) => laid) ?? chosen.at(-1);
  const opened = openOnTop.at(-1);
  // What is named last was laid last: wax, then poly.
  if (
    last &&
    opened &&
    top.length === 0 &&
    opened.span.from > last.span.to &&
    !opened.value.split('|').includes(last.value) &&
    isUnderlay(last.value)
  )
    return {
      facts: [],
      among: [
        {
          fact: 'family',
          values: opened.value.split('|'),
          sure: 0.75,
          rests: [opened.span],
          against: mentions.map(({ span }) => span),
        },
      ],
    };
  const weighed = chosen.map((one) => ({
    ...one,
    weight: one.weight + (one !== last ? 0 : one.laid ? LAID_LAST : NAMED_LAST),
  }));
  return {
    facts: settled('family', weighed, [
      ...against,
      ...mentions.filter((one) => !chosen.includes(one)).map(({ span }) => span),
    ]),
    among: [],
  };
};

/** What a kind of finish is named in, and is none. */
const OF_BELOW = /^(stain|stains|dye|primer|primers|paint|paints|enamel|filler|thinner|remover|stripper)$/;

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
    if (manner.denied(match) !== undefined || manner.notYet(match) || manner.feared(match)) {
      against.set(fact, [...(against.get(fact) ?? []), span]);
      continue;
    }
    // "wiped oil stain" is no oil
    const next = words[match.to];
    if (fact === 'family' && next?.part === words[match.from]?.part && OF_BELOW.test(next?.word ?? ''))
      continue;
    // What was wiped on need be no wipe-on varnish.
    if (value === 'wipe-on' && words[match.from]?.word === 'wiped') continue;
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
  const choices = CHOICES.flatMap((fact) => {
    let told = mentions.get(fact) ?? [];
    if (fact === 'age') told = [...told, ...ageOf(text)];
    if (fact === 'base-tone' && isPainted(words)) told = told.filter(({ value }) => value !== 'wood');
    // "refinishing" tells of an old finish only where nothing else is told
    if (fact === 'base' && told.some(({ value }) => value !== 'old-finish'))
      told = told.filter(({ span }) => text.slice(span.from, span.to).toLowerCase() !== 'refinishing');
    if (fact === 'base' && isStripped(words)) told = told.filter(isLeft(told));
    if (fact === 'piece') {
      const named = PIECES.find((piece) => told.some(({ value }) => value === piece));
      told = told.filter(({ value }) => value === named);
    }
    return settled(fact, withoutBeaten(fact, told), against.get(fact) ?? []);
  });
  return { facts: [...family.facts, ...choices], among: family.among };
};
