/** What people wrote of their finishes, with the answers; how it was collected stands in README.md beside this. */
import { readFileSync } from 'node:fs';
import { load } from 'js-yaml';
import { z } from 'zod';
import { FACTS } from '#engine/model/facts.ts';
import { DOINGS } from '#engine/model/remedy.ts';
import { STAGES } from '#engine/model/stage.ts';

/** `open` is for learning and tuning. `sealed` is scored once, at the end, and read by nobody before. */
export type Part = 'open' | 'sealed';

const retired = z
  .record(z.string(), z.string())
  .parse(load(readFileSync(new URL('../../content/retired.yaml', import.meta.url), 'utf8')));
/** What an id is called today: what was merged or moved since it was written down is followed. */
const current = (kind: string, id: string): string => {
  const moved = retired[`${kind}/${id}`];
  return moved === undefined ? id : current(kind, moved);
};

const Facts = z.record(z.string(), z.union([z.string(), z.number()])).superRefine((facts, context) => {
  for (const [name, value] of Object.entries(facts)) {
    const shape = Object.hasOwn(FACTS, name) ? FACTS[name as keyof typeof FACTS] : undefined;
    const fits =
      shape?.kind === 'choice'
        ? (shape.values as readonly unknown[]).includes(value)
        : shape && typeof value === 'number' && value >= shape.min && value <= shape.max;
    if (!fits) context.addIssue(`${name}: ${value} is no fact of engine/model/facts.ts`);
  }
});

/**
 * The pages that answer: an id of `content/defects`, or `rule/`, `lesson/`, `term/`, `product/`, `remedy/` and an id
 * of that folder, or `page/clock`, `page/schedule`, `page/jobs`, `page/which-coat`.
 */
const Answers = z.array(
  z.string().transform((answer) => {
    const [kind, id] = answer.split('/');
    return id === undefined ? current('defect', answer) : `${kind}/${current(kind as string, id)}`;
  }),
);
const id = (kind: string) => z.string().transform((one) => current(kind, one));
const invented = z.literal(true).optional().describe('Written for these tests in the style of the thread.');

const Phrase = z.strictObject({
  id: z.string(),
  q: z.string().min(3).max(400),
  kind: z.enum([
    'name',
    'description',
    'misspelled',
    'sentence',
    'story',
    'safety',
    'job',
    'off topic',
    'near topic',
  ]),
  is: Answers.describe('Every page that would be a right answer; none where it is off topic or near topic.'),
  invented,
});
export type Phrase = z.infer<typeof Phrase>;

const Post = z.strictObject({
  id: z.string(),
  text: z.string().min(50).max(4000),
  is: Answers.min(1),
  facts: Facts.describe('What the text says, and nothing that it leaves to guess.'),
  driest: z.enum(STAGES).describe('The driest stage that the text allows.'),
  now: z.array(z.enum(DOINGS)).min(1).describe('Doings that would be right now; any other would not.'),
  invented,
});
export type Post = z.infer<typeof Post>;

const Trouble = z.strictObject({
  id: z.string(),
  title: z.string().min(8),
  says: z.string().min(12).describe('The cause and the cure as the source has them, in our words.'),
  defect: id('defect'),
  facts: Facts,
  yes: z.array(id('question')),
  no: z.array(id('question')),
  right: z.enum(['normal', 'stop', 'act']),
  acceptable: z.array(id('remedy')).min(1).describe('Doings, ids of remedies, or `does:<step>/<means>`.'),
  forbidden: z.array(z.string()).describe('Doings or kinds of step that would do harm.'),
  stops: z.array(id('rule')),
  cause: z.string().optional(),
  filled: z
    .array(id('question'))
    .optional()
    .describe(
      'Of the answers above those that the source leaves open, given so that the case can be walked.',
    ),
  invented,
});
export type Trouble = z.infer<typeof Trouble>;

const Collected = z.strictObject({
  id: z.string(),
  title: z.string(),
  story: z.string(),
  is: Answers.min(1),
  says: z.string(),
  observed: z.array(z.string()),
  now: z.array(z.string()).min(1),
  repair: z.array(z.string()),
  never: z.array(z.string()),
  invented: z.string().describe('What of the case was filled in by the collector.'),
});

const Thread = z.strictObject({
  thread: z.string(),
  kind: z.string(),
  at: z.string(),
  part: z.enum(['open', 'sealed']),
  cases: z
    .enum(['open', 'sealed'])
    .optional()
    .describe('The part of its cases, where they were scored before its phrases and posts.'),
  posts: z
    .enum(['open', 'sealed'])
    .optional()
    .describe('The part of its posts, where they were opened and its phrases were not.'),
});

const lines = (name: string): unknown[] =>
  readFileSync(new URL(`./${name}.jsonl`, import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as unknown);

const read = <T extends z.ZodType>(shape: T, name: string): z.infer<T>[] => {
  const [first, ...rest] = lines(name);
  const sealed = typeof first === 'object' && first !== null && 'sealed' in first;
  if (sealed !== name.endsWith('.sealed')) throw new Error(`${name}: the line that says "sealed" is amiss.`);
  const read = z.array(shape).safeParse(sealed ? rest : [first, ...rest]);
  if (!read.success) throw new Error(`${name}: ${z.prettifyError(read.error)}`);
  return read.data;
};

export const readPhrases = (part: Part): Phrase[] => read(Phrase, `phrases.${part}`);
export const readPosts = (part: Part): Post[] => read(Post, `posts.${part}`);
export const readTroubles = (part: Part): Trouble[] => read(Trouble, `cases.${part}`);
export const readCollected = (): z.infer<typeof Collected>[] => read(Collected, 'cases.collected');
export const readThreads = (): z.infer<typeof Thread>[] => read(Thread, 'threads');

/** The thread that an entry comes from; the parts are split by it. */
export const threadOf = (id: string): string => id.slice(0, id.indexOf('-'));
