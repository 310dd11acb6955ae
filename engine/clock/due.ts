import type { ClockWords } from '../model/clock-words.ts';
import { filled } from '../plain/filled.ts';
import type { Stretch } from '../plain/time.ts';
import { lateAt } from './late.ts';
import { nextCoatAt } from './next-coat.ts';
import type { Reading } from './reading.ts';
import { sayInstant, type TimeStyle, untilOf } from './say-time.ts';
import { unsandedFor } from './unsanded.ts';

/** What comes next of a coat, in a few words behind the name of its piece, and when: of many coats the soonest first. */
export type Due = { readonly at: number; readonly says: string };

/** The next thing that someone has to do or may do; what no time can be told for comes before everything. */
export const dueOf = (
  words: ClockWords,
  reading: Reading | undefined,
  now: number,
  style: TimeStyle,
): Due => {
  const { ready, cure: cured } = words;
  if (reading?.kind !== 'running') return { at: Number.NEGATIVE_INFINITY, says: words['no-time'].due };
  const { moments, handsOff, wipeOff, buff, flaw, last, pastMost } = reading;
  const { recoat, cure, 'light-use': use, 'sand-if-beyond': deadline } = moments;
  const unsanded = unsandedFor(words, reading);
  const at = (moment: number) => sayInstant(moment, now, style);
  const late = ({ from, to }: Stretch) => ({ late: untilOf(from, to, now, style).late });
  if (wipeOff) return { at: wipeOff.to, says: filled(words['wipe-off'].due, { by: at(wipeOff.to) }) };
  if (buff && now < buff.to) return { at: buff.from, says: filled(words.wax.due, { from: at(buff.from) }) };
  if (handsOff && (last || pastMost !== undefined || flaw))
    return { at: handsOff.to, says: filled(words['hands-off'].due, late(handsOff)) };
  if (flaw) return { at: now, says: words.flaw.due };
  if (!last && pastMost === undefined) {
    const next = nextCoatAt(moments, now);
    if (!next.may) return { at: next.from.to, says: filled(words.soft.due, late(next.from)) };
    if (next.until !== undefined)
      return { at: now, says: filled(ready['due-until'], { until: at(next.until) }) };
    if (unsanded && now < cure.to && lateAt(now, deadline, recoat)) return { at: now, says: unsanded.due };
    if (deadline && now < deadline.from)
      return { at: now, says: filled(ready['due-until'], { until: at(deadline.from) }) };
    if (now < cure.to) return { at: now, says: ready.due };
  }
  if (now < use.to) return { at: use.to, says: filled(cured['due-use'], late(use)) };
  if (now < cure.to) return { at: cure.to, says: filled(cured['due-cure'], late(cure)) };
  return { at: Number.POSITIVE_INFINITY, says: cured.due };
};
