import type { Issue } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';

/** No step tints or thins further than a rule allows. */
export function* tintsStayWithinLimits(known: Knowledge): Generator<Issue> {
  const limits = known.rules.flatMap((rule) => (rule.limit ? [{ ...rule.limit, rule: rule.id }] : []));
  for (const remedy of known.remedies) {
    for (const [index, step] of remedy.steps.entries()) {
      if (step.kind !== 'mix' || !step.percent) continue;
      const [, percent] = step.percent;
      for (const limit of limits)
        if (limit.what === `${step.what}-percent` && percent > limit.most)
          yield {
            file: remedy.file,
            line: remedy.lineOf(['steps', index, 'percent']),
            code: 'over-limit',
            what: limit.what,
            percent,
            most: limit.most,
            rule: limit.rule,
          };
    }
  }
}
