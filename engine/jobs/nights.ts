import type { LaidCoat } from '../clock/coat.ts';
import type { ColdestNight } from '../clock/nights.ts';
import type { Plan } from '../model/plan.ts';

/** The nights that are allowed for where none is noted: never colder than what the can allows. */
export const supposedNight = (
  plan: Pick<Plan, 'night'>,
  { celsius }: LaidCoat,
  least: number,
): ColdestNight => ({
  celsius: Math.max(celsius - plan.night['supposed-colder'], Math.min(celsius, least)),
});
