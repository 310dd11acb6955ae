import type { SAND_RISKS, Sanding } from '../model/plan.ts';

export type SandRisk = (typeof SAND_RISKS)[number];

/** The risk of a film of so many coats and at least so many µm dry. */
export const riskOfFilm = ({ thin, bears, coats: { least } }: Sanding, coats: number, film: number) => {
  if (coats < least) return 'high';
  if (film >= bears.micrometers) return 'low';
  return film < thin.micrometers ? 'high' : 'some';
};
