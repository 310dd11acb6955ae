/**
 * Slips of an author's hand in the text of a file, seeded. Each names what was done, the file, and the text after it, or
 * that the file went elsewhere.
 */
import { shuffled } from './random.ts';
import { SLIPS_OF_FORM } from './slips-of-form.ts';
import { SLIPS_OF_MEANING } from './slips-of-meaning.ts';
import { SLIPS_OF_WORDS } from './slips-of-words.ts';
import { type File, type InLine, where, wholeLines } from './text-slip.ts';

export type TextMutant = {
  readonly slip: string;
  readonly file: string;
  readonly line: number;
  readonly before: string;
  readonly after: string;
  /** The files as they are after the slip; undefined for one that is gone. */
  readonly texts: ReadonlyMap<string, string | undefined>;
};

/** Their order is part of what a seed draws. */
const SLIPS = [...SLIPS_OF_MEANING, ...SLIPS_OF_FORM, ...SLIPS_OF_WORDS];

const fileOf = (file: string, text: string, usual: ReadonlySet<string>): File => {
  const lines = text.split('\n');
  return { file, text, lines, end: lines.indexOf('---', 1), usual };
};

/** The share of the files of a folder that have a field which none of them is likely to do without. */
const NEARLY_ALL = 0.95;
const usualOf = (texts: readonly string[]): ReadonlySet<string> => {
  const keys = texts.flatMap((text) => [...new Set(text.match(/^[a-z][a-z-]*(?=:)/gm))]);
  const counts = Map.groupBy(keys, (key) => key);
  return new Set(
    [...counts].flatMap(([key, { length }]) => (length >= NEARLY_ALL * texts.length ? [key] : [])),
  );
};

/** `wanted` slips, evenly over the kinds, one a file and kind; the same for the same seed. */
export const textMutants = (
  texts: ReadonlyMap<string, string>,
  wanted: number,
  seed: number,
): TextMutant[] => {
  const folderOf = (file: string) => file.slice(0, file.lastIndexOf('/'));
  const usual = new Map(
    [...Map.groupBy(texts, ([file]) => folderOf(file))].map(([folder, files]) => [
      folder,
      usualOf(files.map(([, text]) => text)),
    ]),
  );
  const files = [...texts]
    .map(([file, text]) => fileOf(file, text, usual.get(folderOf(file)) ?? new Set()))
    .filter(({ end }) => end > 0);
  let turn = seed;
  const pick = <T>(list: readonly T[]): T => {
    turn += 1;
    return shuffled(list, turn * 7919)[0] as T;
  };
  const made = SLIPS.map((slip, nth) => {
    const occasions = shuffled(
      files.filter(({ file }) => slip.only?.test(file) ?? true),
      seed + nth,
    );
    return { slip, occasions };
  });
  const mutants: TextMutant[] = [];
  for (let any = true; any && mutants.length < wanted; ) {
    any = false;
    for (const { slip, occasions } of made) {
      if (mutants.length >= wanted) break;
      while (occasions.length) {
        const file = occasions.pop() as File;
        const one = slip.whole ? slip.whole(file, pick) : inALine(slip.line as InLine, file, pick);
        if (!one) continue;
        any = true;
        mutants.push({
          slip: slip.name,
          file: file.file,
          line: one.at + 1,
          before: (file.lines[one.at] ?? '').trim(),
          after: one.after.trim(),
          texts: one.texts,
        });
        break;
      }
    }
  }
  return mutants;
};

const inALine = (change: InLine, file: File, pick: <T>(list: readonly T[]) => T) => {
  for (const at of shuffled(
    where(file, () => true),
    file.text.length,
  )) {
    const after = change(file.lines[at] ?? '', pick, file, at);
    if (after === undefined || after === file.lines[at]) continue;
    return wholeLines(
      file,
      at,
      file.lines.map((line, i) => (i === at ? after : line)),
      after,
    );
  }
  return undefined;
};
