import { toMils, type Units } from './units.ts';

const between = (one: string, other: string): string => (one === other ? one : `${one}–${other}`);

const inMils = (from: number, to: number): string =>
  `${between(toMils(from).toFixed(1), toMils(to).toFixed(1))} mil`;
const inMicrometers = (from: number, to: number): string => `${between(from.toFixed(0), to.toFixed(0))} µm`;

/** A film in the chosen unit alone, where room is short. */
export const sayFilm = (from: number, to: number, units: Units): string =>
  units === 'us' ? inMils(from, to) : inMicrometers(from, to);

/** A film, the chosen unit first. */
export const sayFilmInBoth = (from: number, to: number, units: Units): string =>
  units === 'us'
    ? `${inMils(from, to)} (${inMicrometers(from, to)})`
    : `${inMicrometers(from, to)} (${inMils(from, to)})`;

/** A sentence of the tables, in which a film stands in µm: the chosen unit first. */
export const withFilmIn = (text: string, units: Units): string =>
  units === 'us'
    ? text.replace(/(\d+) µm(?! \()/g, (_, film: string) => sayFilmInBoth(Number(film), Number(film), 'us'))
    : text;
