/** Twenty-four jobs, planned or refused as the evidence says; a flaw in hand gets what the evidence says at once. */
import { describe, expect, it } from 'vitest';
import { type InHand, rulesIn, toldOf, type Wanted, wordsOf } from './scenario.ts';
import { ONE_TO_FIVE } from './scenarios-of-the-trade-1-to-5.ts';
import { SIX_TO_TWELVE } from './scenarios-of-the-trade-6-to-12.ts';
import { OURS_REFUSED } from './scenarios-ours-refused.ts';
import { OURS_USED } from './scenarios-ours-used.ts';
import { DAY, HOUR, known, outcome } from './sheet.ts';

const plans = (wanted: Wanted): void => {
  const got = outcome(wanted.job);
  const label = `${wanted.job.product} over ${wanted.job.base}`;
  const end = wanted.job.start;
  if (wanted.gets === 'plan') expect(got.kind, `${label}: ${wordsOf(got)}`).toBe('plan');
  else expect(got.kind === 'no' ? got.why.map(({ code }) => code) : ['plan'], label).toContain(wanted.gets);
  for (const words of wanted.because ?? []) expect(wordsOf(got), label).toMatch(words);
  for (const rule of wanted.rules ?? []) expect(rulesIn(got), label).toContain(rule);
  for (const words of wanted.care ?? [])
    expect(got.care.map(({ why, instead }) => `${why} ${instead}`).join(' '), label).toMatch(words);
  if (wanted.coats) {
    expect(got.build?.coats, label).toBeGreaterThanOrEqual(wanted.coats[0]);
    expect(got.build?.coats, label).toBeLessThanOrEqual(wanted.coats[1]);
  }
  if (got.kind === 'no') {
    if (wanted.notBefore !== undefined) {
      const earliest = got.why.find(({ code }) => code === 'base')?.earliest ?? 0;
      expect((earliest - end) / HOUR, label).toBeGreaterThanOrEqual(wanted.notBefore - 1e-6);
    }
    wanted.check?.(got);
    return;
  }
  const { coats, dates, steps } = got;
  const [first] = coats;
  const last = coats.at(-1);
  if (!first || !last) throw new Error(`${label}: a plan without coats`);
  if (wanted.notBefore !== undefined)
    expect((first.from - end) / HOUR, label).toBeGreaterThanOrEqual(wanted.notBefore - 1e-6);
  for (const [at, coat] of coats.slice(1).entries())
    expect((coat.from - (coats[at]?.to ?? 0)) / HOUR, label).toBeGreaterThanOrEqual(wanted.between ?? 0);
  const looked = steps.flatMap(({ looks }) => looks.flatMap(({ defects }) => defects as string[]));
  for (const defect of wanted.looks ?? []) expect(looked, label).toContain(defect);
  // A flaw to look for is one that this kind of top coat can have.
  const family = known.get('product', wanted.job.product).family;
  for (const defect of looked)
    expect(known.get('defect', defect).families, `${label}: ${defect}`).toContain(family);
  expect((dates.handOver - last.to) / DAY, label).toBeGreaterThanOrEqual(wanted.handOver ?? 0);
  expect((dates.fullUse.to - last.to) / DAY, label).toBeGreaterThanOrEqual(wanted.fullUse ?? 0);
  wanted.check?.(got);
};

const says = (one: InHand): void => {
  const told = toldOf(one);
  expect(told.doing, told.says).toBe(one.does);
  expect(told.coldDoing, 'with nothing told but the facts').toBe(one.does);
  for (const words of one.says) expect(told.says).toMatch(words);
  for (const words of one.warns ?? []) expect(told.warns).toMatch(words);
  for (const stop of one.stops ?? []) expect(told.rules).toContain(stop);
  if (one.asks) expect(told.asked[0]).toBe(one.asks);
  expect(told.forbidden).toEqual([]);
  let from = 0;
  for (const words of one.steps ?? []) {
    const at = told.steps.findIndex((step, index) => index >= from && words.test(step));
    expect(at, `${words} among, and after what comes before it: ${told.steps.join(' | ')}`).not.toBe(-1);
    from = at + 1;
  }
};

describe.each([
  ['twelve jobs from the trade', [...ONE_TO_FIVE, ...SIX_TO_TWELVE]],
  ['twelve of our own', [...OURS_REFUSED, ...OURS_USED]],
])('%s', (_, scenarios) => {
  it('are twelve', () => expect(scenarios).toHaveLength(12));

  it.each(scenarios.map((one) => [one.title, one] as const))('%s', (_title, one) => {
    for (const wanted of one.plans) plans(wanted);
    for (const inHand of one.inHand ?? []) says(inHand);
  });
});
