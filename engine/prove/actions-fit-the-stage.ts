import type { Issue } from '../issue.ts';
import type { Knowledge } from '../knowledge.ts';
import type { Doing } from '../model/remedy.ts';
import { STAGES, type Stage } from '../model/stage.ts';
import { visits } from '../tree.ts';

/** What hands may do at each stage. A setting film is never touched; wax and oil may be wiped back while open. */
export const ALLOWED: Record<Stage, readonly Doing[]> = {
  wet: ['leave', 'lift', 'tip-off', 'wick', 'wash-off', 'wipe-back', 'stop'],
  setting: ['leave', 'stop'],
  'dry-to-touch': ['leave', 'wait', 'accept', 'wipe-back', 'stop'],
  recoatable: ['leave', 'wait', 'repair', 'accept', 'stop'],
  cured: ['leave', 'wait', 'repair', 'accept', 'stop'],
};

const WIPED: readonly string[] = ['wax', 'oil', 'hardwax-oil', 'wipe-on'];

/** Every remedy of every tree asks of a film only what its stage allows. */
export function* actionsFitTheStage(known: Knowledge): Generator<Issue> {
  for (const remedy of known.remedies) {
    const wiped = defectsOf(known, remedy.id).every((families) =>
      families.every((family) => WIPED.includes(family)),
    );
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

const defectsOf = (known: Knowledge, remedy: string): (readonly string[])[] =>
  known.defects
    .filter((defect) =>
      [...visits(defect.tree)].some(({ branch }) => 'remedy' in branch && branch.remedy === remedy),
    )
    .map((defect) => defect.families);
