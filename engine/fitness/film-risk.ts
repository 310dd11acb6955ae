import type { Case } from '../case/case.ts';
import type { Film } from '../clock/thick.ts';
import { FAMILIES } from '../model/family.ts';
import type { SAND_RISKS, Sanding } from '../model/plan.ts';

type TooThick = Sanding['too-thick'][number];

export type SandRisk = (typeof SAND_RISKS)[number];

/** The risk of a film of so many coats and at least so many µm dry. */
export const riskOfFilm = ({ thin, bears, coats: { least } }: Sanding, coats: number, film: number) => {
  if (coats < least) return 'high';
  if (film >= bears.micrometers) return 'low';
  return film < thin.micrometers ? 'high' : 'some';
};

/** A case knows the middle of what cans of a kind leave: the leanest leave two thirds of it. */
export const LEANEST = 2 / 3;
export const filmTold = (micrometers: number, on: Case): Film => {
  const family = FAMILIES.find((one) => one === on['family']?.value);
  return { micrometers: micrometers * LEANEST, families: family ? [family] : [] };
};

/** The row of a film that is thicker than it should be; nothing where it is not. */
export const tooThick = (sanding: Sanding, { micrometers, families }: Film): TooThick | undefined => {
  const most = sanding['too-thick'].find(
    ({ families: of }) => !of || families.some((family) => of.includes(family)),
  );
  return most && micrometers > most.micrometers ? most : undefined;
};
