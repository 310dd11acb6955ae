import type { Case } from '../case/case.ts';
import { mayHoldLead } from '../clock/lead.ts';
import { filmTold, riskOfFilm, type SandRisk, tooThick } from '../fitness/film-risk.ts';
import type { ClockWords } from '../model/clock-words.ts';
import type { JobCard } from '../model/job-card.ts';
import type { Sanding } from '../model/plan.ts';
import { isOneOf } from '../plain/entry-of.ts';
import { inARow } from '../plain/filled.ts';
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

/** What is said of a film that is never sanded as it is. */
export type UnsandedWords = Pick<ClockWords, 'lead' | 'two-part'>;

const liesInTheWood = (sanding: Sanding, family: unknown): boolean => isOneOf(sanding['in-the-wood'], family);

const riskOf = (sanding: Sanding, { layers, total, unknown }: Layers): SandRisk => {
  const top = layers.at(-1);
  if (!top) return 'bare';
  if (liesInTheWood(sanding, top.family)) return 'no-film';
  const risk = riskOfFilm(sanding, layers.length, total.from);
  // A film of which some is not known is at least as thick as what is.
  return unknown && risk !== 'low' && layers.length >= sanding.coats.least ? 'unknown' : risk;
};

/**
 * What a walk's facts say of the film before it is sanded; nothing of a finish that makes no film. `first`: it goes before
 * what the step says.
 */
export const filmToSand = (
  sanding: Sanding,
  words: UnsandedWords,
  on: Case,
): { readonly risk: SandRisk; readonly first: boolean; readonly says: string } | undefined => {
  const film = on['film-micrometers']?.value;
  const coats = on['coat-number']?.value;
  if (typeof film !== 'number' || typeof coats !== 'number') return undefined;
  if (liesInTheWood(sanding, on['family']?.value)) return undefined;
  const risk = riskOfFilm(sanding, coats, film);
  const most = tooThick(sanding, filmTold(film, on));
  const twoPart = on['hardener']?.value === 'isocyanate';
  const say = twoPart ? words['two-part'].film : sanding.says[risk].say;
  const told = most && risk !== 'low' && !twoPart ? most.say : inARow(say, most?.say);
  return {
    risk,
    first: twoPart || risk === 'high',
    says: `About ${Math.round(film)} µm dry, ${coats === 1 ? '1 coat' : `${coats} coats`}. ${told}`,
  };
};

/** Over old paint that may hold lead, and with isocyanate in it, no film is sanded, thick or thin. Our own caution, as the rules have it. */
const unsanded = (says: string, risk: SandRisk, most: ReturnType<typeof tooThick>): FilmAdvice => ({
  risk,
  pastMost: most?.micrometers,
  says: inARow(says, most?.say),
  grounds: [{ grade: 'common-practice' }],
});

/**
 * What the film allows, in plain words, by its least thickness, by how old the oldest paint below may be, and by what was
 * mixed into it. Where the can says otherwise, the can wins.
 */
export const adviceOf = (
  sanding: Sanding,
  words: UnsandedWords,
  film: Layers,
  age: JobCard['age'],
): FilmAdvice => {
  const risk = riskOf(sanding, film);
  const most = tooThick(sanding, filmOf(film));
  if (mayHoldLead(age)) return unsanded(words.lead.film, risk, most);
  if (film.twoPart === 'surely' && risk !== 'no-film') return unsanded(words['two-part'].film, risk, most);
  const { say, grounds } = sanding.says[risk];
  const perhaps = film.twoPart && risk !== 'no-film' ? words['two-part'].perhaps : undefined;
  const says = (...told: readonly (string | undefined)[]) => inARow(...told, perhaps);
  if (!most) return { risk, pastMost: undefined, says: says(say), grounds };
  const { grade, source } = most;
  const why = { grade, ...(source && { source }) };
  // One thick coat is thin by its count alone, and no other is to be laid before it is sanded.
  return risk === 'low'
    ? { risk, pastMost: most.micrometers, says: says(say, most.say), grounds: [...grounds, why] }
    : { risk, pastMost: most.micrometers, says: most.say, grounds: [why] };
};
