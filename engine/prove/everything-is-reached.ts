import type { Issue } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import { isAsk, visits } from '../knowledge/tree.ts';
import type { EntryKind } from '../model/kinds.ts';

/** Every remedy, question and source is used by something; what nothing leads to is told. */
export function* everythingIsReached(known: Knowledge): Generator<Issue> {
  const used: Record<'remedy' | 'question' | 'source', Set<string>> = {
    remedy: new Set(),
    question: new Set(),
    source: new Set(),
  };
  for (const defect of known.defects) {
    for (const question of Object.keys(defect.signs)) used.question.add(question);
    for (const { branch } of visits(defect.tree)) {
      if (isAsk(branch)) used.question.add(branch.ask);
      else if ('remedy' in branch) used.remedy.add(branch.remedy);
    }
  }
  for (const remedy of known.remedies) if (remedy['if-not'].remedy) used.remedy.add(remedy['if-not'].remedy);
  for (const list of [
    known.defects,
    known.remedies,
    known.rules,
    known.products,
    known.lessons,
    known.questions,
  ])
    for (const entry of list)
      for (const claim of entry.claims) if (claim.source) used.source.add(claim.source);

  for (const defect of known.defects) {
    const { source } = defect['while-wet-rests-on'];
    if (source) used.source.add(source);
  }

  const orphans = (
    kind: EntryKind,
    entries: readonly { id: string; file: string }[],
    seen: ReadonlySet<string>,
  ) =>
    entries
      .filter((entry) => !seen.has(entry.id))
      .map((entry): Issue => ({ file: entry.file, line: 1, code: 'orphan', kind, id: entry.id }));
  yield* orphans('remedy', known.remedies, used.remedy);
  yield* orphans('question', known.questions, used.question);
  yield* orphans('source', known.sources, used.source);
}
