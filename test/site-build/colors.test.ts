/** A color stands where a token is defined, and nowhere else. */
import { globSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { DARK_PAPER, LIGHT } from '../../site/build/colors.ts';

const COLOR =
  /(?<![\w&/#-])#(?:[0-9a-f]{3,4}|[0-9a-f]{6}|[0-9a-f]{8})(?![\w-])|\b(?:rgba?|hsla?|oklch|lab)\(/gi;
const TOKEN = /^\s*--[a-z-]+:/;
/** What an author alone sees, over the page. */
const AUTHORS = 'site/preview/';

const strays = (file: string): string[] =>
  readFileSync(file, 'utf8')
    .split('\n')
    .flatMap((line, at) =>
      line.match(COLOR) && !(file.endsWith('.css') && TOKEN.test(line))
        ? [`${file}:${at + 1} ${line.trim()}`]
        : [],
    );

it('finds no color in the site beside those of its tokens', () => {
  const files = globSync('site/**/*.{css,ts,tsx,astro}').filter((file) => !file.startsWith(AUTHORS));
  expect(files.length).toBeGreaterThan(200);
  expect(files.flatMap(strays)).toEqual([]);
});

it('draws cards, icons and posts with the tokens of the light scheme', () => {
  const tokens = readFileSync('site/styles/tokens.css', 'utf8');
  for (const [name, color] of Object.entries(LIGHT)) expect(tokens).toContain(`--${name}: ${color};`);
  expect(LIGHT.paper).not.toBe(DARK_PAPER);
});
