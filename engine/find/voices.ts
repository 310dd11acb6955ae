import type { FindIndex } from './document.ts';
import type { Token } from './language.ts';
import { BIAS_UNIT, featuresOf, valuesOf, WEIGHT_UNIT } from './learn.ts';
import type { OpenIndex } from './open.ts';
import { DOUBT, LEARNED, WARMTH } from './weights.ts';

/** Chances that add up to 1, from scores of any size. */
const chancesOf = (scores: Float64Array, warmth: number): Float64Array => {
  let most = Number.NEGATIVE_INFINITY;
  for (const score of scores) if (score > most) most = score;
  let total = 0;
  const chances = scores.map((score) => {
    const value = Math.exp((score - most) / warmth);
    total += value;
    return value;
  });
  return chances.map((value) => value / total);
};

/** Words shorter than this are too near to others to be corrected. */
const CORRECTED_FROM = 5;

/** The stem of a word as the learned table knows it: its own, or that of the nearest known word. */
const learnedStem = ({ features, kin, nearWords, nearest }: OpenIndex, { word, stem }: Token): string => {
  if (features.has(stem) || kin.has(stem) || word.length < CORRECTED_FROM) return stem;
  const known = nearest.get(word);
  if (known !== undefined) return known;
  const fresh = nearWords(word, false)[0]?.stem ?? stem;
  nearest.set(word, fresh);
  return fresh;
};

/** The learned chances of every document, the last being other matters; undefined where no word is known. */
export const learnedChances = (open: OpenIndex, tokens: readonly Token[]): Float64Array | undefined => {
  const { bias } = open.index.learned;
  const stems = tokens.map((token) => learnedStem(open, token));
  const features = featuresOf(stems, open.kin).filter((feature) => open.features.has(feature));
  if (!features.length) return undefined;
  const values = valuesOf(features);
  const scores = Float64Array.from(bias, (value) => value / BIAS_UNIT);
  features.forEach((feature, which) => {
    const cells = open.weights[open.features.get(feature) ?? -1] ?? [];
    const scale = (values[which] ?? 0) / WEIGHT_UNIT;
    for (let at = 0; at < cells.length; at += 2) {
      const document = cells[at] ?? 0;
      scores[document] = (scores[document] ?? 0) + (cells[at + 1] ?? 0) * scale;
    }
  });
  return chancesOf(scores, 1);
};

/** Both voices in one: the chance of every document, other matters left out. */
export const mixed = (
  { documents }: FindIndex,
  counted: Float64Array,
  learned: Float64Array | undefined,
): Float64Array => {
  const byCount = chancesOf(counted, WARMTH);
  const logs = byCount.map((chance, row) => {
    const own = Math.log(chance + DOUBT);
    return learned ? (1 - LEARNED) * own + LEARNED * Math.log((learned[row] ?? 0) + DOUBT) : own;
  });
  return chancesOf(logs.slice(0, documents.length), LEARNED);
};
