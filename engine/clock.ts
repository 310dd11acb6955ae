/** The coat clock. It has no clock of its own: every time comes in and goes out as epoch milliseconds. */
export { askAboutLabel, type LabelAsk, type LabelHere, labelHere } from './clock/can.ts';
export { type CoatFault, type CoatField, checkCoat } from './clock/check.ts';
export { type ClockProduct, clockProduct, type LaidCoat, type Products, wetFilmOf } from './clock/coat.ts';
export { type ClockDoubt, clockDoubt, jumpedBack, laidBeforeClocks, sayDoubt } from './clock/doubt.ts';
export { type Due, dueOf } from './clock/due.ts';
export { caseFromClock, type FilmNow, factsOf } from './clock/facts.ts';
export { dateFormat } from './clock/format.ts';
export { adopted, onOnePiece, withLaid } from './clock/laid.ts';
export { type Late, lateAt } from './clock/late.ts';
export { mayHoldLead } from './clock/lead.ts';
export { type LifeLine, lifeLine } from './clock/life-line.ts';
export { nextCoatAt, nextCoatSpan } from './clock/next-coat.ts';
export type { NowWords } from './clock/now-words.ts';
export { type ForClock, layOnClock, replaceOnClock, takeOffClock } from './clock/on-clock.ts';
export {
  clockNow,
  isLateAtOnce,
  type Moment,
  type Reading,
  type Running,
  rightAgain,
} from './clock/reading.ts';
export { type Reminder, remindersOf } from './clock/reminders.ts';
export { sayMoment } from './clock/say-moment.ts';
export { sayNow } from './clock/say-now.ts';
export { sayReasons } from './clock/say-reasons.ts';
export { sayInstant, saySpan, sayUntil, type TimeStyle, type UntilWords, untilOf } from './clock/say-time.ts';
export { type ClockStore, emptyStore, MOST_ON_CLOCK, readStore } from './clock/store.ts';
export { type TouchBounds, touchBounds } from './clock/touch-bounds.ts';
export { unsandedFor } from './clock/unsanded.ts';
export { unreadyOf, wettestFirst } from './clock/wettest.ts';
export type { ClockWords } from './model/clock-words.ts';
