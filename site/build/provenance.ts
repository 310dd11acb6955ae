import type { Knowledge } from '#engine/index.ts';
import { wetClaim } from '#engine/knowledge/wet-claim.ts';
import type { Grade } from '#engine/model/source.ts';
import { defectUrl, lessonUrl, remedyUrl, ruleUrl, WHICH_CAN } from '../shared/urls.ts';

/** How a grade is said after a statement. */
export const GRADE_WORDS = {
  published: 'published',
  'common-practice': 'common practice, no source',
  'from-memory': 'from memory, not looked up again',
  invented: 'made up for an example',
} as const satisfies Record<Grade, string>;

type Place = { readonly name: string; readonly url?: string };

type Resting = {
  readonly says: string;
  readonly at?: string | undefined;
  readonly from: Place;
};

type Claims = Knowledge['defects'][number]['claims'];

/** All that is stated of flaws, repairs, questions, rules, kinds of finish and lessons, and where it stands. */
const stated = (known: Knowledge): readonly { readonly claims: Claims; readonly from: Place }[] => [
  ...known.defects.map((one) => ({
    claims: [wetClaim(one), ...one.claims],
    from: { name: one.name, url: defectUrl(one.id) },
  })),
  ...known.remedies.map(({ claims, name, id }) => ({ claims, from: { name, url: remedyUrl(id) } })),
  ...known.questions.map(({ claims, ask }) => ({ claims, from: { name: ask } })),
  ...known.rules.map(({ claims, title, id }) => ({ claims, from: { name: title, url: ruleUrl(id) } })),
  ...known.products.map(({ claims, name }) => ({ claims, from: { name, url: WHICH_CAN } })),
  ...known.lessons.map(({ claims, title, id }) => ({ claims, from: { name: title, url: lessonUrl(id) } })),
];

/** The statements that are known in one way, and where they stand. */
export const statementsOf = (known: Knowledge, wanted: Grade): readonly Resting[] =>
  stated(known).flatMap(({ claims, from }) =>
    claims.filter(({ grade }) => grade === wanted).map(({ says }) => ({ says, from })),
  );

/** How many statements are known in each way. */
export const statementsByGrade = (known: Knowledge): ReadonlyMap<Grade, number> => {
  const counts = new Map<Grade, number>();
  for (const { claims } of stated(known))
    for (const { grade } of claims) counts.set(grade, (counts.get(grade) ?? 0) + 1);
  return counts;
};

/** For each source, the statements that rest on it and where they stand. */
export const claimsBySource = (known: Knowledge): ReadonlyMap<string, readonly Resting[]> => {
  const found = new Map<string, Resting[]>();
  for (const { claims, from } of stated(known))
    for (const { says, source, at } of claims)
      if (source) found.set(source, [...(found.get(source) ?? []), { says, at, from }]);
  return found;
};
