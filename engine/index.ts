/** The door: what a page, a command or another program calls. No schema library stands behind it. */
export { type Action, actOf } from './act.ts';
export { answerOf, canCheck, stageOf } from './answers.ts';
export { asksOf, disturbsOldFilm, type Stretch, stretches } from './behind.ts';
export { type Answer, type Case, emptyCase, type Fact, withAnswer, withFact, without } from './case.ts';
export { cautionsApart, remediesTold } from './cautions.ts';
export { factsIn } from './condition.ts';
export { type Knowledge, type Knows, knowledgeOf, type PartOf, partOf } from './knowledge.ts';
export { type Leaf, possible } from './leaves.ts';
export type { AnyEntry, Entry } from './model/knowledge.ts';
export { reached, STAGES, STANDINGS, type Stage, type Standing } from './model/stage.ts';
export { addressOf, nodesOf, readAddress, type TreeNode } from './nodes.ts';
export { separatedBy } from './prove/look-alikes-differ.ts';
export { type ResolvedStep, resolve } from './resolve.ts';
export { type FiredRules, type FiringRule, isOfSteps, type RuleEntry } from './rules.ts';
export { answersOverdue, withStanding } from './standing.ts';
export { isAsk, visits } from './tree.ts';
export {
  type Check,
  type Decided,
  decide,
  type Meaning,
  nextQuestion,
  type Used,
  type Walked,
  type WalkOptions,
  type WayReads,
  walk,
} from './walk.ts';
