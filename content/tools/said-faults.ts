import type { Issue } from '#engine/faults/issue.ts';
import type { LineOf } from '#engine/model/knowledge.ts';
import { touchOrdered } from '#engine/prove/touch-words.ts';
import { gradeOf, HIGHEST_GRADE } from './grade.ts';

type Says = Readonly<Record<string, Readonly<Record<string, string>>>>;

/** What is wrong with sentences that the engine says: each is understood at once, and none sends a hand to a wet film. */
export const saidFaults = (
  file: string,
  says: Says,
  handsOff: readonly (readonly [group: string, id: string])[],
  lineOf: LineOf,
): readonly Issue[] =>
  Object.entries(says)
    .flatMap(([group, rows]) => Object.entries(rows).map(([id, text]) => ({ group, id, text })))
    .flatMap(({ group, id, text }): Issue[] => {
      const at = { file, line: lineOf([group, id]) };
      const grade = gradeOf(text);
      const isOff = handsOff.some(([inGroup, called]) => inGroup === group && called === id);
      const order = isOff ? touchOrdered(text) : undefined;
      return [
        ...(grade > HIGHEST_GRADE
          ? [{ ...at, code: 'too-hard' as const, text, grade, most: HIGHEST_GRADE }]
          : []),
        ...(order
          ? [
              {
                ...at,
                code: 'touch-ordered' as const,
                order,
                where: 'where hands are off the film',
                becomes: 'not' as const,
              },
            ]
          : []),
      ];
    });
