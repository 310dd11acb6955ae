import type { FindIndex } from '../../find/document.ts';
import { weighed } from '../../find/rank.ts';
import type { Heard } from '../words/heard.ts';
import type { Span } from '../words/words.ts';
import type { Mind } from './mind.ts';

/** The chance of each flaw of the table by some words alone. */
const chancesOf = (index: FindIndex, mind: Mind, text: string): Float64Array => {
  const { chances } = weighed(index, text);
  const byId = new Map(
    index.documents.flatMap(({ id, kind }, row) =>
      kind === 'defect' ? [[id, chances[row] ?? 0] as const] : [],
    ),
  );
  const flaws = Float64Array.from(mind.matrix.defects, (id) => byId.get(id) ?? 0);
  const total = flaws.reduce((sum, chance) => sum + chance, 0) || 1;
  return flaws.map((chance) => chance / total);
};

/** A longer text says enough beside its facts. Chosen on open posts. */
const SHORT = 400;
/** What is said beside the facts counts that far. Chosen on open posts and phrases. */
const BESIDE = 0.25;
/** No chance is nothing where two are weighed against each other. */
const LEAST = 1e-3;
/** What tells of the flaw as much as of the state of the coat. */
const OF_THE_FLAW = ['stage', 'overdue'];

const without = (text: string, spans: readonly Span[]): string =>
  spans.reduce((left, { from, to }) => left.slice(0, from) + ' '.repeat(to - from) + left.slice(to), text);

/** The text with blanks where it tells what was laid, on what and in which air. */
const withoutFacts = (text: string, { facts, among }: Pick<Heard, 'facts' | 'among'>): string =>
  without(
    text,
    [...facts.filter(({ fact }) => !OF_THE_FLAW.includes(fact)), ...among].flatMap(({ rests }) => rests),
  );

/**
 * The chance of each flaw of the table by the words of a text alone, as the search weighs it. In a short text the kind of
 * finish and the paint are half of the words, and the search knows what goes wrong with these most often: what is said
 * beside such facts counts once more.
 */
export const flawWords = (
  index: FindIndex,
  mind: Mind,
  typed: string,
  heard?: Pick<Heard, 'facts' | 'among' | 'aside'>,
): Float64Array => {
  const text = heard?.aside ? without(typed, heard.aside) : typed;
  const whole = chancesOf(index, mind, text);
  const rest = heard && text.length <= SHORT ? withoutFacts(text, heard) : text;
  if (rest === text || !rest.trim()) return whole;
  const beside = chancesOf(index, mind, rest);
  const both = whole.map(
    (chance, at) => (chance + LEAST) ** (1 - BESIDE) * ((beside[at] ?? 0) + LEAST) ** BESIDE,
  );
  const total = both.reduce((sum, chance) => sum + chance, 0);
  return both.map((chance) => chance / total);
};
