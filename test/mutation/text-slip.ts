/** What a slip of an author's hand is, and what the slips look a text through with. */

export type File = {
  readonly file: string;
  readonly text: string;
  readonly lines: readonly string[];
  readonly end: number;
  /** Fields that nearly every file of its folder has. A file without another one is as whole as those. */
  readonly usual: ReadonlySet<string>;
};
/** Makes a slip in a line, or nothing where the line gives no occasion. `pick` chooses one of many. */
export type InLine = (
  line: string,
  pick: <T>(list: readonly T[]) => T,
  file: File,
  at: number,
) => string | undefined;
export type Slip = {
  readonly name: string;
  readonly line?: InLine;
  /** For what is more than one line. */
  readonly whole?: (
    file: File,
    pick: <T>(list: readonly T[]) => T,
  ) => { at: number; after: string; texts: Map<string, string | undefined> } | undefined;
  readonly only?: RegExp;
};

/** The lines that a field at `at` takes: its own and all that stand deeper. */
export const blockAt = (lines: readonly string[], at: number): number => {
  const depth = (line: string) => /^ */.exec(line)?.[0].length ?? 0;
  const own = depth(lines[at] ?? '');
  let end = at + 1;
  while (
    end < lines.length &&
    lines[end] !== '---' &&
    (depth(lines[end] ?? '') > own ||
      (/^ *- /.test(lines[end] ?? '') && depth(lines[end] ?? '') === own && !/^ *- /.test(lines[at] ?? '')))
  )
    end += 1;
  return end;
};

export const FIELD = /^( *(?:- )?)([a-z][a-z-]*)(:)(?= |$)/;
export const misspelt = (word: string, pick: <T>(list: readonly T[]) => T): string => {
  const at = pick(Array.from({ length: Math.max(1, word.length - 2) }, (_, i) => i + 1));
  const kind = pick(['swap', 'drop', 'double']);
  if (kind === 'drop') return word.slice(0, at) + word.slice(at + 1);
  if (kind === 'double') return word.slice(0, at) + word.charAt(at) + word.slice(at);
  const swapped = word.slice(0, at) + (word[at + 1] ?? '') + (word[at] ?? '') + word.slice(at + 2);
  return swapped === word ? word.slice(0, at) + word.slice(at + 1) : swapped;
};

export const keyOf = (line: string): string => line.slice(0, line.indexOf(':'));
export const wholeLines = (file: File, at: number, lines: readonly string[], after: string) => ({
  at,
  after,
  texts: new Map<string, string | undefined>([[file.file, lines.join('\n')]]),
});

/** Lines of the front matter at which `wanted` holds. */
export const where = (file: File, wanted: (line: string, at: number) => boolean): number[] =>
  file.lines.flatMap((line, at) => (at > 0 && at < file.end && wanted(line, at) ? [at] : []));

export const ID_VALUE =
  /(?<=(?:remedy|defect|ask|source|family|product|with|tool|until|safe-from|by|often|kind|grade): |[[,] ?)[a-z]+(?:-[a-z0-9]+)+(?=[\s,\]}]|$)/g;
export const PROSE =
  /^(?: *(?:- )?(?:summary|looks|shows|say|says|how|yes|no|sure|worked|means|why|title|while-wet|rest|cause|leave): ['"]?[A-Z].{20,})/;
