import type { Issue } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import { visits } from '../knowledge/tree.ts';
import type { Family } from '../model/family.ts';
import { caseBook } from './hazard-cases.ts';
import { nearRules } from './near-rules.ts';

/** Of each remedy the kinds of top coat that each flaw which leads to it can have; none, for its own page. */
export const familiesByRemedy = (known: Knowledge): ReadonlyMap<string, readonly (readonly Family[])[]> => {
  const found = new Map<string, Map<string, readonly Family[]>>(
    known.remedies.map(({ id }) => [id as string, new Map([['', []]])]),
  );
  for (const defect of known.defects)
    for (const { branch } of visits(defect.tree))
      if ('remedy' in branch) found.get(branch.remedy)?.set(defect.families.join(), defect.families);
  return new Map([...found].map(([id, lists]) => [id, [...lists.values()]]));
};

/**
 * Every step that can hurt someone, or spoil the piece, has its stop or caution before it: of every remedy, for every
 * flaw that leads to it, in every case of the facts that matter, told and not told.
 */
export function* hazardsAreCautioned(known: Knowledge): Generator<Issue> {
  const book = caseBook(known);
  const lists = familiesByRemedy(known);
  for (const remedy of known.remedies)
    for (const [index, step] of remedy.steps.entries()) {
      const told = new Set<string>();
      for (const families of lists.get(remedy.id) ?? [[]])
        for (const hole of book.holesOf(step, families)) {
          const key = `${hole.hazard} ${hole.lacks}`;
          if (told.has(key)) continue;
          told.add(key);
          yield {
            file: remedy.file,
            line: remedy.lineOf(['steps', index]),
            code: 'no-caution',
            of: 'step',
            step: step.say,
            hazard: hole.hazard,
            lacks: hole.lacks,
            in: hole.in,
            ...nearRules(known.rules, hole.hazard, hole.lacks),
          };
        }
    }
}
