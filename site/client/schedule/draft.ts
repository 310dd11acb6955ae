import { outsideLabel } from '#engine/calc/drying/label.ts';
import { MILESTONE_WORDS, type Printed } from '#engine/calc/drying/milestone.ts';
import { sayProblem } from '#engine/calc/say-problem.ts';
import { MOST_LETTERS } from '#engine/model/card-limits.ts';
import { MINUTE_MS } from '#engine/plain/time.ts';
import type { CanLabel, Job, Part } from '#engine/schedule.ts';
import { BOTH_ENDS, isOneEnd } from '../shared/form/closed.ts';
import {
  type Draft,
  type FieldFault,
  LONGEST_TEXT,
  readForm,
  unitsIn,
  type Values,
} from '../shared/form/form.ts';
import { readNumber } from '../shared/form/number.ts';
import type { Units } from '../shared/form/units.ts';
import { PLAN_FIELDS } from './fields.ts';

type PlanValues = Partial<Values<typeof PLAN_FIELDS>>;

/** A plan that begins now begins at the next five minutes, so that its link tells the same. */
const NEXT = 5 * MINUTE_MS;
export const rounded = (at: number): number => Math.ceil(at / NEXT) * NEXT;

const PARTS = ['top', 'side', 'front', 'leg'] as const satisfies readonly Part[];
const ON_CAN = [
  ['touch', 'can-touch'],
  ['handle', 'can-handle'],
  ['recoat', 'can-recoat'],
  ['no-coat', 'can-no-coat'],
  ['light-use', 'can-light'],
  ['cure', 'can-cure'],
] as const;
/** Where the can names only one end of a range of temperatures, the other is what most cans say. */
const USUAL_LIMITS = { cold: 10, hot: 35, dry: 0.1 };

/** Where the can gives two ends of a time, the other. */
const toOf = (told: PlanValues, field: (typeof ON_CAN)[number][1]): number | undefined =>
  field === 'can-no-coat' ? told['can-no-coat-to'] : undefined;

const labelOf = (told: PlanValues): CanLabel => {
  const minutes: Partial<Record<Printed, { from: number; to: number }>> = {};
  for (const [milestone, field] of ON_CAN) {
    const time = told[field];
    if (time !== undefined) minutes[milestone] = { from: time, to: toOf(told, field) ?? time };
  }
  const { 'can-cold': cold, 'can-hot': hot, 'can-damp': damp } = told;
  const { 'can-coverage': coverage, 'can-solids': solids, 'can-coats': coats, 'can-per-day': perDay } = told;
  const limits = {
    ...((cold !== undefined || hot !== undefined) && {
      celsius: { from: cold ?? USUAL_LIMITS.cold, to: hot ?? USUAL_LIMITS.hot },
    }),
    ...(damp !== undefined && { relativeHumidity: { from: USUAL_LIMITS.dry, to: damp } }),
  };
  return {
    minutes,
    ...(Object.keys(limits).length && { limits }),
    ...(coverage !== undefined && { squareMetersPerLiter: coverage }),
    ...(solids !== undefined && { volumeSolids: solids }),
    ...(coats !== undefined && { coats }),
    ...(perDay !== undefined && { coatsPerDay: perDay }),
  };
};

/** How many faces of a part there are, and their sides in millimeters. */
const facesOf = (told: PlanValues, part: Part) => ({
  count: told[`${part}-count`] ?? 0,
  long: (told[`${part}-long`] ?? 0) * 10,
  wide: (told[`${part}-wide`] ?? 0) * 10,
});

/** The draft without the sides of what there is none of: in those there is nothing to mend. */
const asked = (draft: Draft): Draft => ({
  ...draft,
  ...Object.fromEntries(
    PARTS.filter((part) => !readNumber(draft[`${part}-count`] ?? '')).flatMap((part) => [
      [`${part}-long`, ''],
      [`${part}-wide`, ''],
    ]),
  ),
});

/** The fault of one side stands beside its part. */
const besidePart = ({ field, says }: FieldFault): FieldFault => ({
  field: PARTS.find((part) => field.startsWith(`${part}-`)) ?? field,
  says,
});

/** What can not be right together. */
const contradictions = (
  told: PlanValues,
  label: CanLabel,
  start: number,
  units: Units,
): readonly FieldFault[] => {
  const faults: FieldFault[] = [];
  const fault = (field: string, says: string) => faults.push({ field, says });
  const unsized = PARTS.filter((part) => {
    const { count, long, wide } = facesOf(told, part);
    return count > 0 && !(long > 0 && wide > 0);
  });
  for (const part of unsized)
    fault(
      part,
      `Give length and width, up to ${units === 'us' ? '196 in' : '500 cm'}; or 0 where there is none.`,
    );
  if (!PARTS.some((part) => facesOf(told, part).count > 0))
    fault('top', 'The piece has no face yet: give at least one.');
  const { 'can-cold': cold, 'can-hot': hot, promised, from = 0, to = 0, days } = told;
  if (cold !== undefined && hot !== undefined && cold >= hot)
    fault('can-hot', 'This must be above the least temperature. Check both.');
  const oneEnd = isOneEnd(told['can-no-coat'], told['can-no-coat-to']);
  if (oneEnd) fault('can-no-coat', BOTH_ENDS);
  const disorder = !oneEnd && outsideLabel(label);
  if (disorder) {
    const { quantity } = disorder.problem;
    const field = ON_CAN.find(([moment]) => MILESTONE_WORDS[moment] === quantity)?.[1];
    fault(field ?? 'can-recoat', sayProblem(disorder.problem));
  }
  if (promised !== undefined && promised < start)
    fault('promised', 'Give a day that is not before the start, or leave it empty.');
  if (to <= from) fault('to', 'The hours must end after they begin, on the same day.');
  if (!days?.length) fault('days', 'Tick at least one day.');
  return faults;
};

/** What is turned, of what there is. */
const bothOf = ({ turned, ...told }: Values<typeof PLAN_FIELDS>): Job['both'] => {
  const parts = told.both.filter((part) => facesOf(told, part).count > 0);
  return parts.length ? { parts, turned } : undefined;
};

const jobOf = (told: Values<typeof PLAN_FIELDS>, label: CanLabel, start: number): Job => {
  const { preset, days } = told;
  const both = bothOf(told);
  return {
    piece: told.piece,
    kind: preset === 'crib' || preset === 'valuable' ? preset : told.kind,
    parts: {
      top: facesOf(told, 'top'),
      side: facesOf(told, 'side'),
      front: facesOf(told, 'front'),
      leg: facesOf(told, 'leg'),
    },
    ...(both && { both }),
    base: told.base,
    baseHours: told.base === 'bare-wood' ? undefined : told['base-age'],
    tone: told.tone,
    age: told.age,
    wear: told.wear,
    trials: told.trials,
    product: told.product,
    ...((Object.keys(label).length > 1 || Object.keys(label.minutes).length > 0) && { label }),
    sheen: told.sheen,
    applicator: told.tool,
    ...(told.hardener && { hardener: told.hardener }),
    day: { celsius: told.air, relativeHumidity: told.humidity },
    night: {
      celsius: told.night,
      ...(told['night-humidity'] !== undefined && { relativeHumidity: told['night-humidity'] }),
    },
    inSun: told.sun === 'yes',
    promised: told.promised,
    start,
    hours: {
      from: told.from,
      to: told.to,
      days: (['0', '1', '2', '3', '4', '5', '6'] as const).map((day) => days.includes(day)),
    },
  };
};

export type PlanRead =
  | { readonly job: Job; readonly faults: readonly [] }
  /** Every fault, beside its field. */
  | { readonly job: undefined; readonly faults: readonly FieldFault[] };

/** The job that the form tells of. `now` is the start where none is given. */
export const readJob = (draft: Draft, now: number): PlanRead => {
  const units = unitsIn(draft);
  const read = readForm(PLAN_FIELDS, asked(draft), units);
  const told: PlanValues = read.values;
  const label = labelOf(told);
  const start = told.start ?? rounded(now);
  const unread = read.faults.map(besidePart);
  const named = new Set(unread.map(({ field }) => field));
  const faults = [
    ...unread,
    ...contradictions(told, label, start, units).filter(({ field }) => !named.has(field)),
  ];
  return read.ok && !faults.length
    ? { job: jobOf(read.values, label, start), faults: [] }
    : { job: undefined, faults };
};

/** The draft as the part of an address behind #: only what she gave, nothing reckoned. */
export const linkOf = (draft: Draft): string =>
  new URLSearchParams(Object.entries(draft).filter(([, value]) => value !== '')).toString();

/** A draft from a link, with whether the name of the piece had to be cut; nothing where it is no plan. */
export const readLink = (fragment: string): { readonly draft: Draft; readonly cut: boolean } | undefined => {
  const told = Object.fromEntries(new URLSearchParams(fragment.replace(/^#/, '')));
  if (!told['product'] || !told['base']) return undefined;
  const name = told['piece']?.trim() ?? '';
  const cut = name.length > MOST_LETTERS.name;
  const draft = {
    ...Object.fromEntries(Object.entries(told).map(([field, text]) => [field, text.slice(0, LONGEST_TEXT)])),
    ...(cut && { piece: name.slice(0, MOST_LETTERS.name).trim() }),
  };
  return { draft, cut };
};

/** What a link tells that names no whole plan, by the names of the form; nothing where it tells of none. */
export const toldInLink = (fragment: string): Draft | undefined => {
  const told = [...new URLSearchParams(fragment.replace(/^#/, ''))].filter(
    ([name]) => name === 'units' || Object.hasOwn(PLAN_FIELDS, name),
  );
  return told.length
    ? Object.fromEntries(told.map(([name, text]) => [name, text.slice(0, LONGEST_TEXT)]))
    : undefined;
};

/** Choices that a link names and the form does not offer: what stands there instead was not asked for. */
const MUST_BE_OFFERED = 'both turned base product tool tone wear age sheen hardener'.split(' ');
/** Ticks in any order say the same. */
const inOrder = (text: string): string => text.split(',').toSorted().join();
export const notOffered = (linked: Draft, shown: Draft): readonly FieldFault[] =>
  MUST_BE_OFFERED.filter((field) => {
    const [asked, there] = [linked[field], shown[field]];
    // How it is turned stands in no form where nothing is.
    if (!asked || (field === 'turned' && there === undefined)) return false;
    return inOrder(asked) !== inOrder(there ?? '');
  }).map((field) => ({
    field,
    says: 'What the link names here is not known. Choose one of these.',
  }));
