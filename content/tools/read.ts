import { isMap, isPair, isScalar, isSeq, LineCounter, type Node, parseDocument, type YAMLMap } from 'yaml';
import { filled } from '#engine/knowledge/fill.ts';
import { ENTRY_KINDS, type EntryKind, FOLDERS } from '#engine/model/index.ts';
import type { LineOf, RawEntry, Unreadable } from '#engine/model/knowledge.ts';
import { isRecord, type JsonRecord } from '#engine/plain/record.ts';
import { type ContentRoot, filesIn, textOf } from './files.ts';
import { dataOf, fenced, yamlOf } from './front-matter.ts';
import { toldOf, unmeant } from './unreadable.ts';

/**
 * Every content file below `root`/content as a raw entry, sorted by path, with what stands once filled in. The only place
 * that opens content.
 * A file that can not be parsed comes back with `broken`; nothing throws for an author's fault.
 */
export const readContent = (root: ContentRoot): RawEntry[] =>
  filled(
    ENTRY_KINDS.flatMap((kind) =>
      filesIn(root, `content/${FOLDERS[kind]}`, '.mdx').map((name) =>
        readEntry(root, kind, `content/${FOLDERS[kind]}/${name}`),
      ),
    ),
    { acts: tableIn(root, 'acts'), steps: tableIn(root, 'steps') },
  );

/** A table of what stands once for many files; its own faults are told by `shared.ts`. */
const tableIn = (root: ContentRoot, name: string): JsonRecord => {
  const { data } = readTableText(root, `content/${name}.yaml`);
  return isRecord(data) ? data : {};
};

/** One file, named from the root, as a raw entry. */
export const readEntry = (root: ContentRoot, kind: EntryKind, file: string): RawEntry => {
  const id = file.slice(file.lastIndexOf('/') + 1, -'.mdx'.length);
  return { kind, id, file, ...parsedOnce(file, textOf(root, file) ?? '') };
};

/** A file of tables, named from the root, with lines counted from the fence above its first. */
export const readTableText = (root: ContentRoot, file: string): Parsed =>
  parsedOnce(file, fenced(textOf(root, file) ?? ''));

type Parsed = ReturnType<typeof parseFrontMatter>;
const lastParsed = new Map<string, { readonly text: string; readonly parsed: Parsed }>();

/** A file that is as it was when this process read it last is not parsed again: the preview reads all at each save. */
const parsedOnce = (file: string, text: string): Parsed => {
  const last = lastParsed.get(file);
  if (last?.text === text) return last.parsed;
  const parsed = parseFrontMatter(text);
  lastParsed.set(file, { text, parsed });
  return parsed;
};

/** The YAML between the first two lines of `---`, with the line of every path in it. */
export const parseFrontMatter = (text: string): Pick<RawEntry, 'data' | 'lineOf' | 'broken'> => {
  const yaml = yamlOf(text);
  if (yaml === undefined)
    return { data: undefined, lineOf: () => 1, broken: { line: 1, fault: noTop(text) } };
  try {
    return { data: dataOf(yaml), lineOf: lineWhenAsked(yaml) };
  } catch {
    return unread(yaml);
  }
};

/** What is wrong with the first lines of a file that has no fields at its top. */
const noTop = (text: string): Unreadable => {
  const lines = text.split('\n').map((line) => line.trim());
  const first = lines.find((line) => line !== '');
  if (lines[0] === '---') return { code: 'no-front-matter', why: 'open' };
  if (first === undefined) return { code: 'no-front-matter', why: 'empty' };
  if (first !== '---' && /^[-–—]+$/.test(first)) return { code: 'no-front-matter', why: 'dashes', first };
  const fences = lines.filter((line) => line === '---').length;
  const why = first === '---' || fences > 1 ? 'above' : fences ? 'closed' : 'none';
  return { code: 'no-front-matter', why, first };
};

/**
 * Lines are asked for where there is a fault. The parser that knows them takes three times as long as the other, and
 * the content is read whole by every command.
 */
const lineWhenAsked = (yaml: string): LineOf => {
  let lineOf: LineOf | undefined;
  return (path, atKey) => {
    lineOf ??= parsed(yaml).lineOf();
    return lineOf(path, atKey);
  };
};

/** What the parser that knows lines makes of it. The fence stands above the first line, and lines count from 1. */
const parsed = (yaml: string) => {
  const lines = new LineCounter();
  const document = parseDocument(yaml, { lineCounter: lines, prettyErrors: false });
  const lineAt = (offset: number | undefined) => lines.linePos(offset ?? 0).line + 1;
  return { document, lineAt, lineOf: () => lineFinder(document.contents, lineAt) };
};

/** What is told of a text that the stricter parser does not take; where nothing is, what the other one reads. */
const unread = (yaml: string): Pick<RawEntry, 'data' | 'lineOf' | 'broken'> => {
  const { document, lineAt, lineOf } = parsed(yaml);
  const [error] = document.errors;
  const told = error ? toldOf(yaml, error.code, lineAt(error.pos[0]) - 2) : unmeant(yaml);
  return told
    ? { data: undefined, lineOf: () => 1, broken: { line: told.line + 2, fault: told.fault } }
    : { data: document.toJS(), lineOf: lineOf() };
};

const pairOf = (node: unknown, key: PropertyKey) =>
  isMap(node)
    ? (node as YAMLMap).items.find((item) => isPair(item) && isScalar(item.key) && item.key.value === key)
    : undefined;

const lineFinder =
  (top: Node | null, lineAt: (offset: number | undefined) => number): LineOf =>
  (path, atKey = false) => {
    let node: unknown = top;
    let line = lineAt(top?.range?.[0]);
    for (const [depth, key] of path.entries()) {
      const last = depth === path.length - 1;
      if (isSeq(node)) {
        node = node.items[Number(key)];
      } else {
        const pair = pairOf(node, key);
        if (!pair) break;
        line = lineAt((pair.key as Node).range?.[0]);
        if (last && atKey) return line;
        node = pair.value;
      }
      const start = (node as Node | null | undefined)?.range?.[0];
      // A block value starts on a later line than its key; an author looks for the key.
      if (start !== undefined && (isScalar(node) || isSeq(node) || isMap(node)) && !Number.isNaN(start))
        line = isScalar(node) || typeof key === 'number' ? lineAt(start) : line;
    }
    return line;
  };
