import type { Heard } from '#engine/hear.ts';
import type { Stage } from '#engine/model/stage.ts';
import { entryOf } from '#engine/plain/entry-of.ts';
import type { Ear } from '../../shared/ear.ts';
import { factWords, isTaken } from './words.ts';

/** Below this, and in air damper than that, a can's own times do not hold. */
const COLD_CELSIUS = 18;
const DAMP = 0.65;

/** How dry a coat mostly is by the time that was told, and that time in words. */
export type ByTime = { readonly stage: Stage; readonly since: string };

/**
 * What a told time says of how dry the coat is, by the late end of the slowest can of its kind and by the least of the
 * time. Nothing where the kind, or the air that was told, leaves it open, and nothing of a coat that is told to stick.
 */
export const byTime = ({ facts, among, signs }: Heard, dries: Ear['dries']): ByTime | undefined => {
  const told = (fact: string) => facts.find((one) => one.fact === fact && isTaken(one));
  const laid = told('hours-since-coat');
  const kind = told('family')?.value;
  const kinds =
    kind === undefined ? (among.find(({ fact }) => fact === 'family')?.values ?? []) : [String(kind)];
  const times = kinds.map((one) => entryOf(dries, one));
  const cold = Number(told('air-celsius')?.value ?? COLD_CELSIUS) < COLD_CELSIUS;
  const damp = Number(told('relative-humidity')?.value ?? 0) > DAMP;
  const sticks = signs.some(({ question, answer }) => question === 'still-tacky' && answer === 'yes');
  if (!laid || !times.length || cold || damp || sticks) return undefined;
  const least = laid.range?.[0] ?? Number(laid.value);
  const isPast = (at: 0 | 1 | 2) => times.every((one) => one !== undefined && least >= one[at]);
  if (!isPast(0)) return undefined;
  const stage = isPast(2) ? 'cured' : isPast(1) ? 'recoatable' : 'dry-to-touch';
  const since = factWords({}, 'hours-since-coat', laid.value, laid.range);
  return since ? { stage, since } : undefined;
};
