import type { ClockProduct } from '../clock/coat.ts';
import type { Knows } from '../knowledge/knowledge.ts';
import type { Defect } from '../model/defect.ts';
import type { DoingWords } from '../model/doing.ts';
import type { Question } from '../model/question.ts';
import type { Remedy } from '../model/remedy.ts';
import type { Rules, SaidRule } from '../rules/rules.ts';

type DefectRead = Pick<
  Defect,
  'name' | 'often' | 'families' | 'looks' | 'signs' | 'tree' | 'boards' | 'look-alikes'
>;
type QuestionRead = Pick<
  Question,
  'ask' | 'by' | 'effort' | 'usually' | 'yes' | 'no' | 'known' | 'safe-from' | 'boards'
>;

/** All that a practice board is dealt from. */
export type PracticeKnowledge = Knows<{
  readonly defect: DefectRead;
  readonly question: QuestionRead;
  readonly remedy: Pick<Remedy, 'name' | 'summary' | 'now' | 'steps'>;
  readonly doing: DoingWords;
  readonly product: ClockProduct;
}> &
  Rules<SaidRule>;

/** A flaw as it is practised. */
export type PracticeFlaw = PracticeKnowledge['defects'][number];
