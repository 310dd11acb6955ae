/**
 * The ear and the belief: from any text to facts, signs, likely flaws, what to do now and what to ask. Made at build time by
 * `buildLexicon`, `mindOf` and the search's `buildIndex`; runs wherever it is needed.
 */

export { type Carried, carriedTo } from './hear/asked/carried.ts';
export { type Waits, waitsOf } from './hear/asked/waits.ts';
export type { Evidence } from './hear/belief/belief.ts';
export {
  type ActNow,
  type Considered,
  consider,
  type LikelyFlaw,
  type NextAsked,
} from './hear/belief/consider.ts';
export { flawWords } from './hear/belief/flaw-words.ts';
export { isCall } from './hear/belief/is-call.ts';
export { firstOfRule, type Mind, mindOf, type ToldFacts, type ToldRule } from './hear/belief/mind.ts';
export { type AtOnceLines, atOnceOf, LIKELY, thisMinute } from './hear/belief/this-minute.ts';
export { dryHoursOf } from './hear/film/dry.ts';
export { type Hearing, hear, hearSigns } from './hear/hear.ts';
export { type Reply, reply } from './hear/reply/reply.ts';
export { answerTo } from './hear/reply/without-flaw.ts';
export { type ByTime, byTime, type LateHours } from './hear/times/by-time.ts';
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
export {
  type Heard,
  type HeardAmong,
  type HeardDanger,
  type HeardFact,
  type HeardSign,
  SURE,
} from './hear/words/heard.ts';
export { buildLexicon, type Lexicon } from './hear/words/lexicon.ts';
export type { Span } from './hear/words/words.ts';
export type { HearContent } from './model/hear.ts';
