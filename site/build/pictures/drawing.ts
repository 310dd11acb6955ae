import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { BoardRecipe } from '../../../engine/model/board.ts';
import type { NamedCard } from './card-layout.ts';

/** What is drawn in one go: both views of a board, or all cards that show the same board. */
export type Drawing =
  | { readonly kind: 'board'; readonly key: string; readonly recipe: BoardRecipe }
  | {
      readonly kind: 'cards';
      readonly board: BoardRecipe | undefined;
      readonly cards: readonly { readonly key: string; readonly card: NamedCard }[];
    };

/** Hands drawings one by one to a worker; rejects with the worker's error. */
const work = (queue: Drawing[]): Promise<void> =>
  new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./drawer.ts', import.meta.url));
    const next = () => {
      const drawing = queue.shift();
      if (drawing) return worker.postMessage(drawing);
      void worker.terminate().then(() => resolve());
    };
    worker.on('message', next);
    worker.on('error', reject);
    next();
  });

/** Draws on two cores what the cache lacks; done when all of it lies there. */
export const drawAll = async (drawings: readonly Drawing[]): Promise<void> => {
  const queue = [...drawings];
  const threads = Math.min(2, availableParallelism(), queue.length);
  await Promise.all(Array.from({ length: threads }, () => work(queue)));
};
