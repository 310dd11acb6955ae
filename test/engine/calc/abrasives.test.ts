import { expect, test } from 'vitest';
import {
  type GritSystem,
  gradesOf,
  grainMicrometers,
  nearestP,
  sayGrit,
  scratchDepth,
} from '#engine/calc/abrasives.ts';
import json from './abrasives.table.json' with { type: 'json' };
import { good, refusal, relativeError } from './good.ts';
import { readTable } from './table.ts';

const table = readTable(json);
const number = (grade: string) => Number(grade.replace('P', ''));

test.each(table.rows<{ system: string; grade: string; um: number }>('grades'))(
  '$system $grade is $um µm',
  ({ system, grade, um }) => {
    const known: GritSystem = system === 'FEPA P' ? 'FEPA P' : 'CAMI';
    const allowed = known === 'FEPA P' && number(grade) >= 1500 ? 0.08 : 0.05;
    expect(relativeError(good(grainMicrometers(known, number(grade))), um)).toBeLessThan(allowed);
  },
);

test.each(table.rows<{ cami: string; fepa: string }>('equivalence'))(
  'US $cami and $fepa',
  ({ cami, fepa }) => {
    const us = Number.parseInt(cami, 10);
    if (cami.endsWith('finer than'))
      expect(good(grainMicrometers('CAMI', us))).toBeLessThan(good(grainMicrometers('FEPA P', number(fepa))));
    else expect(good(nearestP('CAMI', us))).toBe(number(fepa));
  },
);

test('a higher number is finer, in both systems, and so is its scratch', () => {
  for (const system of ['FEPA P', 'CAMI'] as const) {
    const sizes = gradesOf(system).map((grade) => good(grainMicrometers(system, grade)));
    expect(sizes).toEqual([...sizes].sort((one, two) => two - one));
    expect(new Set(sizes).size).toBe(sizes.length);
  }
  const depths = gradesOf('FEPA P').map((grade) => good(scratchDepth(grade)).to);
  expect(depths).toEqual([...depths].sort((one, two) => two - one));
});

test('the two systems run together up to 220 and part after it', () => {
  for (const grade of [60, 80, 180, 220])
    expect(
      relativeError(good(grainMicrometers('CAMI', grade)), good(grainMicrometers('FEPA P', grade))),
    ).toBeLessThan(0.05);
  expect(good(grainMicrometers('CAMI', 400))).toBeLessThan(good(grainMicrometers('FEPA P', 600)));
});

test('a grit is always printed with its P', () => {
  expect(good(sayGrit('FEPA P', 320))).toBe('P320');
  expect(good(sayGrit('CAMI', 320))).toBe('P400 (US 320)');
  expect(refusal(sayGrit('FEPA P', 321))).toBe(
    'The FEPA P grade was given as "321", which is not one that this calculator knows.',
  );
});

type Fact = { fact: string; grades: number[] };
test.each(table.rows<Fact>('scratch_facts'))('$fact: $grades', ({ fact, grades }) => {
  const depth = (grade: number) => good(scratchDepth(grade)).to;
  if (fact.includes('linearly'))
    for (const grade of grades)
      expect(depth(grade) / good(grainMicrometers('FEPA P', grade))).toBeCloseTo(0.3, 9);
  // Our own estimate of close: all within a factor of two.
  else if (fact.includes('close together'))
    expect(Math.max(...grades.map(depth)) / Math.min(...grades.map(depth))).toBeLessThan(2);
  else for (const grade of grades) expect(depth(grade)).toBeLessThan(depth(120) / 2);
});

test('every group of rows is read', () => {
  expect(table.unread()).toEqual([]);
});
