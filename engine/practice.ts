/**
 * Practice boards: a situation with a picture, judged by the walk and the clock. Same seed, same item, on every
 * machine.
 */
export { dealPractice, flawOfSeed, practised } from './practice/deal.ts';
export {
  PRACTICE_LEVELS,
  type PracticeAsk,
  type PracticeChoice,
  type PracticeItem,
  type PracticeKey,
  type PracticeLevel,
  readPracticeId,
  SOUND,
} from './practice/item.ts';
export type { PracticeKnowledge } from './practice/knowledge.ts';
export { drawSet } from './practice/set.ts';
export { PRACTICE_TIME } from './practice/story.ts';
