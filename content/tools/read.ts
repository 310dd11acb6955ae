import { CORE_SCHEMA, load } from 'js-yaml';
import { isMap, isPair, isScalar, isSeq, LineCounter, type Node, parseDocument, type YAMLMap } from 'yaml';
import { filled } from '#engine/fill.ts';
import { ENTRY_KINDS, type EntryKind, FOLDERS } from '#engine/model/index.ts';
import type { LineOf, RawEntry } from '#engine/model/knowledge.ts';
import { type ContentRoot, filesIn, textOf } from './files.ts';
import { plainYaml } from './yaml-words.ts';

const FENCE = /^---\r?\n([\s\S]*?)^---\s*$/m;

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
const tableIn = (root: ContentRoot, name: string): Record<string, unknown> => {
  try {
    const table = load(textOf(root, `content/${name}.yaml`) ?? '', { schema: CORE_SCHEMA });
    return typeof table === 'object' && table !== null ? (table as Record<string, unknown>) : {};
  } catch {
    return {};
  }
};

/** One file, named from the root, as a raw entry. */
export const readEntry = (root: ContentRoot, kind: EntryKind, file: string): RawEntry => {
  const id = file.slice(file.lastIndexOf('/') + 1, -'.mdx'.length);
  return { kind, id, file, ...parsedOnce(file, textOf(root, file) ?? '') };
};

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
  const found = FENCE.exec(text);
  if (found?.index !== 0) return { data: undefined, lineOf: () => 1 };
  const yaml = found[1] ?? '';
  try {
    return { data: load(yaml, { schema: CORE_SCHEMA }) ?? null, lineOf: lineWhenAsked(yaml) };
  } catch {
    return withLines(yaml);
  }
};

/**
 * Lines are asked for where there is a fault. The parser that knows them takes three times as long as the other, and
 * the content is read whole by every command.
 */
const lineWhenAsked = (yaml: string): LineOf => {
  let lineOf: LineOf | undefined;
  return (path, atKey) => {
    lineOf ??= withLines(yaml).lineOf;
    return lineOf(path, atKey);
  };
};

const COLON =
  /Nested mappings are not allowed|Implicit keys need to be on a single line|Implicit map keys need/;

/** What a parser says, for someone who has never seen YAML. */
const inPlainWords = (
  yaml: string,
  at: number,
  message: string,
): { message: string; mend?: string; colon?: string } => {
  const line = yaml.slice(yaml.lastIndexOf('\n', at - 1) + 1).split('\n')[0] ?? '';
  const text = /^[\s-]*[\w-]+: (.*)$/.exec(line)?.[1];
  if (COLON.test(message) && text?.includes(': ')) return { message, colon: text };
  return plainYaml(message) ?? { message };
};

const UNCLOSED = /Missing closing|must be sufficiently indented and end with/;

/** Where a quote or a bracket was opened that nothing closes: a parser tells only where it gave up. */
const openedAt = (yaml: string, at: number, message: string): number => {
  if (!UNCLOSED.test(message)) return at;
  const lines = yaml.slice(0, at).split('\n');
  const open = lines.findLastIndex((line) => {
    const value = /^[\s-]*[\w-]+:\s*(.*)$/.exec(line)?.[1] ?? '';
    const closing = { "'": "'", '"': '"', '[': ']', '{': '}' }[value.charAt(0)];
    return closing !== undefined && !value.slice(1).includes(closing);
  });
  return open < 0 ? at : lines.slice(0, open).join('\n').length + (open > 0 ? 1 : 0);
};

const withLines = (yaml: string): Pick<RawEntry, 'data' | 'lineOf' | 'broken'> => {
  const lines = new LineCounter();
  const document = parseDocument(yaml, { lineCounter: lines, prettyErrors: false });
  const lineAt = (offset: number | undefined) => lines.linePos(offset ?? 0).line + 1;
  const [fault] = document.errors;
  if (fault)
    return {
      data: undefined,
      lineOf: () => 1,
      broken: {
        line: lineAt(openedAt(yaml, fault.pos[0], fault.message)),
        ...inPlainWords(yaml, fault.pos[0], fault.message),
      },
    };
  return { data: document.toJS(), lineOf: lineFinder(document.contents, lineAt) };
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
