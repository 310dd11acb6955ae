import type { Issue } from '#engine/issue.ts';
import { knowledgeOf } from '#engine/knowledge.ts';
import { SharedActs, SharedSteps } from '#engine/model/shared.ts';
import { type ContentRoot, filesIn, textOf } from './files.ts';
import { readTable, type Table } from './table.ts';

const ACTS = 'content/acts.yaml';
const STEPS = 'content/steps.yaml';

/** The names of usual acts and of common steps that the remedies below `root` use. */
const namesUsed = (root: ContentRoot): ReadonlySet<string> => {
  const folder = 'content/remedies';
  const texts = filesIn(root, folder, '.mdx').map((name) => textOf(root, `${folder}/${name}`) ?? '');
  return new Set(
    texts.flatMap((text) =>
      [...text.matchAll(/^ {2}(?:- |as: )([a-z][a-z0-9-]*)$/gm)].map(([, name]) => name ?? ''),
    ),
  );
};

/** Faults of what stands once for many remedies: shape, and names that nothing uses. */
export const sharedFaults = (root: ContentRoot): readonly Issue[] => {
  const none = knowledgeOf([]);
  const read = <T>(file: string, schema: Parameters<typeof readTable<T>>[3]): Table<T> | undefined =>
    textOf(root, file) !== undefined ? readTable(none, root, file, schema) : undefined;
  const acts = read(ACTS, Object.assign(SharedActs, { shape: {} }));
  const steps = read(STEPS, Object.assign(SharedSteps, { shape: {} }));
  const broken = [acts, steps].flatMap((table) => (table && !table.ok ? table.issues : []));
  if (broken.length) return broken;
  const used = namesUsed(root);
  const unused = (table: Table<object> | undefined, file: string, what: string): Issue[] =>
    table?.ok
      ? Object.keys(table.value)
          .filter((name) => !used.has(name) && name !== 'film')
          .map((name) => ({ file, line: table.lineOf([name], true), code: 'unused-name', what, name }))
      : [];
  return [...unused(acts, ACTS, 'kind of repair'), ...unused(steps, STEPS, 'common step')];
};
