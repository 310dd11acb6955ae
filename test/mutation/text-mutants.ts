/**
 * Slips of an author's hand in the text of a file, seeded. Each names what was done, the file, and the text after it, or
 * that the file went elsewhere.
 */
import { shuffled } from './random.ts';

export type TextMutant = {
  readonly slip: string;
  readonly file: string;
  readonly line: number;
  readonly before: string;
  readonly after: string;
  /** The files as they are after the slip; undefined for one that is gone. */
  readonly texts: ReadonlyMap<string, string | undefined>;
};

type File = {
  readonly file: string;
  readonly text: string;
  readonly lines: readonly string[];
  readonly end: number;
  /** Fields that nearly every file of its folder has. A file without another one is as whole as those. */
  readonly usual: ReadonlySet<string>;
};
/** Makes a slip in a line, or nothing where the line gives no occasion. `pick` chooses one of many. */
type InLine = (
  line: string,
  pick: <T>(list: readonly T[]) => T,
  file: File,
  at: number,
) => string | undefined;
type Slip = {
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
const blockAt = (lines: readonly string[], at: number): number => {
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

const FIELD = /^( *(?:- )?)([a-z][a-z-]*)(:)(?= |$)/;
const misspelt = (word: string, pick: <T>(list: readonly T[]) => T): string => {
  const at = pick(Array.from({ length: Math.max(1, word.length - 2) }, (_, i) => i + 1));
  const kind = pick(['swap', 'drop', 'double']);
  if (kind === 'drop') return word.slice(0, at) + word.slice(at + 1);
  if (kind === 'double') return word.slice(0, at) + word.charAt(at) + word.slice(at);
  const swapped = word.slice(0, at) + (word[at + 1] ?? '') + (word[at] ?? '') + word.slice(at + 2);
  return swapped === word ? word.slice(0, at) + word.slice(at + 1) : swapped;
};

const keyOf = (line: string): string => line.slice(0, line.indexOf(':'));
const wholeLines = (file: File, at: number, lines: readonly string[], after: string) => ({
  at,
  after,
  texts: new Map<string, string | undefined>([[file.file, lines.join('\n')]]),
});

/** Lines of the front matter at which `wanted` holds. */
const where = (file: File, wanted: (line: string, at: number) => boolean): number[] =>
  file.lines.flatMap((line, at) => (at > 0 && at < file.end && wanted(line, at) ? [at] : []));

const ID_VALUE =
  /(?<=(?:remedy|defect|ask|source|family|product|with|tool|until|safe-from|by|often|kind|grade): |[[,] ?)[a-z]+(?:-[a-z0-9]+)+(?=[\s,\]}]|$)/g;
const PROSE =
  /^(?: *(?:- )?(?:summary|looks|shows|say|says|how|yes|no|sure|worked|means|why|title|while-wet|rest|cause|leave): ['"]?[A-Z].{20,})/;

const SLIPS: readonly Slip[] = [
  {
    name: 'a letter in an id',
    line: (line, pick) => {
      const found = [...line.matchAll(ID_VALUE)];
      if (!found.length || /^ *(?:- )?(?:also|heard|covers)/.test(line)) return undefined;
      const one = pick(found);
      return line.slice(0, one.index) + misspelt(one[0], pick) + line.slice(one.index + one[0].length);
    },
  },
  {
    name: 'a letter in the name of a field',
    line: (line, pick) =>
      FIELD.test(line)
        ? line.replace(FIELD, (_, lead, key, colon) => lead + misspelt(key, pick) + colon)
        : undefined,
  },
  {
    name: 'a value out of range',
    line: (line, pick) => {
      const found = [
        ...line.matchAll(
          /(?<=(?:grit|effort|strokes|minutes|place|year|width-mm|diameter-mm|length-mm|strength|count|angle|per-cm2|spacing-mm|film-um|most): )\d+(?:\.\d+)?/g,
        ),
      ];
      if (!found.length) return undefined;
      const one = pick(found);
      const wrong = pick([`${one[0]}00000`, `-${one[0]}`, `${one[0]}..5`, `about ${one[0]}`]);
      return line.slice(0, one.index) + wrong + line.slice(one.index + one[0].length);
    },
  },
  {
    name: 'a span the wrong way round',
    line: (line) => {
      const found = /(\[)(\d+(?:\.\d+)?), (\d+(?:\.\d+)?)(\])/.exec(line);
      if (!found || found[2] === found[3] || /at: \[/.test(line)) return undefined;
      return line.replace(found[0], `[${found[3]}, ${found[2]}]`);
    },
  },
  {
    name: 'a field left out',
    whole: (file, pick) => {
      const at = pick(where(file, (line) => /^[a-z][a-z-]*:/.test(line) && file.usual.has(keyOf(line))));
      if (at === undefined) return undefined;
      const end = blockAt(file.lines, at);
      return wholeLines(file, at, [...file.lines.slice(0, at), ...file.lines.slice(end)], '(nothing)');
    },
  },
  {
    name: 'a unit dropped',
    // "30 × 30 cm" is as right as "30 cm × 30 cm".
    line: (line, pick) => {
      const found = [
        ...line.matchAll(/(?<=\d) ?(?:°F|°C|µm|mil|in|mm|cm|ft|m²|sq ft)(?=[ ).,])(?! × \d)/g),
      ].filter(({ 0: unit }) => unit !== ' in' || / in \(/.test(line));
      if (!found.length) return undefined;
      const one = pick(found);
      return line.slice(0, one.index) + line.slice(one.index + one[0].length);
    },
  },
  {
    name: 'a figure that differs from the one beside it',
    line: (line) => {
      const found = /(\d)(\d)( (?:°F|mil|in|ft) \(\d)/.exec(line);
      return found && found[1] !== found[2]
        ? line.replace(found[0], `${found[2]}${found[1]}${found[3]}`)
        : undefined;
    },
  },
  {
    name: 'two steps swapped',
    only: /^content\/remedies\//,
    whole: (file, pick) => {
      const top = file.lines.indexOf('steps:');
      if (top < 0) return undefined;
      const end = blockAt(file.lines, top);
      const starts = Array.from({ length: end - top - 1 }, (_, i) => top + 1 + i).filter((at) =>
        /^ {2}- /.test(file.lines[at] ?? ''),
      );
      if (starts.length < 2) return undefined;
      const nth = pick(starts.slice(0, -1).map((_, i) => i));
      const [one = 0, two = 0, three = end] = [starts[nth], starts[nth + 1], starts[nth + 2]];
      const { lines } = file;
      return wholeLines(
        file,
        one,
        [...lines.slice(0, one), ...lines.slice(two, three), ...lines.slice(one, two), ...lines.slice(three)],
        `after ${(lines[two] ?? '').trim()}`,
      );
    },
  },
  {
    name: 'yes and no flipped',
    only: /^content\/defects\//,
    line: (line) => {
      const sign = /^( {2}[a-z-]+: )(yes|no)$/.exec(line);
      return sign ? `${sign[1]}${sign[2] === 'yes' ? 'no' : 'yes'}` : undefined;
    },
  },
  {
    name: 'what the template left',
    line: (line) =>
      PROSE.test(line) && !/[{[]/.test(line)
        ? line.replace(/: .*/, ': <One sentence - what it is like.>')
        : undefined,
  },
  {
    name: 'a field twice',
    whole: (file, pick) => {
      const at = pick(where(file, (line) => /^ *[a-z][a-z-]*: \S/.test(line)));
      if (at === undefined) return undefined;
      const line = file.lines[at] ?? '';
      return wholeLines(
        file,
        at,
        [...file.lines.slice(0, at + 1), line, ...file.lines.slice(at + 1)],
        `${line.trim()} (twice)`,
      );
    },
  },
  {
    name: 'a source taken away',
    whole: (file, pick) => {
      const at = pick(where(file, (line) => /^ +source: /.test(line)));
      if (at === undefined) return undefined;
      return wholeLines(
        file,
        at,
        file.lines.filter((_, i) => i !== at),
        '(nothing)',
      );
    },
  },
  {
    name: 'a source file lost',
    only: /^content\/sources\//,
    whole: (file) => ({ at: 0, after: '(gone)', texts: new Map([[file.file, undefined]]) }),
  },
  {
    name: 'the wrong kind of file',
    whole: (file, pick) => {
      const other = file.file.replace(/\.mdx$/, pick(['.md', '.txt', '.mdx.txt', '.MDX']));
      return {
        at: 0,
        after: other,
        texts: new Map([
          [file.file, undefined],
          [other, file.text],
        ]),
      };
    },
  },
  {
    name: 'the wrong folder',
    whole: (file, pick) => {
      const folder = file.file.split('/')[1] ?? '';
      const others = ['defects', 'questions', 'remedies', 'rules', 'terms', 'defect', 'flaws'].filter(
        (one) => one !== folder,
      );
      const other = file.file.replace(`/${folder}/`, `/${pick(others)}/`);
      return {
        at: 0,
        after: other,
        texts: new Map([
          [file.file, undefined],
          [other, file.text],
        ]),
      };
    },
  },
  {
    name: 'a file renamed',
    only: /^content\/(?:defects|questions|remedies|sources|terms)\//,
    whole: (file, pick) => {
      const name = file.file.slice(file.file.lastIndexOf('/') + 1, -4);
      const other = file.file.replace(
        name,
        pick([misspelt(name, pick), name.replaceAll('-', '_'), name.replace(/^./, (c) => c.toUpperCase())]),
      );
      return other === file.file
        ? undefined
        : {
            at: 0,
            after: other,
            texts: new Map([
              [file.file, undefined],
              [other, file.text],
            ]),
          };
    },
  },
  {
    name: 'a wrong indent',
    whole: (file, pick) => {
      const at = pick(where(file, (line) => /^(?: +| *- )?[a-z][a-z-]*: \S/.test(line)));
      if (at === undefined) return undefined;
      const line = file.lines[at] ?? '';
      const after = line.startsWith(' ') ? pick([line.slice(1), ` ${line}`, `  ${line}`]) : ` ${line}`;
      return wholeLines(
        file,
        at,
        file.lines.map((one, i) => (i === at ? after : one)),
        after,
      );
    },
  },
  {
    name: 'a tab for spaces',
    line: (line) => (/^ {2,}\S/.test(line) ? line.replace(/^ +/, '\t') : undefined),
  },
  {
    name: 'quotes left out around a colon or a comma',
    line: (line) => {
      const found =
        /'([^'"{}[\]]*(?:: )[^'"{}[\]]*)'/.exec(line) ??
        (/\{[^']*'([^'"{}[\]]*, [^'"{}[\]]*)'/.exec(line) as RegExpExecArray | null);
      return found?.[1] ? line.replace(`'${found[1]}'`, found[1]) : undefined;
    },
  },
  {
    name: 'a quote or bracket not closed',
    line: (line) => (/: (?:'[^']+'|\[[^\]]+\]|\{[^}]+\})$/.test(line) ? line.slice(0, -1) : undefined),
  },
  {
    name: 'a colon without its space',
    line: (line) => (/^ *[a-z][a-z-]*: \S/.test(line) ? line.replace(': ', ':') : undefined),
  },
  {
    name: 'a day in another order',
    line: (line, pick) => {
      const found = /\d{4}-\d{2}-\d{2}/.exec(line);
      if (!found || !/on: /.test(line)) return undefined;
      const [y, m, d] = found[0].split('-');
      return line.replace(found[0], pick([`${d}.${m}.${y}`, `${m}/${d}/${y}`, `${y}-13-${d}`]));
    },
  },
  {
    name: 'no question mark',
    only: /^content\/questions\//,
    line: (line) => (/^ask: .*\?/.test(line) ? line.replace('?', '') : undefined),
  },
  {
    name: 'a letter in a word of the text',
    line: (line, pick) => {
      if (!PROSE.test(line)) return undefined;
      const words = [...line.matchAll(/(?<=[a-z]{2} )[a-z]{5,}(?=[ .,])/g)];
      if (!words.length) return undefined;
      const one = pick(words);
      return line.slice(0, one.index) + misspelt(one[0], pick) + line.slice(one.index + one[0].length);
    },
  },
  {
    name: 'a word in British spelling',
    line: (line) => {
      const british: Readonly<Record<string, string>> = {
        color: 'colour',
        colors: 'colours',
        gray: 'grey',
        liter: 'litre',
        mold: 'mould',
        fibers: 'fibres',
        vapor: 'vapour',
      };
      if (!/^ *(?:- )?(?:\{ )?[a-z-]+: ./.test(line) || /also|heard|paint:/.test(line)) return undefined;
      const found = /(?<=[a-z] )(colors?|gray|liter|mold|fibers|vapor)(?=[ .,;])/.exec(line);
      return found ? line.replace(found[0], british[found[0]] ?? '') : undefined;
    },
  },
  {
    name: 'a word twice',
    line: (line, pick) => {
      if (!PROSE.test(line)) return undefined;
      const words = [...line.matchAll(/(?<=[a-z]{2} )(?:the|it|and|is|of|a|to|with|in)(?= [a-z])/g)];
      if (!words.length) return undefined;
      const one = pick(words);
      return `${line.slice(0, one.index)}${one[0]} ${line.slice(one.index)}`;
    },
  },
  {
    name: 'a text lost',
    line: (line) => (/^[a-z][a-z-]*: ['"]?[A-Z]/.test(line) ? line.replace(/: .*/, ':') : undefined),
  },
  {
    name: 'a fence lost',
    whole: (file) =>
      wholeLines(
        file,
        file.end,
        file.lines.filter((_, at) => at !== file.end),
        '(no second ---)',
      ),
  },
];

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
