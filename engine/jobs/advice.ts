import type { Case } from '../case/case.ts';
import { LEAD_WORDS, mayHoldLead } from '../clock/lead.ts';
import { filmTold, riskOfFilm, type SandRisk, tooThick } from '../fitness/film-risk.ts';
import type { JobCard } from '../model/job-card.ts';
import type { Sanding } from '../model/plan.ts';
import { isOneOf } from '../plain/entry-of.ts';
import { filmOf, type Layers } from './layers.ts';

/** How we know a statement. */
type Ground = Sanding['says']['bare']['grounds'][number];

export type FilmAdvice = {
  readonly risk: SandRisk;
  /** The most that it is thicker than, µm: no other coat comes over it. Nothing where it is not. */
  readonly pastMost: number | undefined;
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
  const most = tooThick(sanding, filmTold(film, on));
  const { say } = sanding.says[risk];
  return {
    risk,
    says: `About ${Math.round(film)} µm dry, ${coats === 1 ? '1 coat' : `${coats} coats`}. ${most && risk !== 'low' ? most.say : [say, most?.say].filter(Boolean).join(' ')}`,
  };
};

/** Over old paint that may hold lead no film is sanded, thick or thin. Our own caution, as the stop has it. */
const overLead = (risk: SandRisk, most: ReturnType<typeof tooThick>): FilmAdvice => ({
  risk,
  pastMost: most?.micrometers,
  says: [LEAD_WORDS.film, most?.say].filter(Boolean).join(' '),
  grounds: [{ grade: 'common-practice' }],
});

/**
 * What the film allows, in plain words, by its least thickness, and by how old the oldest paint below may be. Where the
 * can says otherwise, the can wins.
 */
export const adviceOf = (sanding: Sanding, film: Layers, age: JobCard['age']): FilmAdvice => {
  const risk = riskOf(sanding, film);
  const most = tooThick(sanding, filmOf(film));
  if (mayHoldLead(age)) return overLead(risk, most);
  const { say, grounds } = sanding.says[risk];
  if (!most) return { risk, pastMost: undefined, says: say, grounds };
  const { grade, source } = most;
  const why = { grade, ...(source && { source }) };
  // One thick coat is thin by its count alone, and no other is to be laid before it is sanded.
  return risk === 'low'
    ? { risk, pastMost: most.micrometers, says: `${say} ${most.say}`, grounds: [...grounds, why] }
    : { risk, pastMost: most.micrometers, says: most.say, grounds: [why] };
};
