import type { Issue } from '#engine/faults/issue.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { link, type Retired } from '#engine/link.ts';
import { prove } from '#engine/prove/prove.ts';
import { undated } from './dated.ts';
import { type ContentRoot, textOf } from './files.ts';
import { tooHard } from './hard-words.ts';
import { leftOver } from './left-over.ts';
import { proseFaults } from './prose/check.ts';
import { lostAddresses, toldOfTheNew } from './published.ts';
import { readContent } from './read.ts';
import { retiredFaults, retiredTable } from './retired.ts';
import { sharedFaults } from './shared.ts';
import { needlessSigns } from './signs-told.ts';
import { strayFiles } from './stray.ts';

/** Ids that moved or merged, from content/retired.yaml. */
export const readRetired = (root: ContentRoot): Retired => {
  const table = retiredTable(root);
  return table.ok ? table.value : {};
};

const TABLES = ['plan.yaml', 'care.yaml'];

/** Sources that the tables rest on; they count as used though no entry names them. */
const citedInTables = (root: ContentRoot): ReadonlySet<string> => {
  const texts = TABLES.map((name) => textOf(root, `content/${name}`) ?? '');
  const cited = texts.flatMap((text) => [...text.matchAll(/source: ([a-z0-9-]+)/g)]);
  return new Set(cited.map(([, id]) => id ?? ''));
};

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
