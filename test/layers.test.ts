/** Who may import whom, read from the imports themselves. */
import { globSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path/posix';
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

/** What the language itself knows of the moment and of chance. */
const OF_NOW = [/\bDate\.now\b/, /\bDate\(\s*\)/, /\bMath\.random\b/, /\bTemporal\.Now\b/];
/** What it knows of where the device stands: its zone and its language. */
const OF_HERE = [
  /\bIntl\b/,
  /\.toLocale[A-Z]\w*/,
  /\.localeCompare\b/,
  /\.(?:get|set)(?:Hours|Minutes|Seconds|Milliseconds|Date|Day|Month|FullYear|Year|TimezoneOffset)\(/,
];
/** Times are told in the zone of the device, unless another is named: this file alone asks for it. */
const KNOWS_THE_ZONE = 'engine/clock/format.ts';

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
    it(`${file} has no clock, chance or zone of its own`, () => {
      const code = text.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');
      for (const way of file === KNOWS_THE_ZONE ? OF_NOW : [...OF_NOW, ...OF_HERE])
        expect(
          code.match(way)?.[0],
          `${file} reads the clock, the dice or the zone of the device`,
        ).toBeUndefined();
    });
  }

  it('lets the compiler know neither screen nor network nor process in the engine', () => {
    const world = JSON.parse(readFileSync('tsconfig.world.json', 'utf8'));
    expect(world).toMatchObject({ compilerOptions: { lib: ['es2024'], types: [] } });
    expect(JSON.parse(readFileSync('engine/tsconfig.json', 'utf8'))).toEqual({
      extends: '../tsconfig.world.json',
      include: ['.'],
    });
  });

  /** The doors of the package that a page may use; `link` reads raw files, so it alone brings the schemas. */
  const DOORS = Object.values(exports as Readonly<Record<string, string>>)
    .map((door) => door.slice(2))
    .filter((door) => door !== 'engine/link.ts');

  /** Follows what runs from a file of the engine on, and tells where it meets the schema library. */
  const bringsSchemas = (door: string, seen = new Set<string>()): string | undefined => {
    if (seen.has(door)) return undefined;
    seen.add(door);
    for (const { from, typeOnly } of importsOf(readFileSync(door, 'utf8'))) {
      if (typeOnly) continue;
      if (from === 'zod') return door;
      const met = from.startsWith('.') && bringsSchemas(join(dirname(door), from), seen);
      if (met) return met;
    }
    return undefined;
  };

  it('keeps the schema library behind the service door', () => {
    const seen = new Set<string>();
    expect(DOORS.map((door) => bringsSchemas(door, seen)).filter(Boolean)).toEqual([]);
    expect(seen.size).toBeGreaterThan(60);
    expect(bringsSchemas('engine/link.ts')).toMatch(/^engine\/(?:model|faults)\//);
  });

  /** What lay in the database or comes from a file is looked at field by field before it is believed. */
  const CHECKS_CARDS = 'site/client/jobs/store/schema.ts';

  it('lets no file that a phone runs bring the schema library, by whatever way, but for the keeper of the cards', () => {
    const taken = files('site/{client,shared}/**/*.{ts,tsx}').flatMap((file) =>
      importsOf(readFileSync(file, 'utf8'))
        .filter(({ from, typeOnly }) => !typeOnly && from.startsWith('#engine/'))
        .map(({ from }) => ({ file, door: from.slice(1) })),
    );
    expect(taken.length).toBeGreaterThan(100);
    const brought = taken.flatMap(({ file, door }) => {
      const met = bringsSchemas(door);
      return met ? [`${file} takes ${door}, which brings zod by ${met}`] : [];
    });
    expect(brought.filter((one) => !one.startsWith(CHECKS_CARDS))).toEqual([]);
    expect(brought).toHaveLength(1);
  });
});
