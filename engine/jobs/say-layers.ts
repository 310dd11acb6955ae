import { sayFilmInBoth } from '../calc/say-film.ts';
import type { Units } from '../calc/units.ts';
import type { ClockWords } from '../model/clock-words.ts';
import { filled, inARow } from '../plain/filled.ts';
import type { Span } from '../plain/span.ts';
import type { Layer, Layers } from './layers.ts';

/** The words for it. */
export type FilmWords = Pick<ClockWords, 'film'>;

/** How the film of one coat is known. */
export const sayLayer = ({ film }: FilmWords, { ground, solidsByCan }: Layer): string =>
  inARow(film[ground], solidsByCan ? film.solids : undefined);

const coatsOf = (count: number): string => (count === 1 ? '1 coat' : `${count} coats`);

const sayTotal = ({ from, to }: Span, units: Units): string =>
  units === 'us' ? sayFilmInBoth(from, to, units) : `${Math.round(from)}–${Math.round(to)} µm`;

/** The film in all, and what of it is not known. */
export const sayLayers = (
  { film }: FilmWords,
  { layers, total, unknown, supposed }: Layers,
  units: Units = 'metric',
): string => {
  const coats = coatsOf(layers.length);
  const all =
    unknown === layers.length
      ? filled(film.coats, { coats })
      : filled(film.total, { coats, film: sayTotal(total, units) });
  return inARow(
    layers.length ? all : film.none,
    unknown ? filled(film['not-counted'], { coats: coatsOf(unknown) }) : undefined,
    supposed ? filled(film.supposed, { coats: coatsOf(supposed) }) : undefined,
  );
};
