import type { ConditionInput } from '#engine/model/condition.ts';

/**
 * The facts by which the stops stand that ask something of a check. Here, and not on every page of a question, they cost
 * no page a byte; a test holds them to content/rules.
 */
export const STOPS_AT_CHECK: Readonly<Record<string, ConditionInput>> = {
  'lead-before-sanding': { age: ['before-1993', 'unknown'] },
  mold: { 'fuzzy-or-musty': 'yes' },
  'valuable-piece': { piece: 'valuable' },
};
