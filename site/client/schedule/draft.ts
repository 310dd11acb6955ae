import { outsideLabel } from '#engine/calc/drying/label.ts';
import type { Milestone } from '#engine/calc/drying/milestone.ts';
import { sayProblem } from '#engine/calc/say-problem.ts';
import type { CanLabel, Job, Parts } from '#engine/schedule.ts';
import { metric } from '../shared/schedule-units.ts';

/** What stands in the form, by name, as typed; of ticks all that are set, joined by commas. */
export type Draft = Readonly<Record<string, string>>;
export type Fault = { readonly field: string; readonly says: string };

type Limit = readonly [name: string, least: number, most: number, what: string];
/** Every number of the form with what it may be, in metric; the second list may stay empty. */
const NEEDED: readonly Limit[] = [
  ['air', -30, 50, 'the air temperature'],
  ['humidity', 1, 100, 'the humidity, 1 to 100 %. No meter: 50 is a fair guess'],
  ['night', -30, 50, 'the coldest temperature of the night'],
];
const OPTIONAL: readonly Limit[] = [
  ['night-humidity', 1, 100, 'the humidity by night, 1 to 100 %'],
  ['base-age', 0, 100_000, 'the hours since the base was laid'],
  ['can-coverage', 1, 200, 'the area that a can covers'],
  ['can-solids', 1, 100, 'the solids, 1 to 100 %'],
  ['can-coats', 1, 12, 'the number of coats, 1 to 12'],
  ['can-per-day', 1, 12, 'the coats a day, 1 to 12'],
  ['can-touch', 0.1, 20_160, 'the minutes on the can'],
  ['can-recoat', 0.1, 720, 'the hours on the can'],
  ['can-light', 0.04, 90, 'the days on the can'],
  ['can-cure', 0.04, 180, 'the days on the can'],
  ['can-cold', -10, 40, 'the least temperature on the can'],
  ['can-hot', 0, 60, 'the greatest temperature on the can'],
  ['can-damp', 10, 100, 'the greatest humidity on the can'],
];
/** A plan that begins now begins at the next five minutes, so that its link tells the same. */
const FIVE_MINUTES = 300_000;
const WHOLE = ['can-coats', 'can-per-day'];
const PARTS = ['top', 'side', 'front', 'leg'] as const;
const LABEL = { touch: 1, recoat: 60, light: 1440, cure: 1440 } as const;
const MILESTONE: Readonly<Record<keyof typeof LABEL, Milestone>> = {
  touch: 'touch',
  recoat: 'recoat',
  light: 'light-use',
  cure: 'cure',
};

const numberIn = (draft: Draft, name: string): number | undefined => {
  const text = draft[name]?.trim().replace(',', '.');
  return text ? Number(text) : undefined;
};

const minutesIn = (text: string | undefined): number => {
  const [hour, minute] = (text ?? '').split(':').map(Number);
  return (hour ?? Number.NaN) * 60 + (minute ?? Number.NaN);
};

/** The job that the form tells of, and every fault in it beside its field. `now` is the start where none is given. */
export const readJob = (
  draft: Draft,
  now: number,
): { readonly job: Job; readonly faults: readonly Fault[] } => {
  const us = draft['units'] === 'us';
  const faults: Fault[] = [];
  const fault = (field: string, says: string) => faults.push({ field, says });
  const value = (name: string): number | undefined => {
    const typed = numberIn(draft, name);
    return typed === undefined ? undefined : metric(name, typed, us);
  };
  for (const [name, least, most, what] of [...NEEDED, ...OPTIONAL]) {
    const is = value(name);
    const may = is === undefined && !NEEDED.some(([needed]) => needed === name);
    if (may) continue;
    if (is === undefined || Number.isNaN(is)) fault(name, `Give ${what}, as a number.`);
    else if (is < least - 0.01 || is > most + 0.01 || (WHOLE.includes(name) && !Number.isInteger(is)))
      fault(name, `That can not be: check ${what}, and its unit.`);
  }

  const parts = Object.fromEntries(
    PARTS.map((part) => {
      const count = value(`${part}-count`) ?? 0;
      const [long, wide] = [value(`${part}-long`) ?? 0, value(`${part}-wide`) ?? 0].map((side) => side * 10);
      if (!Number.isInteger(count) || count < 0 || count > 60)
        fault(part, 'Give how many there are, 0 to 60.');
      else if (count > 0 && !(long && wide && long > 0 && wide > 0 && long <= 5000 && wide <= 5000))
        fault(part, `Give length and width, up to ${us ? '196 in' : '500 cm'}; or 0 where there is none.`);
      return [part, { count, long: long ?? 0, wide: wide ?? 0 }];
    }),
  ) as Parts;
  if (!PARTS.some((part) => parts[part].count > 0))
    fault('top', 'The piece has no face yet: give at least one.');

  const minutes: Partial<Record<Milestone, { from: number; to: number }>> = {};
  for (const [name, unit] of Object.entries(LABEL) as [keyof typeof LABEL, number][]) {
    const time = value(`can-${name}`);
    if (time !== undefined) minutes[MILESTONE[name]] = { from: time * unit, to: time * unit };
  }
  const cold = value('can-cold');
  const hot = value('can-hot');
  const damp = value('can-damp');
  if (cold !== undefined && hot !== undefined && cold >= hot)
    fault('can-hot', 'This must be above the least temperature. Check both.');
  const coverage = value('can-coverage');
  const solids = value('can-solids');
  const label: CanLabel = {
    minutes,
    ...((cold !== undefined || hot !== undefined || damp !== undefined) && {
      limits: {
        ...((cold !== undefined || hot !== undefined) && { celsius: { from: cold ?? 10, to: hot ?? 35 } }),
        ...(damp !== undefined && { relativeHumidity: { from: 0.1, to: damp / 100 } }),
      },
    }),
    ...(coverage !== undefined && { squareMetersPerLiter: coverage }),
    ...(solids !== undefined && { volumeSolids: solids / 100 }),
    ...(value('can-coats') !== undefined && { coats: value('can-coats') as number }),
    ...(value('can-per-day') !== undefined && { coatsPerDay: value('can-per-day') as number }),
  };
  const disorder = outsideLabel(label);
  if (disorder) fault('can-recoat', sayProblem(disorder.problem));

  const start = draft['start']
    ? new Date(draft['start']).getTime()
    : Math.ceil(now / FIVE_MINUTES) * FIVE_MINUTES;
  if (!Number.isFinite(start)) fault('start', 'Give the day and the time, or leave it empty for now.');
  const promised = draft['promised'] ? new Date(`${draft['promised']}T23:59`).getTime() : undefined;
  if (promised !== undefined && !(promised >= start))
    fault('promised', 'Give a day that is not before the start, or leave it empty.');
  const from = minutesIn(draft['from']);
  const to = minutesIn(draft['to']);
  if (!(to > from)) fault('to', 'The hours must end after they begin, on the same day.');
  const days = (draft['days'] ?? '').split(',');
  if (!draft['days']) fault('days', 'Tick at least one day.');
  const nightHumidity = value('night-humidity');
  const preset = draft['preset'] ?? '';
  const job: Job = {
    piece: draft['piece']?.trim().slice(0, 40) || 'My piece',
    kind: (preset === 'crib' || preset === 'valuable'
      ? preset
      : (draft['kind'] ?? 'furniture')) as Job['kind'],
    parts,
    base: draft['base'] as Job['base'],
    baseHours: draft['base'] === 'bare-wood' ? undefined : value('base-age'),
    tone: draft['tone'] as Job['tone'],
    age: draft['age'] as Job['age'],
    wear: draft['wear'] as Job['wear'],
    trials: (draft['trials'] ? draft['trials'].split(',') : []) as Job['trials'],
    product: draft['product'] ?? '',
    ...(Object.keys(label).length > 1 || Object.keys(minutes).length ? { label } : {}),
    sheen: draft['sheen'] as Job['sheen'],
    applicator: draft['tool'] as Job['applicator'],
    day: { celsius: value('air') ?? Number.NaN, relativeHumidity: (value('humidity') ?? Number.NaN) / 100 },
    night: {
      celsius: value('night') ?? Number.NaN,
      ...(nightHumidity !== undefined && { relativeHumidity: nightHumidity / 100 }),
    },
    inSun: draft['sun'] === 'yes',
    promised,
    start,
    hours: { from, to, days: [0, 1, 2, 3, 4, 5, 6].map((day) => days.includes(String(day))) },
  };
  return { job, faults };
};

/** The draft as the part of an address behind #: only what she gave, nothing reckoned. */
export const linkOf = (draft: Draft): string =>
  new URLSearchParams(Object.entries(draft).filter(([, value]) => value !== '')).toString();

/** A draft from a link; nothing where it is no plan. */
export const readLink = (fragment: string): Draft | undefined => {
  const draft = Object.fromEntries(new URLSearchParams(fragment.replace(/^#/, '')));
  return draft['product'] && draft['base'] ? draft : undefined;
};
