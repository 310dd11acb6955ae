import { MOST_LETTERS } from '#engine/model/card-limits.ts';
import { isRecord } from '#engine/plain/record.ts';

/** The name on it, or one made of its id. */
export const nameOn = (raw: unknown, id: string): string =>
  isRecord(raw) && typeof raw['name'] === 'string' && raw['name'].trim()
    ? raw['name'].slice(0, MOST_LETTERS.name)
    : `Card ${id}`.slice(0, MOST_LETTERS.name);

/** When it was changed; long ago where it does not say. */
export const changedOn = (raw: unknown): number =>
  isRecord(raw) && Number.isSafeInteger(raw['changedAt']) ? Number(raw['changedAt']) : 0;

/** The ids of the photos that stand on it. */
export const photosOn = (raw: unknown): readonly string[] =>
  isRecord(raw) && Array.isArray(raw['photos'])
    ? raw['photos'].flatMap((photo: unknown) =>
        isRecord(photo) && typeof photo['id'] === 'string' ? photo['id'] : [],
      )
    : [];
