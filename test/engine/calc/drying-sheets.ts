import type { Mechanism } from '#engine/calc/drying/mechanism.ts';
import type { Milestone } from '#engine/calc/drying/milestone.ts';
import first from './drying.table.json' with { type: 'json' };
import { readTable } from './table.ts';

/** One printed time. */
export type Printed = {
  coating: string;
  mechanism: Mechanism;
  stage: string;
  t_c: number;
  rh_pct?: number;
  minutes?: number;
  minutes_range?: [number, number];
};

/**
 * Every one-part sheet with two or more temperatures that we found is here, hit or miss. Left out: two-part coatings,
 * which harden by another reaction; sheets that do not say what kind of coating they are; figures that the same maker
 * prints for a second coating; and times for a second coat wet on wet, which come before the first is dry to touch.
 */
export const printedRows = (
  sheets: ReturnType<typeof readTable>,
): Record<'drying' | 'recoat', readonly Printed[]> => ({
  drying: [
    ...sheets.rows<Printed>('drying'),
    ...readTable(first)
      .rows<Printed>('dry_times')
      .flatMap((row): Printed[] => {
        if (row.coating.startsWith('fast semigloss alkyd')) return [{ ...row, mechanism: 'oxidation' }];
        if (row.coating.startsWith('water-borne acrylate')) return [{ ...row, mechanism: 'coalescence' }];
        return [];
      }),
  ],
  recoat: sheets.rows<Printed>('recoat'),
});

/** Which of our moments a sheet's word means. A skin that dust no longer sticks to counts as dry to touch. */
export const MILESTONE_OF: Readonly<Record<string, Milestone>> = {
  'dust dry': 'touch',
  'touch dry': 'touch',
  'hard dry': 'recoat',
  'dry to sand': 'recoat',
  recoat: 'recoat',
};

export const spanOf = ({
  minutes = Number.NaN,
  minutes_range: [from, to] = [minutes, minutes],
}: Printed) => ({
  from,
  to,
});

export const middleOf = (row: Printed): number => (spanOf(row).from + spanOf(row).to) / 2;

export const climateOf = ({ t_c, rh_pct = 50 }: Printed) => ({
  celsius: t_c,
  relativeHumidity: rh_pct / 100,
});

const off = ({ t_c }: Printed) => Math.abs(t_c - 23);

/** Each coating and stage: its row nearest 23 °C with every other one. */
export const stepsOf = (rows: readonly Printed[]): { anchor: Printed; row: Printed }[] =>
  [...Map.groupBy(rows, ({ coating, stage }) => `${coating}, ${stage}`).values()].flatMap((group) => {
    const [anchor, ...others] = group.toSorted((one, two) => off(one) - off(two));
    return anchor ? others.map((row) => ({ anchor, row })) : [];
  });
