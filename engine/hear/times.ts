import type { HeardFact } from './heard.ts';
import type { Manner } from './manner.ts';
import type { Ear, Match } from './match.ts';
import type { Span, Word } from './words.ts';

/** A time told: how long ago, in hours. */
type SpokenSpan = Span & {
  readonly least: number;
  readonly likely: number;
  readonly most: number;
  readonly sure: number;
  /** Beside a word of laying. */
  readonly laid: boolean;
};

/** The number that a word tells; ordinals tell none. */
export const numberAt = (ear: Ear, word: Word | undefined): number | undefined => {
  if (!word) return undefined;
  if (/^\d+(?:[.,]\d+)?$/.test(word.word)) return Number(word.word.replace(',', '.'));
  const value = ear.numbers.get(word.word);
  return value !== undefined && !/^\d/.test(word.word) && !/(?:st|nd|rd|th)$/.test(word.word)
    ? value
    : undefined;
};

const RANGE_WORD = /^(to|or|and)$/;
const FILLER = /^(more|full|whole|of|good|or|so|long|and|short)$/;
const ORDINAL = new Set(['first', 'second', 'third', 'fourth', 'fifth', 'sixth']);

/** A number, or two, and a unit of time, from word `at` on. */
const spanAt = (
  ear: Ear,
  words: readonly Word[],
  at: number,
): { to: number; low: number; high: number; unit: string } | undefined => {
  const first = words[at];
  const low = first && !ORDINAL.has(first.word) ? numberAt(ear, first) : undefined;
  if (low === undefined) return undefined;
  let here = at + 1;
  let high = low;
  const second = RANGE_WORD.test(words[here]?.word ?? '') ? here + 1 : here;
  const more = numberAt(ear, words[second]);
  if (more !== undefined && more >= low && words[second]?.clause === first?.clause) {
    high = more;
    here = second + 1;
  }
  for (let skipped = 0; skipped < 2 && FILLER.test(words[here]?.word ?? ''); skipped++) here++;
  const unit = words[here];
  if (!unit || !ear.units.has(unit.word) || unit.sentence !== first?.sentence) return undefined;
  // "a second coat" and "a min" are no times
  if (unit.word === 'second' || (unit.word.length === 1 && !/^\d/.test(first?.word ?? ''))) return undefined;
  const each = ear.units.get(unit.word) ?? 0;
  return { to: here + 1, low: low * each, high: high * each, unit: unit.word };
};

const any = (words: readonly Word[], from: number, to: number, set: ReadonlySet<string>): boolean =>
  words.slice(Math.max(0, from), to).some((word) => set.has(word.word));

const TOP =
  /^(coats?|coated|finish|finished|refinished|topcoat|clear|poly|polyed|polyurethane|varnish|varnished|lacquer|lacquered|shellac|sealer|wax|waxed|oil|oiled|acrylic)$/;
/** What keeps in a can: how old it is tells nothing of a coat. */
const IN_THE_CAN = /^(can|cans|tin|tins|gallon|quart|jar|bottle|flakes|product|stuff|brush)$/;
const DAYS_ON_END = /^(every|each|between|apart|per)$/;
/** Things that stood or lay somewhere for a time. */
const STOOD = /^(stood|sat|sitting|standing|soak|soaked|lay|laid|slept|watched|leave|heated)$/;

const LAYER_REACH = 6;
const NEAR = 5;

/** Whether the time at word `from` is of something else: the can's own time, a time between coats, or another layer's. */
const isElse = (words: readonly Word[], matches: readonly Match[], from: number, to: number): boolean => {
  const { clause, sentence } = words[from] ?? {};
  if (matches.some((one) => one.sense === 'cue other-time' && words[one.from]?.clause === clause))
    return true;
  const beside = words.slice(Math.max(0, from - 2), to + 2);
  if (beside.some((word) => word.clause === clause && DAYS_ON_END.test(word.word))) return true;
  const before = words.slice(Math.max(0, from - 3), from).filter((word) => word.clause === clause);
  if (before.some((word) => STOOD.test(word.word)) && !before.some((word) => TOP.test(word.word)))
    return true;
  const after = words.slice(to, to + NEAR).filter((word) => word.clause === clause);
  const [next] = after;
  // "20 years of poly" is what somebody knows; "ten year old can" is what the can is.
  if (next?.word === 'of' && !/^use$/.test(after[1]?.word ?? '')) return true;
  const aged = words.slice(from, to + 1).some((word) => word.word === 'old');
  if (aged && [...before, ...after.slice(0, 3)].some((word) => IN_THE_CAN.test(word.word))) return true;
  const layers = matches.filter(
    (one) => one.sense === 'cue other-layer' && words[one.from]?.sentence === sentence && one.from !== from,
  );
  if (!layers.length) return false;
  const afterLayer =
    words[to]?.word === 'after' && layers.some((one) => one.from > to && one.from <= to + LAYER_REACH);
  return (
    afterLayer ||
    !words.some(
      (word, at) =>
        word.sentence === sentence &&
        TOP.test(word.word) &&
        !layers.some((one) => at >= one.from - 1 && at <= one.to),
    )
  );
};

/** How far a time in numbers is taken as told about: "two hours" is from 1.6 to 2.6. */
const LESS = 0.8;
const MORE = 1.3;
/** From here on a time is told in months: a thing that was bought or moved in then is at least so old. */
const MONTH = 700;

/** Words of work on a coat. */
const WORK = /^(coats?|layers?|brushed|rolled|sprayed|applied|sanded|primed|stripped|recoated|stained)$/;
const LATER = /^(ago|later|since|on|now|back|in|still|after)$/;
const SPAN_WORD = /^(after|for|past|last|still|within|over|just|only)$/;

const toldTimes = (
  ear: Ear,
  words: readonly Word[],
  matches: readonly Match[],
  manner: Manner,
): SpokenSpan[] => {
  const found: SpokenSpan[] = [];
  for (let at = 0; at < words.length; at++) {
    const span = spanAt(ear, words, at);
    const here = words[at];
    if (!span || !here) continue;
    const next = words[span.to];
    const after = next?.sentence === here.sentence ? next : undefined;
    const old = after?.word === 'old';
    const long = span.low >= MONTH;
    const strong =
      (after !== undefined && LATER.test(after.word) && after.clause === here.clause) ||
      SPAN_WORD.test(words[at - 1]?.word ?? '') ||
      (old && long) ||
      // "Oak cabinets, 25 years." stands alone.
      (long && (after === undefined || after.clause !== here.clause));
    const beside = any(words, at - 4, span.to + 4, ear.laid) || any(words, at - 3, span.to + 2, ear.ago);
    if (!strong && !beside) continue;
    if (old && !long && !any(words, at - 3, span.to + 3, new Set(['finish', 'coat', 'poly']))) continue;
    const match: Match = { sense: '', kind: '', of: [], from: at, to: span.to, size: 2 };
    if (manner.notYet(match) || isElse(words, matches, at, span.to)) continue;
    const ago = after?.word === 'ago' || after?.word === 'back';
    const waited = /^wait(ed|ing)?$/.test(words[at - 1]?.word ?? '');
    found.push({
      from: here.from,
      to: (ago ? after : words[span.to - 1])?.to ?? here.to,
      least: span.low * LESS,
      likely: (span.low + span.high) / 2,
      most: span.high * MORE,
      sure:
        long && !(ago && isOfLaying(words, at)) && isWorkedOn(words, at, old)
          ? 0.5
          : ago
            ? 0.9
            : strong
              ? 0.8
              : waited
                ? 0.72
                : 0.71,
      laid: isOfLaying(words, at),
    });
    at = span.to - 1;
  }
  for (const match of tightest(matches.filter(({ kind }) => kind === 'times'))) {
    if (manner.notYet(match) || isElse(words, matches, match.from, match.to)) continue;
    const [least = 0, likely = 0, most = 0] = match.of.map(Number);
    const from = words[match.from]?.from ?? 0;
    if (found.some((one) => one.from <= from && from < one.to)) continue;
    const told = speaksOfFilm(ear, words, match.from);
    found.push({
      from,
      to: words[match.to - 1]?.to ?? from,
      least,
      likely,
      most,
      sure: told ? 0.77 : 0.6,
      laid: isOfLaying(words, match.from),
    });
  }
  return found;
};

/** Of phrases that overlap the one with the fewest words between counts: "a few months" is no month. */
const tightest = (matches: readonly Match[]): Match[] => {
  const loose = ({ from, to, size }: Match) => to - from - size;
  return matches.filter(
    (match) =>
      !matches.some(
        (other) =>
          other !== match &&
          other.from < match.to &&
          match.from < other.to &&
          (loose(other) < loose(match) || (loose(other) === loose(match) && other.size > match.size)),
      ),
  );
};

const LAYING =
  /^(brushed|rolled|sprayed|applied|recoated|poured|coated|laid|finished|refinished|waxed|oiled|varnished|polished|polyed|put|painted|wiped|sealed)$/;

/** Whether a coat was worked on in another clause than that of a time, or anywhere where the age of a thing is told: the age of a piece is then not that of its coat. */
const isWorkedOn = (words: readonly Word[], at: number, aged: boolean): boolean =>
  words.some((word) => (aged || word.clause !== words[at]?.clause) && WORK.test(word.word));

/** Whether a word of laying stands in the clause of a time. */
const isOfLaying = (words: readonly Word[], at: number): boolean =>
  words.some((word) => word.clause === words[at]?.clause && LAYING.test(word.word));

/** Whether the sentence of a time, or the one before, speaks of a film or of laying it. */
const speaksOfFilm = (ear: Ear, words: readonly Word[], at: number): boolean => {
  const sentence = words[at]?.sentence ?? 0;
  return words.some(
    (word) =>
      (word.sentence === sentence || word.sentence === sentence - 1) &&
      (TOP.test(word.word) || LAYING.test(word.word) || (ear.laid.has(word.word) && word.word !== 'it')),
  );
};

/** A coat told as laid after the time that was heard: that time is then of an earlier one. */
const laidAfter = (words: readonly Word[], manner: Manner, from: number): Span | undefined => {
  const at = words.findIndex((word) => word.from >= from);
  if (at < 0) return undefined;
  const there = words.findIndex(
    (word, index) =>
      index >= at &&
      word.clause > (words[at - 1]?.clause ?? 0) &&
      /^(brushed|rolled|sprayed|applied|recoated|poured)$/.test(word.word) &&
      !manner.notYet({ sense: '', kind: '', of: [], from: index, to: index + 1, size: 1 }),
  );
  const found = words[there];
  return found && { from: found.from, to: found.to };
};

/**
 * Hours since the last coat was laid. A time beside a word of laying goes before the others; of several the latest
 * counts, so that a film is never taken drier than the text allows. The others speak against it.
 */
export const hoursOf = (
  ear: Ear,
  words: readonly Word[],
  matches: readonly Match[],
  manner: Manner,
): HeardFact[] => {
  const told = toldTimes(ear, words, matches, manner);
  const strongest = Math.max(...told.map(({ sure }) => sure));
  const near = told.filter(({ sure }) => sure >= strongest - 0.25);
  const ofLaying = near.filter(({ laid }) => laid);
  const [latest] = (ofLaying.length ? ofLaying : near).sort((a, b) => a.likely - b.likely);
  if (!latest) return [];
  const laidAgain = laidAfter(words, manner, latest.to);
  const others = told.filter((one) => one !== latest && (one.least > latest.most || one.most < latest.least));
  const round = (value: number) => Math.round(Math.min(9000, value) * 100) / 100;
  const doubt = others.length === 0 ? 1 : latest.laid && !others.some(({ laid }) => laid) ? 0.95 : 0.9;
  return [
    {
      fact: 'hours-since-coat',
      value: round(latest.likely),
      range: [round(latest.least), round(latest.most)],
      sure: latest.sure * doubt * (laidAgain ? 0.6 : 1),
      rests: [{ from: latest.from, to: latest.to }],
      against: [...others.map(({ from, to }) => ({ from, to })), ...(laidAgain ? [laidAgain] : [])],
    },
  ];
};
