import { type Case, type How, withFact, without } from '../case/case.ts';
import type { Knows } from '../knowledge/knowledge.ts';
import { ASKED } from '../knowledge/known-questions.ts';
import { signOf } from '../knowledge/sign.ts';
import { isHandover, visits } from '../knowledge/tree.ts';
import type { Defect } from '../model/defect.ts';
import type { Remedy } from '../model/remedy.ts';
import type { Standing } from '../model/stage.ts';

/**
 * A case that is told how dry the film is, whatever was told of that before. A film that is overdue is not dry inside.
 */
export const withStanding = (on: Case, standing: Standing, how: How = 'told'): Case =>
  standing === 'overdue'
    ? withFact(withFact(on, 'stage', 'dry-to-touch', how), 'overdue', 'yes', how)
    : without(withFact(on, 'stage', standing, how), 'overdue');

/**
 * Whether some cause of the flaw, or of one that its tree leads over to, has an answer of its own to a film that is
 * overdue.
 */
export const answersOverdue = (
  known: Knows<{ defect: Pick<Defect, 'tree' | 'signs'>; remedy: Pick<Remedy, 'now'> }>,
  defect: string,
): boolean =>
  [...visits(known.get('defect', defect).tree)].some(({ branch }) =>
    isHandover(branch)
      ? signOf(known.get('defect', branch.defect), ASKED.stillTacky) === 'yes'
      : 'remedy' in branch && known.get('remedy', branch.remedy).now.overdue !== undefined,
  );
