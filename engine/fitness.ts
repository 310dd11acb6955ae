/** The one judgement of a coat before it is laid, and how plan, clock, card and walk each ask it. */
export { pieceOf } from './fitness/case.ts';
export { type Choice, chooseCoat, type Wanted } from './fitness/choose.ts';
export { layingOfCase, layingOfCoat, overCoat, pieceOfCase } from './fitness/entries.ts';
export { type Judgement, type JudgeTables, judgeLaying, noesOfAll } from './fitness/judge.ts';
export { type Laying, type LayingProduct, underCan } from './fitness/laying.ts';
export type { No } from './fitness/no.ts';
