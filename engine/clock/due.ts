import type { Stretch } from '../plain/time.ts';
import { lateAt } from './late.ts';
import type { Reading } from './reading.ts';
import { sayInstant, type TimeStyle, untilOf } from './say-time.ts';
import { unsandedFor } from './unsanded.ts';

/** What comes next of a coat, in a few words behind the name of its piece, and when: of many coats the soonest first. */
export type Due = { readonly at: number; readonly says: string };

/** The next thing that someone has to do or may do; what no time can be told for comes before everything. */
export const dueOf = (reading: Reading | undefined, now: number, style: TimeStyle): Due => {
  if (reading?.kind !== 'running') return { at: Number.NEGATIVE_INFINITY, says: 'no time can be told' };
  const { moments, handsOff, wipeOff, buff, flaw, last, pastMost } = reading;
  const { recoat, cure, 'light-use': use, 'sand-if-beyond': deadline } = moments;
  const unsanded = unsandedFor(reading);
  const late = ({ from, to }: Stretch) => untilOf(from, to, now, style).late;
  if (wipeOff)
    return { at: wipeOff.to, says: `wipe the surplus off by ${sayInstant(wipeOff.to, now, style)}` };
  if (buff && now < buff.to)
    return { at: buff.from, says: `buff it from ${sayInstant(buff.from, now, style)}` };
  if (handsOff && (last || pastMost !== undefined || flaw))
    return { at: handsOff.to, says: `hands off until ${late(handsOff)}` };
  if (flaw) return { at: now, says: 'first the flaw on its card' };
  if (!last && pastMost === undefined) {
    if (now < recoat.to) return { at: recoat.to, says: `next coat from ${late(recoat)}` };
    if (unsanded && now < cure.to && lateAt(now, deadline, recoat)) return { at: now, says: unsanded.due };
    if (deadline && now < deadline.from)
      return { at: now, says: `ready for the next coat until ${sayInstant(deadline.from, now, style)}` };
    if (now < cure.to) return { at: now, says: 'ready for the next coat' };
  }
  if (now < use.to) return { at: use.to, says: `light use from ${late(use)}` };
  if (now < cure.to) return { at: cure.to, says: `cured from ${late(cure)}` };
  return { at: Number.POSITIVE_INFINITY, says: 'cured' };
};
