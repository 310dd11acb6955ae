import type { No } from '../fitness/no.ts';
import type { FitnessRow } from '../fitness/rows.ts';
import type { Stretch } from '../plain/time.ts';
import type { SaidRule } from '../rules/rules.ts';
import type { Build } from './build.ts';
import type { Dates } from './dates.ts';
import type { Night } from './dry.ts';
import type { Laying } from './layings.ts';
import type { FaceAreas } from './piece.ts';
import type { PlanStep } from './steps.ts';
import type { WetEdge } from './wet-edge.ts';

/** What is known whether or not there is a plan. */
export type Reckoned = {
  /** All that is coated once in a coat: of what is turned, both faces. */
  readonly squareMeters: number;
  readonly areas: FaceAreas;
  /** What to mind about this product for this use; nothing that forbids it. */
  readonly care: readonly FitnessRow[];
  readonly weatherCare: readonly string[];
  readonly build?: Build | undefined;
  readonly liters?: number | undefined;
  readonly wetEdge?: WetEdge | undefined;
};

export type CoatTimes = Stretch & {
  readonly number: number;
  readonly face?: Laying['face'];
  /** Dry to the touch, then ready for the next coat. */
  readonly touch: Stretch;
  readonly recoat: Stretch;
  /** From here on, perhaps and then surely, the next coat holds only on a sanded film. */
  readonly deadline?: Stretch | undefined;
  /** From when till when no coat goes on over it, counted from the start of laying. */
  readonly closed?: Stretch | undefined;
};

export type Planned = Reckoned & {
  readonly kind: 'plan';
  readonly steps: readonly PlanStep[];
  readonly coats: readonly CoatTimes[];
  readonly nights: readonly Night[];
  readonly dates: Dates;
  /** Days by which the hand-over misses the promised day; 0 where none was promised, or it is kept. */
  readonly lateDays: number;
  /** Rules that hold for the whole job. */
  readonly cautions: readonly SaidRule[];
};
export type Refusal = Reckoned & {
  readonly kind: 'no';
  readonly why: readonly [No, ...No[]];
  readonly cautions: readonly SaidRule[];
};
export type Outcome = Planned | Refusal;
