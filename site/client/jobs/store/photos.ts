import type { Change, KeptPhoto, PhotoRecord } from './records.ts';

/** No id of a card or photo holds this sign. */
const BETWEEN = '/';

export const keyOf = (card: string, photo: string): string => `${card}${BETWEEN}${photo}`;

const isWhole = ({ id }: Pick<PhotoRecord, 'id'>): boolean => id.includes(BETWEEN);

/** The photo that lies under a key of the store, or of the second copies, of a card. */
export const photoUnder = (key: string): string => key.slice(key.lastIndexOf(BETWEEN) + 1);
/** The card of a key of that newer form. */
export const cardUnder = (key: string): string => key.slice(0, Math.max(0, key.lastIndexOf(BETWEEN)));

/** The photos of one card out of its records. Of two records of one photo the newer form counts. */
export const photosIn = (records: readonly PhotoRecord[]): readonly KeptPhoto[] => {
  const photos = new Map<string, KeptPhoto>();
  for (const record of [...records].sort((one, two) => Number(isWhole(one)) - Number(isWhole(two)))) {
    const id = photoUnder(record.id);
    photos.set(id, { ...record, id });
  }
  return [...photos.values()];
};

export const putPhoto = async (change: Change, photo: KeptPhoto): Promise<void> => {
  await change.objectStore('photos').put({ ...photo, id: keyOf(photo.card, photo.id) });
};

/** Takes photos of a card away: those whose ids are named, or all. */
export const dropPhotos = async (
  change: Change,
  card: string,
  named?: (photo: string) => boolean,
): Promise<void> => {
  const store = change.objectStore('photos');
  const records = await store.index('card').getAllKeys(card);
  await Promise.all(
    records.filter((key) => !named || named(photoUnder(key))).map((key) => store.delete(key)),
  );
};
