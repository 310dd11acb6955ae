import { sayFilm } from '../calc/say-film.ts';
import type { Units } from '../calc/units.ts';
import type { JobCard } from '../model/job-card.ts';
import type { Sanding } from '../model/plan.ts';
import type { Span } from '../plain/span.ts';
import { adviceOf, type FilmAdvice, type UnsandedWords } from './advice.ts';
import type { Layers } from './layers.ts';
import { type BaseWords, sayBase } from './say-card.ts';
import { type FilmWords, sayLayer, sayLayers } from './say-layers.ts';

/** A rectangle of the drawing, x to the right and y down, in the units of its width and height. */
export type SectionRect = {
  readonly kind: 'base' | 'coat';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly label: string;
  readonly detail: string;
  /** False where the thickness is not known and the height says nothing. */
  readonly known: boolean;
};

export type Section = {
  readonly width: number;
  readonly height: number;
  /** The base first, then the coats from the lowest up. */
  readonly rects: readonly SectionRect[];
  /** Where film is left for no more than one thin coat: drawn where sanding may go through. */
  readonly warn: { readonly y: number; readonly says: string } | undefined;
  /** False where a thin coat is drawn thicker than in proportion, so that it can be seen. */
  readonly inProportion: boolean;
  readonly advice: FilmAdvice;
  readonly says: string;
};

export type SectionSize = {
  readonly width: number;
  readonly height: number;
  /** Share of the height that the base takes, 0–1. */
  readonly base: number;
  /** No coat is drawn thinner than this, so that its label can be read. */
  readonly least: number;
};

const USUAL: SectionSize = { width: 320, height: 240, base: 0.25, least: 22 };

const middle = (dry: Span | undefined): number | undefined => dry && (dry.from + dry.to) / 2;

/**
 * Heights in proportion that fill `room`; those that would be too low get the least, and the rest share what is left.
 */
const heightsOf = (films: readonly (number | undefined)[], room: number, least: number): number[] => {
  let low = films.map((film) => film === undefined);
  for (;;) {
    const left = room - least * low.filter(Boolean).length;
    const sum = films.reduce<number>((all, film, index) => all + (low[index] ? 0 : (film ?? 0)), 0);
    const scale = sum > 0 ? left / sum : 0;
    const heights = films.map((film, index) => (low[index] ? least : (film ?? 0) * scale));
    const next = heights.map((height) => height <= least);
    if (next.every((is, index) => is === low[index])) return heights;
    low = next;
  }
};

/** Where a dry film of `film` µm above the base lies, as a height in the drawing. */
const heightAt = (
  film: number,
  films: readonly (number | undefined)[],
  heights: readonly number[],
): number => {
  let below = 0;
  let height = 0;
  for (const [index, one = 0] of films.entries()) {
    const drawn = heights[index] ?? 0;
    if (one > 0 && below + one >= film) return height + (drawn * (film - below)) / one;
    below += one;
    height += drawn;
  }
  return height;
};

/** The tables that a section rests on: what a film allows, what is said of one that is not sanded, and what the bases are called. */
export type SectionTables = {
  readonly sanding: Sanding;
  readonly words: UnsandedWords & FilmWords;
  readonly bases: BaseWords;
};

/** The layers of a card as a drawn section: numbers and words only. It grows in height where many coats need it. */
export const sectionOf = (
  card: JobCard,
  film: Layers,
  { sanding, words, bases }: SectionTables,
  size: SectionSize = USUAL,
  units: Units = 'metric',
): Section => {
  const { width, least } = size;
  const films = film.layers.map(({ dry }) => middle(dry));
  const baseHeight = size.height * size.base;
  const room = Math.max(size.height - baseHeight, least * films.length);
  const heights = heightsOf(films, room, least);
  const height = room + baseHeight;
  let top = room;
  const coats = film.layers.map((layer, index): SectionRect => {
    const { number, dry } = layer;
    const tall = heights[index] ?? least;
    top -= tall;
    return {
      kind: 'coat',
      x: 0,
      y: top,
      width,
      height: tall,
      label: `Coat ${number}${dry ? `, ${sayFilm(dry.from, dry.to, units)} dry` : ', film not known'}`,
      detail: sayLayer(words, layer),
      known: dry !== undefined,
    };
  });
  const base: SectionRect = {
    kind: 'base',
    x: 0,
    y: room,
    width,
    height: baseHeight,
    label: sayBase(bases, card),
    detail: 'Not drawn in proportion.',
    known: false,
  };
  const advice = adviceOf(sanding, words, film, card.age);
  const thin = advice.risk === 'high' || advice.risk === 'some';
  const scale = films.map((one, index) => (one ? (heights[index] ?? 0) / one : undefined));
  const scales = scale.filter((one) => one !== undefined);
  return {
    width,
    height,
    rects: [base, ...coats],
    warn:
      thin && film.total.to > 0
        ? { y: room - heightAt(sanding.thin.micrometers, films, heights), says: 'Sand-through risk' }
        : undefined,
    inProportion: scales.every((one) => Math.abs(one - (scales[0] ?? one)) < 1e-6 * one),
    advice,
    says: `${sayBase(bases, card)}; on it ${sayLayers(words, film, units)}`,
  };
};
