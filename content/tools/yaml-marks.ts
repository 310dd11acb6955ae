/** The marks of YAML that an author leaves open or does not mean, found in the text itself: a parser tells only where it gave up. */

/** A mark at a place of a text. Lines and columns count from 0. */
type Place = { readonly line: number; readonly at: number };
export type Mark = Place & {
  readonly is: 'open' | 'behind' | 'begins' | 'extra';
  /** The bracket, the quote, or what the text begins with. */
  readonly mark: string;
  /** The field that it belongs to; undefined where there is none. */
  readonly field: string | undefined;
  /** From the mark to the end of its line. */
  readonly rest: string;
};

export const CLOSING: Readonly<Record<string, string>> = { '[': ']', '{': '}' };
const isQuote = (char: string): boolean => char === "'" || char === '"';
/** What YAML takes for an order of its own where a text begins with it. */
const ORDERS = /^[@`%*&!](?=\S)/;
const FIELD = /^([\s-]*)([\w-]+):(?:\s+|$)/;

export const indentOf = (line: string): number => line.length - line.trimStart().length;
const fieldBefore = (text: string): string | undefined => /([\w-]+)["']?:\s*$/.exec(text)?.[1];

/** Whether a line can not belong to a bracket or quote that was opened on a line set in by `indent`. */
const isOutside = (line: string, indent: number): boolean =>
  line.trim() !== '' && ((indentOf(line) <= indent && !/^\s*[\]}]/.test(line)) || /^\s*- /.test(line));

/** Behind the closing quote, or undefined where there is none in the lines that belong to it. */
const behindQuote = (lines: readonly string[], { line, at }: Place, indent: number): Place | undefined => {
  const mark = lines[line]?.[at] ?? '';
  for (let row = line; row < lines.length; row++) {
    const text = lines[row] ?? '';
    if (row > line && isOutside(text, indent)) return undefined;
    for (let column = row === line ? at + 1 : 0; column < text.length; column++) {
      const char = text[column] ?? '';
      if (mark === '"' && char === '\\') column++;
      else if (char === mark && mark === "'" && text[column + 1] === "'") column++;
      else if (char === mark) return { line: row, at: column + 1 };
    }
  }
  return undefined;
};

type Opened = Place & { readonly mark: string };

/** Behind the closing bracket, or the first mark that keeps it from being closed. */
const behindBracket = (
  lines: readonly string[],
  start: Place,
  indent: number,
  markAt: (place: Place, is: Mark['is']) => Mark,
): Place | Mark => {
  const opened: Opened[] = [];
  const innermost = () => opened.at(-1) ?? start;
  let row = start.line;
  let column = start.at;
  /** Whether a text may begin here; within one, quotes and brackets are letters. */
  let begins = true;
  for (;;) {
    const text = lines[row] ?? '';
    if (column >= text.length) {
      row++;
      column = 0;
      if (row >= lines.length || isOutside(lines[row] ?? '', indent)) return markAt(innermost(), 'open');
      continue;
    }
    const char = text[column] ?? '';
    if (char === '#' && /\s/.test(text[column - 1] ?? ' ')) {
      column = text.length;
      continue;
    }
    if (begins && isQuote(char)) {
      const end = behindQuote(lines, { line: row, at: column }, indent);
      if (!end) return markAt({ line: row, at: column }, 'open');
      const after = (lines[end.line] ?? '').slice(end.at);
      if (!/^\s*(?:[,\]}:#]|$)/.test(after)) return markAt({ line: row, at: column }, 'behind');
      [row, column] = [end.line, end.at];
      begins = false;
      continue;
    }
    if (begins && ORDERS.test(text.slice(column))) return markAt({ line: row, at: column }, 'begins');
    if (begins && CLOSING[char]) {
      opened.push({ line: row, at: column, mark: char });
    } else if (char === ']' || char === '}') {
      const last = opened.pop();
      if (last && CLOSING[last.mark] !== char) return markAt(last, 'open');
      if (!opened.length) return { line: row, at: column + 1 };
      begins = false;
    } else if (char === ',' || (char === ':' && /^(?:\s|$)/.test(text.slice(column + 1)))) {
      begins = true;
    } else if (!/\s/.test(char)) {
      begins = false;
    }
    column++;
  }
};

/** The first mark of a text that is left open, has something behind it, or begins a text that is to be read as it stands. */
export const strayMark = (lines: readonly string[]): Mark | undefined => {
  let field: string | undefined;
  /** How far the line is set in that what stands here belongs to. */
  let indent = 0;
  const markAt = ({ line, at }: Place, is: Mark['is']): Mark => {
    const text = lines[line] ?? '';
    return {
      is,
      line,
      at,
      mark: text[at] ?? '',
      field: fieldBefore(text.slice(0, at)) ?? field,
      rest: text.slice(at),
    };
  };
  for (let row = 0; row < lines.length; row++) {
    const text = lines[row] ?? '';
    if (/^\s*(?:#|$)/.test(text)) continue;
    const head = FIELD.exec(text);
    field = head?.[2] ?? field;
    if (head || /^\s*- /.test(text)) indent = indentOf(text);
    const at = head ? head[0].length : (/^[\s-]*/.exec(text)?.[0].length ?? 0);
    const char = text[at] ?? '';
    if (/^[|>][+-]?\d?\s*$/.test(text.slice(at))) {
      while (row + 1 < lines.length && !isOutside(lines[row + 1] ?? '', indent)) row++;
      continue;
    }
    const place = { line: row, at };
    if (ORDERS.test(text.slice(at))) return markAt(place, 'begins');
    let end: Place | undefined;
    if (isQuote(char)) {
      end = behindQuote(lines, place, indent);
      if (!end) return markAt(place, 'open');
    } else if (CLOSING[char]) {
      const behind = behindBracket(lines, place, indent, markAt);
      if ('is' in behind) return behind;
      end = behind;
    }
    if (!end) continue;
    const after = (lines[end.line] ?? '').slice(end.at).trim();
    if (after && !/^(?:#|:(?:\s|$))/.test(after))
      return /^[\]}]/.test(after)
        ? markAt({ line: end.line, at: (lines[end.line] ?? '').indexOf(after, end.at) }, 'extra')
        : markAt(place, 'behind');
    row = end.line;
  }
  return undefined;
};
