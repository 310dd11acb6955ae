import type { Case } from '../case/case.ts';
import { riskOfFilm, type SandRisk } from '../fitness/film-risk.ts';
import type { Sanding } from '../model/plan.ts';
import { isOneOf } from '../plain/entry-of.ts';
import type { Layers } from './layers.ts';

/** How we know a statement. */
type Ground = Sanding['says']['bare']['grounds'][number];

export type FilmAdvice = {
  readonly risk: SandRisk;
  /** Thicker than a film should be. */
  readonly thick: boolean;
  readonly says: string;
  readonly grounds: readonly Ground[];
};

const liesInTheWood = (sanding: Sanding, family: unknown): boolean => isOneOf(sanding['in-the-wood'], family);

const riskOf = (sanding: Sanding, { layers, total, unknown }: Layers): SandRisk => {
  const top = layers.at(-1);
  if (!top) return 'bare';
  if (liesInTheWood(sanding, top.family)) return 'no-film';
  const risk = riskOfFilm(sanding, layers.length, total.from);
  // A film of which some is not known is at least as thick as what is.
  return unknown && risk !== 'low' && layers.length >= sanding.coats.least ? 'unknown' : risk;
};

/** What a walk's facts say of the film before it is sanded; nothing of a finish that makes no film. */
export const filmToSand = (
  sanding: Sanding,
  on: Case,
): { readonly risk: SandRisk; readonly says: string } | undefined => {
  const film = on['film-micrometers']?.value;
  const coats = on['coat-number']?.value;
  if (typeof film !== 'number' || typeof coats !== 'number') return undefined;
  if (liesInTheWood(sanding, on['family']?.value)) return undefined;
  const risk = riskOfFilm(sanding, coats, film);
  const { say } = sanding.says[risk];
  return {
    risk,
    says: `About ${Math.round(film)} µm dry, ${coats === 1 ? '1 coat' : `${coats} coats`}. ${say}`,
  };
};

/** What the film allows, in plain words, by its least thickness. Where the can says otherwise, the can wins. */
export const adviceOf = (sanding: Sanding, film: Layers): FilmAdvice => {
  const risk = riskOf(sanding, film);
  const most = sanding['too-thick'].find(
    ({ families }) =>
      !families || film.layers.some(({ family }) => family !== undefined && families.includes(family)),
  );
  const { say, grounds } = sanding.says[risk];
  if (!most || film.total.from <= most.micrometers) return { risk, thick: false, says: say, grounds };
  const { grade, source } = most;
  return {
    risk,
    thick: true,
    says: `${say} ${most.say}`,
    grounds: [...grounds, { grade, ...(source && { source }) }],
  };
};
