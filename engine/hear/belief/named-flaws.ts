import type { FindIndex } from '../../find/document.ts';
import { find } from '../../find/rank.ts';
import { STAGES, type Stage } from '../../model/stage.ts';
import { YES_CHANCE } from '../../see/matrix.ts';
import type { Heard, HeardSign } from '../words/heard.ts';
import type { Span } from '../words/words.ts';
import type { LikelyFlaw } from './consider.ts';
import { flawWords } from './flaw-words.ts';
import type { Mind } from './mind.ts';

/** A flaw that some words of a text name by themselves, whatever the whole of it is taken for. */
export type NamedFlaw = {
  readonly defect: string;
  readonly name: string;
  readonly span: Span;
  /** Said to be not there: "no bubbles". */
  readonly denied: boolean;
  /** Called by its name, whatever the whole text is taken for. */
  readonly called?: true;
};

/** So likely must a flaw be by these words alone, one of two alike by the whole text, and the likeliest of them. */
const POSSIBLE = 0.25;
const LIKELIEST = 0.55;
/** The search is as sure as that, or so many signs rest on the words. Chosen on open posts. */
const SURELY = 0.8;
const SIGNS = 3;
/** What is denied in more words than that denies something else as well. */
const DENIED_WORDS = 3;
/** A flaw that the whole text speaks against may be named all the same. */
const STILL = 0.01;
/** Stretches looked at; a whole post has fewer that name a flaw. */
const MOST = 16;
/** A place or a cause is no flaw; what joins two flaws names neither. */
const NO_NAME =
  /^(?:along|around|at|by|close|from|in|near|next|on|out|over|under)\b|\b(?:and|but|or|with)\b|,|^(?:corners?|edges?|grooves?|crevices?|recesses|hollows?|knots?|pores?|moldings?|seams?|spots?|patch(?:es)?|marks?|areas?|places?|inside corners)$/i;

const overlaps = (a: Span, b: Span): boolean => a.from < b.to && b.from < a.to;
const within = (a: Span, b: Span): boolean => b.from <= a.from && a.to <= b.to;

/** The stretches of a text that say what is seen, the longest first; those that tell a fact, such as a time, do not. */
const sightsOf = ({ text, facts, signs }: Heard): readonly Span[] => {
  const told = facts.flatMap(({ rests }) => rests);
  const spans = signs
    .flatMap(({ rests }) => rests)
    .filter((span) => !told.some((one) => overlaps(one, span)))
    .filter(({ from, to }) => !NO_NAME.test(text.slice(from, to)))
    .sort((a, b) => b.to - b.from - (a.to - a.from) || a.from - b.from);
  return spans
    .filter((span, at) => !spans.slice(0, at).some((longer) => within(span, longer)))
    .slice(0, MOST);
};

/** How far signs are those of a flaw: above 0 they are, below 0 they are denied. */
const agreement = (mind: Mind, defect: number, signs: readonly HeardSign[]): number =>
  signs.reduce((sum, { question, answer }) => {
    const shows = mind.matrix.signs[mind.matrix.questions.indexOf(question)] ?? '';
    const yes = YES_CHANCE[shows.charCodeAt(defect) - 48] ?? 0.5;
    return sum + Math.sign(answer === 'yes' ? yes - 0.5 : 0.5 - yes);
  }, 0);

/**
 * Those called by their names; of several that are called so, the likeliest by the whole text. What tells a fact as well,
 * such as "sticky", is no name here.
 */
const calledIn = (
  mind: Mind,
  { names, facts }: Heard,
  chanceOf: ReadonlyMap<string, number>,
): readonly NamedFlaw[] => {
  const told = facts.flatMap(({ rests }) => rests);
  return names.flatMap(({ flaws, rests, denied }) => {
    const span = rests.find((rest) => !told.some((one) => overlaps(one, rest)));
    const met = flaws.filter((id) => mind.matrix.defects.includes(id));
    const [defect] = met.sort((a, b) => (chanceOf.get(b) ?? 0) - (chanceOf.get(a) ?? 0));
    if (defect === undefined || !span) return [];
    return [
      {
        defect,
        name: mind.names[mind.matrix.defects.indexOf(defect)] ?? '',
        span,
        denied,
        called: true as const,
      },
    ];
  });
};

/**
 * Every flaw that a text names, in reading order, each once. Which of two alike is meant, `likely` of the whole text
 * decides. A text that names two is answered for both.
 */
export const namedFlaws = (
  mind: Mind,
  index: FindIndex,
  heard: Heard,
  likely: readonly LikelyFlaw[],
): readonly NamedFlaw[] => {
  const chanceOf = new Map(likely.map(({ defect, chance }) => [defect, chance]));
  const found = new Map<string, NamedFlaw>();
  for (const called of calledIn(mind, heard, chanceOf))
    if (found.get(called.defect)?.denied !== false) found.set(called.defect, called);
  const spans = [...found.values()].map(({ span }) => span);
  for (const span of sightsOf(heard)) {
    if (spans.some((one) => overlaps(one, span))) continue;
    const words = heard.text.slice(span.from, span.to);
    const [hit] = find(index, words, { limit: 1 });
    const signs = heard.signs.filter(({ rests }) => rests.some((one) => within(one, span)));
    if (hit?.kind !== 'defect' || hit.perhaps || (hit.score < SURELY && signs.length < SIGNS)) continue;
    const alone = flawWords(index, mind, words);
    if (Math.max(...alone) < LIKELIEST) continue;
    const fit = (at: number): number =>
      (alone[at] ?? 0) < POSSIBLE
        ? 0
        : (alone[at] ?? 0) * ((chanceOf.get(mind.matrix.defects[at] ?? '') ?? 0) + STILL);
    const at = [...alone.keys()].reduce((best, one) => (fit(one) > fit(best) ? one : best), 0);
    const defect = mind.matrix.defects[at];
    const says = agreement(mind, at, signs);
    if (defect === undefined || says === 0 || found.has(defect)) continue;
    if (says < 0 && words.split(/\s+/).length > DENIED_WORDS) continue;
    found.set(defect, { defect, name: mind.names[at] ?? '', span, denied: says < 0 });
  }
  return [...found.values()].sort((a, b) => a.span.from - b.span.from);
};

/** Whether a verdict on a film that is not dry may be given for each of these flaws. */
export const fitsAllWhileFresh = (
  mind: Mind,
  stage: Stage,
  named: readonly NamedFlaw[],
  verdict: string,
): boolean => {
  const row = mind.hands[STAGES.indexOf(stage)];
  return (
    (stage === 'wet' || stage === 'setting') &&
    named.every(({ defect }) =>
      row?.[mind.matrix.defects.indexOf(defect)]?.some((mark) => mind.words[mark]?.verdict === verdict),
    )
  );
};
