import { ASKED } from '../../knowledge/known-questions.ts';
import type { Stage } from '../../model/stage.ts';
import { entryOf } from '../../plain/entry-of.ts';
import { type Heard, type HeardFact, SURE } from '../words/heard.ts';

/** Late ends of the slowest can of each kind, hours: dry to the touch, ready for the next coat, cured. */
export type LateHours = Readonly<Record<string, readonly [touch: number, recoat: number, cure: number]>>;

/** Below this, and in air damper than that, a can's own times do not hold. Our own choice. */
const COLD_CELSIUS = 18;
const DAMP = 0.65;

/** How dry a coat mostly is by the time that was told of it. */
export type ByTime = { readonly stage: Stage; readonly laid: HeardFact };

/**
 * What a told time says of how dry the coat is, by the late end of the slowest can of its kind and by the least of the
 * time. Nothing where the kind, or the air that was told, leaves it open, and nothing of a coat that is told to stick.
 */
export const byTime = ({ facts, among, signs }: Heard, dries: LateHours): ByTime | undefined => {
  const told = (fact: string) => facts.find((one) => one.fact === fact && one.sure >= SURE);
  const laid = told('hours-since-coat');
  const kind = told('family')?.value;
  const kinds =
    kind === undefined ? (among.find(({ fact }) => fact === 'family')?.values ?? []) : [String(kind)];
  const times = kinds.map((one) => entryOf(dries, one));
  const cold = Number(told('air-celsius')?.value ?? COLD_CELSIUS) < COLD_CELSIUS;
  const damp = Number(told('relative-humidity')?.value ?? 0) > DAMP;
  const sticks = signs.some(({ question, answer }) => question === ASKED.stillTacky && answer === 'yes');
  if (!laid || !times.length || cold || damp || sticks) return undefined;
  const least = laid.range?.[0] ?? Number(laid.value);
  const isPast = (at: 0 | 1 | 2) => times.every((one) => one !== undefined && least >= one[at]);
  if (!isPast(0)) return undefined;
  return { stage: isPast(2) ? 'cured' : isPast(1) ? 'recoatable' : 'dry-to-touch', laid };
};
