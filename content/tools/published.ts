import type { Issue } from '#engine/faults/issue.ts';
import { type EntryKind, FOLDERS } from '#engine/model/kinds.ts';
import type { RawEntry } from '#engine/model/knowledge.ts';
import { nearestId } from '#engine/plain/nearest.ts';
import { type ContentRoot, textOf } from './files.ts';
import { retiredTable } from './retired.ts';

const FILE = 'content/addresses.txt';

/** The kind of entry that a published address belongs to. Below /learn/ stand pages of the site as well as lessons. */
const KINDS: Readonly<Record<string, EntryKind>> = {
  defects: 'defect',
  remedies: 'remedy',
  sources: 'source',
  safety: 'rule',
  'glossary/#': 'term',
};
const ADDRESS = /^\/(defects|remedies|sources|safety|glossary\/#)\/?([a-z0-9]+(?:-[a-z0-9]+)*)\/?$/;

type Published = {
  readonly address: string;
  readonly kind: EntryKind;
  readonly id: string;
  readonly line: number;
};

/** The addresses of entries, each with its line; no file is none. */
const publishedIn = (root: ContentRoot): readonly Published[] =>
  (textOf(root, FILE) ?? '').split('\n').flatMap((line, at): Published[] => {
    const [address, folder = '', id = ''] = ADDRESS.exec(line.trim()) ?? [];
    const kind = KINDS[folder];
    return address && kind ? [{ address, kind, id, line: at + 1 }] : [];
  });

/** Of two names that are almost alike, the published one stays: the other is told, in its own file. */
export const toldOfTheNew = (issues: readonly Issue[], root: ContentRoot): readonly Issue[] => {
  if (!issues.some(({ code }) => code === 'near-name')) return issues;
  const published = new Set(publishedIn(root).map(({ kind, id }) => `${kind}/${id}`));
  return issues.map((issue) => {
    if (issue.code !== 'near-name') return issue;
    const { kind, id, name, other } = issue;
    const [is, isOther] = [id, other.id].map((one) => published.has(`${kind}/${one}`));
    if (is === isOther) return issue;
    if (isOther) return { ...issue, isNew: true };
    const file = `content/${FOLDERS[kind]}/${other.id}.mdx`;
    return { ...issue, file, id: other.id, name: other.name, other: { id, name }, isNew: true };
  });
};

/**
 * Published addresses of entries that are there no more and that nothing stands for. The build looks at every address; a
 * renamed or deleted file is told here, before anything is built.
 */
export const lostAddresses = (entries: readonly RawEntry[], root: ContentRoot): readonly Issue[] => {
  const table = retiredTable(root);
  if (!table.ok) return [];
  const ids = Map.groupBy(entries, ({ kind }) => kind);
  return publishedIn(root).flatMap(({ address, kind, id, line }): Issue[] => {
    const there = (ids.get(kind) ?? []).map((entry) => entry.id);
    return there.includes(id) || `${kind}/${id}` in table.value
      ? []
      : [
          {
            file: FILE,
            line,
            code: 'lost-address',
            address,
            kind,
            id,
            // Names of sources are numbers: the nearest is another book.
            nearest: kind === 'source' ? undefined : nearestId(id, there),
          },
        ];
  });
};
