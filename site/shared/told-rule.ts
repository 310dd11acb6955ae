import type { RuleEntry } from '#engine/index.ts';

/** What of a rule stands in words on a page. */
export const RULE_WORDS = ['title', 'say', 'why', 'defers'] as const;

/** What a page shows of a rule. */
export type ToldRule = Pick<RuleEntry, 'kind' | 'level' | (typeof RULE_WORDS)[number]> & {
  readonly id: string;
};
