/**
 * `npm run new -- <kind> <id>`: a new content file that already checks, bar what only the author knows. Of a flaw it asks
 * on a terminal what tells it from its neighbors; `--answers <file.json>` answers instead, `--blank` asks nothing.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { createInterface } from 'node:readline/promises';
import { parseArgs } from 'node:util';
import type { Issue } from '#engine/faults/issue.ts';
import { say } from '#engine/faults/say.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { ENTRY_KINDS, type EntryKind, FOLDERS, ID_PATTERN } from '#engine/model/index.ts';
import { isKeyOf } from '#engine/plain/entry-of.ts';
import { AnswerFault, fromFile, fromTerminal, unasked } from './answers.ts';
import { readAnswers } from './answers-file.ts';
import { type Drafted, defectFile, questionFile, remedyFile, withSign } from './draft.ts';
import { type Answers, type Interviewed, interview } from './interview.ts';
import { linkedKnowledge, provenKnowledge } from './knowledge.ts';
import { nearOf } from './near.ts';
import { templates } from './templates.ts';

/** The author closed the terminal or pressed Ctrl-C before the last answer. */
class Ended extends Error {}

const root = process.cwd();
const today = new Date().toISOString().slice(0, 10);
const fail = (message: string): void => {
  console.error(message);
  process.exitCode = 1;
};

const write = ({ file, text }: Drafted): void => {
  mkdirSync(dirname(join(root, file)), { recursive: true });
  writeFileSync(join(root, file), text);
};

/** What there is like it, told before anything is written. */
const tellNear = (known: Knowledge, kind: EntryKind, id: string): void => {
  const near = nearOf(known, root, kind, id);
  if (near.length === 0) return;
  console.log(`There is already, in content/${FOLDERS[kind]}/:`);
  for (const { id: one, title, says } of near) console.log(`  ${title} (${one}): ${says}`);
  console.log('If one of these is it, add to its file and delete the new one.');
};

const LOOK = /looks|picture|What yes|What no|pair of boards|recognize/i;
const TYPE = /people type/i;

/** `content/a.mdx:4, 17 and content/b.mdx:3`. */
const placesOf = (left: readonly Issue[]): string =>
  [...Map.groupBy(left, ({ file }) => file)]
    .map(([file, issues]) => `${file}:${[...new Set(issues.map(({ line }) => line))].join(', ')}`)
    .join('; ');

/** The three things that nobody but the author knows, with the places where they go, and what else is not right yet. */
const tellRest = (before: ReadonlySet<string>): void => {
  const issues = provenKnowledge(root).issues.filter((issue) => !before.has(say(issue)));
  const left = issues.flatMap((issue) => (issue.code === 'left-over' ? [issue] : []));
  const typed = left.filter(({ text }) => TYPE.test(text));
  const looks = left.filter((issue) => !typed.includes(issue) && LOOK.test(issue.text));
  const rest = left.filter((issue) => !typed.includes(issue) && !looks.includes(issue));
  console.log('Three things only you know; npm run check names each place until it is filled:');
  console.log(`  1. what people type who have it: ${placesOf(typed)}`);
  console.log(`  2. what it looks like, and its picture (npm run board -- --sheet): ${placesOf(looks)}`);
  console.log(`  3. how we know it, and what hands do: ${placesOf(rest)}`);
  const wrong = issues.filter(({ code }) => code !== 'left-over');
  if (wrong.length) console.log(`And what was answered does not fit yet:\n${wrong.map(say).join('\n')}`);
  console.log('Then npm run check, and npm run dev to look at it.');
};

/** The new flaw, the question and the repairs that are missing, and the sign of a new question in its look-alikes. */
const draftsOf = ({ defect, mirrors }: Interviewed): { created: Drafted[]; changed: Drafted[] } => {
  const created = [
    defectFile(defect, today),
    ...(defect.question ? [questionFile(defect.question)] : []),
    ...defect.remedies.flatMap(({ remedy }) => (remedy.there ? [] : [remedyFile(remedy, today)])),
  ];
  const changed = [...mirrors].map(([id, sign]): Drafted => {
    const file = `content/defects/${id}.mdx`;
    return { file, text: withSign(readFileSync(join(root, file), 'utf8'), defect.question?.id ?? '', sign) };
  });
  return { created, changed };
};

/** `heard` may add to what was told, or throw: nothing is written before it. */
const newDefect = async (
  known: Knowledge,
  id: string,
  answers: Answers,
  heard: (told: Interviewed) => Interviewed = (told) => told,
): Promise<void> => {
  const told = heard(await interview(known, root, id, answers));
  const before = new Set(provenKnowledge(root).issues.map(say));
  const { signs, alike, question } = told.defect;
  // What a question says of every flaw stands there, and is not written again.
  const own = new Map([...signs].filter(([id, sign]) => sign !== known.get('question', id)['every-flaw']));
  const { created, changed } = draftsOf({ ...told, defect: { ...told.defect, signs: own } });
  const taken = created.find(({ file }) => existsSync(join(root, file)));
  if (taken) return fail(`${taken.file} is there already; nothing was written`);
  for (const draft of [...created, ...changed]) write(draft);
  const usual = signs.size - own.size;
  console.log(
    `Wrote ${created.map(({ file }) => file).join(', ')}: ${signs.size} signs${usual ? ` (${usual} as with every flaw, not written)` : ''}, mistaken for ${alike.join(', ')}.`,
  );
  if (question)
    console.log(`Wrote what they show of ${question.id} into ${changed.map(({ file }) => file).join(', ')}.`);
  tellRest(before);
};

const blank = (
  known: Knowledge | undefined,
  kind: keyof typeof templates,
  id: string,
  file: string,
): void => {
  if (known) tellNear(known, kind, id);
  write({ file, text: templates[kind](id, today) });
  console.log(`Wrote ${file}. Next: fill in what stands in <angle brackets>, then npm run check.`);
};

const USAGE = `npm run new -- <kind> <id> [--answers <file> | --blank]; kinds: ${Object.keys(templates).join(', ')} (of ${ENTRY_KINDS.length} in all)`;

/** What was written behind the command, or undefined where it can not be understood. */
const argumentsGiven = () => {
  try {
    return parseArgs({
      allowPositionals: true,
      options: {
        answers: { type: 'string' },
        blank: { type: 'boolean', default: false },
        help: { type: 'boolean', short: 'h', default: false },
      },
    });
  } catch {
    return undefined;
  }
};

/** Answers from a file: whole and right, or nothing is written. */
const fromAnswers = async (known: Knowledge, id: string, file: string): Promise<void> => {
  if (file !== '-' && !existsSync(file)) return fail(`there is no file ${file}; nothing was written`);
  const read = readAnswers(
    known,
    file === '-' ? 'answers' : file,
    readFileSync(file === '-' ? 0 : file, 'utf8'),
  );
  if ('faults' in read) return fail(`${read.faults.join('\n')}\nNothing was written.`);
  const asked = new Set<string>();
  const answers = fromFile(read.told);
  try {
    await newDefect(
      known,
      id,
      (prompt) => {
        asked.add(prompt.key);
        return answers(prompt);
      },
      (told) => {
        const left = unasked(read.told, asked);
        if (left.length) throw new AnswerFault(`nothing asks for ${left.join(', ')} here; take it out`);
        // A sign that is known is kept though it is not among the few that are asked.
        const signs = new Map([...told.defect.signs, ...Object.entries(read.told.signs)]);
        return { ...told, defect: { ...told.defect, signs } };
      },
    );
  } catch (error) {
    if (!(error instanceof AnswerFault)) throw error;
    fail(`${file}: ${error.message}\nNothing was written.`);
  }
};

const fromHere = async (known: Knowledge, id: string): Promise<void> => {
  const terminal = createInterface({ input: process.stdin, output: process.stdout });
  // An iterator keeps lines that are pasted faster than they are asked for.
  const typed = terminal[Symbol.asyncIterator]();
  const line = async (question: string): Promise<string> => {
    process.stdout.write(question);
    const { value, done } = await typed.next();
    if (done) throw new Ended();
    return value;
  };
  try {
    await newDefect(known, id, fromTerminal(line));
  } catch (error) {
    if (!(error instanceof Ended)) throw error;
    fail('\nStopped; nothing was written.');
  } finally {
    terminal.close();
  }
};

const begin = async (): Promise<void> => {
  const given = argumentsGiven();
  if (!given) return fail(USAGE);
  const { values, positionals } = given;
  const [kind, id] = positionals;
  if (values.help) return console.log(USAGE);
  if (!isKeyOf(templates, kind)) return fail(USAGE);
  if (!id || !ID_PATTERN.test(id))
    return fail(
      `"${id ?? ''}" is not a usable id; use lower-case words joined by hyphens, like drips-on-legs`,
    );
  const file = `content/${FOLDERS[kind]}/${id}.mdx`;
  if (existsSync(join(root, file))) return fail(`${file} is there already; edit it or choose another id`);
  const asks = kind === 'defect' && !values.blank;
  if (asks && values.answers === undefined && !process.stdin.isTTY)
    return fail(
      'no terminal here: nobody can be asked. Give --answers <file>, or --blank for a file to fill in; nothing was written',
    );
  if (asks) console.log('Reading the content…');
  const { known, issues } = linkedKnowledge(root);
  if (!known) {
    console.error(`Nothing can be compared with it until these are mended:\n${issues.map(say).join('\n')}`);
    return blank(undefined, kind, id, file);
  }
  if (!asks) return blank(known, kind, id, file);
  return values.answers === undefined ? fromHere(known, id) : fromAnswers(known, id, values.answers);
};

await begin();
