/**
 * A plan over coats that take no other for some hours: “within one hour or after 48 hours”, as a finishing trade site
 * reads on spray cans (on the recoat window, undated). Jobs and other hours are invented.
 */
import { describe, expect, it } from 'vitest';
import type { Job, Planned } from '#engine/schedule.ts';
import { HOUR, job, planned } from './sheet.ts';

const SPRAYED = {
  product: 'aerosol-lacquer',
  applicator: 'aerosol',
  base: 'bare-wood',
  tone: 'wood',
  trials: [],
} as const;
const of = (more: Partial<Job> = {}, piece = 'side-table'): Planned =>
  planned(job({ ...SPRAYED, ...more }, piece));
const between = ({ steps }: Planned) =>
  steps.filter(({ kind, coat = 0 }) => ['sand', 'wipe'].includes(kind) && coat > 1);
/** Hours from the start of one coat to the start of the next. */
const apart = ({ coats }: Planned): readonly number[] =>
  coats.slice(1).map(({ from }, index) => (from - (coats[index]?.from ?? 0)) / HOUR);
const says = ({ steps }: Planned, kind: string) =>
  steps.filter((step) => step.kind === kind).map(({ say }) => say);

describe('a plan by a can that lets no coat on for some hours', () => {
  it('lays the coats before them where they fit, touches none of them, and says why', () => {
    const got = of();
    expect(got.coats.length).toBeGreaterThan(2);
    for (const hours of apart(got)) {
      expect(hours).toBeGreaterThanOrEqual(0.5);
      expect(hours).toBeLessThanOrEqual(1);
    }
    expect(between(got)).toEqual([]);
    expect(says(got, 'coat').slice(0, 3)).toEqual([
      undefined,
      expect.stringMatching(/within 1 h of the coat below, or only after 48 h.+Touch it with nothing first/),
      expect.stringMatching(/^Again within 1 h/),
    ]);
  });

  it('else behind them, sanded as ever: a piece that takes longer than that to lay', () => {
    const parts = job({}, 'dresser').parts;
    const large = { ...parts, top: { ...parts.top, count: 50 } };
    const got = of({ parts: large }, 'dresser');
    for (const hours of apart(got)) expect(hours).toBeGreaterThan(48);
    expect(between(got).filter(({ kind }) => kind === 'sand')).toHaveLength(got.coats.length - 1);
    expect(says(got, 'wait')[0]).toMatch(/within 1 h, or only after 48 h: in between it can lift this one/);
    expect(says(got, 'coat')).toEqual(got.coats.map(() => undefined));
  });

  it('also behind them where her hours end too soon, and never in between', () => {
    const got = of({ hours: { from: 9 * 60, to: 10 * 60, days: Array<boolean>(7).fill(true) } });
    for (const hours of apart(got)) expect(hours).toBeGreaterThanOrEqual(48);
  });

  it('counts the hours of her own can, and none where it lets a coat on at any time', () => {
    const own = of({ label: { minutes: { 'no-coat': { from: 120, to: 1440 } } } });
    for (const hours of apart(own)) expect(hours < 2 || hours >= 24).toBe(true);
    expect(says(own, 'coat')[1]).toMatch(/within 2 h of the coat below, or only after 24 h/);
    const ever = of({ label: { minutes: { 'no-coat': { from: 0, to: 0 } } } });
    expect(between(ever).some(({ kind }) => kind === 'sand')).toBe(true);
    expect(ever.coats.every(({ closed }) => closed === undefined)).toBe(true);
    for (const hours of apart(ever)) expect(hours).toBeGreaterThan(1);
  });

  it('waits until a coat is surely ready where that leaves time', () => {
    const got = of({
      label: { minutes: { recoat: { from: 30, to: 60 }, 'no-coat': { from: 180, to: 1440 } } },
    });
    for (const [index, { from }] of got.coats.slice(1).entries()) {
      const below = got.coats[index];
      expect(from).toBeGreaterThanOrEqual(below?.recoat.to ?? Number.NaN);
      expect(from).toBeLessThanOrEqual(below?.closed?.from ?? Number.NaN);
    }
  });

  it('on both faces, where a part is turned later than that, lays each behind them', () => {
    const got = of({ both: { parts: ['top'], turned: 'each-coat' } });
    for (const face of ['back', 'front']) {
      const own = got.coats.filter((coat) => coat.face === face);
      for (const [index, { from }] of own.slice(1).entries())
        expect(from).toBeGreaterThanOrEqual(own[index]?.closed?.to ?? Number.NaN);
    }
  });
});
