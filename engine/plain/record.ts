/** Any object by its keys, as it came from a file or a store: what stands under a key is not known yet. */
export type JsonRecord = Readonly<Record<string, unknown>>;

/** Whether a value is an object with keys, and no list. */
export const isRecord = (value: unknown): value is JsonRecord =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
