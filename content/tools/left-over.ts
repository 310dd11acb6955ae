import type { Issue } from '#engine/faults/issue.ts';
import { FOLDERS } from '#engine/model/index.ts';
import { type ContentRoot, filesIn, textOf } from './files.ts';

/** What a template leaves for the author: words in angle brackets. */
const TO_FILL_IN = /<[A-Za-z][^<>\n]*[\s.?][^<>\n]*>/g;

/** Every place of a content file that still holds what a template left to be filled in. */
export const leftOver = (root: ContentRoot): readonly Issue[] =>
  Object.values(FOLDERS).flatMap((folder) =>
    filesIn(root, `content/${folder}`, '.mdx').flatMap((name) => {
      const file = `content/${folder}/${name}`;
      const text = textOf(root, file) ?? '';
      if (!text.includes('<')) return [];
      return text
        .split('\n')
        .flatMap((line, index) =>
          [...line.matchAll(TO_FILL_IN)].map(
            ([left]): Issue => ({ file, line: index + 1, code: 'left-over', text: left }),
          ),
        );
    }),
  );
