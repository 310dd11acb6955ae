import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Answer } from '#engine/case/case.ts';
import { matrixOf, type SignMatrix } from '#engine/see/matrix.ts';
import { nearestSeeAddress, readSeeAddress, seeNodes } from '#engine/see/nodes.ts';
import { type Sighting, see } from '#engine/see/see.ts';
import { survey } from '#engine/see/survey.ts';
import { known } from '../../content/real/knowledge.ts';
import { dice } from '../../dice.ts';
import { itAtLength } from '../../thorough.ts';

const matrix = matrixOf(known);

const YES_CHANCE = [0, 1, 0.5, 0.9, 0.1];

const sightings = new Map<string, Sighting>();

/** `see`, remembered: most searches begin alike. */
const seeOnce = (seen: ReadonlyMap<string, Answer>): Sighting => {
  const key = [...seen].flat().join(' ');
  const found = sightings.get(key) ?? see(matrix, seen);
  sightings.set(key, found);
  return found;
};

/** One search by someone whose piece has `defect`: how often she can't tell, and how often she errs. */
const search = (m: SignMatrix, defect: number, roll: () => number, doubt: number, err: number) => {
  const seen = new Map<string, Answer>();
  for (;;) {
    const sighting = seeOnce(seen);
    if (sighting.question === undefined) return { sighting, questions: seen.size };
    const sign = Number(m.signs[m.questions.indexOf(sighting.question)]?.[defect]);
    let answer: Answer = roll() < (YES_CHANCE[sign] ?? 0.5) ? 'yes' : 'no';
    if (roll() < err) answer = answer === 'yes' ? 'no' : 'yes';
    if (roll() < doubt) answer = 'unsure';
    seen.set(sighting.question, answer);
  }
};

const draw = (m: SignMatrix, roll: () => number): number => {
  let left = roll();
  for (const [index, share] of m.prior.entries()) {
    left -= share;
    if (left <= 0) return index;
  }
  return m.prior.length - 1;
};

const simulate = (runs: number, doubt: number, err: number) => {
  const roll = dice(20261125);
  const tally = { remains: 0, first: 0, listed: 0, questions: 0 };
  for (let run = 0; run < runs; run++) {
    const defect = draw(matrix, roll);
    const id = matrix.defects[defect];
    const { sighting, questions } = search(matrix, defect, roll, doubt, err);
    const remains = sighting.likely.some((one) => one.defect === id);
    tally.remains += remains ? 1 : 0;
    tally.first += sighting.likely[0]?.defect === id ? 1 : 0;
    tally.listed += remains || sighting.nearMisses.some((one) => one.defect === id) ? 1 : 0;
    tally.questions += questions;
  }
  return {
    remains: tally.remains / runs,
    first: tally.first / runs,
    listed: tally.listed / runs,
    questions: tally.questions / runs,
  };
};

const RUNS = 2000;

describe('from what is seen to the flaw, on the real content', () => {
  const figures = survey(matrix);

  it('asks at most half a question more than the entropy, ten at worst', () => {
    expect(figures.questions).toBeLessThanOrEqual(figures.entropy + 0.5);
    expect(figures.worst).toBeLessThanOrEqual(10);
    expect(figures.questions).toBeLessThan(figures.fixedOrder);
    expect(figures.questions).toBeLessThan(figures.alphabetical / 3);
  });

  it('keeps the right flaw with every answer true, and has it first in nine of ten', () => {
    const { remains, first } = simulate(RUNS, 0, 0);
    expect(remains).toBe(1);
    expect(first).toBeGreaterThanOrEqual(0.9);
    expect(figures.rightFirst).toBeGreaterThanOrEqual(0.9);
    expect(figures.neverFirst).toEqual([]);
  });

  itAtLength('loses nothing and little time where one answer in ten is cannot tell', () => {
    const base = simulate(RUNS, 0, 0);
    const doubting = simulate(RUNS, 0.1, 0);
    expect(doubting.remains).toBe(1);
    expect(doubting.questions).toBeLessThanOrEqual(base.questions / 0.9 + 0.1);
  });

  it('still lists the right flaw where three answers in a hundred are wrong', () => {
    // 10,000 searches: a standard error of 0.07 of a hundred.
    expect(simulate(5 * RUNS, 0, 0.03).listed).toBeGreaterThanOrEqual(0.993);
  });

  it('lists first what one answer speaks against, then what two do, each with the answers that do', () => {
    for (const [index, { seen, sighting }] of [...seeNodes(matrix)].entries()) {
      if (index % 20) continue;
      const answers = new Map(seen);
      const speaksAgainst = (defect: string, question: string) =>
        matrix.signs[matrix.questions.indexOf(question)]?.[matrix.defects.indexOf(defect)] ===
        (answers.get(question) === 'yes' ? '0' : '1');
      const against = (defect: string) =>
        [...answers].flatMap(([question, answer]) =>
          answer !== 'unsure' && speaksAgainst(defect, question) ? [question] : [],
        );
      const named = sighting.nearMisses.map(({ question, and }) => (and ? [question, and] : [question]));
      expect(named).toEqual(sighting.nearMisses.map(({ defect }) => against(defect)));
      const counts = named.map((one) => one.length);
      expect(counts).toEqual([...counts].sort());
      const byOne = matrix.defects.filter((defect) => against(defect).length === 1);
      expect(counts.filter((count) => count === 1)).toHaveLength(byOne.length);
      expect(counts.length).toBeLessThanOrEqual(Math.max(byOne.length, 24));
    }
  });

  itAtLength('never asks twice, and each written-out address leads back to itself', () => {
    for (const [index, node] of [...seeNodes(matrix)].entries()) {
      expect(new Set(node.seen.map(([question]) => question)).size).toBe(node.seen.length);
      expect(node.sighting.likely.length).toBeGreaterThan(0);
      if (index % 40) continue; // each way back plans the whole way anew
      expect(nearestSeeAddress(matrix, readSeeAddress(matrix, node.address))).toEqual(node.address);
    }
  });

  it('reads any address without harm: unknown answers are dropped', () => {
    fc.assert(
      fc.property(fc.array(fc.string()), (segments) => {
        for (const question of readSeeAddress(matrix, segments).keys())
          expect(matrix.questions).toContain(question);
      }),
    );
  });
});
