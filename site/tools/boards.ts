import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { copyFile, mkdir, readdir, readFile, rename, writeFile } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { isMainThread, parentPort, Worker } from 'node:worker_threads';
import { lightBoard, makeBoard } from '../../engine/board/render.ts';
import type { BoardRecipe } from '../../engine/model/board.ts';

export type NamedBoard = { name: string; recipe: BoardRecipe };
export type BoardView = (typeof BOARD_VIEWS)[number];
/** What was made for one view: its file in the target folder, and its size. */
export type BoardImage = { name: string; view: BoardView; file: string; bytes: number };

export const BOARD_VIEWS = ['raking', 'facing'] as const;
export const BOARD_WIDTH = 480;
export const BOARD_HEIGHT = 360;

/** Steps of quality, tried in turn until the picture is small enough; the last is taken as it is. */
const QUALITIES = [86, 76, 64, 50];
const MOST_BYTES = 10_240;
const ENCODER = { effort: 4, smartSubsample: true } as const;

const root = fileURLToPath(new URL('../../', import.meta.url));
const cache = join(root, 'node_modules/.cache/halfdry-boards');

type Job = { key: string; recipe: BoardRecipe };
const sha = (text: string): string => createHash('sha256').update(text).digest('hex');
const imageName = (key: string, view: BoardView): string => `${key.slice(0, 40)}-${view}.webp`;

/** Changes whenever a line of the renderer, the model's defaults or the encoder changes. */
const rendererHash = async (): Promise<string> => {
  const folder = join(root, 'engine/board');
  const files = (await readdir(folder, { recursive: true })).filter((file) => file.endsWith('.ts')).sort();
  const sources = await Promise.all(files.map((file) => readFile(join(folder, file), 'utf8')));
  const { default: sharp } = await import('sharp');
  const encoder = JSON.stringify([ENCODER, QUALITIES, MOST_BYTES, sharp.versions]);
  return sha(sources.join('\0') + encoder + BOARD_WIDTH + BOARD_HEIGHT);
};

/** Draws and encodes both views of a board into the cache. */
const draw = async ({ key, recipe }: Job): Promise<void> => {
  const { default: sharp } = await import('sharp');
  const board = makeBoard(recipe, BOARD_WIDTH, BOARD_HEIGHT);
  for (const view of BOARD_VIEWS) {
    const { data, width, height } = lightBoard(board, view, true);
    const raw = { width, height, channels: 4 as const };
    let image = Buffer.alloc(0);
    for (const quality of QUALITIES) {
      image = await sharp(data, { raw })
        .removeAlpha()
        .webp({ ...ENCODER, quality })
        .toBuffer();
      if (image.length <= MOST_BYTES) break;
    }
    const path = join(cache, imageName(key, view));
    await writeFile(`${path}.part`, image);
    await rename(`${path}.part`, path);
  }
};

/** Hands jobs one by one to a worker; rejects with the worker's error. */
const work = (queue: Job[]): Promise<void> =>
  new Promise((resolve, reject) => {
    const worker = new Worker(fileURLToPath(import.meta.url));
    const next = () => {
      const job = queue.pop();
      if (job) return worker.postMessage(job);
      void worker.terminate().then(() => resolve());
    };
    worker.on('message', next);
    worker.on('error', reject);
    next();
  });

/**
 * Renders raking and facing views of every board to `<outDir>/<name>-<view>.webp`.
 * What was drawn before with the same recipe and renderer is copied from the cache.
 * Alternative text is no part of the picture and does not draw it again.
 */
export const renderAll = async (boards: readonly NamedBoard[], outDir: string): Promise<BoardImage[]> => {
  await mkdir(cache, { recursive: true });
  const renderer = await rendererHash();
  const keyed = boards.map(({ name, recipe }) => ({
    name,
    recipe,
    key: sha(JSON.stringify({ ...recipe, alt: '' }) + renderer),
  }));
  const missing = new Map(
    keyed
      .filter(({ key }) => !BOARD_VIEWS.every((view) => existsSync(join(cache, imageName(key, view)))))
      .map((job) => [job.key, job]),
  );
  const queue = [...missing.values()].map(({ key, recipe }) => ({ key, recipe }));
  const threads = Math.min(2, availableParallelism(), queue.length);
  await Promise.all(Array.from({ length: threads }, () => work(queue)));
  const images: BoardImage[] = [];
  for (const { name, key } of keyed)
    for (const view of BOARD_VIEWS) {
      const file = `${name}-${view}.webp`;
      const target = join(outDir, file);
      await mkdir(dirname(target), { recursive: true });
      await copyFile(join(cache, imageName(key, view)), target);
      images.push({ name, view, file, bytes: (await readFile(target)).length });
    }
  return images;
};

if (!isMainThread && parentPort) {
  const port = parentPort;
  const { default: sharp } = await import('sharp');
  sharp.concurrency(1);
  port.on('message', (job: Job) => void draw(job).then(() => port.postMessage('done')));
}
