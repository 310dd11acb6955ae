import {
  blockAt,
  FIELD,
  ID_VALUE,
  keyOf,
  misspelt,
  PROSE,
  type Slip,
  where,
  wholeLines,
} from './text-slip.ts';

/** Slips in what a field says: its name, its value, what it rests on. */
export const SLIPS_OF_MEANING: readonly Slip[] = [
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
];
