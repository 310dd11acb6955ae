import { compare, type Truth } from '../case/condition.ts';
import type { Wanted } from '../model/condition.ts';
import type { Rule } from '../model/rule.ts';
import { type Clause, clausesOf, type Literal } from './clauses.ts';
import { type CodedFact, codedFact } from './fact-codes.ts';

/**
 * The conditions of all rules, one bit a rule. For each class of each fact a row of words: first the rules that it
 * rules out, then the clauses that it meets. Most conditions hang on one fact at a time and need only the first; a
 * clause over several facts rules its rule out where none of them meets it.
 */
export type RuleTable = {
  readonly facts: readonly CodedFact[];
  /** Where the rows of a fact begin. */
  readonly starts: Uint16Array;
  readonly rows: Uint32Array;
  /** Words of a row: for rules, and in all. */
  readonly words: number;
  readonly stride: number;
  /** The rule of each clause over several facts. */
  readonly ruled: Uint16Array;
  readonly count: number;
};

/** What is read of a rule to know whether its facts hold. */
export type Conditioned = Pick<Rule, 'when' | 'unless-known-no'>;

const OPPOSITE: Record<Truth, Truth> = { yes: 'no', no: 'yes', unknown: 'unknown' };
const WORD = 32;

const setBit = (words: Uint32Array, from: number, bit: number): void => {
  const at = from + (bit >> 5);
  words[at] = words[at]! | (1 << (bit & 31));
};

/** The table of the conditions of rules; a rule without one holds always. */
export const ruleTable = (rules: readonly Conditioned[]): RuleTable => {
  const clauses = rules.flatMap(({ when, 'unless-known-no': lenient }, rule) =>
    (when ? clausesOf(when) : []).map((clause) => ({ clause, rule, lenient })),
  );
  const wanted = new Map<string, Wanted[]>();
  for (const { fact, wanted: one } of clauses.flatMap(({ clause }) => clause))
    wanted.set(fact, [...(wanted.get(fact) ?? []), one]);
  const facts = [...wanted].map(([name, all]) => codedFact(name, all));
  const isOfOne = (clause: Clause) => new Set(clause.map(({ fact }) => fact)).size === 1;
  const several = clauses.filter(({ clause }) => !isOfOne(clause));
  const words = Math.max(1, Math.ceil(rules.length / WORD));
  const stride = words + Math.ceil(several.length / WORD);
  const starts = new Uint16Array(facts.length);
  let length = 0;
  for (const [at, { examples }] of facts.entries()) {
    starts[at] = length;
    length += examples.length * stride;
  }
  const rows = new Uint32Array(length);
  for (const [at, { name, examples }] of facts.entries())
    for (const [code, example] of examples.entries()) {
      const row = starts[at]! + code * stride;
      const meets = (clause: Clause, lenient: boolean) =>
        clause.some(({ fact, wanted: value, negated }: Literal) => {
          if (fact !== name) return false;
          const truth = compare(value, example);
          const said = negated ? OPPOSITE[truth] : truth;
          return said === 'yes' || (lenient && said === 'unknown');
        });
      for (const { clause, rule, lenient } of clauses)
        if (clause[0]?.fact === name && isOfOne(clause) && !meets(clause, lenient)) setBit(rows, row, rule);
      for (const [bit, { clause, lenient }] of several.entries())
        if (meets(clause, lenient)) setBit(rows, row + words, bit);
    }
  return {
    facts,
    starts,
    rows,
    words,
    stride,
    ruled: Uint16Array.from(several, ({ rule }) => rule),
    count: rules.length,
  };
};

/** Bits from the given number on that stand for nothing. */
const beyond = (count: number, word: number): number => {
  const left = count - word * WORD;
  return left >= WORD ? 0 : left <= 0 ? ~0 : ~0 << left;
};

/**
 * Marks in `holding`, one bit a rule, those whose condition holds for the facts, or is not known not to where the rule
 * fires unless it is.
 * @param codes - The class of each fact of the table, as `codesOf` gives them.
 * @param holding - `stride` words: the first `words` are the result, the others are worked in.
 */
export const markHolding = (table: RuleTable, codes: Uint8Array, holding: Uint32Array): void => {
  const { starts, rows, words, stride, ruled, count } = table;
  holding.fill(0);
  for (let fact = 0; fact < starts.length; fact++) {
    const row = starts[fact]! + codes[fact]! * stride;
    for (let word = 0; word < stride; word++) holding[word] = holding[word]! | rows[row + word]!;
  }
  for (let word = words; word < stride; word++) {
    let missed = ~holding[word]! & ~beyond(ruled.length, word - words);
    while (missed) {
      const bit = 31 - Math.clz32(missed & -missed);
      missed &= missed - 1;
      setBit(holding, 0, ruled[(word - words) * WORD + bit]!);
    }
  }
  for (let word = 0; word < words; word++) holding[word] = ~holding[word]! & ~beyond(count, word);
};

/** Whether a bit is set. */
export const hasBit = (words: Uint32Array, bit: number): boolean =>
  ((words[bit >> 5]! >>> (bit & 31)) & 1) === 1;
