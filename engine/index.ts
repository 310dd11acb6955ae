/** The door: what a page, a command or another program calls. No schema library stands behind it. */

export { answerOf, canCheck, stageOf } from './case/answers.ts';
export { type Answer, type Case, emptyCase, type Fact, withAnswer, withFact, without } from './case/case.ts';
export { factsIn } from './case/condition.ts';
export { type Knowledge, type Knows, knowledgeOf, type PartOf, partOf } from './knowledge/knowledge.ts';
export { isAsk, visits } from './knowledge/tree.ts';
export type { AnyEntry, Entry } from './model/knowledge.ts';
export { reached, STAGES, STANDINGS, type Stage, type Standing } from './model/stage.ts';
export { type FiredRules, type FiringRule, isOfSteps, type RuleEntry } from './rules/rules.ts';
export { separatedBy } from './see/separated.ts';
export { type ResolvedStep, resolve } from './steps/resolve.ts';
export { type Action, actOf } from './walk/act.ts';
export { asksOf, disturbsOldFilm, type Stretch, stretches } from './walk/behind.ts';
export { cautionsApart, remediesTold } from './walk/cautions.ts';
export { type Leaf, possible } from './walk/leaves.ts';
export { addressOf, nodesOf, readAddress, type TreeNode } from './walk/nodes.ts';
export { answersOverdue, withStanding } from './walk/standing.ts';
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
} from './walk/walk.ts';
