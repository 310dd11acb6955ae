/**
 * Which kind of top coat is named. Never one that the tables forbid, whatever the piece; and what the trade agrees on:
 * no amber over white (film-s70), only wax over wax (wax-w3), no wax where cups stand (wax-w10). Others are common practice.
 */
import { describe, expect, it } from 'vitest';
import { chooseCoat, judgeLaying, type Wanted } from '#engine/fitness.ts';
import { FACTS } from '#engine/model/facts.ts';
import { planData } from '../../../site/shared/plan-data.ts';
import { planRules } from '../../../site/shared/plan-rules.ts';
import { known, plan } from '../schedule/sheet.ts';

const data = planData(known, plan);
const rules = planRules(data);
const choose = (wanted: Wanted) => chooseCoat(plan, rules, wanted, data.products);
const TABLE: Wanted = { kind: 'tabletop', wear: 'high', trials: ['water', 'heat'], age: 'none' };
const named = (wanted: Wanted) => choose(wanted).chosen?.product.family;

describe('the top coat that is named', () => {
  it('is never one that is forbidden, for any piece', () => {
    let chosen = 0;
    for (const { piece, wear, trials } of plan.presets)
      for (const base of FACTS.base.values)
        for (const tone of FACTS['base-tone'].values)
          for (const age of ['none', 'unknown'] as const) {
            const wanted = { kind: piece, wear, trials, base, tone, age };
            const got = choose(wanted);
            if (!got.chosen) {
              expect(got.noes.length).toBeGreaterThan(0);
              continue;
            }
            chosen++;
            const day = { celsius: 21, relativeHumidity: 0.5 };
            expect(judgeLaying(plan, rules, { ...wanted, day }, got.chosen.product).noes).toEqual([]);
          }
    expect(chosen).toBeGreaterThan(100);
  });

  it.each([
    ['a painted kitchen table', { ...TABLE, base: 'latex-paint', tone: 'dark' }, 'water-based'],
    ['a white table', { ...TABLE, base: 'chalk-paint', tone: 'light' }, 'water-based'],
    ['a bare oak table', { ...TABLE, base: 'bare-wood', tone: 'wood' }, 'oil-based'],
    [
      'a waxed frame',
      { kind: 'furniture', wear: 'low', trials: [], base: 'wax', tone: 'dark', age: 'none' },
      'wax',
    ],
  ] as const)('fits %s', (_what, wanted, family) => {
    expect(named(wanted)).toBe(family);
  });

  it('is none over wax where cups stand, and what to do instead is told', () => {
    const { chosen, noes } = choose({ ...TABLE, base: 'wax', tone: 'dark' });
    expect(chosen).toBeUndefined();
    expect(noes[0]?.instead).toContain('wash the wax off');
  });

  it.each([
    ['a crib', { ...TABLE, kind: 'crib', base: 'latex-paint', tone: 'light' }],
    ['what may be valuable', { ...TABLE, kind: 'valuable', base: 'old-finish', tone: 'wood' }],
    ['old paint that nobody tested', { ...TABLE, base: 'old-finish', tone: 'light', age: 'unknown' }],
  ] as const)('is none for %s until that is settled', (_what, wanted) => {
    const { chosen, noes } = choose(wanted);
    expect(chosen).toBeUndefined();
    expect(noes[0]?.code).toBe('rule');
  });

  it('tells why others are not it, each reason once, none of them against itself', () => {
    const { chosen, others } = choose({ ...TABLE, base: 'latex-paint', tone: 'light' });
    expect(new Set(others.map(({ why }) => why)).size).toBe(others.length);
    expect(others.some(({ why }) => /amber/.test(why))).toBe(true);
    // One reason is told of every kind that it speaks against: oil and solvent lacquer both turn amber over white (film-s70).
    const amber = others.find(({ why }) => /amber/.test(why));
    expect(amber?.families).toEqual(expect.arrayContaining(['oil-based', 'wipe-on']));
    expect(new Set(amber?.families).size).toBe(amber?.families.length);
    for (const { families } of others) expect(families).not.toContain(chosen?.product.family);
  });

  it('says how long fresh paint dries first', () => {
    expect(choose({ ...TABLE, base: 'oil-paint', tone: 'dark' }).chosen?.wait).toMatch(/72 hours/);
  });
});
