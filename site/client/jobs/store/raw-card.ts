/** What can be told of a record that may be no card. */
type Raw = Readonly<Record<string, unknown>>;
const isObject = (raw: unknown): raw is Raw => typeof raw === 'object' && raw !== null;

const LONGEST_NAME = 80;
/** The name on it, or one made of its id. */
export const nameOn = (raw: unknown, id: string): string =>
  isObject(raw) && typeof raw['name'] === 'string' && raw['name'].trim()
    ? raw['name'].slice(0, LONGEST_NAME)
    : `Card ${id}`.slice(0, LONGEST_NAME);

/** When it was changed; long ago where it does not say. */
export const changedOn = (raw: unknown): number =>
  isObject(raw) && Number.isSafeInteger(raw['changedAt']) ? Number(raw['changedAt']) : 0;

/** The ids of the photos that stand on it. */
export const photosOn = (raw: unknown): readonly string[] =>
  isObject(raw) && Array.isArray(raw['photos'])
    ? raw['photos'].flatMap((photo: unknown) =>
        isObject(photo) && typeof photo['id'] === 'string' ? photo['id'] : [],
      )
    : [];
