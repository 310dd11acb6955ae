import type { RuleEntry } from '#engine/index.ts';

/** What of a rule stands in words on a page. */
export const RULE_WORDS = ['title', 'say', 'why', 'defers'] as const;

/** Before steps that lie behind a stop; what follows it says when, or for whom. */
export const OPEN_THE_STEPS = 'Closed until it is settled. Open the steps:';

/** Leads from a caution to the page of its rule. */
export const MORE_OF_A_RULE = 'Why, and where from';

/** What a page shows of a rule. */
export type ToldRule = Pick<RuleEntry, 'kind' | 'level' | (typeof RULE_WORDS)[number]> & {
  readonly id: string;
};
