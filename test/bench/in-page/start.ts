/** The engine as a phone would start it from compiled tables: which ends are left, and which rules hold. */
import { codesOf } from '#engine/compiled/fact-codes.ts';
import { hasBit, markHolding } from '#engine/compiled/rules.ts';
import { markEnds, NO, OPEN, YES } from '#engine/compiled/trees.ts';
import type { StartData } from '../start-data.ts';

type Told = Readonly<Record<string, string | number>>;

const numbersIn = (words: Uint32Array, count: number): number[] =>
  Array.from({ length: count }, (_, at) => at).filter((at) => hasBit(words, at));

const CODES: Readonly<Record<string, number>> = { yes: YES, no: NO };

/** From the text of the data to the first answer. */
export const first = (text: string, defect: string, answers: Told, told: Told) => {
  const data = JSON.parse(text) as StartData;
  const trees = {
    ...data,
    nodes: Int32Array.from(data.nodes),
    roots: new Map(data.roots),
    leaves: [],
    of: [],
  };
  const rules = {
    ...data,
    starts: Uint16Array.from(data.starts),
    rows: Uint32Array.from(data.rows),
    ruled: Uint16Array.from(data.ruled),
    facts: data.facts.map((fact) => ({ ...fact, named: new Map(fact.named), examples: [] })),
  };
  const ends = new Uint32Array(Math.ceil(data.leafCount / 32));
  const codes = Uint8Array.from(data.questions, (question) => CODES[String(answers[question])] ?? OPEN);
  markEnds(trees, trees.roots.get(defect) ?? -1, codes, ends);
  const holding = new Uint32Array(rules.stride);
  markHolding(
    rules,
    codesOf(rules.facts, (fact) => told[fact]),
    holding,
  );
  return { ends: numbersIn(ends, data.leafCount), rules: numbersIn(holding, data.count) };
};
