import type { JobCard, RemovedCard } from '#engine/model/job-card.ts';
import { fileName, saveFile } from '../../shared/save-file.ts';
import { dataUrlOf } from '../parts/photo.ts';
import { readPhotos, readRaw, readRemoved } from '../store/index.ts';
import { markExport } from '../store/marks.ts';

/** `2026-11-25`, for the name of a file. */
const stamp = (at: number): string => new Date(at).toISOString().slice(0, 10);

const photosOf = async (cards: readonly JobCard[]): Promise<Record<string, string>> => {
  const photos: Record<string, string> = {};
  for (const { id } of cards)
    for (const photo of await readPhotos(id)) photos[photo.id] = await dataUrlOf(photo);
  return photos;
};

/** Saves cards as one file. Only what was written counts as exported. */
export const exportCards = async (
  cards: readonly JobCard[],
  withPhotos: boolean,
  removed: readonly RemovedCard[] = [],
): Promise<void> => {
  const { jobFileOf } = await import('../store/schema.ts');
  const now = Date.now();
  const file = jobFileOf(cards, withPhotos ? await photosOf(cards) : {}, now, removed);
  const [only] = cards;
  const name = cards.length === 1 && only ? fileName(only.name) : `halfdry-${cards.length}-cards`;
  saveFile(`${name}-${stamp(now)}.json`, 'application/json', JSON.stringify(file));
};

/** Saves every card; a record that is no card goes into a second file as it lies there, so that nothing is left behind. */
export const exportAll = async (
  withPhotos: boolean,
): Promise<{ readonly cards: number; readonly unreadable: number }> => {
  const { readCard } = await import('../store/schema.ts');
  const cards: JobCard[] = [];
  const rest: unknown[] = [];
  for (const raw of await readRaw()) {
    const read = readCard(raw);
    if (read.ok) cards.push(read.value);
    else rest.push(raw);
  }
  if (cards.length) await exportCards(cards, withPhotos, await readRemoved());
  if (rest.length)
    saveFile(
      `halfdry-unreadable-${stamp(Date.now())}.json`,
      'application/json',
      JSON.stringify(rest, undefined, 2),
    );
  markExport(Date.now());
  return { cards: cards.length, unreadable: rest.length };
};
