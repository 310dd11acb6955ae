/**
 * A whole plan, reckoned by hand with pencil and paper from the tables (`content/plan.yaml`) and a can that prints its
 * times. Invented jobs; common practice, no source, but for what the tables name.
 */
import { describe, expect, it } from 'vitest';
import { type Job, sayStep } from '#engine/schedule.ts';
import { WORDS } from '../clock/words.ts';
import { codes, DAY, HOUR, job, MINUTE, outcome, plan, planned } from './sheet.ts';

/** The air of the can's own climate by day and by night, so that its times hold as they stand. */
const AIR = { celsius: 23, relativeHumidity: 0.5 };
const span = (minutes: number) => ({ from: minutes, to: minutes });
const MINUTES = {
  open: span(10),
  touch: span(30),
  recoat: span(120),
  'light-use': span(3 * 1440),
  cure: span(30 * 1440),
};
const can = (more: Partial<NonNullable<Job['label']>>): Job['label'] => ({ minutes: MINUTES, ...more });
const byCan = (more: Partial<Job> = {}, label = can({ coats: 3 })): Job =>
  job({ day: AIR, night: AIR, label, ...more });

/** `day hour:minute`, from Monday 0. */
const clock = (at: number) => {
  const minutes = Math.round((at % DAY) / MINUTE);
  return `${Math.floor(at / DAY)} ${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
};
const stepsOf = (one: Job) =>
  planned(one).steps.map(({ kind, coat, from, to }) =>
    [kind, ...(coat ? [coat] : []), clock(from), clock(to)].join(' '),
  );

describe('a dresser in three coats that are ready in two hours', () => {
  // Faces: top 1.2 × 0.48, two sides 0.85 × 0.46, six fronts 0.56 × 0.23, four legs of four faces 0.12 × 0.05:
  // 0.576 + 0.782 + 0.7728 + 0.096 = 2.2268 m², a fifth more for edges: 2.672 m².
  it('is 2.672 m² large', () => {
    expect(planned(byCan()).squareMeters).toBeCloseTo(2.67216, 9);
  });

  // Sanding 8 min/m²: 21.4, told as 25. Laying 10 + 2.672 / 0.13 = 30.6, told as 35. Wiping 15, looking 5.
  it('takes one day, step after step', () => {
    expect(stepsOf(byCan())).toEqual([
      'sand 1 0 9:00 0 9:25',
      'wipe 1 0 9:25 0 9:40',
      'coat 1 0 9:40 0 10:15',
      'wait 1 0 10:15 0 12:15',
      'look 1 0 12:15 0 12:20',
      'sand 2 0 12:20 0 12:45',
      'wipe 2 0 12:45 0 13:00',
      'coat 2 0 13:00 0 13:35',
      'wait 2 0 13:35 0 15:35',
      'look 2 0 15:35 0 15:40',
      'sand 3 0 15:40 0 16:05',
      'wipe 3 0 16:05 0 16:20',
      'coat 3 0 16:20 0 16:55',
      'wait 3 0 16:55 0 18:55',
      // Ready at 18:55, after her hours: nobody waits up for it.
      'look 3 1 9:00 1 9:00',
      'light-use 3 16:55 3 16:55',
      'full-use 30 16:55 30 16:55',
    ]);
  });

  it('is handled a day after the last coat, and handed over for light use', () => {
    const { dates } = planned(byCan());
    expect(clock(dates.handle)).toBe('1 16:55');
    expect(clock(dates.handOver)).toBe('3 16:55');
  });

  it('waits till the next morning where the can allows two coats a day', () => {
    const { coats } = planned(byCan({}, can({ coats: 3, coatsPerDay: 2 })));
    expect(coats.map(({ from }) => clock(from))).toEqual(['0 9:40', '0 13:00', '1 9:45']);
    const one = planned(byCan({}, can({ coats: 3, coatsPerDay: 1 })));
    expect(one.coats.map(({ from }) => clock(from))).toEqual(['0 9:40', '1 9:45', '2 9:45']);
  });

  it('begins on the next day of hers where the day is over, and skips the days that are not', () => {
    const days = [false, true, false, true, true, true, false];
    const late = byCan({ start: 17 * HOUR, hours: { from: 540, to: 1080, days } }, can({ coats: 1 }));
    expect(planned(late).coats.map(({ from }) => clock(from))).toEqual(['2 9:40']);
  });

  it('uses a session to its last minute, and not one more', () => {
    const from = 540;
    const days = Array<boolean>(7).fill(true);
    const hours = (minutes: number) => ({ from, to: from + minutes, days });
    // The first coat takes 75 minutes, the others 80 with the look before.
    expect(codes(byCan({ hours: hours(75) }, can({ coats: 1 })))).toBe('plan');
    expect(codes(byCan({ hours: hours(74) }, can({ coats: 1 })))).toBe('hours');
    expect(codes(byCan({ hours: hours(80) }))).toBe('plan');
    const short = outcome(byCan({ hours: hours(79) }));
    expect(short.kind === 'no' && short.why[0].says).toBe(
      'One session takes about 80 minutes without a stop, and your hours leave 79.',
    );
    const none = outcome(byCan({ hours: { from, to: 1080, days: Array<boolean>(7).fill(false) } }));
    expect(none.kind === 'no' && none.why.map(({ code, says }) => `${code} ${says}`)).toEqual([
      'hours No day of the week is ticked.',
    ]);
    const few = [true, ...Array<boolean>(6).fill(false)];
    const weekly = outcome(byCan({ hours: { from, to: from + 30, days: few } }));
    expect(weekly.kind === 'no' && weekly.why[0].says).toMatch(/^One session takes about 75 minutes/);
    const turned = outcome(byCan({ hours: { from: 700, to: 600, days } }));
    expect(turned.kind === 'no' && turned.why[0].says).toMatch(/your hours leave 0\.$/);
  });

  it('waits for the base, and says for how long and why', () => {
    // Latex paint wants a day before a water-based coat; it was laid 20 hours ago.
    const one = planned(byCan({ baseHours: 20 }, can({ coats: 1 })));
    const [wait, ...rest] = one.steps;
    expect(wait).toMatchObject({ kind: 'wait', from: 9 * HOUR, to: 13 * HOUR, surely: 13 * HOUR });
    expect(wait?.say).toContain('two weeks is the cautious figure');
    expect(wait?.coat).toBeUndefined();
    expect(clock(rest[0]?.from ?? 0)).toBe('0 13:00');
  });

  // Wiping 15 min, an hour to dry; 10 min to lay the patch.
  it('washes an unknown finish and lets it dry, then lays a test patch, and waits a day for it', () => {
    const one = planned(
      byCan({ base: 'old-finish', baseHours: undefined, age: 'since-1993' }, can({ coats: 1 })),
    );
    expect(one.steps[0]).toMatchObject({
      kind: 'wash',
      from: 9 * HOUR,
      to: 9 * HOUR + 15 * MINUTE,
      surely: 10 * HOUR + 15 * MINUTE,
      say: expect.stringMatching(/mineral spirits.*dry for an hour/),
    });
    expect(one.steps[1]).toMatchObject({
      kind: 'test-patch',
      from: 10 * HOUR + 15 * MINUTE,
      to: 10 * HOUR + 25 * MINUTE,
      surely: 34 * HOUR + 25 * MINUTE,
      hours: 24,
    });
    expect(one.steps[1]?.say).toContain('polish, wax, silicone');
    expect(one.steps[2]?.kind).toBe('sand');
    expect(clock(one.steps[2]?.from ?? 0)).toBe('1 10:25');
    expect(planned(byCan()).steps.map(({ kind }) => kind)).not.toContain('test-patch');
  });

  it('does not sand a stain, says so at the wipe, and gives the time of sanding back', () => {
    const one = planned(byCan({ base: 'stain', baseHours: 200, tone: 'wood' }, can({ coats: 1 })));
    const [patch, wipe, coat] = one.steps;
    expect(patch?.kind).toBe('test-patch');
    expect([wipe?.kind, coat?.kind]).toEqual(['wipe', 'coat']);
    expect(wipe?.say).toContain('Do not sand stained wood');
    expect((wipe?.to ?? 0) - (wipe?.from ?? 0)).toBe(15 * MINUTE);
    const sanded = planned(byCan()).steps.find(({ kind }) => kind === 'wipe');
    expect(sanded?.say).toBeUndefined();
  });

  it('names grit and words of the base for the first coat, and of the film between coats', () => {
    const rubs = planned(byCan()).steps.filter(({ kind }) => kind === 'sand');
    expect(rubs.map(({ grit }) => grit)).toEqual([320, 320, 320]);
    expect(rubs[0]?.say).toContain('do not cut through the color');
    // One coat is a thin film (film-s113): over it the film has the word, over two such coats the table has.
    expect(rubs.map(({ thin }) => thin)).toEqual([undefined, true, undefined]);
    expect(rubs[1] && sayStep(WORDS, rubs[1])).toContain('sand only what stands up');
    expect(rubs[2]?.say).toContain('fresh paper');
    const bare = planned(byCan({ base: 'bare-wood', baseHours: undefined }));
    expect(bare.steps.filter(({ kind }) => kind === 'sand').map(({ grit }) => grit)).toEqual([180, 320, 320]);
  });
});

describe('a waxed dresser', () => {
  const label = can({ minutes: { ...MINUTES, recoat: span(24 * 60) }, coats: 2 });
  const waxed = (more: Partial<Job> = {}) =>
    byCan(
      {
        base: 'bare-wood',
        baseHours: undefined,
        tone: 'wood',
        product: 'paste-wax',
        applicator: 'cloth',
        ...more,
      },
      label,
    );
  const [buff] = plan.buff;

  // Laying 10 + 2.672 / 0.25 = 20.7, told as 25. Dull after half an hour; buffing takes the 15 minutes of a wipe.
  it('is buffed in the hour in which it is laid, and not sanded between', () => {
    expect(stepsOf(waxed())).toEqual([
      'sand 1 0 9:00 0 9:25',
      'wipe 1 0 9:25 0 9:40',
      'coat 1 0 9:40 0 10:05',
      'wait 1 0 10:05 0 10:35',
      'buff 1 0 10:35 0 10:50',
      'wait 1 0 10:50 1 10:05',
      'look 1 1 10:05 1 10:10',
      'wipe 2 1 10:10 1 10:25',
      'coat 2 1 10:25 1 10:50',
      'wait 2 1 10:50 1 11:20',
      'buff 2 1 11:20 1 11:35',
      'wait 2 1 11:35 2 10:50',
      'look 2 2 10:50 2 10:50',
      'light-use 4 10:50 4 10:50',
      'full-use 31 10:50 31 10:50',
    ]);
    const { steps } = planned(waxed());
    const rubbed = steps.filter(({ kind }) => kind === 'buff');
    expect(rubbed.map(({ say }) => say)).toEqual([buff?.say, buff?.say]);
    expect(steps.filter(({ kind }) => kind === 'wait').map(({ surely }) => clock(surely ?? 0))).toEqual([
      '0 10:35',
      '1 10:05',
      '1 11:20',
      '2 10:50',
    ]);
    const second = steps.find(({ kind, coat }) => kind === 'wipe' && coat === 2);
    expect(second?.say).toContain('Do not sand');
  });

  it('is begun only where the buffing ends within her hours of that day', () => {
    const days = Array<boolean>(7).fill(true);
    const until = (to: number) => waxed({ hours: { from: 540, to, days } });
    expect(codes(until(650))).toBe('plan');
    const short = outcome(until(649));
    expect(short.kind === 'no' && short.why.map(({ code, says }) => `${code}: ${says}`)).toEqual([
      'hours: One session takes about 110 minutes without a stop, and your hours leave 109.',
    ]);
    // Begun at four in the afternoon it would be buffed at ten to six; at half past four not before six.
    const from = (hour: number) =>
      planned(waxed({ start: hour * HOUR })).coats.map((one) => clock(one.from))[0];
    expect(from(16)).toBe('0 16:40');
    expect(from(16.5)).toBe('1 9:40');
  });
});

describe('what is looked at, and when', () => {
  const looked = (one: Job) =>
    planned(one)
      .steps.filter(({ looks }) => looks.length)
      .map(({ kind, coat, final, looks }) => [
        [kind, coat ?? '', final ? 'last' : ''].join(' ').trim(),
        ...looks.flatMap(({ defects }) => defects),
      ]);

  it('water-based over paint, by the table of looks', () => {
    const laid = ['missed-spots', 'runs-and-sags', 'cloudy-film'];
    const dry = ['bubbles', 'hairs-and-dust', 'lap-marks'];
    const sanded = ['sand-through', 'sanding-scratches'];
    expect(looked(byCan())).toEqual([
      ['coat 1', ...laid],
      ['look 1', ...dry],
      ['sand 2', ...sanded],
      ['coat 2', ...laid],
      ['look 2', ...dry, 'patchy-sheen'],
      ['sand 3', ...sanded],
      ['coat 3', ...laid],
      ['look 3 last', 'patchy-sheen', 'hairs-and-dust'],
      ['full-use', 'soft-film', 'print-marks'],
    ]);
  });

  it('on bare wood the first dry coat is looked at for raised grain and color from below, and no other', () => {
    const found = looked(byCan({ base: 'bare-wood', baseHours: undefined }));
    expect(found.find(([at]) => at === 'look 1')).toEqual(
      expect.arrayContaining(['raised-grain', 'tannin-bleed']),
    );
    expect(found.find(([at]) => at === 'look 2')).not.toContain('raised-grain');
    expect(found.find(([at]) => at === 'look 2')).not.toContain('tannin-bleed');
  });
});

describe('the cautions of a plan', () => {
  it('are each told once, before the first step that calls for them', () => {
    const one = planned(byCan());
    const told = [...one.cautions, ...one.steps.flatMap(({ before }) => before)].map(({ id }) => id);
    expect(new Set(told).size).toBe(told.length);
    const first = one.steps.find(({ before }) => before.some(({ id }) => id === 'sanding-dust'));
    expect(first?.kind).toBe('sand');
    expect(one.steps.some(({ before }) => before.length)).toBe(true);
  });

  it('hold no adjustment: what only fits times is no caution', () => {
    const all = planned(byCan({ base: 'bare-wood', baseHours: undefined })).steps.flatMap(
      ({ before }) => before,
    );
    expect(all.filter(({ kind }) => kind === 'adjustment')).toEqual([]);
  });
});

describe('dates, by hand', () => {
  const last = 16 * HOUR + 55 * MINUTE;
  const dates = (more: Partial<Job>, label?: Job['label']) => planned(byCan(more, label)).dates;

  it('a child or food waits for the can’s full cure', () => {
    for (const trial of ['child', 'food'] as const)
      expect(dates({ trials: [trial] }).handOver).toBe(30 * DAY + last);
    for (const kind of ['childs-item', 'food-surface'] as const)
      expect(dates({ kind }).handOver).toBe(30 * DAY + last);
  });

  it('water alone waits for it only in hard use', () => {
    expect(dates({ trials: ['water'], wear: 'normal' }).handOver).toBe(3 * DAY + last);
    expect(dates({ trials: ['water'], wear: 'high' }).handOver).toBe(30 * DAY + last);
    expect(dates({ trials: [], wear: 'high' }).handOver).toBe(3 * DAY + last);
  });

  it('where the can prints no cure, thirty days are the least for careful use, and not for other', () => {
    const { cure: _, ...rest } = MINUTES;
    const label = can({ minutes: rest, coats: 3 });
    const careful = dates({ trials: ['child'] }, label);
    expect(careful.fullUse.to).toBeGreaterThanOrEqual(plan.careful.days * DAY + last);
    expect(careful.fullUse.from).toBeGreaterThanOrEqual(plan.careful.days * DAY + last);
    expect(dates({ trials: [] }, label).fullUse.from).toBeLessThan(plan.careful.days * DAY + last);
    // A can that prints ten days knows its film.
    const ten = can({ minutes: { ...MINUTES, cure: span(10 * 1440) }, coats: 3 });
    expect(dates({ trials: ['child'] }, ten).fullUse.to).toBe(10 * DAY + last);
  });

  it('a coat that is long in drying is not handled before it could be coated again', () => {
    const slow = can({ minutes: { ...MINUTES, recoat: span(30 * 60) }, coats: 1 });
    const one = planned(byCan({}, slow));
    expect(one.dates.handle).toBe((one.coats[0]?.to ?? 0) + 30 * HOUR);
  });

  it('an oiled piece is aired for two weeks', () => {
    const one = planned(
      byCan(
        { base: 'bare-wood', baseHours: undefined, product: 'drying-oil', applicator: 'cloth', wear: 'low' },
        can({ coats: 1 }),
      ),
    );
    expect(one.dates.handOver).toBeGreaterThanOrEqual((one.coats.at(-1)?.to ?? 0) + 14 * DAY);
  });
});

describe('a deadline for the next coat without sanding', () => {
  const shut = (hours: number) =>
    can({ minutes: { ...MINUTES, 'sand-if-beyond': span(hours * 60) }, coats: 2, coatsPerDay: 1 });

  it('runs from the first face laid, and sanding must be done once it has passed', () => {
    const one = planned(byCan({}, shut(12)));
    const [first] = one.coats;
    // 35 minutes pass between the first face and the last.
    expect((first?.deadline?.from ?? 0) - (first?.to ?? 0)).toBe(12 * HOUR - 35 * MINUTE);
    const rubs = one.steps.filter(({ kind }) => kind === 'sand');
    expect(rubs.map(({ must }) => must)).toEqual([undefined, 'surely']);
    const early = planned(byCan({}, shut(48))).steps.filter(({ kind }) => kind === 'sand');
    expect(early.map(({ must }) => must)).toEqual([undefined, undefined]);
  });
});

describe('the nights of a wait', () => {
  // From 21:00 to 7:00, by the table.
  it('are told with the coat that they fall on', () => {
    const overNight = can({ minutes: { ...MINUTES, recoat: span(20 * 60) }, coats: 2 });
    const one = planned(byCan({}, overNight));
    expect(one.nights.map(({ coat, from, to }) => `${coat} ${clock(from)} ${clock(to)}`)).toEqual([
      '1 0 21:00 1 7:00',
      '2 1 21:00 2 7:00',
    ]);
    expect(one.nights.map(({ rests }) => rests)).toEqual([false, false]);
    expect(planned(byCan({}, can({ coats: 1 }))).nights).toEqual([]);
  });

  it('are rest where they are colder than the can allows, or its kind where it says nothing', () => {
    const rests = (celsius: number, limits?: NonNullable<Job['label']>['limits']) => {
      const label = can({
        minutes: { ...MINUTES, recoat: span(20 * 60) },
        coats: 1,
        ...(limits && { limits }),
      });
      const night = { celsius, relativeHumidity: 0.5 };
      return planned(byCan({ product: 'oil-based-polyurethane', night }, label)).nights.map(
        (one) => one.rests,
      );
    };
    // Laid from 13 °C on, by the file of its kind.
    expect([rests(12.9), rests(13)]).toEqual([[true], [false]]);
    const humid = { relativeHumidity: { from: 0, to: 0.9 } };
    expect([rests(12.9, humid), rests(13, humid)]).toEqual([[true], [false]]);
    const own = { celsius: { from: 6, to: 30 } };
    expect([rests(5.9, own), rests(6, own)]).toEqual([[true], [false]]);
  });

  it('count as day while she works', () => {
    const early = byCan(
      { hours: { from: 300, to: 1380, days: Array<boolean>(7).fill(true) } },
      can({ minutes: { ...MINUTES, recoat: span(24 * 60) }, coats: 1 }),
    );
    expect(planned(early).nights.map(({ from, to }) => `${clock(from)} ${clock(to)}`)).toEqual([
      '0 23:00 1 5:00',
    ]);
  });
});
