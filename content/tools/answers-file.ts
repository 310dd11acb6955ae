import { z } from 'zod';
import type { Fault } from '#engine/faults/issue.ts';
import { faultOfReference } from '#engine/faults/references.ts';
import { say } from '#engine/faults/say.ts';
import { schemaFaults } from '#engine/faults/schema-faults.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { SIGNS } from '#engine/model/defect.ts';
import { FAMILIES } from '#engine/model/family.ts';
import { FREQUENCY } from '#engine/model/frequency.ts';
import { keysOf } from '#engine/plain/entry-of.ts';
import { parseFrontMatter } from './read.ts';
import { type Mention, thereOf } from './table.ts';

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

/** Every id in the answers that must be there. A repair may be new and told in words. */
const mentions = (told: AnswersFile): readonly Mention[] => [
  ...told.alike.map((id, at): Mention => ({ kind: 'defect', id, path: ['alike', at] })),
  ...Object.keys(told.signs).map((id): Mention => ({ kind: 'question', id, path: ['signs', id] })),
  ...Object.keys(told.mirrors ?? {}).map((id): Mention => ({ kind: 'defect', id, path: ['mirrors', id] })),
];

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
  const there = thereOf(known);
  const faults = mentions(parsed.data).flatMap(({ kind, id, path }) => {
    const fault = faultOfReference(there, kind, id);
    return fault ? [tell(lineOf(path), fault)] : [];
  });
  return faults.length ? { faults } : { told: parsed.data };
};
