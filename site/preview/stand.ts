/** Where one flaw stands: what its walk comes to, how the search for the flaw reaches it, and what of its names finds it. */

import { type FindIndex, find } from '#engine/find.ts';
import { emptyCase, type Knowledge, visits, walk, withFact } from '#engine/index.ts';
import { STAGES } from '#engine/model/stage.ts';
import { matrixOf } from '#engine/see/matrix.ts';
import { see } from '#engine/see/see.ts';
import { separatedBy } from '#engine/see/separated.ts';

export type StageLine = { readonly stage: string; readonly verdict: string; readonly say: string };

/** What is told at each stage while nothing is answered. */
export const stagesOf = (known: Knowledge, id: string): readonly StageLine[] =>
  STAGES.map((stage) => {
    const walked = walk(known, withFact(emptyCase(), 'stage', stage), id);
    if (walked.kind === 'outcome') return { stage, verdict: walked.action.verdict, say: walked.action.say };
    if (walked.kind === 'question')
      return { stage, verdict: 'Asks', say: known.get('question', walked.question).ask };
    return {
      stage,
      verdict: 'Tells the cause',
      say: walked.leaves.map((leaf) => leaf.cause ?? '').join('; '),
    };
  });

export type EndLine = {
  readonly answers: readonly { readonly ask: string; readonly answer: 'yes' | 'no' }[];
  readonly end: string;
  readonly cause: string | undefined;
};

/** Every end of the tree with the answers that lead there. */
export const endsOf = (known: Knowledge, id: string): readonly EndLine[] =>
  [...visits(known.get('defect', id).tree)].flatMap(({ branch, answers }): EndLine[] => {
    if ('ask' in branch) return [];
    const end =
      'remedy' in branch
        ? known.get('remedy', branch.remedy).name
        : 'defect' in branch
          ? `Goes on at: ${known.get('defect', branch.defect).name}`
          : `Leave it: ${branch.leave}`;
    return [
      {
        answers: answers.map(({ question, answer }) => ({
          ask: known.get('question', question).ask,
          answer,
        })),
        end,
        cause: 'cause' in branch ? branch.cause : undefined,
      },
    ];
  });

export type Sought = {
  readonly asked: readonly { readonly ask: string; readonly answer: string }[];
  readonly likely: readonly { readonly id: string; readonly name: string; readonly chance: number }[];
  /** 1 is the first; 0 where its own answers rule it out. */
  readonly place: number;
};

const ANSWER = ['no', 'yes', 'unsure', 'yes', 'no'] as const;

/** The search for the flaw, answered as its signs say; a sign that is met both ways is answered with can't tell. */
export const soughtOf = (known: Knowledge, id: string): Sought => {
  const matrix = matrixOf(known);
  const row = matrix.defects.indexOf(id);
  const seen = new Map<string, 'yes' | 'no' | 'unsure'>();
  for (;;) {
    const { question, likely } = see(matrix, seen);
    if (question === undefined) {
      const place = likely.findIndex(({ defect }) => defect === id) + 1;
      return {
        asked: [...seen].map(([one, answer]) => ({
          ask: known.get('question', one).ask,
          answer: answer === 'unsure' ? 'can’t tell' : answer,
        })),
        likely: likely.slice(0, 5).map(({ defect, chance }) => ({
          id: defect,
          name: known.get('defect', defect).name,
          chance,
        })),
        place,
      };
    }
    const sign = Number(matrix.signs[matrix.questions.indexOf(question)]?.[row] ?? 2);
    seen.set(question, ANSWER[sign] ?? 'unsure');
  }
};

/** Its look-alikes, each with the questions that tell the two apart. */
export const apartOf = (known: Knowledge, id: string) => {
  const defect = known.get('defect', id);
  return defect['look-alikes'].map((other) => ({
    id: other,
    name: known.get('defect', other).name,
    by: separatedBy(defect, known.get('defect', other)).map(({ question, a }) => ({
      ask: known.get('question', question).ask,
      answer: a,
    })),
  }));
};

export type FoundLine = { readonly typed: string; readonly place: number; readonly first: string };

/** Its name and other names typed into the search; place 0 is not among the first ten. */
export const findsOf = (known: Knowledge, index: FindIndex, id: string): readonly FoundLine[] => {
  const { name, also } = known.get('defect', id);
  return [name, ...also].map((typed) => {
    const hits = find(index, typed);
    const place = hits.findIndex((hit) => hit.kind === 'defect' && hit.id === id) + 1;
    return { typed, place, first: hits[0]?.title ?? 'nothing' };
  });
};
