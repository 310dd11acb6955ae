/** The coat clock. It has no clock of its own: every time comes in and goes out as epoch milliseconds. */
export { type CoatFault, type CoatField, checkCoat, jumpedBack } from './clock/check.ts';
export { type ClockProduct, clockProduct, type LaidCoat } from './clock/coat.ts';
export { caseFromClock, type FilmNow, factsOf } from './clock/facts.ts';
export { adopted, onOnePiece, withLaid } from './clock/laid.ts';
export { type LifeLine, lifeLine } from './clock/life-line.ts';
export { clockNow, type Moment, type Reading, type Running } from './clock/reading.ts';
export { type Reminder, remindersOf } from './clock/reminders.ts';
export { type NowWords, sayNow } from './clock/say-now.ts';
export { sayReasons } from './clock/say-reasons.ts';
export { sayInstant, saySpan, sayUntil, type TimeStyle } from './clock/say-time.ts';
export { type ClockStore, emptyStore, readStore } from './clock/store.ts';
