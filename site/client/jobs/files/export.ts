import type { JobCard, RemovedCard } from '#engine/model/job-card.ts';
import { fileName, saveFile } from '../../shared/save-file.ts';
import { type Deck, recall } from '../../shared/storage.ts';
import { dataUrlOf } from '../parts/photo.ts';
import { readPhotos, readRaw, readRemoved } from '../store/index.ts';
import { markExport } from '../store/marks.ts';
import type { KeptPhoto } from '../store/records.ts';

const JSON_TYPE = 'application/json';
/** `2026-11-25`, for the name of a file. */
const stamp = (at: number): string => new Date(at).toISOString().slice(0, 10);

/** Pictures by their ids, as data addresses. */
const picturesOf = async (photos: readonly KeptPhoto[]): Promise<Record<string, string>> =>
  Object.fromEntries(
    await Promise.all(photos.map(async (photo) => [photo.id, await dataUrlOf(photo)] as const)),
  );

/** Saves cards as one file. Only what was written counts as exported. */
export const exportCards = async (
  cards: readonly JobCard[],
  withPhotos: boolean,
  removed: readonly RemovedCard[] = [],
  practice?: Deck,
): Promise<void> => {
  const { jobFileOf } = await import('../store/schema.ts');
  const now = Date.now();
  const pictures: Record<string, string> = {};
  if (withPhotos) for (const { id } of cards) Object.assign(pictures, await picturesOf(await readPhotos(id)));
  const [only] = cards;
  const name = cards.length === 1 && only ? fileName(only.name) : `halfdry-${cards.length}-cards`;
  const file = { ...jobFileOf(cards, pictures, now, removed), ...(practice && { practice }) };
  saveFile(`${name}-${stamp(now)}.json`, JSON_TYPE, JSON.stringify(file));
};

/** What can not be read as it lies there, with the pictures that lie beside it: what may be rescued from the file. */
const foundOf = async (id: string, raw: unknown, photos: readonly KeptPhoto[]) => ({
  ...(typeof raw === 'object' && raw !== null ? raw : { id, asFound: raw }),
  ...(photos.length && { pictures: await picturesOf(photos) }),
});

/** Saves what lies in the store under an id, with its photos, also where it is no card any more. */
export const saveFound = async (id: string, raw: unknown, photos?: readonly KeptPhoto[]): Promise<void> => {
  const found = await foundOf(id, raw, photos ?? (await readPhotos(id)));
  saveFile(`halfdry-${fileName(id)}-as-found.json`, JSON_TYPE, JSON.stringify(found, undefined, 2));
};

const idOn = (raw: unknown): string =>
  typeof raw === 'object' && raw !== null && 'id' in raw ? String(raw.id) : '';

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
    else rest.push(await foundOf(idOn(raw), raw, await readPhotos(idOn(raw))));
  }
  // What was learned goes along: it is lost with the same phone.
  if (cards.length) await exportCards(cards, withPhotos, await readRemoved(), recall('practice'));
  if (rest.length)
    saveFile(`halfdry-unreadable-${stamp(Date.now())}.json`, JSON_TYPE, JSON.stringify(rest, undefined, 2));
  markExport(Date.now());
  return { cards: cards.length, unreadable: rest.length };
};
