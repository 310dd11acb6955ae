import type { Issue } from '#engine/faults/issue.ts';
import { type FindIndex, type FindKind, type FindNames, find, isNamedInSight } from '#engine/find.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import type { SignMatrix } from '#engine/see/matrix.ts';
import { firstInsteadOf, type Survey } from '#engine/see/survey.ts';

/** Hits within which a page must stand when one of its own names is typed. */
const IN_SIGHT = 3;

/** Defects that she could not come to from what she sees or from any look-alike. */
export function* reachable(known: Knowledge, matrix: SignMatrix, survey: Survey): Generator<Issue> {
  const alike = new Set<string>(known.defects.flatMap((defect) => defect['look-alikes']));
  for (const defect of known.defects) {
    const tell = (by: 'signs' | 'look-alike'): Issue => ({
      file: defect.file,
      line: 1,
      code: 'unreachable-defect',
      by,
      defect: defect.id,
      other: firstInsteadOf(matrix, defect.id),
    });
    if (survey.neverFirst.includes(defect.id)) yield tell('signs');
    if (!alike.has(defect.id)) yield tell('look-alike');
  }
}

/** A page that is called by names. */
type Called = {
  readonly kind: FindKind;
  readonly id: string;
  readonly file: string;
  readonly lineOf: (path: readonly PropertyKey[]) => number;
  readonly name: string;
  readonly nameKey: string;
  readonly also: readonly string[];
};
/** A name or other name, and where it stands. */
type Name = { readonly of: Called; readonly typed: string; readonly path: readonly PropertyKey[] };

/** Every name and other name of a flaw, a product and a word, with its line. */
const called = (known: Knowledge): Called[] => [
  ...known.defects.map((one): Called => ({ ...one, kind: 'defect', nameKey: 'name' })),
  ...known.products.map((one): Called => ({ ...one, kind: 'product', nameKey: 'name' })),
  ...known.terms.map((one): Called => ({ ...one, kind: 'glossary', name: one.term, nameKey: 'term' })),
];

/** Names that more pages bear than stand in sight: which of them come first hangs on the words that were learned. */
export const sharedNames = (known: Knowledge, names: FindNames): readonly Name[] =>
  called(known).flatMap((of) =>
    [
      { of, typed: of.name, path: [of.nameKey] as const },
      ...of.also.map((typed, at) => ({ of, typed, path: ['also', at] as const })),
    ].filter(({ typed }) => !isNamedInSight(names, typed, of.kind, of.id)),
  );

/** Names that do not find their page. */
export function* lostNames(names: readonly Name[], index: FindIndex): Generator<Issue> {
  for (const { of, typed, path } of names) {
    const hits = find(index, typed, { limit: IN_SIGHT });
    if (hits.some((hit) => hit.kind === of.kind && hit.id === of.id)) continue;
    yield {
      file: of.file,
      line: of.lineOf(path),
      code: 'unreachable-defect',
      by: path[0] === 'also' ? 'other name' : 'name',
      typed,
      found: hits.map((hit) => hit.id),
    };
  }
}
