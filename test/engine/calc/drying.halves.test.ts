/**
 * Is the energy fitted to these very sheets? Choose it on one half of the coatings, hold it against the other half.
 * Without water-based coatings, whose steps follow the air's thirst for water as well.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { WIDEST } from '#engine/calc/drying/slowing.ts';
import { narrowed, times } from '#engine/calc/drying/slowing-range.ts';
import { beyondUsual, byWarmth, inUsual, KILOJOULES_PER_MOLE } from '#engine/calc/drying/warmth.ts';
import table from './drying-sheets.table.json' with { type: 'json' };
import { climateOf, middleOf, type Printed, printedRows, stepsOf } from './drying-sheets.ts';
import { readTable } from './table.ts';

type Step = ReturnType<typeof stepsOf>[number];
const dryStepsOf = (rows: readonly Printed[]): Step[] =>
  stepsOf(rows).filter(({ row }) => row.mechanism !== 'coalescence');
const sheets = readTable(table);
const printed = printedRows(sheets);
const steps = [...dryStepsOf(printed.drying), ...dryStepsOf(printed.recoat)];
const coatings = [...new Set(steps.map(({ row }) => row.coating))].toSorted();
/** kJ/mol: ten degrees make it 1.2 to 1.9 times as fast. */
const ENERGIES = Array.from({ length: 31 }, (_, index) => 15 + index);

const inside =
  (energy: number) =>
  ({ anchor, row }: Step): boolean => {
    const [from, to] = [climateOf(anchor), climateOf(row)];
    const slow = times(
      narrowed(byWarmth(energy, inUsual(from), inUsual(to)), WIDEST.dry),
      beyondUsual(from, to),
    );
    const longer = middleOf(row) / middleOf(anchor);
    return longer >= slow.from * (1 - 1e-9) && longer <= slow.to * (1 + 1e-9);
  };
const share = (some: readonly Step[], energy: number) => some.filter(inside(energy)).length / some.length;

/** The middle one of the energies under which most steps lie inside. */
const chosenOn = (some: readonly Step[]): number => {
  const most = Math.max(...ENERGIES.map((energy) => share(some, energy)));
  const best = ENERGIES.filter((energy) => share(some, energy) === most);
  return best[Math.floor(best.length / 2)] ?? Number.NaN;
};

/** Ten ways to halve the coatings, each both ways round: every second one, every second pair, and so on. */
const halves = Array.from({ length: 10 }, (_, run) => run + 1).flatMap((run) => {
  const picked = new Set(coatings.filter((_, index) => Math.floor(index / run) % 2 === 0));
  const one = steps.filter(({ row }) => picked.has(row.coating));
  const other = steps.filter(({ row }) => !picked.has(row.coating));
  return [
    { run, learn: one, check: other },
    { run, learn: other, check: one },
  ];
});

describe('an energy chosen on half of the coatings', () => {
  test('foretells the other half as well', () => {
    const checked = halves.flatMap(({ learn, check }) => {
      const energy = chosenOn(learn);
      return check.map(inside(energy));
    });
    const right = checked.filter(Boolean).length / checked.length;
    expect(right).toBeGreaterThanOrEqual(0.9);
    expect(readFileSync('README.md', 'utf8')).toContain(`${Math.round(100 * right)} % of the other half`);
  });

  test('is near ours', () => {
    for (const { run, learn } of halves)
      expect(Math.abs(chosenOn(learn) - KILOJOULES_PER_MOLE), `every ${run}`).toBeLessThanOrEqual(5);
  });

  test('leaving out one coating at a time, nine of ten steps of those left out lie inside', () => {
    const checked = coatings.flatMap((coating) => {
      const energy = chosenOn(steps.filter(({ row }) => row.coating !== coating));
      return steps.filter(({ row }) => row.coating === coating).map(inside(energy));
    });
    expect(checked.filter(Boolean).length / checked.length).toBeGreaterThanOrEqual(0.9);
  });

  test('intervals to the next coat do not ask for another energy than drying does', () => {
    for (const some of [dryStepsOf(printed.drying), dryStepsOf(printed.recoat)])
      expect(Math.max(...ENERGIES.map((energy) => share(some, energy)))).toBeLessThanOrEqual(
        share(some, KILOJOULES_PER_MOLE) + 0.03,
      );
  });
});

test('every group of rows is read', () => {
  expect(sheets.unread()).toEqual([]);
});
