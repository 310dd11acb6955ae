/** Who may import whom, read from the imports themselves. */
import { globSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { exports } from '../package.json';

const files = (pattern: string): string[] =>
  globSync(pattern)
    .map((file) => file.replaceAll('\\', '/'))
    .sort();
const importsOf = (text: string): { from: string; typeOnly: boolean }[] =>
  [...text.matchAll(/^\s*(?:import|export)\s+(type\s+)?(?:[^'";]*?\sfrom\s+)?'([^']+)'/gm)].map((found) => ({
    from: found[2] ?? '',
    typeOnly: Boolean(found[1]),
  }));

const engine = files('engine/**/*.ts');

describe('layers', () => {
  it('finds the engine', () => {
    expect(engine.length).toBeGreaterThan(40);
  });

  for (const file of engine) {
    const text = readFileSync(file, 'utf8');
    it(`${file} imports only the engine and its own libraries`, () => {
      for (const { from, typeOnly } of importsOf(text)) {
        if (from.startsWith('.')) {
          expect(from, `${file} must write the .ts ending`).toMatch(/\.ts$/);
          continue;
        }
        const allowed =
          (from === 'zod' && (file.startsWith('engine/model/') || typeOnly)) ||
          (['fuse.js', 'fuse.js/basic', 'stemmer'].includes(from) && /^engine\/find/.test(file));
        expect(allowed, `${file} imports ${from}`).toBe(true);
      }
    });
    it(`${file} has no clock, chance or screen of its own`, () => {
      const code = text.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');
      for (const word of [
        'Date.now',
        'new Date()',
        'Math.random',
        'localStorage',
        'process.env',
        'process.argv',
        'console.',
      ])
        expect(code.includes(word), `${file} uses ${word}`).toBe(false);
    });
  }

  /** The doors of the package that a page may use; `link` reads raw files, so it alone brings the schemas. */
  const DOORS = Object.values(exports as Readonly<Record<string, string>>)
    .map((door) => door.slice(2))
    .filter((door) => door !== 'engine/link.ts');

  it('keeps the schema library behind the service door', () => {
    const seen = new Set<string>();
    const follow = (file: string) => {
      if (seen.has(file)) return;
      seen.add(file);
      const text = readFileSync(file, 'utf8');
      for (const { from, typeOnly } of importsOf(text))
        if (!typeOnly && from.startsWith('.')) follow(new URL(from, `file:///${file}`).pathname.slice(1));
        else if (!typeOnly) expect(from, `${file} brings ${from} to the page`).not.toBe('zod');
    };
    for (const door of DOORS) follow(door);
    expect(seen.size).toBeGreaterThan(60);
  });

  it('lets content/tools and site read each other only through the reader', () => {
    for (const file of files('content/tools/*.ts'))
      for (const { from } of importsOf(readFileSync(file, 'utf8'))) expect(from, file).not.toMatch(/site\//);
  });
});
