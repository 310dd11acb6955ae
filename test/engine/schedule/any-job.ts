/** Jobs at random: products, tools, weather, hours, labels, sizes. */
import fc from 'fast-check';
import { FACTS } from '#engine/model/facts.ts';
import { TRIALS, WEARS } from '#engine/model/plan.ts';
import type { Job } from '#engine/schedule.ts';
import { job, known, MINUTE } from './sheet.ts';

const part = fc.record({
  count: fc.integer({ min: 0, max: 6 }),
  long: fc.integer({ min: 50, max: 2000 }),
  wide: fc.integer({ min: 20, max: 900 }),
});
const hours = fc.double({ min: 0.2, max: 60, noNaN: true });
const label = fc.option(
  fc.record(
    {
      recoat: hours,
      // From when on no coat goes on, after the recoat time, and for how long.
      closed: fc.tuple(hours, fc.double({ min: 0.5, max: 72, noNaN: true })),
      squareMetersPerLiter: fc.double({ min: 6, max: 30, noNaN: true }),
      volumeSolids: fc.double({ min: 0.1, max: 0.6, noNaN: true }),
      coats: fc.integer({ min: 1, max: 6 }),
      coatsPerDay: fc.integer({ min: 1, max: 2 }),
      least: fc.double({ min: 5, max: 18, noNaN: true }),
    },
    { requiredKeys: [] },
  ),
  { nil: undefined },
);
const tooled = known.products.flatMap(({ id, 'wet-film-micrometers': films }) =>
  Object.keys(films).map((applicator) => ({
    product: id as string,
    applicator: applicator as Job['applicator'],
  })),
);

export const anyJob: fc.Arbitrary<Job> = fc
  .record({
    tool: fc.constantFrom(...tooled),
    label,
    parts: fc.record({ top: part, side: part, front: part, leg: part }),
    base: fc.constantFrom(...FACTS.base.values),
    baseHours: fc.option(fc.integer({ min: 0, max: 400 }), { nil: undefined }),
    tone: fc.constantFrom(...FACTS['base-tone'].values),
    wear: fc.constantFrom(...WEARS),
    trials: fc.uniqueArray(fc.constantFrom(...TRIALS), { maxLength: 1 }),
    sheen: fc.constantFrom(...FACTS.sheen.values),
    day: fc.record({
      celsius: fc.double({ min: 9, max: 30, noNaN: true }),
      relativeHumidity: fc.double({ min: 0.25, max: 0.8, noNaN: true }),
    }),
    colder: fc.double({ min: 0, max: 14, noNaN: true }),
    start: fc.integer({ min: 0, max: 7 * 24 * 60 }),
    from: fc.integer({ min: 5, max: 18 }),
    long: fc.integer({ min: 1, max: 12 }),
    days: fc.array(fc.boolean(), { minLength: 7, maxLength: 7 }),
  })
  .map(({ tool, label: can, colder, start, from, long: open, days, ...rest }) => {
    const { recoat, closed, least, ...figures } = can ?? {};
    const [wait, long = 0] = closed ?? [];
    const shut = wait === undefined ? undefined : ((recoat ?? 0) + wait / 10) * 60;
    const minutes = {
      ...(recoat !== undefined && { recoat: { from: recoat * 60, to: recoat * 60 } }),
      ...(shut !== undefined && { 'no-coat': { from: shut, to: shut + long * 60 } }),
    };
    const limits = least === undefined ? undefined : { celsius: { from: least, to: 35 } };
    return {
      ...job(),
      ...rest,
      ...tool,
      ...(can && { label: { minutes, ...figures, ...(limits && { limits }) } }),
      night: { celsius: rest.day.celsius - colder },
      start: start * MINUTE,
      hours: { from: from * 60, to: Math.min(24, from + open) * 60, days },
    } as Job;
  });
