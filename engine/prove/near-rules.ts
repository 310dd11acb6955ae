import type { NearRules, Weight } from '../faults/issue.ts';
import { written } from '../faults/mend.ts';
import type { Hazard } from '../model/hazard.ts';
import type { RuleEntry } from '../rules/rules.ts';
import { weightOf } from './needs.ts';

const onlyWith = ({ when, sure }: RuleEntry): string =>
  [when && `when: ${written(when)}`, sure && `sure: ${sure}`].filter(Boolean).join(' and ');

/**
 * Where a step lacks a caution: the rule that warns of the same elsewhere, and one of that weight to write another
 * after.
 */
export const nearRules = (rules: readonly RuleEntry[], hazard: Hazard, lacks: Weight): NearRules => {
  const weighty = rules.filter((rule) => weightOf(rule) === lacks);
  const short = weighty.find((rule) => rule.hazards.includes(hazard) && onlyWith(rule));
  const like = weighty.find((rule) => !onlyWith(rule)) ?? weighty[0];
  return { rule: short && { id: short.id, only: onlyWith(short) }, like: like?.id };
};
