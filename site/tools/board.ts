/**
 * `npm run board -- <defect or question>`: its pictures as PNG. `npm run board -- --sheet [group]`: all features, or those
 * of one group, and their fields.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { parseArgs } from 'node:util';
import sharp from 'sharp';
import { z } from 'zod';
import { lightBoard, makeBoard } from '#engine/board/render.ts';
import { say } from '#engine/faults/say.ts';
import { schemaFaults } from '#engine/faults/schema-faults.ts';
import { BoardRecipe } from '#engine/model/board/recipe.ts';
import type { RawEntry } from '#engine/model/knowledge.ts';
import { nearest, nearestId } from '#engine/plain/nearest.ts';
import { boardFaults } from '#engine/prove/boards-fit.ts';
import { readContent } from '../../content/tools/read.ts';
import { FEATURE_GROUPS, shownBest, type WrittenBoard } from '../build/pictures/feature-fields.ts';
import { featurePage } from '../build/pictures/feature-page.ts';

/** Where the pictures are laid; not part of the site. */
const FOLDER = 'pictures';
/** As large as the site shows them, so that what can not be seen there can not be seen here. */
const SIZE = { width: 480, height: 360 } as const;
const VIEWS = ['raking', 'facing'] as const;

const fail = (message: string): void => {
  console.error(message);
  process.exitCode = 1;
};

const keep = (file: string, picture: Buffer): void => {
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, picture);
  console.log(`  ${file}`);
};

const Boards = z.object({
  boards: z.union([z.array(BoardRecipe), z.strictObject({ yes: BoardRecipe, no: BoardRecipe })]).default([]),
});

/** The boards of a flaw or a question by number or answer. Only they are read, so that the rest may still be unfinished. */
const boardsOf = (entry: RawEntry): readonly (readonly [name: string, recipe: BoardRecipe])[] | undefined => {
  const data = (entry.data ?? {}) as { boards?: unknown };
  const schema = Array.isArray(data.boards)
    ? z.object({ boards: z.array(BoardRecipe) })
    : z.object({ boards: z.strictObject({ yes: BoardRecipe, no: BoardRecipe }).optional() });
  const parsed = schema.safeParse({ boards: data.boards });
  if (!parsed.success) {
    for (const { path, atKey, fault } of schemaFaults(parsed.error, data, schema))
      fail(say({ file: entry.file, line: entry.lineOf(path, atKey), ...fault }));
    return undefined;
  }
  const { boards = [] } = parsed.data;
  return Array.isArray(boards)
    ? boards.map((recipe, index) => [String(index + 1), recipe] as const)
    : Object.entries(boards);
};

/** What `npm run check` will refuse about the pictures; they are drawn all the same, so that it can be seen. */
const warn = (
  { file, lineOf, data }: RawEntry,
  boards: readonly (readonly [string, BoardRecipe])[],
): void => {
  const { boards: listed, looks } = data as { boards: unknown; looks?: unknown };
  const refused = boards.flatMap(([name, recipe]) =>
    [...boardFaults(recipe, typeof looks === 'string' ? looks : '')].map(([fault, path]) =>
      say({
        file,
        line: lineOf(['boards', Array.isArray(listed) ? Number(name) - 1 : name, ...path]),
        ...fault,
      }),
    ),
  );
  if (refused.length) console.error(`npm run check will refuse this:\n${refused.join('\n')}`);
};

const drawEntry = async (entry: RawEntry): Promise<void> => {
  if (entry.broken) return fail(say({ file: entry.file, line: entry.broken.line, ...entry.broken.fault }));
  const boards = boardsOf(entry);
  if (!boards) return;
  if (boards.length === 0)
    return fail(`${entry.file} has no boards: yet; npm run board -- --sheet shows what can be drawn`);
  warn(entry, boards);
  console.log(`${entry.file}, in low light from the side (raking) and in window light (facing):`);
  for (const [name, recipe] of boards) {
    const board = makeBoard(recipe, SIZE.width, SIZE.height);
    for (const view of VIEWS) {
      const { data, width, height } = lightBoard(board, view, true);
      const picture = sharp(Buffer.from(data.buffer), { raw: { width, height, channels: 4 } });
      keep(join(FOLDER, entry.id, `${name}-${view}.png`), await picture.png().toBuffer());
    }
  }
};

/** Every board that can be read. */
const written = (entries: readonly RawEntry[]): readonly WrittenBoard[] =>
  entries
    .filter(({ kind }) => kind === 'defect' || kind === 'question')
    .flatMap(({ file, data }) => {
      const parsed = Boards.safeParse(data);
      return parsed.success
        ? Object.values(parsed.data.boards).map((recipe): WrittenBoard => ({ file, recipe }))
        : [];
    });

const GROUPS = FEATURE_GROUPS.map(({ name }) => name);

const drawSheet = async (entries: readonly RawEntry[], only: string): Promise<void> => {
  if (only && !GROUPS.includes(only)) {
    const near = nearest(only, GROUPS);
    return fail(
      `there is no group of features "${only}"; ${near ? `did you mean "${near}"?` : `groups: ${GROUPS.join(', ')}`}`,
    );
  }
  const boards = written(entries);
  console.log('Every feature with its fields, units and bounds:');
  for (const { name, what, features } of FEATURE_GROUPS) {
    if (only && name !== only) continue;
    console.log(`  drawing the ${features.length} ${name} …`);
    keep(
      join(FOLDER, 'features', `${name}.png`),
      await featurePage(`${name}: ${what}`, features, (kind) => shownBest(boards, kind)),
    );
  }
};

const draw = async (id: string, sheet: boolean): Promise<void> => {
  if (!id && !sheet)
    return fail(
      `which flaw? npm run board -- <defect or question>, or --sheet for all features, or --sheet <group>: ${GROUPS.join(', ')}`,
    );
  const entries = readContent(process.cwd());
  if (sheet) return drawSheet(entries, id);
  const drawn = entries.filter(({ kind }) => kind === 'defect' || kind === 'question');
  const entry = drawn.find((one) => one.id === id);
  if (entry) return drawEntry(entry);
  const near = nearestId(
    id,
    drawn.map((one) => one.id),
  );
  fail(`there is no defect or question "${id}"${near ? `; did you mean "${near}"?` : ''}`);
};

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { sheet: { type: 'boolean', default: false } },
});
await draw(positionals[0] ?? '', values.sheet);
