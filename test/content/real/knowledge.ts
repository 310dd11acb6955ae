/** The real content, read and linked once for the tests that walk it. */
import { link } from '#engine/link.ts';
import { readRetired } from '../../../content/tools/knowledge.ts';
import { readContent } from '../../../content/tools/read.ts';

const root = process.cwd();

/** Every content file as written. */
export const rawContent = readContent(root);

/** Ids that moved, from content/retired.yaml. */
export const retired = readRetired(root);

const linked = link(rawContent, retired);
if (!linked.ok)
  throw new Error(
    `the content does not link:\n${linked.issues.map((issue) => JSON.stringify(issue)).join('\n')}`,
  );

/** The linked knowledge of the real content. */
export const known = linked.value;
