import type { Mechanism } from '../../calc/drying/mechanism.ts';
import type { Knowledge } from '../../knowledge/knowledge.ts';
import type { Choices } from '../../model/choices.ts';
import type { ValueOf } from '../../model/facts.ts';
import { FAMILIES, type Family } from '../../model/family.ts';
import type { Plan } from '../../model/plan.ts';
import { DAY_HOURS, HOUR_MIN } from '../../plain/time.ts';

type Ends = readonly [from: number, to: number];

/** What the tables know of how long is waited: all in hours, in the air that the times of the products hold for. */
export type Waits = {
  /** Of each kind of top coat: its name, and when it is dry to the touch, ready for the next coat, for light use, cured. */
  readonly kinds: Readonly<
    Partial<
      Record<
        Family,
        {
          readonly name: string;
          readonly touch: Ends;
          readonly recoat: Ends;
          /** Later than this it is dulled before the next coat. */
          readonly dull: Ends | undefined;
          readonly use: Ends;
          readonly cure: Ends;
          /** What a liter covers in one coat, m². */
          readonly covers: Ends;
          /** How all its cans harden; nothing where they do so in several ways. */
          readonly mechanism: Mechanism | undefined;
          /** The air in which any of its cans is laid: °C, and humidity, 0 to 1. */
          readonly air: { readonly celsius: Ends; readonly humidity: Ends };
        }
      >
    >
  >;
  /** What each base is called. */
  readonly bases: Choices['base']['values'];
  /** The cans by their kind, each with what it is called. */
  readonly cans: readonly {
    readonly id: string;
    readonly family: string;
    readonly names: readonly string[];
    /** Hours until the next coat. */
    readonly recoat: Ends;
  }[];
  /** How long what lies below dries before these kinds, in a sentence of the plan. */
  readonly below: readonly {
    readonly bases: readonly string[];
    readonly families: readonly string[];
    readonly why: string;
  }[];
  /** The same of a top coat under one of another kind. */
  readonly over: readonly {
    readonly below: readonly string[];
    readonly families: readonly string[];
    readonly why: string;
    readonly instead: string;
  }[];
  /** What is said of a kind over a base that is no top coat. */
  readonly onBase: readonly {
    readonly bases: readonly string[];
    readonly families: readonly string[];
    readonly why: string;
    readonly instead: string;
  }[];
  /** What each tool loses at most, 0 to 1. */
  readonly losses: Readonly<Partial<Record<ValueOf<'applicator'>, number>>>;
  /** How many coats, by wear, and at most. */
  readonly coats: readonly {
    readonly families: readonly string[];
    readonly ofCans: boolean;
    readonly wear: { readonly low: number; readonly normal: number; readonly high: number };
    readonly most: number;
  }[];
  /** What is done to a coat before the next. */
  readonly between: readonly {
    readonly families: readonly string[];
    readonly grit: number | undefined;
    readonly say: string;
  }[];
};

/** The times of the products of each kind, from the quickest of them to the slowest, and the waits of the plan. */
export const waitsOf = (
  known: Knowledge,
  choices: Choices,
  plan: Pick<Plan, 'waits' | 'over' | 'fitness' | 'coats' | 'between' | 'tools'>,
): Waits => ({
  kinds: Object.fromEntries(
    FAMILIES.flatMap((family) => {
      const cans = known.products.filter((one) => one.family === family);
      if (!cans.length) return [];
      const ends = (of: (can: (typeof cans)[number]) => Ends, times: number): Ends => [
        Math.min(...cans.map((can) => of(can)[0])) * times,
        Math.max(...cans.map((can) => of(can)[1])) * times,
      ];
      const beyond = cans.flatMap((can) =>
        can['sand-if-beyond-hours'] ? [can['sand-if-beyond-hours']] : [],
      );
      const times = {
        name: choices.family.values[family],
        touch: ends((can) => can['touch-minutes'], 1 / HOUR_MIN),
        recoat: ends((can) => can['recoat-hours'], 1),
        dull: beyond.length
          ? ([Math.min(...beyond.map(([from]) => from)), Math.max(...beyond.map(([, to]) => to))] as const)
          : undefined,
        use: ends((can) => can['light-use-days'], DAY_HOURS),
        cure: ends((can) => can['cure-days'], DAY_HOURS),
        covers: ends((can) => can['square-meters-per-liter'], 1),
        mechanism: new Set(cans.map((can) => can.mechanism)).size === 1 ? cans[0]?.mechanism : undefined,
        air: {
          celsius: ends((can) => can.limits.celsius, 1),
          humidity: ends((can) => can.limits.humidity, 1),
        },
      };
      return [[family, times] as const];
    }),
  ),
  bases: choices.base.values,
  cans: known.products.map(({ id, family, name, also, 'recoat-hours': recoat }) => ({
    id,
    family,
    names: [name, ...also],
    recoat,
  })),
  below: plan.waits.map(({ bases, families = [...FAMILIES], why }) => ({ bases, families, why })),
  // A row that hangs on more than the kind and the base says nothing of the two alone.
  onBase: plan.fitness.flatMap(({ bases, families, why, instead, ...more }) =>
    bases && families && !('trials' in more && more.trials) && !('hardener' in more && more.hardener)
      ? [{ bases, families, why, instead }]
      : [],
  ),
  losses: Object.fromEntries(plan.tools.map(({ applicator, loss: [, most] }) => [applicator, most])),
  coats: plan.coats.map(({ families, products, wear, most }) => ({
    families,
    ofCans: products !== undefined,
    wear,
    most,
  })),
  between: plan.between.map(({ families, grit, say }) => ({ families, grit, say })),
  // A row without hours says that the one never goes over the other; what is only a care over a coat stands behind.
  over: [
    ...plan.over,
    ...plan.fitness.flatMap(({ below = [], families = [], why, instead }) =>
      below.length ? [{ below, families, why, instead }] : [],
    ),
  ].map(({ below, families, why, instead }) => ({ below, families, why, instead })),
});
