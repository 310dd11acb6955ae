import { type Case, emptyCase, withFact } from '../case/case.ts';
import { isInFact } from '../model/facts.ts';
import { HOUR_MS, MINUTE_MS } from '../plain/time.ts';
import type { ClockProduct, LaidCoat } from './coat.ts';
import { wetFilmOf } from './coat.ts';
import { hardenerOf } from './hardener.ts';
import { clockNow } from './reading.ts';

/** Dry film of this coat and those below, µm, all of them laid alike. */
const filmSoFar = (product: ClockProduct, coat: LaidCoat): number => {
  const wet = wetFilmOf(product, coat) ?? product['reference-wet-film-micrometers'];
  const [low, high] = product['volume-solids'];
  return coat.coatNumber * wet * ((low + high) / 2);
};

/**
 * What the clock knows of a coat, as facts, so that no walk asks for it. No stage where no time is promised. `products`
 * are those of the coats below.
 */
export const factsOf = (
  product: ClockProduct,
  coat: LaidCoat,
  now: number,
  products: Readonly<Record<string, ClockProduct>> = {},
): Case => {
  const reading = clockNow(product, coat, now, products);
  const hours = (now - coat.laidAt) / HOUR_MS;
  let on = withFact(emptyCase(), 'family', product.family, 'told');
  if (isInFact('coat-number', coat.coatNumber)) on = withFact(on, 'coat-number', coat.coatNumber, 'told');
  on = withFact(on, 'relative-humidity', coat.relativeHumidity, 'measured');
  if (isInFact('air-celsius', coat.celsius)) on = withFact(on, 'air-celsius', coat.celsius, 'measured');
  const surface = coat.surfaceCelsius;
  if (surface !== undefined && isInFact('surface-celsius', surface))
    on = withFact(on, 'surface-celsius', surface, 'measured');
  if (coat.applicator) on = withFact(on, 'applicator', coat.applicator, 'told');
  if (coat.sheen) on = withFact(on, 'sheen', coat.sheen, 'told');
  if (coat.baseTone) on = withFact(on, 'base-tone', coat.baseTone, 'told');
  const hardener = hardenerOf([coat, ...(coat.below ?? [])], { ...products, [coat.product]: product });
  if (hardener) on = withFact(on, 'hardener', hardener, 'told');
  const film = filmSoFar(product, coat);
  if (isInFact('film-micrometers', film)) on = withFact(on, 'film-micrometers', Math.round(film), 'computed');
  if (isInFact('hours-since-coat', hours)) on = withFact(on, 'hours-since-coat', hours, 'computed');
  if (reading.kind === 'running') on = withFact(on, 'stage', reading.stage, 'computed');
  return on;
};

/** A coat told in a few words: minutes since it was laid, and the air. */
export type FilmNow = Omit<LaidCoat, 'id' | 'piece' | 'product' | 'laidAt' | 'coatNumber'> & {
  readonly minutes: number;
  readonly coatNumber?: number;
};

/** The facts of a coat that was laid `minutes` ago. */
export const caseFromClock = (product: ClockProduct, { minutes, coatNumber = 1, ...film }: FilmNow): Case =>
  factsOf(
    product,
    { ...film, id: 'now', piece: '', product: '', laidAt: 0, coatNumber },
    minutes * MINUTE_MS,
  );
