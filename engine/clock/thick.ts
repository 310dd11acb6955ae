import { sayFilmInBoth } from '../calc/say-film.ts';
import type { Units } from '../calc/units.ts';
import type { ClockWords } from '../model/clock-words.ts';
import { type Family, UNSANDED } from '../model/family.ts';
import { entryOf } from '../plain/entry-of.ts';
import { filled } from '../plain/filled.ts';
import type { ClockProduct, LaidCoat } from './coat.ts';
import { leastDry } from './thin.ts';

/** A clear film at its least, µm dry, and the finishes in it; what lies in the wood makes none. */
export type Film = { readonly micrometers: number; readonly families: readonly Family[] };

/** Past this a film may turn brittle, µm dry, as the table of sanding in the plan has it; with lacquer in it past less. */
export const MOST_FILM = { lacquer: 100, any: 125 } as const;

/** Why such a film bears no further coat. */
export const sayThick = (
  { thick }: Pick<ClockWords, 'thick'>,
  most: number,
  units: Units = 'metric',
): string => filled(thick.why, { most: sayFilmInBoth(most, most, units) });

/** The film of this coat and of those below it that are known. */
export const filmUpTo = (coat: LaidCoat, products: Readonly<Record<string, ClockProduct>>): Film => {
  const films = [coat, ...(coat.below ?? [])].flatMap((one) => {
    const product = entryOf(products, one.product);
    return product && !UNSANDED.includes(product.family)
      ? [{ family: product.family, dry: leastDry(product, one) }]
      : [];
  });
  return {
    micrometers: films.reduce((sum, { dry }) => sum + dry, 0),
    families: films.map(({ family }) => family),
  };
};

/** The most that a film is thicker than, µm; nothing where it is not. */
export const thickerThan = ({ micrometers, families }: Film): number | undefined => {
  const most = families.includes('lacquer') ? MOST_FILM.lacquer : MOST_FILM.any;
  return micrometers > most ? most : undefined;
};
