import type { Issue } from '#engine/issue.ts';
import type { EntryKind } from '#engine/model/kinds.ts';
import type { RawEntry } from '#engine/model/knowledge.ts';
import { nearestId } from '#engine/nearest.ts';
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

/**
 * Published addresses of entries that are there no more and that nothing stands for. The build looks at every address; a
 * renamed or deleted file is told here, before anything is built.
 */
export const lostAddresses = (entries: readonly RawEntry[], root: ContentRoot): readonly Issue[] => {
  const text = textOf(root, FILE);
  const table = retiredTable(root);
  if (text === undefined || !table.ok) return [];
  const ids = Map.groupBy(entries, ({ kind }) => kind);
  return text.split('\n').flatMap((line, at): Issue[] => {
    const [address, folder = '', id = ''] = ADDRESS.exec(line.trim()) ?? [];
    const kind = KINDS[folder];
    if (!address || !kind) return [];
    const there = (ids.get(kind) ?? []).map((entry) => entry.id);
    return there.includes(id) || `${kind}/${id}` in table.value
      ? []
      : [
          {
            file: FILE,
            line: at + 1,
            code: 'lost-address',
            address,
            kind,
            id,
            nearest: nearestId(id, there),
          },
        ];
  });
};
