import type { RuleEntry } from '#engine/index.ts';
import { pick } from '#engine/plain/pick.ts';

/** What every page that fires rules is sent of them: what they hang on, and what is said. */
export const ruleData = (rule: RuleEntry) =>
  pick(rule, 'id', 'kind', 'level', 'title', 'say', 'when', 'unless-known-no', 'hazards', 'sure', 'always');
