/** What must hold of every plan, over random jobs: products, tools, weather, hours, labels, sizes. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { dryingOf } from '#engine/calc/drying/figures.ts';
import { outsideLimits } from '#engine/calc/drying/limits.ts';
import { weatherVerdict } from '#engine/calc/weather.ts';
import { cansFor, type Job, litersOf, type Planned } from '#engine/schedule.ts';
import { THOROUGH } from '../../thorough.ts';
import { anyJob } from './any-job.ts';
import { DAY, HOUR, MINUTE, outcome, plan, productOf } from './sheet.ts';

const RUNS = THOROUGH ? 10_000 : 500;

const respected = (one: Job, got: Planned): void => {
  const product = productOf(one.product);
  const { label: can } = one;
  const { build, coats, steps } = got;
  if (!build) throw new Error('a plan without a build');
  // The greatest film, unless the can itself asks for more.
  const most = plan.film.find(({ families }) => families.includes(product.family))?.most;
  if (most && !(can?.coats || can?.squareMetersPerLiter))
    expect(build.total.to).toBeLessThanOrEqual(most * (1 + 1e-9));
  if (most && !can?.coats && build.coats > 1) expect(build.total.to).toBeLessThanOrEqual(most * (1 + 1e-9));
  // The can's figures, as they stand.
  expect(coats.length).toBe(build.coats);
  if (can?.coats) expect(build.coats).toBe(can.coats);
  if (can?.squareMetersPerLiter) expect(build.wet).toBeCloseTo(1000 / can.squareMetersPerLiter, 9);
  if (can?.volumeSolids) expect(build.dry.to).toBeCloseTo(build.wet * can.volumeSolids, 9);
  // Her hours, for everything that hands do.
  for (const { kind, from, to, final } of steps) {
    if (final || !['test-patch', 'sand', 'wipe', 'coat', 'look'].includes(kind)) continue;
    const day = Math.floor(from / DAY);
    expect(one.hours.days[(day + 1) % 7]).toBe(true);
    expect(from).toBeGreaterThanOrEqual(day * DAY + one.hours.from * MINUTE);
    expect(to).toBeLessThanOrEqual(day * DAY + one.hours.to * MINUTE);
    expect(from).toBeGreaterThanOrEqual(one.start);
  }
  // Recoat windows: nothing touches a coat before it is surely ready.
  for (const [index, coat] of coats.entries()) {
    const before = coats[index - 1];
    if (!before) continue;
    const touched = steps.filter(
      ({ kind, coat: of }) => ['sand', 'wipe', 'coat'].includes(kind) && of === coat.number,
    );
    const { closed } = before;
    // In some hours no coat goes on: before them only unsanded, and once it may be ready where it is laid first.
    const within = closed !== undefined && coat.from <= closed.from;
    const least = before.recoat[within ? 'from' : 'to'] - (within ? before.to - before.from : 0);
    for (const { from } of touched) expect(from).toBeGreaterThanOrEqual(Math.max(least, before.to) - 1);
    if (within) expect(touched.map(({ kind }) => kind)).toEqual(['coat']);
    else if (closed) expect(touched[0]?.from).toBeGreaterThanOrEqual(closed.to);
    const told = can?.minutes.recoat?.to;
    if (told && !within) expect(coat.from - before.to).toBeGreaterThanOrEqual(told * MINUTE - 1);
  }
  // No end before the product's printed low end, in whatever air.
  if (!can)
    for (const { to, recoat, touch } of coats) {
      expect(touch.from - to).toBeGreaterThanOrEqual(product['touch-minutes'][0] * MINUTE - 1);
      expect(recoat.from - to).toBeGreaterThanOrEqual(product['recoat-hours'][0] * HOUR - 1);
    }
  if (!can) {
    const last = coats.at(-1)?.to ?? 0;
    expect(got.dates.lightUse.from - last).toBeGreaterThanOrEqual(product['light-use-days'][0] * DAY - 1);
    expect(got.dates.fullUse.from - last).toBeGreaterThanOrEqual(product['cure-days'][0] * DAY - 1);
  }
  const perDay = can?.coatsPerDay;
  if (perDay)
    for (const { to } of coats)
      expect(
        coats.filter((other) => Math.floor(other.to / DAY) === Math.floor(to / DAY)).length,
      ).toBeLessThanOrEqual(perDay);
  // Weather: the day fit to coat in, by the product or by the can.
  const verdict = weatherVerdict(
    can?.limits?.celsius
      ? ({
          ...product,
          limits: { ...product.limits, celsius: [can.limits.celsius.from, can.limits.celsius.to] },
          'film-formation-celsius': undefined,
        } as never)
      : product,
    one.day,
  );
  expect(verdict.ok && verdict.value.verdict).not.toBe('no');
  // A film of droplets is never out in a night that it can not stand before it can be recoated.
  if (product.mechanism === 'coalescence' && !can?.limits)
    for (const night of got.nights)
      expect(
        outsideLimits(dryingOf(product), { celsius: one.night.celsius, relativeHumidity: 0.5 }),
        `night at ${night.from}`,
      ).toBeUndefined();
  // Dates in their order.
  const end = coats.at(-1)?.to ?? 0;
  expect(got.dates.handle).toBeGreaterThanOrEqual(end + 24 * HOUR);
  expect(got.dates.lightUse.from).toBeGreaterThanOrEqual(got.dates.handle);
  expect(got.dates.fullUse.from).toBeGreaterThanOrEqual(got.dates.lightUse.from);
  expect(got.dates.lightUse.to).toBeLessThanOrEqual(got.dates.fullUse.to);
  expect(got.dates.handOver).toBeGreaterThanOrEqual(got.dates.lightUse.to);
};

it(`holds for ${RUNS} random jobs: windows, hours, weather, film, label; more area, more product; colder, not sooner`, () => {
  let plans = 0;
  fc.assert(
    fc.property(
      anyJob,
      fc.double({ min: 0.1, max: 6, noNaN: true }),
      fc.integer({ min: 1, max: 3 }),
      (one, colder, more) => {
        const got = outcome(one);
        const { build, squareMeters } = got;
        if (build) {
          // More area never needs less product, in liters and in cans.
          const less = litersOf(plan, one, build, squareMeters);
          const larger = litersOf(plan, one, build, squareMeters * (1 + more / 10));
          expect(larger).toBeGreaterThanOrEqual(less);
          for (const units of ['metric', 'us'] as const) {
            const bought = (liters: number) =>
              cansFor(plan, liters, units, false).reduce(
                (sum, { can, count }) => sum + can.liters * count,
                0,
              );
            expect(bought(larger)).toBeGreaterThanOrEqual(bought(less));
            expect(bought(less)).toBeGreaterThanOrEqual(less);
          }
        }
        if (got.kind === 'no') {
          expect(got.why.length).toBeGreaterThan(0);
          return;
        }
        plans += 1;
        respected(one, got);
        // A colder night never ends earlier, whether it only slows or makes it a no; but one that moves the hours in
        // which no coat goes on may let a coat on before them.
        if (got.coats.some(({ closed }) => closed)) return;
        const cold = outcome({ ...one, night: { celsius: one.night.celsius - colder } });
        if (cold.kind === 'no') return;
        for (const [index, { from, recoat }] of cold.coats.entries()) {
          expect(from).toBeGreaterThanOrEqual((got.coats[index]?.from ?? 0) - 1);
          expect(recoat.to).toBeGreaterThanOrEqual((got.coats[index]?.recoat.to ?? 0) - 1);
        }
        expect(cold.dates.fullUse.to).toBeGreaterThanOrEqual(got.dates.fullUse.to - 1);
        expect(cold.dates.handOver).toBeGreaterThanOrEqual(got.dates.handOver - 1);
      },
    ),
    { numRuns: RUNS, seed: 7 },
  );
  // Not a proof about refusals alone.
  expect(plans).toBeGreaterThan(RUNS / 20);
  console.log(`${plans} of ${RUNS} jobs were planned`);
});
