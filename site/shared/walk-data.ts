import { type AnyEntry, isAsk, type Knowledge, visits } from '#engine/index.ts';
import type { Remedy } from '#engine/model/remedy.ts';
import { STANDINGS } from '#engine/model/stage.ts';

/** What hands do at each stage, and to a film that is overdue, and what of it can hurt; the words stay on the pages. */
export const actsByStanding = (now: Remedy['now']) =>
  Object.fromEntries(
    STANDINGS.flatMap((standing) => {
      const act = now[standing];
      return act ? [[standing, { do: act.do, ...(act.does && { does: act.does }) }]] : [];
    }),
  );

/** What the walk of one defect needs and no more: trees, what answers a question, what hands do at each stage. */
export type WalkData = ReturnType<typeof walkData>;

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
    defects: [...defects].map((one) => {
      const { tree, families } = known.get('defect', one);
      return { id: one, tree, families };
    }),
    questions: [...asked].map((one) => {
      const { 'safe-from': from, known: answers } = known.get('question', one);
      return { id: one, 'safe-from': from, known: answers };
    }),
    remedies: [...remedies].map((one) => {
      const { now } = known.get('remedy', one);
      return { id: one, now: actsByStanding(now) };
    }),
    doings: known.doings.map((one) => ({ id: one.id })),
  };
};

/** What was sent, as entries: cut down to what `walk` reads; the words and the steps stay on the pages. */
export const entriesOf = (data: WalkData): readonly AnyEntry[] =>
  [
    ...data.defects.map((one) => ({ ...one, kindOf: 'defect' })),
    ...data.questions.map((one) => ({ ...one, kindOf: 'question' })),
    ...data.remedies.map((one) => ({ ...one, kindOf: 'remedy', steps: [] })),
    ...data.doings.map((one) => ({ ...one, kindOf: 'doing' })),
  ] as unknown as AnyEntry[];
