/** The colors of the site for what is drawn without its styles: read from `site/styles/tokens.css`, where they stand. */
import { existsSync, readFileSync } from 'node:fs';

const NAMES = ['paper', 'ink', 'ink-soft', 'tape', 'closed', 'cast'] as const;
type Colors = Readonly<Record<(typeof NAMES)[number], string>>;

const BESIDE = new URL('../styles/tokens.css', import.meta.url);
/** Bundled with the pages this file lies elsewhere; then the project is where the build runs. */
const FILE = existsSync(BESIDE) ? BESIDE : 'site/styles/tokens.css';
const DARK = '@media (prefers-color-scheme: dark)';

/** Throws where the style sheet has no such color any more, naming it. */
const colorsIn = (css: string): Colors => {
  const found = new Map(
    [...css.matchAll(/--([a-z-]+):\s*(#[0-9a-f]{3,8});/gi)].map(([, name, color]) => [name, color]),
  );
  const missing = NAMES.filter((name) => !found.has(name));
  if (missing.length)
    throw new Error(
      `site/styles/tokens.css has no color named ${missing.join(', ')}; site/build/colors.ts draws with it`,
    );
  return Object.fromEntries(NAMES.map((name) => [name, found.get(name)])) as Colors;
};

const [light = '', dark = ''] = readFileSync(FILE, 'utf8').split(DARK);

/** In light, as on everything that is drawn once for all: cards, icons, posts. */
export const LIGHT = colorsIn(light);
/** In dark, where it differs. */
export const DARK_PAPER = /--paper:\s*(#[0-9a-f]+);/i.exec(dark)?.[1] ?? LIGHT.paper;
