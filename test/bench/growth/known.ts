import type { Knowledge } from '#engine/index.ts';
import { link } from '#engine/link.ts';
import { readContent } from '../../../content/tools/read.ts';
import { grown } from './knowledge.ts';

/** The knowledge so many times over, linked. */
export const grownKnowledge = (times: number): Knowledge => {
  const linked = link(grown(readContent(process.cwd()), times));
  if (!linked.ok) throw new Error(`what was grown ${times}× does not link: ${linked.issues.length} faults`);
  return linked.value;
};
