import type { Label } from '../calc/drying/label.ts';
import type { ClockProduct } from '../clock/coat.ts';
import type { JudgeTables } from '../fitness/judge.ts';
import type { ValueOf } from '../model/facts.ts';
import type { LOOSE_PARTS, PARTS, Plan, TRIALS, TURNINGS, WEARS } from '../model/plan.ts';
import type { Product } from '../model/product.ts';

import type { Span } from '../plain/span.ts';

export type Part = (typeof PARTS)[number];
export type Parts = Plan['presets'][number]['parts'];
export type Wear = (typeof WEARS)[number];
export type Trial = (typeof TRIALS)[number];

export type LoosePart = (typeof LOOSE_PARTS)[number];
export type Turning = (typeof TURNINGS)[number];

/** The parts that are coated on both faces, and when they are turned. */
export type BothFaces = { readonly parts: readonly LoosePart[]; readonly turned: Turning };

/** All tables that planning reads; the ready-made pieces are for forms alone. */
export type PlanTables = Omit<Plan, 'presets'> & JudgeTables;

/** A product as planning needs it: the clock's figures with its id, and how far a liter goes. */
export type PlanProduct = ClockProduct &
  Pick<Product, 'ambering' | 'square-meters-per-liter'> & { readonly id: string };

/** What the can says beyond times and weather. It wins over every table. */
export type CanLabel = Label & {
  /** m² per liter in one coat. */
  readonly squareMetersPerLiter?: number;
  /** 0–1 of the volume. */
  readonly volumeSolids?: number;
  readonly coats?: number;
  readonly coatsPerDay?: number;
};

/** The whole job as told. Climates in °C and 0–1. */
export type Job = {
  readonly piece: string;
  readonly kind: ValueOf<'piece'>;
  readonly parts: Parts;
  /** Nothing where every part is coated on one face. */
  readonly both?: BothFaces | undefined;
  readonly base: ValueOf<'base'>;
  /** Hours between laying the base and `start`; nothing where it is long dry or bare. */
  readonly baseHours?: number | undefined;
  readonly tone: ValueOf<'base-tone'>;
  /** How old the oldest paint on the piece may be; `none` where there is none but her own. */
  readonly age: ValueOf<'age'> | 'none';
  readonly wear: Wear;
  readonly trials: readonly Trial[];
  readonly product: string;
  readonly label?: CanLabel | undefined;
  readonly sheen: ValueOf<'sheen'>;
  readonly applicator: ValueOf<'applicator'>;
  /** What is mixed into the top coat; nothing where nobody has said. */
  readonly hardener?: ValueOf<'hardener'> | undefined;
  readonly day: { readonly celsius: number; readonly relativeHumidity: number };
  /** Where no humidity was measured, the night holds the water of the day. */
  readonly night: { readonly celsius: number; readonly relativeHumidity?: number | undefined };
  readonly inSun: boolean;
  /** The end of the day that was promised to the buyer, epoch milliseconds. */
  readonly promised?: number | undefined;
  /** Epoch milliseconds; nothing is planned before. */
  readonly start: number;
  /** Minutes of the day, and weekdays from Sunday on. */
  readonly hours: Span & { readonly days: readonly boolean[] };
};
