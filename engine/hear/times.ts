import type { HeardFact } from './heard.ts';
import type { Manner } from './manner.ts';
import type { Ear, Match } from './match.ts';
import type { Span, Word } from './words.ts';

/** A time told: how long ago, in hours. */
type Told = Span & {
  readonly least: number;
  readonly likely: number;
  readonly most: number;
  readonly sure: number;
};

const numberAt = (ear: Ear, word: Word | undefined): number | undefined => {
  if (!word) return undefined;
  if (/^\d+(?:[.,]\d+)?$/.test(word.word)) return Number(word.word.replace(',', '.'));
  const value = ear.numbers.get(word.word);
  return value !== undefined && !/^\d/.test(word.word) && !/(?:st|nd|rd|th)$/.test(word.word)
    ? value
    : undefined;
};

const RANGE_WORD = /^(to|or|and)$/;
const FILLER = /^(more|full|whole|of|good|or|so|long|and)$/;
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
  /^(coats?|finish|topcoat|clear|poly|polyurethane|varnish|lacquer|shellac|sealer|wax|oil|acrylic)$/;

/** Whether the time at word `from` is of something else: the can's own time, or another layer's. */
const isElse = (words: readonly Word[], matches: readonly Match[], from: number, to: number): boolean => {
  const sentence = words[from]?.sentence;
  const within = (cue: string) =>
    matches.filter((one) => one.sense === cue && words[one.from]?.sentence === sentence && one.from !== from);
  if (within('cue other-time').length) return true;
  const layers = within('cue other-layer');
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
const LAYER_REACH = 6;

/** How far a time in numbers is taken as told about: "two hours" is from 1.6 to 2.6. */
const LESS = 0.8;
const MORE = 1.3;

const toldTimes = (ear: Ear, words: readonly Word[], matches: readonly Match[], manner: Manner): Told[] => {
  const found: Told[] = [];
  for (let at = 0; at < words.length; at++) {
    const span = spanAt(ear, words, at);
    const here = words[at];
    if (!span || !here) continue;
    const next = words[span.to];
    const strong =
      (/^(ago|later|since|on|now)$/.test(next?.word ?? '') && next?.clause === here.clause) ||
      /^(after|for|past|last|still)$/.test(words[at - 1]?.word ?? '');
    const old = next?.word === 'old' || (words[span.to - 1]?.word.startsWith('year') && next?.word === 'old');
    const beside = any(words, at - 4, span.to + 4, ear.laid) || any(words, at - 3, span.to + 2, ear.ago);
    if (
      (!strong && !beside) ||
      (old && !any(words, at - 3, span.to + 3, new Set(['finish', 'coat', 'poly'])))
    )
      continue;
    const match: Match = { sense: '', kind: '', of: [], from: at, to: span.to, size: 2 };
    const elsewhere = isElse(words, matches, at, span.to);
    if (manner.notYet(match) || elsewhere) continue;
    const ago = next?.word === 'ago';
    found.push({
      from: here.from,
      to: (ago ? next : words[span.to - 1])?.to ?? here.to,
      least: span.low * LESS,
      likely: (span.low + span.high) / 2,
      most: span.high * MORE,
      sure: ago ? 0.9 : strong ? 0.8 : 0.6,
    });
    at = span.to - 1;
  }
  for (const match of matches) {
    if (match.kind !== 'times' || manner.notYet(match) || isElse(words, matches, match.from, match.to))
      continue;
    const [least = 0, likely = 0, most = 0] = match.of.map(Number);
    const from = words[match.from]?.from ?? 0;
    if (found.some((one) => one.from <= from && from < one.to)) continue;
    found.push({ from, to: words[match.to - 1]?.to ?? from, least, likely, most, sure: 0.75 });
  }
  return found;
};

const LAYING = /^(brushed|rolled|sprayed|applied|recoated|poured)$/;

/** A coat told as laid after the time that was heard: that time is then of an earlier one. */
const laidAfter = (words: readonly Word[], manner: Manner, from: number): Span | undefined => {
  const at = words.findIndex((word) => word.from >= from);
  if (at < 0) return undefined;
  const there = words.findIndex(
    (word, index) =>
      index >= at &&
      word.clause > (words[at - 1]?.clause ?? 0) &&
      LAYING.test(word.word) &&
      !manner.notYet({ sense: '', kind: '', of: [], from: index, to: index + 1, size: 1 }),
  );
  const found = words[there];
  return found && { from: found.from, to: found.to };
};

/**
 * Hours since the last coat was laid. Of several times the latest counts, so that a film is never taken drier
 * than the text allows; the others speak against it.
 */
export const hoursOf = (
  ear: Ear,
  words: readonly Word[],
  matches: readonly Match[],
  manner: Manner,
): HeardFact[] => {
  const told = toldTimes(ear, words, matches, manner);
  const strongest = Math.max(...told.map(({ sure }) => sure));
  const [latest] = told.filter(({ sure }) => sure >= strongest - 0.25).sort((a, b) => a.likely - b.likely);
  if (!latest) return [];
  const laidAgain = laidAfter(words, manner, latest.to);
  const others = told.filter((one) => one !== latest && (one.least > latest.most || one.most < latest.least));
  const round = (value: number) => Math.round(Math.min(9000, value) * 100) / 100;
  return [
    {
      fact: 'hours-since-coat',
      value: round(latest.likely),
      range: [round(latest.least), round(latest.most)],
      sure: latest.sure * (others.length ? 0.85 : 1) * (laidAgain ? 0.6 : 1),
      rests: [{ from: latest.from, to: latest.to }],
      against: [...others.map(({ from, to }) => ({ from, to })), ...(laidAgain ? [laidAgain] : [])],
    },
  ];
};

const ORDINAL_COATS = /^(?:1st|2nd|3rd|4th|5th|6th|first|second|third|fourth|fifth|sixth)$/;
const COAT = /^coats?$/;

/** Which coat this is: the highest that is told as laid. */
export const coatNumberOf = (ear: Ear, words: readonly Word[], manner: Manner): HeardFact[] => {
  const found: { count: number; span: Span; sure: number }[] = [];
  words.forEach((word, at) => {
    if (!COAT.test(word.word)) return;
    for (let back = 1; back <= 4; back++) {
      const there = words[at - back];
      if (!there || there.clause !== word.clause || ear.units.has(there.word)) break;
      const ordinal = ORDINAL_COATS.test(there.word);
      const count = ordinal ? ear.numbers.get(there.word) : numberAt(ear, there);
      const article = there.word === 'a' || there.word === 'an' || there.word === 'half';
      if (count === undefined || article) continue;
      if (count < 1 || count > 20 || !Number.isInteger(count)) break;
      const match: Match = { sense: '', kind: '', of: [], from: at - back, to: at + 1, size: 2 };
      const ofElse = words
        .slice(at + 1, at + 5)
        .some(
          (next) =>
            next.clause === word.clause && /^(stain|paint|primer|wax|latex|chalk|dye)$/.test(next.word),
        );
      if (!manner.notYet(match) && !ofElse && !/^(next|another)$/.test(words[at - 1]?.word ?? ''))
        found.push({
          count: there.word === 'first' && words[at - back + 1]?.word === 'two' ? 2 : count,
          span: { from: there.from, to: word.to },
          sure: 0.85,
        });
      break;
    }
    if (/^\d$/.test(words[at + 1]?.word ?? '') && words[at + 1]?.clause === word.clause)
      found.push({
        count: Number(words[at + 1]?.word),
        span: { from: word.from, to: words[at + 1]?.to ?? word.to },
        sure: 0.7,
      });
  });
  const [most] = found.filter(({ count }) => count >= 1).sort((a, b) => b.count - a.count || b.sure - a.sure);
  if (!most) return [];
  return [
    {
      fact: 'coat-number',
      value: most.count,
      range: [most.count, most.count],
      sure: most.sure,
      rests: [most.span],
      against: found.filter(({ count }) => count !== most.count).map(({ span }) => span),
    },
  ];
};
