/** The worker of `drawing.ts`: draws into the cache what it is sent, and asks for more. */
import { parentPort } from 'node:worker_threads';
import sharp from 'sharp';
import { drawBoard } from './boards.ts';
import { drawCards } from './cards.ts';
import type { Drawing } from './drawing.ts';

sharp.concurrency(1);

const draw = async (drawing: Drawing): Promise<void> => {
  if (drawing.kind === 'board') await drawBoard(drawing);
  else await drawCards(drawing);
};

parentPort?.on(
  'message',
  (drawing: Drawing) => void draw(drawing).then(() => parentPort?.postMessage('done')),
);
