import type { Issue } from '#engine/faults/issue.ts';
import { FOLDERS } from '#engine/model/index.ts';
import { nearest } from '#engine/plain/nearest.ts';
import { type ContentRoot, filesIn, foldersIn } from './files.ts';

/** Folders that hold no pages. */
const OTHERS = ['guide', 'hear', 'practice', 'schema', 'tools'];

/** Files that nothing reads, because they have another ending or lie in a folder of no kind. */
export const strayFiles = (root: ContentRoot): readonly Issue[] => {
  const kinds: readonly string[] = Object.values(FOLDERS);
  const misnamed = kinds.flatMap((folder) =>
    filesIn(root, `content/${folder}`, '')
      .filter((name) => !name.endsWith('.mdx') && !name.startsWith('.'))
      .map(
        (name): Issue => ({
          file: `content/${folder}/${name}`,
          line: 1,
          code: 'stray-file',
          should: `content/${folder}/${name.replace(/\..*$/, '')}.mdx`,
        }),
      ),
  );
  const misplaced = foldersIn(root, 'content')
    .filter((folder) => !kinds.includes(folder) && !OTHERS.includes(folder))
    .flatMap((folder) =>
      filesIn(root, `content/${folder}`, '').map(
        (name): Issue => ({
          file: `content/${folder}/${name}`,
          line: 1,
          code: 'stray-file',
          should: `content/${nearest(folder, kinds) ?? 'defects'}/${name}`,
        }),
      ),
    );
  return [...misnamed, ...misplaced];
};
