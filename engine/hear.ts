/**
 * The ear and the belief: from any text to facts, signs, likely flaws, what to do now and what to ask. Made at build time by
 * `buildLexicon`, `mindOf` and the search's `buildIndex`; runs wherever it is needed.
 */
export type { Evidence } from './hear/belief.ts';
export { type ByTime, byTime, type LateHours } from './hear/by-time.ts';
export { type Carried, carriedTo } from './hear/carried.ts';
export {
  type ActNow,
  type Considered,
  consider,
  type LikelyFlaw,
  type NextAsked,
} from './hear/consider.ts';
export { dryHoursOf } from './hear/dry.ts';
export { flawWords } from './hear/flaw-words.ts';
export { type Hearing, hear, hearSigns } from './hear/hear.ts';
export {
  type Heard,
  type HeardAmong,
  type HeardDanger,
  type HeardFact,
  type HeardSign,
  SURE,
} from './hear/heard.ts';
export { isCall } from './hear/is-call.ts';
export { buildLexicon, type Lexicon } from './hear/lexicon.ts';
export { firstOfRule, type Mind, mindOf, type ToldFacts, type ToldRule } from './hear/mind.ts';
export { answerTo, type Reply, reply } from './hear/reply.ts';
export { type AtOnceLines, atOnceOf, LIKELY, thisMinute } from './hear/this-minute.ts';
export {
  answerFor,
  dangerName,
  flawName,
  hearsNothing,
  type Links,
  LONGEST,
  type OfferedPage,
  type Understanding,
  type Understood,
  understand,
  weigh,
} from './hear/understand.ts';
export { type Waits, waitsOf } from './hear/waits.ts';
export type { Span } from './hear/words.ts';
export type { HearContent } from './model/hear.ts';
