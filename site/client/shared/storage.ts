import * as v from 'valibot';
import { LOCAL_KEYS, SESSION_KEYS } from '../../shared/storage-keys.ts';

const FACT_NAME = /^[a-z][a-z0-9-]{0,60}$/;
const FACT = v.object({
  value: v.union([v.pipe(v.string(), v.maxLength(60)), v.pipe(v.number(), v.finite())]),
  how: v.picklist(['answered', 'measured', 'computed', 'told']),
});
const CASE = v.object({
  version: v.literal(1),
  // One fact that can not be read does not take the others with it.
  facts: v.pipe(
    v.record(v.string(), v.unknown()),
    v.transform((facts) =>
      Object.fromEntries(
        Object.entries(facts).flatMap(([name, fact]) =>
          FACT_NAME.test(name) && v.is(FACT, fact) ? [[name, fact]] : [],
        ),
      ),
    ),
  ),
});
const count = v.fallback(v.pipe(v.number(), v.safeInteger(), v.minValue(0)), 0);
const DRAFT = v.record(v.string(), v.pipe(v.string(), v.maxLength(200)));
const FORM = v.object({ version: v.literal(1), draft: DRAFT });

/** Every key with what may stand there. A shape that changes gets a new version, and a step that reads the old one. */
const SCHEMAS = {
  case: CASE,
  'card-in-hand': v.object({
    id: v.string(),
    name: v.pipe(
      v.string(),
      v.transform((name) => name.slice(0, 80)),
    ),
  }),
  'job-marks': v.object({ cards: count, changes: count, exportedAt: v.optional(count) }),
  // Before it had a version the draft stood there alone.
  'clock-form': v.union([
    FORM,
    v.pipe(
      DRAFT,
      v.transform((draft) => ({ version: 1 as const, draft })),
    ),
  ]),
  'coat-runs': v.literal(1),
  'old-clock': v.unknown(),
  'schedule-form': FORM,
} as const;

type Key = keyof typeof SCHEMAS;
type Kept<K extends Key> = v.InferOutput<(typeof SCHEMAS)[K]>;

/** What lies under a key. `damaged` is text that its schema does not read; `denied`, a browser that keeps nothing. */
export type Found<T> =
  | { readonly kind: 'kept'; readonly value: T }
  | { readonly kind: 'nothing' | 'denied' }
  | { readonly kind: 'damaged'; readonly text: string };

const nameOf = (key: Key): string => ({ ...LOCAL_KEYS, ...SESSION_KEYS })[key];
/** Nothing where there is no browser at all. */
const areaOf = (key: Key): Storage | undefined =>
  key in SESSION_KEYS ? globalThis.sessionStorage : globalThis.localStorage;

/** Runs what a browser may refuse (private window, storage full or turned off); anything else is a bug and is thrown. */
const unlessRefused = <T>(work: () => T, refused: T): T => {
  try {
    return work();
  } catch (error) {
    if (error instanceof DOMException) return refused;
    throw error;
  }
};

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
};

export const lookUp = <K extends Key>(key: K): Found<Kept<K>> => {
  const text = unlessRefused(() => areaOf(key)?.getItem(nameOf(key)), undefined);
  if (text === undefined) return { kind: 'denied' };
  if (text === null) return { kind: 'nothing' };
  const value = parsed(text);
  const read = v.safeParse(SCHEMAS[key], value);
  return value !== undefined && read.success
    ? { kind: 'kept', value: read.output }
    : { kind: 'damaged', text };
};

/** What is kept under a key; nothing where there is none, it is damaged, or storage is denied. */
export const recall = <K extends Key>(key: K): Kept<K> | undefined => {
  const found = lookUp(key);
  return found.kind === 'kept' ? found.value : undefined;
};

/** Keeps a value. False where the browser refuses: tell her. A value that its own schema would not read back is a bug. */
export const keep = <K extends Key>(key: K, value: v.InferInput<(typeof SCHEMAS)[K]>): boolean => {
  v.parse(SCHEMAS[key], value);
  return unlessRefused(() => {
    const area = areaOf(key);
    area?.setItem(nameOf(key), JSON.stringify(value));
    return area !== undefined;
  }, false);
};

/** False where the browser refuses. */
export const forget = (key: Key): boolean =>
  unlessRefused(() => {
    const area = areaOf(key);
    area?.removeItem(nameOf(key));
    return area !== undefined;
  }, false);
