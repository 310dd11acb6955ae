import type { Issue } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import { visits } from '../knowledge/tree.ts';
import type { Doing } from '../model/remedy.ts';
import { STAGES, type Stage } from '../model/stage.ts';

/** What hands may do at each stage. A setting film is never touched; wax and oil may be wiped back while open. */
const ALLOWED: Record<Stage, readonly Doing[]> = {
  wet: ['leave', 'lift', 'tip-off', 'wick', 'wash-off', 'wipe-back', 'stop'],
  setting: ['leave', 'stop'],
  'dry-to-touch': ['leave', 'wait', 'accept', 'wipe-back', 'stop'],
  recoatable: ['leave', 'wait', 'repair', 'accept', 'stop'],
  cured: ['leave', 'wait', 'repair', 'accept', 'stop'],
};

const WIPED: readonly string[] = ['wax', 'oil', 'hardwax-oil', 'wipe-on'];

/**
 * Whether every family is one that is wiped. Nothing is known of a repair that no tree leads to: it counts as a film.
 */
export const isWiped = (families: ReadonlySet<string> = new Set()): boolean =>
  families.size > 0 && [...families].every((family) => WIPED.includes(family));

/** Every remedy of every tree asks of a film only what its stage allows. */
export function* actionsFitTheStage(known: Knowledge): Generator<Issue> {
  const families = familiesOf(known);
  for (const remedy of known.remedies) {
    const wiped = isWiped(families.get(remedy.id));
    for (const stage of STAGES) {
      const doing = remedy.now[stage].do;
      const allowed = wiped ? ALLOWED[stage] : ALLOWED[stage].filter((one) => one !== 'wipe-back');
      if (!allowed.includes(doing))
        yield {
          file: remedy.file,
          line: remedy.lineOf(['now', stage, 'do']),
          code: 'touches-setting',
          stage,
          doing,
          allowed,
        };
    }
  }
}

/** Each remedy with the families of every flaw whose tree leads to it. */
export const familiesOf = (known: Knowledge): ReadonlyMap<string, ReadonlySet<string>> => {
  const families = new Map<string, Set<string>>();
  for (const defect of known.defects)
    for (const { branch } of visits(defect.tree))
      if ('remedy' in branch)
        families.set(branch.remedy, new Set([...(families.get(branch.remedy) ?? []), ...defect.families]));
  return families;
};
