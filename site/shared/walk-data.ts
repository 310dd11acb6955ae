import { isAsk, type Knowledge, type PartOf, visits } from '#engine/index.ts';
import type { Remedy } from '#engine/model/remedy.ts';
import { pick } from '#engine/plain/pick.ts';

/** What hands do at each stage, and to a film that is overdue, and what of it can hurt; the words stay on the pages. */
export const actsByStanding = ({ overdue, ...now }: Remedy['now']) => ({
  wet: pick(now.wet, 'do', 'does'),
  setting: pick(now.setting, 'do', 'does'),
  'dry-to-touch': pick(now['dry-to-touch'], 'do', 'does'),
  recoatable: pick(now.recoatable, 'do', 'does'),
  cured: pick(now.cured, 'do', 'does'),
  ...(overdue && { overdue: pick(overdue, 'do', 'does') }),
});

/** What the walk of one defect needs to find its next question, and no more: trees, what answers a question, what hands do. */
export type WalkData = ReturnType<typeof walkData>;
export type WalkKnowledge = PartOf<WalkData>;

/** The part of the knowledge that one defect's walk rests on, its hand-overs included. */
export const walkData = (known: Knowledge, id: string) => {
  const defects = new Set([id]);
  const asked = new Set<string>();
  const remedies = new Set<string>();
  for (const defect of defects)
    for (const { branch } of visits(known.get('defect', defect).tree)) {
      if (isAsk(branch)) asked.add(branch.ask);
      else if ('defect' in branch) defects.add(branch.defect);
      else if ('remedy' in branch) remedies.add(branch.remedy);
    }
  return {
    defects: [...defects].map((one) => pick(known.get('defect', one), 'id', 'tree', 'families')),
    questions: [...asked].map((one) => pick(known.get('question', one), 'id', 'safe-from', 'known')),
    remedies: [...remedies].map((one) => ({ id: one, now: actsByStanding(known.get('remedy', one).now) })),
  };
};
