import type { Issue } from '#engine/faults/issue.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { link, type Retired } from '#engine/link.ts';
import { prove } from '#engine/prove/prove.ts';
import { undated } from './dated.ts';
import { type ContentRoot, filesIn, textOf } from './files.ts';
import { tooHard } from './hard-words.ts';
import { leftOver } from './left-over.ts';
import { proseFaults } from './prose/check.ts';
import { lostAddresses, toldOfTheNew } from './published.ts';
import { readContent, readTableText } from './read.ts';
import { retiredFaults, retiredTable } from './retired.ts';
import { sharedFaults } from './shared.ts';
import { needlessSigns } from './signs-told.ts';
import { strayFiles } from './stray.ts';
import { sourcesIn } from './table.ts';

/** Ids that moved or merged, from content/retired.yaml. */
export const readRetired = (root: ContentRoot): Retired => {
  const table = retiredTable(root);
  return table.ok ? table.value : {};
};

const FOLDERS_OF_TABLES = ['content', 'content/hear', 'content/practice'];

/** Sources that any table rests on; they count as used though no entry names them. */
export const citedInTables = (root: ContentRoot): ReadonlySet<string> =>
  new Set(
    FOLDERS_OF_TABLES.flatMap((folder) =>
      filesIn(root, folder, '.yaml').flatMap((name) => {
        const file = `${folder}/${name}`;
        // The long tables of what people say cite nothing, and are not parsed for it.
        return /\bsource\b["']?\s*:/.test(textOf(root, file) ?? '')
          ? sourcesIn(readTableText(root, file).data)
          : [];
      }),
    ),
  );

/** The knowledge read and linked, or every issue found. The proofs take as long again and are left to `check`. */
export const linkedKnowledge = (root: ContentRoot): { known?: Knowledge; issues: readonly Issue[] } => {
  const shared = sharedFaults(root);
  if (shared.length) return { issues: shared };
  const entries = readContent(root);
  const told = [...retiredFaults(entries, root), ...lostAddresses(entries, root), ...strayFiles(root)];
  const linked = link(entries, readRetired(root));
  if (!linked.ok) return { issues: [...told, ...linked.issues] };
  return told.length ? { issues: told } : { known: linked.value, issues: [] };
};

/** The whole knowledge read, linked and proved, or every issue found. */
export const provenKnowledge = (root: ContentRoot): { known?: Knowledge; issues: readonly Issue[] } => {
  const { known, issues } = linkedKnowledge(root);
  if (!known) return { issues };
  const cited = citedInTables(root);
  const proved = prove(known).filter(
    (issue) => !(issue.code === 'orphan' && issue.kind === 'source' && cited.has(issue.id)),
  );
  return {
    known,
    issues: [
      ...toldOfTheNew(proved, root),
      ...undated(known),
      ...needlessSigns(known, root),
      ...tooHard(known, root),
      ...leftOver(root),
      ...proseFaults(root),
    ],
  };
};
