import type { Label } from '#engine/calc/drying/label.ts';
import type { Milestone } from '#engine/calc/drying/milestone.ts';
import { toCelsius, toMilliliters, toSquareMeters } from '#engine/calc/units.ts';
import {
  type ClockProduct,
  type CoatFault,
  type CoatField,
  checkCoat,
  type LaidCoat,
  type TimeStyle,
} from '#engine/clock.ts';

/** What stands in the form, by name, as typed. */
export type Draft = Readonly<Record<string, string>>;

/** Minutes in the unit that cans give each time in. */
export const LABEL_MINUTES = {
  touch: 1,
  recoat: 60,
  'sand-if-beyond': 60,
  'light-use': 1440,
  cure: 1440,
} as const satisfies Partial<Record<Milestone, number>>;

const MINUTE = 60_000;
const US = 'us';

/** A number as written by hand, with a comma or a point; nothing where the field is empty, NaN where it is none. */
const numberIn = (draft: Draft, name: string): number | undefined => {
  const text = draft[name]?.trim().replace(',', '.');
  return text ? Number(text) : undefined;
};

const labelOf = (draft: Draft): Label | undefined => {
  const minutes: Partial<Record<Milestone, { from: number; to: number }>> = {};
  for (const [milestone, unit] of Object.entries(LABEL_MINUTES) as [Milestone, number][]) {
    const from = numberIn(draft, `label-${milestone}`);
    const to = numberIn(draft, `label-${milestone}-to`) ?? from;
    if (from !== undefined && to !== undefined) minutes[milestone] = { from: from * unit, to: to * unit };
  }
  return Object.keys(minutes).length ? { minutes } : undefined;
};

/** To the nearest minute: nobody lays a coat to the second, and the times told are whole minutes. */
const wholeMinute = (at: number): number => Math.round(at / MINUTE) * MINUTE;

const laidAtOf = (draft: Draft, now: number): number => {
  if (draft['when'] === 'ago') return wholeMinute(now - (numberIn(draft, 'ago') ?? Number.NaN) * MINUTE);
  return draft['when'] === 'at' ? new Date(draft['at'] || Number.NaN).getTime() : wholeMinute(now);
};

const missing = (field: CoatField, says: string): CoatFault => ({ field, says, stops: true });

/** The coat that the form tells of, and the fields that hold no number where one is needed. */
export const coatIn = (
  draft: Draft,
  now: number,
): { readonly coat: LaidCoat; readonly absent: readonly CoatFault[] } => {
  const us = draft['units'] === US;
  const degrees = (name: string) => {
    const value = numberIn(draft, name);
    return value === undefined || !us ? value : toCelsius(value);
  };
  const milliliters = numberIn(draft, 'amount');
  const area = numberIn(draft, 'area');
  const surface = degrees('surface');
  const coat: LaidCoat = {
    id: String(now),
    piece: draft['piece']?.trim() || 'My piece',
    product: draft['product'] ?? '',
    label: labelOf(draft),
    laidAt: laidAtOf(draft, now),
    celsius: degrees('air') ?? Number.NaN,
    relativeHumidity: (numberIn(draft, 'humidity') ?? Number.NaN) / 100,
    surfaceCelsius: surface,
    coatNumber: numberIn(draft, 'coat') ?? 1,
    applicator: (draft['tool'] || undefined) as LaidCoat['applicator'],
    amount:
      milliliters !== undefined && area !== undefined
        ? {
            milliliters: us ? toMilliliters(milliliters) : milliliters,
            squareMeters: us ? toSquareMeters(area) : area,
          }
        : undefined,
    baseTone: (draft['tone'] || undefined) as LaidCoat['baseTone'],
    sheen: (draft['sheen'] || undefined) as LaidCoat['sheen'],
  };
  const absent = [
    ...(Number.isNaN(coat.celsius) ? [missing('celsius', 'Give the air temperature as a number.')] : []),
    ...(Number.isNaN(coat.relativeHumidity)
      ? [
          missing(
            'relativeHumidity',
            'Give the humidity as a number, 0 to 100 %. No meter: 50 is a fair guess.',
          ),
        ]
      : []),
    ...(surface !== undefined && Number.isNaN(surface)
      ? [missing('surfaceCelsius', 'Give the surface temperature as a number, or leave it empty.')]
      : []),
    ...((milliliters === undefined) !== (area === undefined)
      ? [missing('amount', 'Give both the amount and the area, or neither.')]
      : []),
    ...Object.entries(coat.label?.minutes ?? {}).flatMap(([milestone, span]) =>
      Number.isNaN(span.from + span.to)
        ? [
            missing(
              `label-${milestone as Milestone}`,
              'Give the time on the can as a number, or leave it empty.',
            ),
          ]
        : [],
    ),
  ];
  return { coat, absent };
};

/** What is absent, and what can not be right, each by its field. */
export const faultsOf = (
  absent: readonly CoatFault[],
  coat: LaidCoat,
  product: ClockProduct,
  now: number,
  style: TimeStyle,
): readonly CoatFault[] => {
  const named = new Set(absent.map(({ field }) => field));
  return [...absent, ...checkCoat(product, coat, now, style).filter(({ field }) => !named.has(field))];
};

/** The name of the form field that a fault stands beside. */
export const FIELD_NAMES: Readonly<Record<string, string>> = {
  celsius: 'air',
  relativeHumidity: 'humidity',
  surfaceCelsius: 'surface',
  laidAt: 'at',
  coatNumber: 'coat',
  amount: 'amount',
  applicator: 'tool',
};
