import { toCelsius } from '../../calc/units.ts';
import { entryOf } from '../../plain/entry-of.ts';
import type { Ear } from '../words/match.ts';
import { oneOf } from '../words/one-of.ts';
import { countAt, spanAt } from '../words/spans.ts';
import { isTopNoun } from '../words/top-words.ts';
import { isKind, type Span, type Word } from '../words/words.ts';

/** What names a drying time before anything is laid. */
const LABEL = oneOf('can|cans|tin|label|labels|directions|instructions|sheet|jar|bottle|maker|manufacturer');
const SAYS = oneOf(
  'says|said|say|gives|gave|give|wants|promised|promises|claims|claimed|calls|called|told|states|stated|reads|lists|listed|recommends|for|time|times|on|dry',
);
const SUPPOSED = oneOf('supposed|should|meant|advertised|rated');
const DRIES = oneOf('dry|dries|drying|cure|cured|recoat|touch|hard|set');
const UNITS = oneOf('hours?|hrs?|h|min|mins|minutes?|days?');

/** Hours that the label gives a coat to dry, the longest that is told, and the word behind it. */
export type LabelTime = { readonly hours: number; readonly at: number; readonly unit: string };

/** Looked up once a text. */
const told = new WeakMap<readonly Word[], { readonly label: LabelTime | undefined }>();

/** "can says 2 hours", "dry time on the can 8 hrs", "the tin promised four hours", "8 to 12 hours to dry the tin says". */
export const labelTime = (ear: Ear, words: readonly Word[]): LabelTime | undefined => {
  const known = told.get(words);
  if (known) return known.label;
  const label = words.some((one) => LABEL.test(one.word) || SUPPOSED.test(one.word) || isKind(one, 'tells'))
    ? readLabel(ear, words)
    : undefined;
  told.set(words, { label });
  return label;
};

const readLabel = (ear: Ear, words: readonly Word[]): LabelTime | undefined => {
  let found: LabelTime | undefined;
  for (let at = 0; at < words.length; at++) {
    const span = spanAt(ear, words, at);
    const here = words[at];
    if (!span || !here) continue;
    const near = words.slice(Math.max(0, at - 9), span.to + 6).filter(({ part }) => part === here.part);
    const isSaid = near.some((word, at) => isTopNoun(word) && isKind(near[at + 1], 'tells'));
    const isLabel =
      isSaid || (near.some(({ word }) => LABEL.test(word)) && near.some(({ word }) => SAYS.test(word)));
    const isMeant = near.some(({ word }) => SUPPOSED.test(word)) && near.some(({ word }) => DRIES.test(word));
    // "a ten year old can"
    if ((isLabel || isMeant) && UNITS.test(span.unit) && words[span.to]?.word !== 'old')
      if (!found || span.high > found.hours) found = { hours: span.high, at: span.to, unit: span.unit };
    at = span.to - 1;
  }
  return found;
};

/** So many words behind its time a label names the degrees that it holds at. */
const NEAR_DEGREES = 12;
const DEGREES = oneOf('f|c|fahrenheit|celsius');

/** The degrees that a label names behind its time: "24 hours at 77 °F". They are none of the room. */
export const labelDegrees = (
  words: readonly Word[],
  label: Word,
): (Span & { readonly celsius: number }) | undefined => {
  const from = words.indexOf(label);
  for (let at = from + 1; at < from + NEAR_DEGREES && words[at]?.sentence === label.sentence; at++) {
    const [here, next] = [words[at], words[at + 1]];
    const unit = next?.word === 'degrees' ? words[at + 2] : next;
    const value = Number(here?.word);
    if (!here || !unit || !(value > 0) || !DEGREES.test(unit.word)) continue;
    return { from: here.from, to: unit.to, celsius: unit.word.startsWith('c') ? value : toCelsius(value) };
  }
  return undefined;
};

const TIMES: Readonly<Record<string, number>> = { half: 0.5, twice: 2, double: 2, triple: 3, thrice: 3 };
const BEFORE_BARE = oneOf('its|at|been|im|mines|gave');
const BEHIND_BARE = oneOf('and|so|now|with|still|but|in|here|already');

/** "It's 6 and still soft", "it has been twice that": hours told beside those of the label, in its unit. */
export const besideLabel = (
  ear: Ear,
  words: readonly Word[],
  label: LabelTime,
): { readonly at: number; readonly to: number; readonly hours: number } | undefined => {
  for (let at = 1; at < words.length; at++) {
    const [before, here, next] = [words[at - 1], words[at], words[at + 1]];
    if (!here || before?.part !== here.part) continue;
    const isTimes = next?.word === 'times' && /^(what|that|the|as)$/.test(words[at + 2]?.word ?? '');
    const count = isTimes ? (ear.numbers.get(here.word) ?? Number(here.word)) : entryOf(TIMES, here.word);
    if (count && (isTimes || /^(that|what|the)$/.test(next?.word ?? '')) && at > label.at - 6)
      return { at, to: at + 2, hours: count * label.hours };
    if (at < label.at || !BEFORE_BARE.test(before.word)) continue;
    const number = /^an?$|half/.test(here.word) ? undefined : countAt(ear, words, at);
    const behind = number && words[number.to];
    if (!number || ear.units.has(behind?.word ?? '')) continue;
    if (behind && behind.part === here.part && !BEHIND_BARE.test(behind.word)) continue;
    return { at, to: number.to, hours: number.value * (ear.units.get(label.unit) ?? 1) };
  }
  return undefined;
};
