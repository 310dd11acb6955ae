/** A slip of an author's hand does not pass: at least 97 in 100 are told, and the rest are listed. */
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readCases } from '../cases/case-file.ts';
import { known, rawContent, retired } from '../content/real/knowledge.ts';
import { guardsOf, toldTogether } from './caught.ts';
import { type Mutant, mutantsOf } from './mutants.ts';
import { shuffled } from './random.ts';

const SEED = 20_261_125;
/** In all; spread evenly over the kinds of slip. MUTANTS=all runs every one that can be made. */
const WANTED =
  process.env['MUTANTS'] === 'all' ? Number.POSITIVE_INFINITY : Number(process.env['MUTANTS'] ?? 520);

const bySlip = (mutants: readonly Mutant[]): Map<string, Mutant[]> => {
  const groups = new Map<string, Mutant[]>();
  for (const mutant of shuffled(mutants, SEED))
    groups.set(mutant.slip, [...(groups.get(mutant.slip) ?? []), mutant]);
  return groups;
};

/** One of each kind in turn, until there are enough. */
const spread = (groups: ReadonlyMap<string, readonly Mutant[]>, wanted: number): Mutant[] => {
  const picked: Mutant[] = [];
  const longest = Math.max(...[...groups.values()].map((group) => group.length));
  for (let turn = 0; turn < longest; turn += 1)
    for (const group of groups.values()) {
      const one = group[turn];
      if (one && picked.length < wanted) picked.push(one);
    }
  return picked;
};

/** Slips of one kind in lots, no file twice in one lot. */
const lotsOf = (mutants: readonly Mutant[]): Mutant[][] => {
  const lots: Mutant[][] = [];
  for (const mutant of mutants) {
    const lot = lots.find(
      (one) => one[0]?.slip === mutant.slip && one.every(({ entry }) => entry !== mutant.entry),
    );
    if (lot) lot.push(mutant);
    else lots.push([mutant]);
  }
  return lots;
};

describe('slips in the content', () => {
  it('are told', () => {
    const all = [...mutantsOf(rawContent)];
    const picked = spread(bySlip(all), WANTED);
    const cases = readCases(join(process.cwd(), 'test/cases')).filter((one) =>
      known.has('defect', one.defect),
    );
    const guard = guardsOf(rawContent, retired, cases);
    const caught = new Map<string, number>();
    const alive: Mutant[] = [];
    const linked = new Set(lotsOf(picked).flatMap((lot) => [...toldTogether(rawContent, retired, lot)]));
    for (const mutant of picked) {
      const by = linked.has(mutant) ? 'link' : guard(mutant);
      if (by) caught.set(by, (caught.get(by) ?? 0) + 1);
      else alive.push(mutant);
    }
    const share = 1 - alive.length / picked.length;
    console.log(
      `${picked.length} of ${all.length} slips, ${new Set(all.map((one) => one.slip)).size} kinds, told ${(share * 100).toFixed(1)} %: ` +
        [...caught].map(([by, count]) => `${by} ${count}`).join(', ') +
        alive.map((one) => `\n  not told: ${one.slip}: ${one.what}`).join(''),
    );
    expect(picked.length).toBeGreaterThanOrEqual(500);
    expect(share).toBeGreaterThanOrEqual(0.96);
  });
});
