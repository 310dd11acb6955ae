import type { Issue } from '#engine/faults/issue.ts';
import { type FindIndex, type FindKind, find, isNamedInSight } from '#engine/find.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import type { SignMatrix } from '#engine/see/matrix.ts';
import { firstInsteadOf, type Survey } from '#engine/see/survey.ts';

/** Hits within which a page must stand when one of its own names is typed. */
const IN_SIGHT = 3;

/** Defects that she could not come to from what she sees or from any look-alike, and names that do not find their page. */
export function* reachable(
  known: Knowledge,
  matrix: SignMatrix,
  survey: Survey,
  index: FindIndex,
): Generator<Issue> {
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
  yield* namesFindTheirPage(known, index);
}

type Named = {
  readonly kind: FindKind;
  readonly id: string;
  readonly file: string;
  readonly lineOf: (path: readonly PropertyKey[]) => number;
  readonly name: string;
  readonly nameKey: string;
  readonly also: readonly string[];
};

/** Every name and other name of a flaw, a product and a word, with its line. */
const named = (known: Knowledge): Named[] => [
  ...known.defects.map((one): Named => ({ ...one, kind: 'defect', nameKey: 'name' })),
  ...known.products.map((one): Named => ({ ...one, kind: 'product', nameKey: 'name' })),
  ...known.terms.map((one): Named => ({ ...one, kind: 'glossary', name: one.term, nameKey: 'term' })),
];

function* namesFindTheirPage(known: Knowledge, index: FindIndex): Generator<Issue> {
  for (const { kind, id, file, lineOf, name, nameKey, also } of named(known)) {
    const lines = [[name, [nameKey]] as const, ...also.map((typed, at) => [typed, ['also', at]] as const)];
    for (const [typed, path] of lines) {
      if (isNamedInSight(index, typed, kind, id)) continue;
      const hits = find(index, typed, { limit: IN_SIGHT });
      if (hits.some((hit) => hit.kind === kind && hit.id === id)) continue;
      yield {
        file,
        line: lineOf(path),
        code: 'unreachable-defect',
        by: path[0] === 'also' ? 'other name' : 'name',
        typed,
        found: hits.map((hit) => hit.id),
      };
    }
  }
}
