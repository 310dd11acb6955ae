import type { Knowledge } from '#engine/index.ts';
import type { Grade } from '#engine/model/source.ts';
import { wetClaim } from '#engine/wet-claim.ts';
import { defectUrl, lessonUrl, remedyUrl, ruleUrl, WHICH_CAN } from '../shared/urls.ts';

/** How a grade is said after a statement. */
export const GRADE_WORDS = {
  published: 'published',
  'common-practice': 'common practice, no source',
  'from-memory': 'from memory, not looked up again',
  invented: 'made up for an example',
} as const satisfies Record<Grade, string>;

type Resting = {
  readonly says: string;
  readonly at?: string | undefined;
  readonly from: { name: string; url?: string };
};

/** How many statements of flaws, repairs, questions, rules, kinds of finish and lessons are known in each way. */
export const statementsByGrade = (known: Knowledge): ReadonlyMap<Grade, number> => {
  const claims = [
    ...known.defects.flatMap((one) => [wetClaim(one), ...one.claims]),
    ...known.remedies.flatMap((one) => one.claims),
    ...known.questions.flatMap((one) => one.claims),
    ...known.rules.flatMap((one) => one.claims),
    ...known.products.flatMap((one) => one.claims),
    ...known.lessons.flatMap((one) => one.claims),
  ];
  const counts = new Map<Grade, number>();
  for (const { grade } of claims) counts.set(grade, (counts.get(grade) ?? 0) + 1);
  return counts;
};

/** For each source, the statements that rest on it and where they stand. */
export const claimsBySource = (known: Knowledge): ReadonlyMap<string, readonly Resting[]> => {
  const found = new Map<string, Resting[]>();
  const add = (
    claims: readonly { says: string; source?: string | undefined; at?: string | undefined }[],
    from: Resting['from'],
  ) => {
    for (const { says, source, at } of claims)
      if (source) found.set(source, [...(found.get(source) ?? []), { says, at, from }]);
  };
  for (const one of known.defects)
    add([wetClaim(one), ...one.claims], { name: one.name, url: defectUrl(one.id) });
  for (const one of known.remedies) add(one.claims, { name: one.name, url: remedyUrl(one.id) });
  for (const one of known.questions) add(one.claims, { name: one.ask });
  for (const one of known.rules) add(one.claims, { name: one.title, url: ruleUrl(one.id) });
  for (const one of known.products) add(one.claims, { name: one.name, url: WHICH_CAN });
  for (const one of known.lessons) add(one.claims, { name: one.title, url: lessonUrl(one.id) });
  return found;
};
