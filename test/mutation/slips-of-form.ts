import { misspelt, type Slip, where, wholeLines } from './text-slip.ts';

/** Slips in how a file is written and where it lies. */
export const SLIPS_OF_FORM: readonly Slip[] = [
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
];
