import type { Label } from '../calc/drying/label.ts';
import type { ClockProduct, OpenFlaw } from '../clock/coat.ts';
import type { Bears } from '../clock/next-coat.ts';
import type { Film } from '../clock/thick.ts';
import type { ValueOf } from '../model/facts.ts';
import type { Family } from '../model/family.ts';
import type { TRIALS, WEARS } from '../model/plan.ts';

/** A product with its id, as a coat of it is judged. */
export type LayingProduct = ClockProduct & { readonly id: string };

/**
 * What is known where a coat is about to be laid, whoever asks: plan, clock, card or walk. What is left out is not known,
 * and nothing is said of it. Climates in °C and 0–1.
 */
export type Laying = {
  readonly kind?: ValueOf<'piece'> | undefined;
  /** What the buyer does to it. */
  readonly trials?: readonly (typeof TRIALS)[number][] | undefined;
  readonly wear?: (typeof WEARS)[number] | undefined;
  /** What lies below all clear coats. */
  readonly base?: ValueOf<'base'> | undefined;
  /** A clear coat of her own lies there already: the base was made ready for it and is covered. */
  readonly onOwnCoat?: boolean | undefined;
  /** That coat: its finish, its age in hours, and when it bears another, where that can be told. */
  readonly ownBelow?:
    | { readonly family: Family; readonly hours: number; readonly bears: Bears | undefined }
    | undefined;
  /** The clear film that it comes to lie on, where anything of that is known. */
  readonly film?: Film | undefined;
  /** A flaw in that coat that is not settled. */
  readonly openFlaw?: OpenFlaw | undefined;
  /** Hours since the base was laid; nothing where it is long dry or bare. */
  readonly baseHours?: number | undefined;
  readonly tone?: ValueOf<'base-tone'> | undefined;
  /** How old the oldest paint may be; `none` where there is none but her own. */
  readonly age?: ValueOf<'age'> | 'none' | undefined;
  readonly sheen?: ValueOf<'sheen'> | undefined;
  /** What is mixed into it; nothing where nobody has said. */
  readonly hardener?: ValueOf<'hardener'> | undefined;
  /** What was mixed into the coats below. */
  readonly hardenerBelow?: ValueOf<'hardener'> | undefined;
  readonly applicator?: ValueOf<'applicator'> | undefined;
  readonly label?: (Label & { readonly squareMetersPerLiter?: number | undefined }) | undefined;
  readonly day: {
    readonly celsius: number;
    readonly relativeHumidity: number;
    readonly surfaceCelsius?: number | undefined;
  };
  readonly night?: { readonly celsius: number; readonly relativeHumidity?: number | undefined } | undefined;
  readonly inSun?: boolean | undefined;
};

/** The product under the weather limits of the can, where it gives any. */
export const underCan = <P extends LayingProduct>(product: P, { label }: Pick<Laying, 'label'>): P => {
  const celsius = label?.limits?.celsius;
  const humidity = label?.limits?.relativeHumidity;
  if (!celsius && !humidity) return product;
  const limits = {
    celsius: celsius ? ([celsius.from, celsius.to] as [number, number]) : product.limits.celsius,
    humidity: humidity ? ([humidity.from, humidity.to] as [number, number]) : product.limits.humidity,
  };
  const { 'film-formation-celsius': formation, ...rest } = product;
  return {
    ...rest,
    limits,
    ...(formation && !celsius && { 'film-formation-celsius': formation }),
  } as P;
};
