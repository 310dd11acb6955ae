import { existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { join } from 'node:path';

const CACHE = 'node_modules/.cache';

/**
 * Takes a folder out of the way at once and deletes it while other work goes on; the promise is for the end of that.
 * A folder on another disk can not be moved and is deleted on the spot.
 */
export const setAside = async (folder: string): Promise<void> => {
  if (!existsSync(folder)) return;
  mkdirSync(CACHE, { recursive: true });
  const aside = join(CACHE, `halfdry-old-${process.pid}`);
  try {
    renameSync(folder, aside);
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'EXDEV')) throw error;
    rmSync(folder, { recursive: true });
    return;
  }
  await rm(aside, { recursive: true });
};
