import type { HeardName } from '../words/heard.ts';
import type { Manner } from '../words/manner.ts';
import { type Match, spanOf } from '../words/match.ts';
import type { Span, Word } from '../words/words.ts';

/** A name within the words of a longer thing is none of its own: the peel of "orange peel", the run of "run my hand". */
const isWithinLonger = ({ from, to, size, sense }: Match, longer: readonly Match[]): boolean =>
  longer.some((one) => one.sense !== sense && one.size > size && one.from <= from && to <= one.to);

/** "hair dryer on the poly": a name with a gap reaches over the words of another thing. */
const reachesOver = ({ from, to, size }: Match, whole: readonly Match[]): boolean =>
  to - from > size && whole.some((one) => from <= one.from && one.to <= to && one.to - one.from < to - from);

/** "there are some big runs on it, why": nothing but small words stands beside it between two commas. */
const standsAlone = (words: readonly Word[], { from, to }: Match, small: ReadonlySet<string>): boolean => {
  const part = words[from]?.part;
  const isSmall = (at: number): boolean => words[at]?.part !== part || small.has(words[at]?.word ?? '');
  let [before, after] = [from - 1, to];
  while (before >= 0 && words[before]?.part === part) if (!isSmall(before--)) return false;
  while (after < words.length && words[after]?.part === part) if (!isSmall(after++)) return false;
  return true;
};

/** Flaws called by their names, those only feared, and the words that stand apart from both. */
export type HeardNames = {
  readonly names: readonly HeardName[];
  readonly feared: readonly string[];
  readonly apart: readonly Span[];
};

/**
 * The flaws that a text calls by their names, each with all places where it does. What is only feared, or asked to be kept
 * away, stands apart; what is over is not named; one that is both told and denied is told.
 */
export const namesOf = (
  small: ReadonlySet<string>,
  words: readonly Word[],
  matches: readonly Match[],
  manner: Manner,
): HeardNames => {
  const called = matches.filter(({ kind }) => kind === 'flaw' || kind === 'flaw-alone');
  if (!called.length) return { names: [], feared: [], apart: [] };
  const whole = matches.filter(({ kind }) => kind === 'whole');
  const no = matches.filter(({ kind, from, to, size }) => kind === 'no-sign' && to - from === size);
  const own = called.filter(
    (match) =>
      !isWithinLonger(match, called) &&
      !isWithinLonger(match, whole) &&
      !reachesOver(match, whole) &&
      !no.some((one) => one.from <= match.from && match.to <= one.to && match.size <= one.size) &&
      (match.kind === 'flaw' || standsAlone(words, match, small) || manner.feared(match)) &&
      !manner.over(match),
  );
  // "how to prevent runs when spraying" asks of them, whatever stands beside.
  const plain = own.filter((match) => !manner.feared(match));
  const found = new Map<string, { told: Span[]; denied: Span[] }>();
  for (const match of plain) {
    const [flaws = ''] = match.of;
    const of = found.get(flaws) ?? { told: [], denied: [] };
    (manner.denied(match) === undefined ? of.told : of.denied).push(spanOf(words, match));
    found.set(flaws, of);
  }
  const names = [...found].map(([flaws, { told, denied }]) => ({
    flaws: flaws.split('|'),
    rests: told.length ? told : denied,
    denied: !told.length,
  }));
  const told = new Set(names.filter(({ denied }) => !denied).flatMap(({ flaws }) => flaws));
  const apart = own.filter(manner.feared);
  const feared = apart.flatMap(({ of: [flaws = ''] }) => flaws.split('|'));
  return {
    names,
    feared: [...new Set(feared)].filter((flaw) => !told.has(flaw)),
    apart: apart.map((match) => spanOf(words, match)),
  };
};
