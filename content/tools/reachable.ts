import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { load } from 'js-yaml';
import { buildIndex, documentsOf, find } from '#engine/find.ts';
import type { Issue } from '#engine/issue.ts';
import type { Knowledge } from '#engine/knowledge.ts';
import { Words } from '#engine/model/words.ts';
import type { Survey } from '#engine/see/survey.ts';

/** Hits within which a defect must stand when its own name is typed. */
const IN_SIGHT = 3;

/** Defects that she could not come to: from what she sees, by search, or from any look-alike. */
export function* reachable(known: Knowledge, survey: Survey, root: string): Generator<Issue> {
  const words = Words.parse(load(readFileSync(join(root, 'content/words.yaml'), 'utf8')));
  const index = buildIndex(documentsOf(known), words);
  const alike = new Set<string>(known.defects.flatMap((defect) => defect['look-alikes']));
  for (const defect of known.defects) {
    const tell = (by: string): Issue => ({
      file: defect.file,
      line: 1,
      code: 'unreachable-defect',
      defect: defect.id,
      by,
    });
    if (survey.neverFirst.includes(defect.id)) yield tell('from what she sees (/see/)');
    if (!find(index, defect.name, { limit: IN_SIGHT }).some((hit) => hit.id === defect.id))
      yield tell('by typing its name into the search');
    if (!alike.has(defect.id)) yield tell('from any look-alike');
  }
}
