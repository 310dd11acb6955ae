import { misspelt, PROSE, type Slip, wholeLines } from './text-slip.ts';

/** Slips in the sentences, and a text that ends too soon. */
export const SLIPS_OF_WORDS: readonly Slip[] = [
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
