/**
 * What is coated on both faces: reckoned by hand from the tables (`content/plan.yaml`), beside printed times for
 * handling, and by laws over random jobs. The jobs are invented; where a check names no source, common practice, no
 * source.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaOf, type Job, litersOf, type Planned, type Turning } from '#engine/schedule.ts';
import { THOROUGH, WHOLE } from '../../thorough.ts';
import { anyJob } from './any-job.ts';
import { codes, DAY, HOUR, job, MINUTE, outcome, plan, planned, productOf } from './sheet.ts';

const AIR = { celsius: 23, relativeHumidity: 0.5 };
const span = (minutes: number) => ({ from: minutes, to: minutes });
/** A can that is coated again after two hours, three coats. */
const CAN: NonNullable<Job['label']> = {
  coats: 3,
  minutes: {
    open: span(10),
    touch: span(30),
    recoat: span(120),
    'light-use': span(3 * 1440),
    cure: span(30 * 1440),
  },
};
const none = { count: 0, long: 0, wide: 0 };
/** Fourteen doors, each 600 × 400 mm. */
const DOORS = { top: none, side: none, front: { count: 14, long: 600, wide: 400 }, leg: none };
const doors = (turned: Turning | undefined, more: Partial<Job> = {}): Job =>
  job({
    day: AIR,
    night: AIR,
    label: CAN,
    parts: DOORS,
    ...(turned && { both: { parts: ['front'], turned } }),
    ...more,
  });

/** `day hour:minute`, from Monday 0. */
const clock = (at: number) => {
  const minutes = Math.round((at % DAY) / MINUTE);
  return `${Math.floor(at / DAY)} ${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
};
const stepsOf = (one: Job) =>
  planned(one).steps.map(({ kind, coat, face, from, to }) =>
    [kind, ...(face ? [face] : []), ...(coat ? [coat] : []), clock(from), clock(to)].join(' '),
  );
const coatsOf = (one: Job) =>
  planned(one).coats.map(({ face, number, to }) => `${face ?? 'one'} ${number} ${clock(to)}`);

describe('fourteen doors in three coats that are ready in two hours', () => {
  // A face is 0.24 m²: 3.36 m² of backs; of fronts as much and a fifth for the edges, 4.032 m².
  // Sanding 8 min/m²: back 26.9, told as 30; front 32.3, told as 35. Wiping 15, looking 5, turning 14, told as 15.
  // Laying 10 min and 0.13 m²/min: back 35.8, told as 40; front 41.0, told as 45.
  it('turned after each coat, step after step', () => {
    expect(stepsOf(doors('each-coat'))).toEqual([
      'sand back 1 0 9:00 0 9:30',
      'wipe back 1 0 9:30 0 9:45',
      'coat back 1 0 9:45 0 10:25',
      'wait back 1 0 10:25 0 12:25',
      'turn front 1 0 12:25 0 12:40',
      'sand front 1 0 12:40 0 13:15',
      'wipe front 1 0 13:15 0 13:30',
      'coat front 1 0 13:30 0 14:15',
      'wait front 1 0 14:15 0 16:15',
      'turn back 2 0 16:15 0 16:30',
      'look back 1 0 16:30 0 16:35',
      'sand back 2 0 16:35 0 17:05',
      'wipe back 2 0 17:05 0 17:20',
      'coat back 2 0 17:20 0 18:00',
      'wait back 2 0 18:00 0 20:00',
      'turn front 2 1 9:00 1 9:15',
      'look front 1 1 9:15 1 9:20',
      'sand front 2 1 9:20 1 9:55',
      'wipe front 2 1 9:55 1 10:10',
      'coat front 2 1 10:10 1 10:55',
      'wait front 2 1 10:55 1 12:55',
      'turn back 3 1 12:55 1 13:10',
      'look back 2 1 13:10 1 13:15',
      'sand back 3 1 13:15 1 13:45',
      'wipe back 3 1 13:45 1 14:00',
      'coat back 3 1 14:00 1 14:40',
      'wait back 3 1 14:40 1 16:40',
      // 115 minutes from 16:40 would end after six.
      'turn front 3 2 9:00 2 9:15',
      'look front 2 2 9:15 2 9:20',
      'sand front 3 2 9:20 2 9:55',
      'wipe front 3 2 9:55 2 10:10',
      'coat front 3 2 10:10 2 10:55',
      'wait front 3 2 10:55 2 12:55',
      'look 3 2 12:55 2 12:55',
      'light-use 5 10:55 5 10:55',
      'full-use 32 10:55 32 10:55',
    ]);
  });

  it('turned once: the back lies a day with all its coats before the front begins', () => {
    expect(coatsOf(doors('each-face'))).toEqual([
      'back 1 0 10:25',
      'back 2 0 13:55',
      'back 3 0 17:25',
      // Turned from 17:25 on the next day, too late for 110 minutes of that day.
      'front 1 2 10:50',
      'front 2 2 14:30',
      'front 3 3 10:40',
    ]);
    // It lies over the night, though it took a next coat from 19:25 on.
    const nights = planned(doors('each-face')).nights.map(
      ({ face, coat, from }) => `${face} ${coat} ${clock(from)}`,
    );
    expect(nights).toEqual(['back 3 0 21:00']);
    const turns = planned(doors('each-face')).steps.filter(({ kind }) => kind === 'turn');
    expect(turns.map(({ from, say }) => [clock(from), say])).toEqual([['2 9:00', plan.turn.says.once.say]]);
  });

  it('on one face they are ready a day or two sooner, and were told so of both before', () => {
    expect(coatsOf(doors(undefined))).toEqual(['one 1 0 10:35', 'one 2 0 14:15', 'one 3 0 17:55']);
    expect(clock(planned(doors(undefined)).dates.handOver)).toBe('3 17:55');
    expect(clock(planned(doors('each-coat')).dates.handOver)).toBe('5 10:55');
    expect(clock(planned(doors('each-face')).dates.handOver)).toBe('6 10:40');
  });

  it('counts the backs once more, without their edges', () => {
    const { areas, squareMeters, liters, build } = planned(doors('each-coat'));
    expect(areas.back).toBeCloseTo(3.36, 9);
    expect(areas.front).toBeCloseTo(4.032, 9);
    expect(squareMeters).toBeCloseTo(7.392, 9);
    // Brushed at √(65 × 100) = 80.6 µm, three coats, a tenth lost: 7.392 × 80.6 × 3 × 1.1 ÷ 1000.
    expect(build?.wet).toBeCloseTo(80.62, 2);
    expect(liters).toBeCloseTo(1.967, 3);
  });

  it('tells how to turn, which face the edges go with, and that touch is not enough', () => {
    const { steps } = planned(doors('each-coat'));
    const { says } = plan.turn;
    expect(steps.filter(({ kind }) => kind === 'turn').map(({ say }) => say)).toEqual([
      says['front-up'].say,
      says['back-up'].say,
      says['front-up'].say,
      says['back-up'].say,
      says['front-up'].say,
    ]);
    const told = steps.filter(({ kind, say }) => kind === 'coat' && say);
    expect(told.map(({ face, coat, say }) => [face, coat, say])).toEqual([['front', 1, says.edges.say]]);
    const waits = steps.filter(({ kind }) => kind === 'wait');
    expect(waits.map(({ untilTurned }) => untilTurned ?? false)).toEqual([
      ...Array<boolean>(5).fill(true),
      false,
    ]);
    expect(waits[0]?.say).toBe(says.wait.say);
  });

  it('a carcass beside them is coated with the fronts, once', () => {
    const side = { count: 2, long: 1000, wide: 500 };
    const one = planned(doors('each-coat', { parts: { ...DOORS, side } }));
    expect(one.areas.back).toBeCloseTo(3.36, 9);
    expect(one.areas.front).toBeCloseTo((3.36 + 1) * 1.2, 9);
    const first = one.steps.find(({ kind, face }) => kind === 'coat' && face === 'front');
    expect(first?.say).toBe(`${plan.turn.says.edges.say} ${plan.turn.says.rest.say}`);
  });

  it('is of one face where there is none of what would be turned', () => {
    const top = doors(undefined, { both: { parts: ['top'], turned: 'each-coat' } });
    expect(stepsOf(top)).toEqual(stepsOf(doors(undefined)));
    expect(planned(top).areas.back).toBe(0);
  });

  it('the can’s coats a day are of each face', () => {
    const twice = doors('each-coat', { label: { ...CAN, coatsPerDay: 1 } });
    expect(coatsOf(twice)).toEqual([
      'back 1 0 10:25',
      'front 1 0 14:15',
      'back 2 1 10:45',
      'front 2 1 14:40',
      'back 3 2 10:45',
      'front 3 2 14:40',
    ]);
  });
});

describe('a film that nobody sands', () => {
  // Mondays and Thursdays: the next coat of a face comes after three or four days, or, turned each time, after seven.
  it('is turned once where its coats would follow too late, and the no says so', () => {
    const minutes = { ...CAN.minutes, 'sand-if-beyond': span(120 * 60) };
    const days = [false, true, false, false, true, false, false];
    const hardened = (turned: Turning) =>
      doors(turned, {
        hardener: 'isocyanate',
        label: { ...CAN, minutes },
        hours: { from: 540, to: 720, days },
      });
    expect(codes(hardened('each-face'))).toBe('plan');
    const no = outcome(hardened('each-coat'));
    expect(no.kind === 'no' && no.why.map(({ code, instead }) => `${code}: ${instead}`)).toEqual([
      'hours: Turn it only once, or give days and hours that let the coats follow sooner, or take a finish of one part.',
    ]);
  });
});

/** The first turning after the back, in hours from the end of its coat; she works round the clock. */
const NIGHTLESS = { from: 0, to: 1440, days: Array<boolean>(7).fill(true) };
const turnedAfter = (more: Partial<Job>, turned: Turning = 'each-coat'): number => {
  const { coats, steps } = planned(
    doors(turned, { label: undefined, hours: NIGHTLESS, base: 'bare-wood', tone: 'wood', ...more }),
  );
  const under = coats.findLast(({ face }) => face === 'back' && turned === 'each-face') ?? coats[0];
  const turn = steps.find(({ kind }) => kind === 'turn');
  return ((turn?.from ?? Number.NaN) - (under?.to ?? Number.NaN)) / HOUR;
};

describe('when a coat can be turned', () => {
  const warm = { celsius: 25, relativeHumidity: 0.5 };
  const cool = { celsius: 21, relativeHumidity: 0.5 };
  // What a sheet prints "to handle", hours; the late end is the one that a plan may count on.
  it.each([
    [
      'a maker’s sheet, pre-catalyzed lacquer, undated: 30 to 45 min at 25 °C',
      'sprayed-lacquer',
      'spray-gun',
      warm,
      0.75,
    ],
    [
      'a maker’s sheet, clear acrylic lacquer (CAB), undated: 15 to 20 min at 25 °C',
      'sprayed-lacquer',
      'spray-gun',
      warm,
      1 / 3,
    ],
    [
      'a maker’s sheet, oil-modified urethane varnish, undated: 4 h at 25 °C',
      'oil-based-polyurethane',
      'brush',
      warm,
      4,
    ],
    [
      'alkyd enamel, as an advice page repeats the maker: 5 to 9 h at 21 °C',
      'alkyd-varnish',
      'brush',
      cool,
      9,
    ],
    [
      'enamel from a can, as an advice page repeats the maker: 1 to 2 h at 21 °C',
      'aerosol-lacquer',
      'aerosol',
      cool,
      2,
    ],
  ] as const)('%s', (_, product, applicator, air, hours) => {
    const after = turnedAfter({ product, applicator, day: air, night: air });
    expect(after).toBeGreaterThanOrEqual(hours);
    // And not idly long: no more than two and a half times what the sheet has, or twice what touch takes.
    const touch = productOf(product)['touch-minutes'][1] / 60;
    expect(after).toBeLessThanOrEqual(Math.max(2.5 * hours, 2 * touch));
  });

  it('where no sheet tells handling apart, once it surely takes the next coat', () => {
    const at = turnedAfter({ day: AIR, night: AIR });
    // Two to four hours, of a film a hair thicker than usual.
    expect(at).toBeGreaterThanOrEqual(4);
    expect(at).toBeLessThan(4.5);
  });

  it('the can’s time to recoat counts as it stands', () => {
    const label = { minutes: { recoat: span(20 * 60) } };
    expect(turnedAfter({ product: 'oil-based-polyurethane', day: AIR, night: AIR, label })).toBeCloseTo(
      20,
      6,
    );
  });

  // An alkyd enamel, as an advice page repeats the maker: touch 2 to 4 h, to handle 5 to 9 h, recoat after 24 h.
  it('the can’s time to handle wins over its time to recoat and over every table', () => {
    const label = { minutes: { touch: span(240), handle: { from: 300, to: 540 }, recoat: span(1440) } };
    const enamel = { product: 'alkyd-varnish', applicator: 'brush', day: AIR, night: AIR } as const;
    expect(turnedAfter({ ...enamel, label })).toBeCloseTo(9, 6);
    const { handle: _, ...without } = label.minutes;
    expect(turnedAfter({ ...enamel, label: { minutes: without } })).toBeCloseTo(24, 6);
    // One that is handled later than it is coated, and one that is wiped off.
    const water = { day: AIR, night: AIR };
    const late = { minutes: { recoat: span(120), handle: span(600) } };
    expect(turnedAfter({ ...water, label: late })).toBeCloseTo(10, 6);
    const oiled = { product: 'drying-oil', applicator: 'cloth', wear: 'low', ...water } as const;
    expect(turnedAfter({ ...oiled, label: { minutes: { handle: span(480) } } })).toBeCloseTo(8, 6);
  });

  it('the can’s time to handle is put off by cold, and brings forward no face with all its coats', () => {
    const label = { minutes: { handle: span(120), recoat: span(240) } };
    const cold = { celsius: 16, relativeHumidity: 0.5 };
    expect(turnedAfter({ day: cold, night: cold, label })).toBeGreaterThan(2);
    expect(turnedAfter({ day: AIR, night: AIR, label }, 'each-face')).toBeGreaterThanOrEqual(24);
    const late = { minutes: { handle: span(40 * 60) } };
    expect(turnedAfter({ day: AIR, night: AIR, label: late }, 'each-face')).toBeGreaterThanOrEqual(40);
  });

  it('the date to handle the piece with care is by the can, never before it takes a coat', () => {
    const at = (minutes: NonNullable<Job['label']>['minutes']) => {
      const { dates, coats } = planned(doors(undefined, { label: { ...CAN, minutes } }));
      return (dates.handle - (coats.at(-1)?.to ?? 0)) / HOUR;
    };
    expect(at(CAN.minutes)).toBe(24);
    expect(at({ ...CAN.minutes, handle: span(300) })).toBeCloseTo(5, 6);
    expect(at({ ...CAN.minutes, handle: span(60) })).toBeCloseTo(2, 6);
    expect(at({ ...CAN.minutes, handle: span(3 * 1440) })).toBeCloseTo(72, 6);
  });

  it('what is wiped off is turned at once, a wax once it is buffed, and no wait is told', () => {
    const oiled = { product: 'drying-oil', applicator: 'cloth', wear: 'low', day: AIR, night: AIR } as const;
    expect(turnedAfter(oiled)).toBe(0);
    const waxed = planned(
      doors('each-coat', { ...oiled, product: 'paste-wax', base: 'bare-wood', label: undefined }),
    );
    expect(waxed.steps.slice(2, 6).map(({ kind, face }) => `${kind} ${face}`)).toEqual([
      'coat back',
      'wait back',
      'buff back',
      'turn front',
    ]);
    expect(waxed.steps[5]?.from).toBe(waxed.steps[4]?.to);
  });

  it('colder air takes longer, after each coat and with all of them', () => {
    for (const turned of ['each-coat', 'each-face'] as const)
      for (const [product, applicator] of [
        ['sprayed-lacquer', 'spray-gun'],
        ['oil-based-polyurethane', 'brush'],
        ['water-based-polyurethane', 'brush'],
      ] as const) {
        const at = (celsius: number) => {
          const air = { celsius, relativeHumidity: 0.5 };
          return turnedAfter({ product, applicator, day: air, night: air }, turned);
        };
        expect(at(16), `${product} ${turned}`).toBeGreaterThan(at(23));
      }
  });

  it('with all its coats a face waits a day, and never less than for the next coat', () => {
    expect(turnedAfter({ day: AIR, night: AIR }, 'each-face')).toBeGreaterThanOrEqual(24);
    const label = { ...CAN, minutes: { ...CAN.minutes, recoat: span(30 * 60) } };
    expect(turnedAfter({ day: AIR, night: AIR, label }, 'each-face')).toBeGreaterThanOrEqual(30);
  });

  // Nobody told it so: it follows from the times of the lacquer.
  it('a sprayed lacquer has both faces of all its coats on one day', () => {
    const sprayed = doors('each-coat', {
      product: 'sprayed-lacquer',
      applicator: 'spray-gun',
      base: 'old-finish',
      age: 'since-1993',
      baseHours: undefined,
      label: undefined,
      hours: { ...NIGHTLESS, from: 8 * 60, to: 19 * 60 },
    });
    const { coats } = planned(sprayed);
    const days = coats.filter(({ number }) => number === 1).map(({ to }) => Math.floor(to / DAY));
    expect(new Set(days).size).toBe(1);
    const varnished = planned(doors('each-coat', { product: 'oil-based-polyurethane', label: undefined }));
    const [back, front] = varnished.coats;
    expect(Math.floor((front?.to ?? 0) / DAY)).toBeGreaterThan(Math.floor((back?.to ?? 0) / DAY));
  });
});

const HANDS = ['wash', 'test-patch', 'turn', 'sand', 'wipe', 'coat', 'buff', 'look'];

const lawful = (one: Job, got: Planned, turned: Turning): void => {
  const { steps, coats, build, areas, squareMeters, liters, dates } = got;
  const { number: last = 0 } = coats.at(-1) ?? {};
  expect(coats.length).toBe(2 * (build?.coats ?? 0));
  expect(coats.at(-1)?.face).toBe('front');
  expect(last).toBe(build?.coats);
  // Hands do one thing at a time, in her hours.
  const hands = steps.filter(({ kind, final }) => HANDS.includes(kind) && !final);
  for (const [index, step] of hands.entries()) {
    expect(step.from, `${step.kind} ${index}`).toBeGreaterThanOrEqual(hands[index - 1]?.to ?? 0);
    const day = Math.floor(step.from / DAY);
    expect(step.from).toBeGreaterThanOrEqual(day * DAY + one.hours.from * MINUTE);
    expect(step.to).toBeLessThanOrEqual(day * DAY + one.hours.to * MINUTE);
  }
  for (const { kind, from, to, surely = to } of steps) {
    expect(to, kind).toBeGreaterThanOrEqual(from);
    expect(surely).toBeGreaterThanOrEqual(to);
  }
  // Turned each time that the other face is coated, never before what lies down bears it.
  const wiped = ['oil', 'hardwax-oil', 'wax'].includes(productOf(one.product).family);
  const turns = hands.filter(({ kind }) => kind === 'turn');
  expect(turns.length).toBe(turned === 'each-face' ? 1 : coats.length - 1);
  for (const { from, face } of turns) {
    const under = coats.findLast((coat) => coat.to <= from && coat.face !== face);
    if (!under) throw new Error('turned onto nothing');
    if (!wiped) expect(from).toBeGreaterThanOrEqual(under.touch.to - 1);
    if (one.label?.minutes.recoat && !wiped) expect(from).toBeGreaterThanOrEqual(under.recoat.to - 1);
    if (turned === 'each-face') {
      expect(under.number).toBe(build?.coats);
      expect(from).toBeGreaterThanOrEqual(under.recoat.to - 1);
    }
  }
  // Each face by itself: no coat before the one below takes it.
  for (const face of ['back', 'front'] as const) {
    const own = coats.filter((coat) => coat.face === face);
    expect(own.map(({ number }) => number)).toEqual(own.map((_, index) => index + 1));
    for (const [index, { from }] of own.entries()) {
      const { recoat = { from: 0, to: 0 }, closed, ...below } = own[index - 1] ?? { from: 0, to: 0 };
      const within = closed !== undefined && from <= closed.from;
      const least = within ? Math.max(below.to, recoat.from - (below.to - below.from)) : recoat.to;
      expect(from).toBeGreaterThanOrEqual(Math.max(least, within ? 0 : (closed?.to ?? 0)) - 1);
    }
  }
  // Amounts are those of both faces.
  expect(squareMeters).toBeCloseTo(areas.back + areas.front, 9);
  expect(areas.front).toBeCloseTo(areaOf(one.parts, plan.extra), 9);
  if (build)
    expect(liters).toBeCloseTo(
      litersOf(plan, one, build, areas.back) + litersOf(plan, one, build, areas.front),
      9,
    );
  expect(dates.handle).toBeGreaterThanOrEqual((coats.at(-1)?.to ?? 0) + 24 * HOUR);
};

it('holds for random jobs: one thing at a time, in her hours, no turning too soon, never sooner than one face', () => {
  let plans = 0;
  fc.assert(
    fc.property(
      anyJob,
      fc.constantFrom('each-coat', 'each-face'),
      fc.subarray(['front', 'top'] as const, { minLength: 1 }),
      (one, turned, parts) => {
        const count = parts.reduce((sum, part) => sum + one.parts[part].count, 0);
        const [alone, both] = [outcome(one), outcome({ ...one, both: { parts, turned } })];
        if (!count) {
          expect(both).toEqual(alone);
          return;
        }
        if (both.kind === 'no') return;
        plans += 1;
        lawful(one, both, turned);
        // What is refused for one face may never be planned for two.
        expect(codes(one)).toBe('plan');
        // One face more can move a coat before the hours in which none goes on, or behind them.
        if (alone.kind === 'no' || alone.coats.some(({ closed }) => closed)) return;
        expect(both.dates.handOver).toBeGreaterThanOrEqual(alone.dates.handOver - 1);
        expect(both.dates.lightUse.to).toBeGreaterThanOrEqual(alone.dates.lightUse.to - 1);
        expect(both.dates.fullUse.to).toBeGreaterThanOrEqual(alone.dates.fullUse.to - 1);
        expect(both.liters ?? 0).toBeGreaterThanOrEqual(alone.liters ?? 0);
      },
    ),
    { numRuns: THOROUGH ? 3_000 : WHOLE ? 500 : 200, seed: 14 },
  );
  expect(plans).toBeGreaterThan(WHOLE ? 25 : 10);
});
