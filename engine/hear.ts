/** The ear: from any text to facts and signs. Made at build time by `buildLexicon`, run wherever it is needed. */
export { dryHoursOf } from './hear/dry.ts';
export { type Hearing, hear } from './hear/hear.ts';
export { type Heard, type HeardAmong, type HeardFact, type HeardSign, SURE } from './hear/heard.ts';
export { buildLexicon, type HearContent, type Lexicon } from './hear/lexicon.ts';
export type { Span } from './hear/words.ts';
