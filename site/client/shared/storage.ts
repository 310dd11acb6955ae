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
const CARD_NAME = /^(look|stage|case)\.[a-z][a-z0-9-]{0,60}$/;
const FORM = v.object({ version: v.literal(1), draft: DRAFT });

/** A can that is kept by its name, with what it says as it was typed. */
const CAN = v.object({
  id: v.pipe(v.string(), v.regex(/^[A-Za-z0-9-]{1,64}$/)),
  name: v.pipe(v.string(), v.nonEmpty(), v.maxLength(40)),
  product: v.pipe(v.string(), v.regex(/^[a-z][a-z0-9-]{0,60}$/)),
  units: v.picklist(['us', 'metric']),
  says: DRAFT,
});
export type KeptCan = v.InferOutput<typeof CAN>;

const instant = v.pipe(v.number(), v.safeInteger(), v.minValue(0));
const size = v.pipe(v.number(), v.finite(), v.minValue(0));
/** One thing that is practised, as the scheduler keeps it; times in epoch milliseconds. */
const PRACTISED = v.object({
  due: instant,
  stability: size,
  difficulty: size,
  scheduledDays: size,
  learningSteps: count,
  reps: count,
  lapses: count,
  state: v.picklist([0, 1, 2, 3]),
  lastReview: v.optional(instant),
});
/** Progress in practice, as kept here and as saved to a file. */
export const DECK = v.object({
  kind: v.literal('halfdry-practice'),
  version: v.literal(1),
  boards: count,
  right: count,
  // One card that can not be read does not take the others with it.
  cards: v.pipe(
    v.record(v.string(), v.unknown()),
    v.transform((cards) =>
      Object.fromEntries(
        Object.entries(cards).flatMap(([name, card]) => {
          const read = CARD_NAME.test(name) ? v.safeParse(PRACTISED, card) : undefined;
          return read?.success ? [[name, read.output]] : [];
        }),
      ),
    ),
  ),
});
export type Deck = v.InferOutput<typeof DECK>;

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
  // One can that can not be read does not take the others with it.
  cans: v.object({
    version: v.literal(1),
    cans: v.pipe(
      v.array(v.unknown()),
      v.transform((cans) => cans.filter((can): can is KeptCan => v.is(CAN, can))),
    ),
  }),
  'coat-runs': v.literal(1),
  'cards-back': v.object({ cards: count, photosLost: count }),
  'coats-back': v.object({ coats: count }),
  'old-clock': v.unknown(),
  practice: DECK,
  'schedule-form': FORM,
  'told-here': count,
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
