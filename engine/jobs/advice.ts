import type { Case } from '../case.ts';
import type { Grade } from '../model/source.ts';
import type { Layers } from './layers.ts';

export type Ground = { readonly grade: Grade; readonly source?: string };

/** How easily sanding goes through to the color. `no-film`: the finish lies in the wood, and is not sanded. */
export type SandRisk = 'bare' | 'no-film' | 'unknown' | 'high' | 'some' | 'low';

export type FilmAdvice = {
  readonly risk: SandRisk;
  /** Thicker than a film should be. */
  readonly thick: boolean;
  readonly says: string;
  readonly grounds: readonly Ground[];
};

/**
 * One varnish coat dries to about 25–50 µm (published, film-s89). That less than the thinner figure is a high risk, and
 * less than two such coats some risk, is our own reading; no source gives a depth for hand sanding.
 */
export const THIN_COAT = 25;
const TWO_THIN_COATS = 2 * THIN_COAT;
/** Beyond this a film is brittle and cracks, µm (published, film-s103); of lacquer by common practice. */
const MOST = 125;
const MOST_LACQUER = 100;

const published = (source: string): Ground => ({ grade: 'published', source });
const OWN_READING: Ground = { grade: 'common-practice' };
const BLOCK = published('film-s112');

type Said = { readonly says: string; readonly grounds: readonly Ground[] };
const WORDS: Readonly<Record<SandRisk, Said>> = {
  bare: {
    says: 'No clear coat is laid yet. Do not sand stain or color: nothing lies over it.',
    grounds: [published('film-s38')],
  },
  'no-film': {
    says: 'This finish lies in the surface and makes hardly any film. Do not sand it; rub it with a clean cloth.',
    grounds: [{ grade: 'common-practice' }],
  },
  unknown: {
    says: 'How thick the film is can not be told, so take it as thin: sand only what stands up, by hand, edges not at all.',
    grounds: [{ grade: 'common-practice' }],
  },
  high: {
    says: 'Sand-through risk: the clear film is thin. Lay one more coat before you sand the whole face; on edges and corners do not sand at all.',
    grounds: [published('film-s113'), published('film-s89'), OWN_READING],
  },
  some: {
    says: 'Some sand-through risk: a few light strokes by hand with P320 or finer, no hard block, edges and moldings last and least.',
    grounds: [published('film-s89'), BLOCK, OWN_READING],
  },
  low: {
    says: 'The film bears a light rub by hand with P320 or finer. Edges and moldings are always thinner: leave them out or stroke them once.',
    grounds: [BLOCK, OWN_READING],
  },
};

const LIE_IN_THE_WOOD: readonly unknown[] = ['wax', 'oil'];

const riskOf = ({ layers, total, unknown }: Layers): SandRisk => {
  const top = layers.at(-1);
  if (!top) return 'bare';
  if (LIE_IN_THE_WOOD.includes(top.family)) return 'no-film';
  if (layers.length === 1) return 'high';
  if (total.from >= TWO_THIN_COATS) return 'low';
  if (unknown) return 'unknown';
  return total.from < THIN_COAT ? 'high' : 'some';
};

/** What a walk's facts say of the film before it is sanded; nothing of a finish that makes no film. */
export const sayFilmToSand = (on: Case): string | undefined => {
  const film = on['film-micrometers']?.value;
  const coats = on['coat-number']?.value;
  if (typeof film !== 'number' || typeof coats !== 'number') return undefined;
  if (LIE_IN_THE_WOOD.includes(on['family']?.value)) return undefined;
  const risk = coats === 1 || film < THIN_COAT ? 'high' : film >= TWO_THIN_COATS ? 'low' : 'some';
  return `About ${Math.round(film)} µm dry, ${coats === 1 ? '1 coat' : `${coats} coats`}. ${WORDS[risk].says}`;
};

/** What the film allows, in plain words, by its least thickness. Where the can says otherwise, the can wins. */
export const adviceOf = (film: Layers): FilmAdvice => {
  const risk = riskOf(film);
  const lacquer = film.layers.some(({ family }) => family === 'lacquer');
  const most = lacquer ? MOST_LACQUER : MOST;
  const thick = film.total.from > most;
  const tooThick = `The film is thicker than ${most} µm: it may turn brittle and crack. Lay no further coat.`;
  const { says, grounds } = WORDS[risk];
  return {
    risk,
    thick,
    says: thick ? `${says} ${tooThick}` : says,
    grounds: thick ? [...grounds, lacquer ? OWN_READING : published('film-s103')] : grounds,
  };
};
