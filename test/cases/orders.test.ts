/** A case told in any order ends in the same place: facts, answers and the stage are facts alike. */
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerOf, type Case, remediesTold, resolve, walk } from '#engine/index.ts';
import '../seed.ts';
import { known } from '../content/real/knowledge.ts';
import { oneInSo } from '../thorough.ts';
import { readTroubles } from '../words/words.ts';
import { readCases } from './case-file.ts';

type Told = readonly [string, Case[string]];
type Trouble = {
  readonly title: string;
  readonly defect: string;
  readonly facts: Readonly<Record<string, string | number>>;
  readonly yes: readonly string[];
  readonly no: readonly string[];
};

const ORDERS = 5;
const cases: Trouble[] = [...readCases(join(process.cwd(), 'test/cases')), ...readTroubles('open')];

const toldOf = ({ facts, yes, no }: Trouble): Told[] => [
  ...Object.entries(facts).map(([name, value]): Told => [name, { value, how: 'told' }]),
  ...yes.map((one): Told => [one, { value: 'yes', how: 'answered' }]),
  ...no.map((one): Told => [one, { value: 'no', how: 'answered' }]),
];

/** What stands on the page: verdict, words, causes, the check that is left, and the steps. */
const pageOf = (on: Case, defect: string) => {
  const walked = walk(known, on, defect, { forCause: on['stage'] === undefined });
  const steps = remediesTold(walked).map((remedy) => resolve(known, remedy, on, walked.families));
  const { trace: _order, ...rest } = walked;
  return JSON.stringify([rest, steps]);
};

/** Told one by one, the last word first taken for another: what is told anew replaces what was said before. */
const toldIn = (order: readonly Told[], defect: string): string => {
  let on: Case = {};
  const [last] = order.at(-1) ?? [];
  if (last) on = { ...on, [last]: { value: 'unsure', how: 'answered' } };
  for (const [name, fact] of order) on = { ...on, [name]: fact };
  return pageOf(on, defect);
};

describe('a case told in five orders', () => {
  it('gives the same verdict, causes and steps, whichever comes first', () => {
    const shuffled = (told: readonly Told[]) =>
      fc.sample(fc.shuffledSubarray([...told], { minLength: told.length }), ORDERS - 2);
    const different = oneInSo(3, cases).filter((one) => {
      const told = toldOf(one);
      const stage = told.filter(([name]) => name === 'stage');
      const rest = told.filter(([name]) => name !== 'stage');
      const orders = [[...stage, ...rest], [...rest, ...stage], ...shuffled(told)];
      return new Set(orders.map((order) => toldIn(order, one.defect))).size > 1;
    });
    expect(cases.length).toBeGreaterThanOrEqual(200);
    expect(different.map(({ title }) => title)).toEqual([]);
  });

  it('reaches the same hands with the cause first and how dry it is later, as the other way round', () => {
    const all = (one: Trouble): Case => Object.fromEntries(toldOf(one));
    const answers = (one: Trouble) => new Map(toldOf(one).filter(([name]) => known.has('question', name)));
    const walkTo = (one: Trouble, start: Case, forCause: boolean): Case => {
      let on = start;
      for (;;) {
        const walked = walk(known, on, one.defect, { forCause });
        if (walked.kind !== 'question') return on;
        const told = answers(one).get(walked.question)?.value ?? answerOf(known, all(one), walked.question);
        const said = { value: told ?? 'unsure', how: 'answered' as const };
        on = { ...on, [walked.question]: said };
      }
    };
    const hands = (on: Case, defect: string) => {
      const walked = walk(known, on, defect);
      return walked.kind === 'outcome' ? `${walked.action.do} ${remediesTold(walked)}` : walked.kind;
    };
    const different = oneInSo(3, cases).filter((one) => {
      const stage = { stage: { value: one.facts['stage'] ?? 'recoatable', how: 'answered' as const } };
      const stageFirst = walkTo(one, stage, false);
      const causeFirst = { ...walkTo(one, {}, true), ...stage };
      const goesOn = walkTo(one, causeFirst, false);
      return hands(stageFirst, one.defect) !== hands(goesOn, one.defect);
    });
    expect(different.map(({ title }) => title)).toEqual([]);
  });
});
