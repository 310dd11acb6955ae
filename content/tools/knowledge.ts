import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { load } from 'js-yaml';
import type { Issue } from '#engine/issue.ts';
import type { Knowledge } from '#engine/knowledge.ts';
import { link, type Retired } from '#engine/link.ts';
import { prove } from '#engine/prove/index.ts';
import { plainWords } from './plain-words.ts';
import { readContent } from './read.ts';
import { sharedFaults } from './shared.ts';

/** Ids that moved or merged, from content/retired.yaml. */
export const readRetired = (root: string): Retired => {
  const file = join(root, 'content', 'retired.yaml');
  return existsSync(file) ? ((load(readFileSync(file, 'utf8')) as Retired | null) ?? {}) : {};
};

const TABLES = ['plan.yaml', 'care.yaml'];

/** Sources that the tables rest on; they count as used though no entry names them. */
const citedInTables = (root: string): ReadonlySet<string> => {
  const texts = TABLES.map((name) => join(root, 'content', name))
    .filter((file) => existsSync(file))
    .map((file) => readFileSync(file, 'utf8'));
  const cited = texts.flatMap((text) => [...text.matchAll(/source: ([a-z0-9-]+)/g)]);
  return new Set(cited.map(([, id]) => id ?? ''));
};

/** The knowledge read and linked, or every issue found. The proofs take as long again and are left to `check`. */
export const linkedKnowledge = (root: string): { known?: Knowledge; issues: readonly Issue[] } => {
  const shared = sharedFaults(root);
  if (shared.length) return { issues: shared };
  const linked = link(readContent(root), readRetired(root));
  return linked.ok ? { known: linked.value, issues: [] } : { issues: linked.issues };
};

/** The whole knowledge read, linked and proved, or every issue found. */
export const provenKnowledge = (root: string): { known?: Knowledge; issues: readonly Issue[] } => {
  const { known, issues } = linkedKnowledge(root);
  if (!known) return { issues };
  const cited = citedInTables(root);
  const proved = prove(known).filter(
    (issue) => !(issue.code === 'orphan' && issue.kind === 'source' && cited.has(issue.id)),
  );
  return { known, issues: [...proved, ...plainWords(known, root)] };
};
