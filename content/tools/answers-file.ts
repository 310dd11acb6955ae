import { z } from 'zod';
import type { Fault } from '#engine/faults/issue.ts';
import { say } from '#engine/faults/say.ts';
import { schemaFaults } from '#engine/faults/schema-faults.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { SIGNS } from '#engine/model/defect.ts';
import { FAMILIES } from '#engine/model/family.ts';
import { FREQUENCY } from '#engine/model/frequency.ts';
import type { EntryKind } from '#engine/model/kinds.ts';
import { keysOf } from '#engine/plain/entry-of.ts';
import { nearestId } from '#engine/plain/nearest.ts';
import { parseFrontMatter } from './read.ts';

const Signs = z.record(z.string(), z.enum(SIGNS));

/** What `npm run new -- defect <id> --answers <file>` takes: the answers that the terminal would be given. */
const AnswersFile = z.strictObject({
  name: z.string().min(3).optional(),
  summary: z.string().min(20),
  alike: z.array(z.string()).min(1),
  families: z.array(z.enum(FAMILIES)).min(1).optional(),
  often: z.enum(keysOf(FREQUENCY)).optional(),
  signs: Signs,
  mark: z.string().min(8).optional(),
  'mark-is': z.string().optional(),
  mirrors: Signs.optional(),
  repairs: z.array(z.string()).max(3).optional(),
  decides: z.record(z.string(), z.string()).optional(),
});
type AnswersFile = z.infer<typeof AnswersFile>;

type Mention = { readonly kind: EntryKind; readonly id: string; readonly path: readonly PropertyKey[] };

/** Every id in the answers that must be there. A repair may be new and told in words. */
const mentions = (told: AnswersFile): readonly Mention[] => [
  ...told.alike.map((id, at): Mention => ({ kind: 'defect', id, path: ['alike', at] })),
  ...Object.keys(told.signs).map((id): Mention => ({ kind: 'question', id, path: ['signs', id] })),
  ...Object.keys(told.mirrors ?? {}).map((id): Mention => ({ kind: 'defect', id, path: ['mirrors', id] })),
];

const idsOf = (known: Knowledge, kind: EntryKind): readonly string[] =>
  (kind === 'defect' ? known.defects : known.questions).map(({ id }) => id);

/** The answers of a file, or every fault of it with its line: nothing is written on half of them. */
export const readAnswers = (
  known: Knowledge,
  file: string,
  text: string,
): { readonly told: AnswersFile } | { readonly faults: readonly string[] } => {
  // JSON is YAML, whose reader knows the lines; the fence that it needs stands one line above the first.
  const { data, lineOf, broken } = parseFrontMatter(`---\n${text}\n---\n`);
  const tell = (line: number, fault: Fault): string => say({ file, line: Math.max(1, line - 1), ...fault });
  if (broken) return { faults: [tell(broken.line, broken.fault)] };
  const parsed = AnswersFile.safeParse(data);
  if (!parsed.success)
    return {
      faults: schemaFaults(parsed.error, data, AnswersFile).map(({ path, atKey, fault }) =>
        tell(lineOf(path, atKey), fault),
      ),
    };
  const dead = mentions(parsed.data).filter(({ kind, id }) => !known.has(kind, id));
  if (dead.length)
    return {
      faults: dead.map(({ kind, id, path }) =>
        tell(lineOf(path), { code: 'dead-link', kind, id, nearest: nearestId(id, idsOf(known, kind)) }),
      ),
    };
  return { told: parsed.data };
};
