/** Real trouble, judged from handbooks, standards and trade texts, walked through the real content. */
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { FAMILIES } from '#engine/model/family.ts';
import { known, rawContent } from '../content/real/knowledge.ts';
import {
  type Advice,
  advise,
  CLOCK,
  caseOf,
  forbiddenIn,
  isAcceptable,
  namesTheCause,
  told,
} from './advise.ts';
import { readCases, type TroubleCase } from './case-file.ts';
import { signsAgainstCases } from './signs.ts';

const cases = readCases(join(process.cwd(), 'test/cases'));
const FLAGSHIPS = ['cloudy-film', 'bubbles', 'hairs-and-dust', 'pools', 'lap-marks'];
const name = (one: TroubleCase) => `${one.file}: ${one.title}`;

const median = (numbers: readonly number[]): number => {
  const sorted = [...numbers].sort((a, b) => a - b);
  const middle = sorted.length / 2;
  return sorted.length % 2
    ? (sorted[Math.floor(middle)] ?? 0)
    : ((sorted[middle - 1] ?? 0) + (sorted[middle] ?? 0)) / 2;
};

/** Everything told; only what the clock knows; nothing of the film. */
const starts = (one: TroubleCase) => ({
  all: caseOf(one),
  clock: caseOf(one, CLOCK),
  nothing: caseOf(one, []),
});

type Judged = { one: TroubleCase; at: string; advice: Advice; good: boolean; bad: readonly string[] };

const judged = (one: TroubleCase, at: keyof ReturnType<typeof starts>): Judged[] => {
  const first = advise(known, one, one.defect, starts(one)[at]);
  const second = one.also && advise(known, one, one.also.defect, first.on);
  const both = second ? { stops: new Set([...first.stops, ...second.stops]) } : {};
  const judge = (advice: Advice, acceptable: readonly string[], forbidden: readonly string[]): Judged => ({
    one,
    at,
    advice,
    good:
      isAcceptable(known, { ...advice, ...both }, acceptable, one.stops) &&
      (advice !== first || namesTheCause(known, one)),
    bad: forbiddenIn(known, { ...advice, ...both }, forbidden, one.stops),
  });
  return [
    judge(first, one.acceptable, one.forbidden),
    ...(second && one.also ? [judge(second, one.also.acceptable, one.also.forbidden)] : []),
  ];
};

const forbiddenAt = (at: keyof ReturnType<typeof starts>): string[] =>
  walkable
    .flatMap((one) => judged(one, at))
    .filter((each) => each.bad.length)
    .map((each) => `${name(each.one)} (told ${at}): ${each.bad.join(', ')}\n    ${told(each.advice)}`);

const absent = cases.filter((one) =>
  [one.defect, one.also?.defect].some((id) => id && !known.has('defect', id)),
);
const walkable = cases.filter((one) => !absent.includes(one));

describe('cases of real trouble', () => {
  it('are many, from outside, and of every kind of top coat', () => {
    expect(cases.length).toBeGreaterThanOrEqual(120);
    expect(new Set(cases.map((one) => one.title)).size).toBe(cases.length);
    const families = new Set(cases.map((one) => one.facts['family']));
    expect(FAMILIES.filter((family) => !families.has(family))).toEqual([]);
    expect(cases.filter((one) => one.right === 'normal').length).toBeGreaterThanOrEqual(20);
    expect(cases.filter((one) => one.right === 'stop').length).toBeGreaterThanOrEqual(15);
    expect(cases.filter((one) => one.also).length).toBeGreaterThanOrEqual(8);
  });

  it('name what they rest on: a source that is registered, with what it says', () => {
    const registered = new Set(
      rawContent.filter((entry) => entry.kind === 'source').map((entry) => entry.id),
    );
    const loose = cases.filter((one) => !['invented', 'common-practice'].includes(one.source));
    expect(
      loose.filter((one) => !registered.has(one.source)).map((one) => `${name(one)}: ${one.source}`),
    ).toEqual([]);
    expect(loose.filter((one) => !one.says).map(name)).toEqual([]);
    const published = loose.filter((one) => FLAGSHIPS.includes(one.defect));
    expect(published.length).toBeGreaterThanOrEqual(25);
  });

  it('speak only of questions, remedies, rules and doings that are there', () => {
    const strange = cases.flatMap((one) =>
      [
        ...[...one.yes, ...one.no].filter((id) => !known.has('question', id)),
        ...one.stops.filter((id) => !known.has('rule', id)),
        ...one.yes.filter((id) => one.no.includes(id)),
      ].map((id) => `${name(one)}: ${id}`),
    );
    expect(strange).toEqual([]);
  });

  it('have a page to enter by', () => {
    expect(absent.map((one) => `${name(one)}: no defect ${one.defect} ${one.also?.defect ?? ''}`)).toEqual(
      [],
    );
  });

  it('get acceptable advice in at least 97 of 100, and never what is forbidden', () => {
    const all = walkable.flatMap((one) => judged(one, 'all'));
    const missed = all
      .filter((each) => !each.good)
      .map((each) => `${name(each.one)}\n    ${told(each.advice)}`);
    const share = 1 - missed.length / all.length;
    console.log(
      `${cases.length} cases (${absent.length} without a page), ${all.length} actions, acceptable ${(share * 100).toFixed(1)} %` +
        (missed.length ? `\nNot acceptable:\n  ${missed.join('\n  ')}` : ''),
    );
    expect(forbiddenAt('all')).toEqual([]);
    expect(share, missed.join('\n')).toBeGreaterThanOrEqual(0.97);
  });

  it('never get what is forbidden, however little is told before the first question', () => {
    expect([...forbiddenAt('clock'), ...forbiddenAt('nothing')]).toEqual([]);
  });

  it('show what the signs of the flaw say, where it is told apart', () => {
    const single = walkable.filter((one) => !one.also);
    expect(signsAgainstCases(known, single)).toEqual([]);
  });

  it('reach the action in few questions', () => {
    const counts = (at: 'clock' | 'nothing') =>
      walkable.map((one) => advise(known, one, one.defect, starts(one)[at]).asked.length);
    const cold = counts('nothing');
    const running = counts('clock');
    console.log(
      `questions to the action, nothing known: median ${median(cold)}, most ${Math.max(...cold)}; ` +
        `stage, family, sheen and color known: median ${median(running)}, most ${Math.max(...running)}`,
    );
    expect(median(cold)).toBeLessThanOrEqual(5);
    expect(median(running)).toBeLessThanOrEqual(3);
  });
});
