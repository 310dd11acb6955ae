import { named } from '../fitness/rows.ts';
import type { Care } from '../model/care.ts';
import type { JobCard } from '../model/job-card.ts';
import type { Grade } from '../model/source.ts';
import { inARow } from '../plain/filled.ts';
import type { CareDates } from './care-dates.ts';
import { coatsInOrder } from './coat.ts';
import { type Products, productOf } from './layers.ts';
import { trialsOf } from './use.ts';

/** One sentence to the buyer with its ground. */
export type CareLine = { readonly say: string; readonly grade: Grade; readonly source?: string };

/** The card that goes with the piece; or why there is none. */
export type CareCard =
  | { readonly kind: 'no'; readonly why: readonly [CareLine, ...CareLine[]] }
  | {
      readonly kind: 'care';
      readonly name: string;
      readonly madeOf: readonly CareLine[];
      /** Nothing where no date can be promised; `noDates` then says why and what to do. */
      readonly dates:
        | {
            readonly lightUse: number;
            readonly fullUse: number;
            /** Nothing of a piece that was handed over before it. */
            readonly handOver: number | undefined;
          }
        | undefined;
      readonly noDates: string | undefined;
      /** `until` in epoch milliseconds; nothing where no date can be promised. */
      readonly notYet: readonly (CareLine & {
        readonly until: number | undefined;
        readonly date: DateName;
      })[];
      readonly cleaning: readonly CareLine[];
      readonly upkeep: readonly CareLine[];
      readonly cautions: readonly CareLine[];
      readonly promise: readonly CareLine[];
    };

type Row = Care['cleaning'][number];
type DateName = Care['not-yet'][number]['until'];

const line = ({ say, grade, source }: Row): CareLine => ({ say, grade, ...(source && { source }) });

/**
 * What the buyer of this piece is told. Of a range of dates the late end is the one that is promised. `both`: parts that
 * come off are coated on both faces, of which the card notes one.
 */
export const careOf = (
  card: JobCard,
  products: Products,
  care: Care,
  dates: CareDates,
  both = false,
): CareCard => {
  const coats = coatsInOrder(card);
  const family = productOf(products, coats.at(-1)?.product)?.family;
  const below = coats.map(({ product }) => productOf(products, product)?.family);
  const trials = trialsOf(card);
  const fits = (row: Row) =>
    named(row.families, family) &&
    named(row.bases, card.base) &&
    named(row.kinds, card.kind) &&
    named(row.ages, card.age) &&
    (!row.faces || both) &&
    (!row.trials || row.trials.some((trial) => trials.includes(trial)));
  const told = (rows: readonly Row[]) => rows.filter(fits).map(line);

  const [no, ...more] = told(care.no);
  if (no) return { kind: 'no', why: [no, ...more] };
  const madeOf = care['made-of'].filter(
    (row) =>
      fits({ ...row, families: undefined }) &&
      (!row.families || row.families.some((one) => below.includes(one))),
  );
  const late =
    dates.kind === 'dates'
      ? { lightUse: dates.lightUse.to, fullUse: dates.fullUse.to, handOver: dates.handOver }
      : undefined;
  // Whoever has it already needs no day to fetch it.
  const handedOver = (card.handedOverAt ?? Number.POSITIVE_INFINITY) < (late?.handOver ?? 0);
  const at: Readonly<Record<DateName, number | undefined>> = {
    'hand-over': late?.handOver,
    'light-use': late?.lightUse,
    'full-use': late?.fullUse,
  };
  return {
    kind: 'care',
    name: card.name,
    madeOf: madeOf.map(line),
    dates: late && { ...late, handOver: handedOver ? undefined : late.handOver },
    noDates: dates.kind === 'none' ? inARow(care['no-date'][dates.why].say, dates.problem) : undefined,
    notYet: care['not-yet']
      .filter((row) => fits(row) && !(handedOver && row.until === 'hand-over'))
      .map((row) => ({ ...line(row), date: row.until, until: at[row.until] })),
    cleaning: told(care.cleaning),
    upkeep: told(care.upkeep),
    cautions: told(care.cautions),
    promise: told(care.promise),
  };
};
