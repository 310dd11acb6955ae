import type { ErrorCode } from 'yaml';
import { inQuotes } from '#engine/faults/in-quotes.ts';
import type { Unreadable } from '#engine/model/knowledge.ts';
import { CLOSING, indentOf, type Mark, strayMark } from './yaml-marks.ts';

/** What is told of a file that can not be read, and of which of its lines, counted from 0. */
type Told = { readonly line: number; readonly fault: Unreadable };

const told = (line: number, what: string, mend: string): Told => ({
  line,
  fault: { code: 'bad-yaml', what, mend },
});

/** The next line that holds something. */
const below = (lines: readonly string[], at: number): string =>
  lines.slice(at + 1).find((line) => line.trim() !== '') ?? '';
/** Whether what belongs to a field stands on the lines below it. */
const goesOn = (lines: readonly string[], at: number): boolean =>
  indentOf(below(lines, at)) > indentOf(lines[at] ?? '') || /^\s*- /.test(below(lines, at));

const after = (field: string | undefined): string => (field ? `after "${field}:"` : 'here');

const named = (mark: string): string => (/['"]/.test(mark) ? `a quote mark, ${mark},` : `a "${mark}"`);

const openMark = (lines: readonly string[], { line, mark, field, rest }: Mark): Told => {
  const text = rest.slice(1).trim();
  const close = `close it with ${/['"]/.test(mark) ? 'the same mark' : `"${CLOSING[mark]}"`}`;
  const isTop = (lines[line] ?? '').trimEnd().endsWith(`${field}: ${rest.trimEnd()}`);
  const mend =
    field && isTop && goesOn(lines, line)
      ? `take out "${rest.trim()}"; what belongs to "${field}:" stands on the lines below`
      : text
        ? `${close} where it ends, or take it out`
        : `take it out and write there what belongs ${after(field)}, or ${close}`;
  return told(line, `${named(mark)} is opened ${after(field)} and never closed`, mend);
};

/**
 * The text of a field that begins at a mark, to the end of its line or, within braces, to the next field or the closing
 * one; undefined where that can not be told.
 */
const wholeText = (lines: readonly string[], { line, at, field, rest }: Mark): string | undefined => {
  const before = (lines[line] ?? '').slice(0, at);
  if (field === undefined || !before.trimEnd().endsWith(`${field}:`)) return undefined;
  if (/^[\s-]*[\w-]+: +$/.test(before)) return rest.trim();
  return /^(.*?)\s*(?:,\s*[\w-]+:\s|[}\]])/.exec(rest)?.[1];
};

const behindMark = (lines: readonly string[], found: Mark): Told => {
  const { line, mark, field } = found;
  if (!/['"]/.test(mark))
    return told(
      line,
      `something stands ${after(field)} behind the closing "${CLOSING[mark]}"`,
      'take it out, or put it within',
    );
  const whole = wholeText(lines, found);
  const bare = whole?.replace(new RegExp(`^${mark}|${mark}$`, 'g'), '');
  const text = mark === "'" && whole?.endsWith("'") ? bare : whole;
  const quoted = text && inQuotes(text);
  return told(
    line,
    `the quote that is opened ${after(field)} ends before the text does`,
    quoted
      ? `put ${quoted.startsWith("'") ? 'single' : 'double'} quotes round the whole text: ${field}: ${quoted}`
      : 'put quotes round the whole text, single ones where it holds double ones',
  );
};

const marked = (lines: readonly string[], mark: Mark): Told => {
  switch (mark.is) {
    case 'open':
      return openMark(lines, mark);
    case 'behind':
      return behindMark(lines, mark);
    case 'extra':
      return told(mark.line, `a "${mark.mark}" closes nothing`, 'take it out, or open it where it begins');
    case 'begins': {
      const whole = wholeText(lines, mark);
      return told(
        mark.line,
        `a text cannot begin with ${mark.mark} (${after(mark.field)})`,
        `put the whole text between quotes${whole ? `: ${mark.field}: ${inQuotes(whole)}` : ''}`,
      );
    }
    default:
      mark.is satisfies never;
      throw new Error(`no words for the mark ${JSON.stringify(mark)}`);
  }
};

/** A field right behind which something stands, with no space or no colon between. */
const colonAmiss = (lines: readonly string[], at: number): Told | undefined => {
  const near = [at, at - 1, at + 1].filter((line) => line >= 0 && line < lines.length);
  for (const line of near) {
    const text = lines[line] ?? '';
    const tight = /^[\s-]*([a-z][\w-]*):([^\s/].*)$/.exec(text);
    if (tight) return told(line, `a space is missing after "${tight[1]}:"`, `write ${tight[1]}: ${tight[2]}`);
    // On the lines of a text that goes on, a word alone is set in.
    const isTop = indentOf(text) === 0 && !/^(?:#|- )/.test(text);
    const bare = /^\s*([a-z][\w-]*)\s*$/.exec(text);
    if (bare && (isTop || goesOn(lines, line)))
      return told(line, `a colon is missing after "${bare[1]}"`, `write ${bare[1]}:`);
    const first = /^([a-z][\w-]*) +(\S.*)$/.exec(text);
    if (first && isTop && !/^[^\s:]+:(?:\s|$)/.test(text))
      return told(line, `a colon is missing after "${first[1]}"`, `write ${first[1]}: ${first[2]}`);
  }
  return undefined;
};

/** Within braces: a value that holds a colon, or two fields with no comma between. */
const colonInBraces = (text: string, line: number): Told | undefined => {
  const [, field = '', value = ''] = /([\w-]+): ([^\s,{}[\]'"][^,{}[\]]*?: [^,{}[\]]*)/.exec(text) ?? [];
  if (!value || !/[{[]/.test(text)) return undefined;
  const next = /^[\w.-]+ ([a-z][\w-]*): /.exec(value);
  if (next)
    return told(
      line,
      `a comma is missing before "${next[1]}:"`,
      'write one: a comma parts the fields within { }',
    );
  return { line, fault: colonFault(field, value.trim()) };
};

const colonFault = (field: string, text: string): Unreadable => ({
  code: 'needs-quotes',
  why: 'colon',
  text,
  write: `${field}: ${inQuotes(text)}`,
});

/** The lines that are set in below one. */
const goingOn = (lines: readonly string[], at: number): readonly string[] => {
  const rest = lines.slice(at + 1);
  const end = rest.findIndex((row) => row.trim() !== '' && indentOf(row) <= indentOf(lines[at] ?? ''));
  return (end < 0 ? rest : rest.slice(0, end)).map((row) => row.trim()).filter((row) => row !== '');
};

/** Whether lines are a text that goes on, one of them with a colon, and neither a list nor fields. */
const isText = (rows: readonly string[], cut: string): boolean =>
  !rows.some((row) => row.startsWith('- ')) &&
  !/^[\w-]+:\s*(?:$|[[{])/.test(cut) &&
  !(rows.length > 1 && rows.every((row) => /^[\w-]+:\s/.test(row)));

/** A field with a text behind it, where the lines below go on with something else. */
const textAndMore = (lines: readonly string[], line: number): Told | undefined => {
  const [, field, text] = /^[\s-]*([\w-]+): +([^\s#].*)$/.exec(lines[line] ?? '') ?? [];
  if (!field || !text || !goesOn(lines, line)) return undefined;
  const next = below(lines, line);
  const deeper = indentOf(next) - indentOf(lines[line] ?? '');
  const own = /^\s*([\w-]+): /.exec(next)?.[1];
  if (own && deeper === 1)
    return told(
      lines.indexOf(next, line),
      `"${own}:" is set in by one space more than the line above it`,
      'begin both at the same place',
    );
  const rows = goingOn(lines, line);
  const cut = rows.find((row) => /:(?:\s|$)/.test(row));
  if (cut && isText(rows, cut))
    return told(
      line,
      `the text after "${field}:" goes on in the next line, where "${/^.*?:(?=\s|$)/.exec(cut)?.[0]}" was read as a field of its own`,
      `put the whole text between quotes: ${field}: ${inQuotes([text, ...rows].join(' '))}`,
    );
  return told(
    line,
    `"${text}" stands after "${field}:", and what belongs to "${field}:" follows on the lines below`,
    `take out "${text}", or take out the lines below`,
  );
};

const colons = (lines: readonly string[], at: number): Told | undefined => {
  const text = lines[at] ?? '';
  const [, field = '', value = ''] = /^[\s-]*([\w-]+): (.*)$/.exec(text) ?? [];
  if (value.includes(': ') && !/^[{['"]/.test(value)) return { line: at, fault: colonFault(field, value) };
  return colonInBraces(text, at) ?? colonAmiss(lines, at) ?? textAndMore(lines, at);
};

const COUNT = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
const setIn = (line: string): string => {
  const by = indentOf(line);
  return by ? `set in by ${COUNT[by] ?? by} ${by === 1 ? 'space' : 'spaces'}` : 'not set in';
};

/** A line that begins at another place than the one above it, which it belongs to. */
const setInOtherwise = (lines: readonly string[], at: number): Told | undefined => {
  const line = lines[at] ?? '';
  const above = lines.slice(0, at).findLast((row) => row.trim() !== '');
  if (above === undefined || indentOf(above) === indentOf(line)) return undefined;
  const [own, other] = [line, above].map((row) => /^\s*([\w-]+):/.exec(row)?.[1]);
  return told(
    at,
    `${own ? `"${own}:"` : 'this line'} is ${setIn(line)}, and ${other ? `"${other}:" above it` : 'the line above it'} is ${setIn(above)}`,
    'begin both at the same place',
  );
};

/** What a file is told for that the parser gave up on at a line, in words for someone who has never seen YAML. */
export const toldOf = (yaml: string, code: ErrorCode, at: number): Told => {
  const lines = yaml.split('\n');
  const stray = strayMark(lines);
  if (stray) return marked(lines, stray);
  const [, field] = /^[\s-]*([\w-]+):/.exec(lines[at] ?? '') ?? [];
  if (code === 'DUPLICATE_KEY')
    return told(
      at,
      `the field "${field ?? ''}" stands twice`,
      'keep one of the two, with all that belongs to it',
    );
  const [, list] = /^[\s-]*([\w-]+): +- /.exec(lines[at] ?? '') ?? [];
  if (list)
    return told(
      at,
      `a list begins on the line of "${list}:"`,
      'if it is one text, take the hyphen out; if it is a list, begin each hyphen on a line of its own below it, or write the list between square brackets: [one, two]',
    );
  if (code === 'TAB_AS_INDENT') return told(at, 'this line begins with a tab', 'write spaces in its place');
  if (code === 'BAD_DQ_ESCAPE')
    return told(
      at,
      'a backslash, \\, stands within double quotes',
      "take it out, or write single quotes: '…'",
    );
  return (
    colons(lines, at) ??
    (code === 'BAD_INDENT' ? setInOtherwise(lines, at) : undefined) ??
    told(
      at,
      'this line cannot be read',
      'write it like the lines around it: fields that belong together begin at the same place, and no bracket, quote, colon or comma is missing or too much',
    )
  );
};

/** What a lenient parser reads and no author means. */
export const unmeant = (yaml: string): Told | undefined => {
  const lines = yaml.split('\n');
  const stray = strayMark(lines);
  return stray && marked(lines, stray);
};
