import { z } from 'zod';
import { entryOf } from '../plain/entry-of.ts';
import { isRecord, type JsonRecord } from '../plain/record.ts';
import { type CardFault, cardFault } from './card-fault.ts';
import { CARD_VERSION, MOST_CARDS_REMOVED } from './card-limits.ts';
import { type JobCard, JobFile, RemovedCard } from './job-card.ts';
import { type CardRead, MOST_FAULTS, NEWER, readCard } from './one-card.ts';

/** What could be read: whole cards only. `faults` names those that were left out and why; `leftOut` counts them. */
export type JobFileRead =
  | {
      readonly ok: true;
      readonly value: JobFile;
      readonly leftOut: number;
      readonly faults: readonly CardFault[];
    }
  | Extract<CardRead<never>, { ok: false }>;

/** Above these a file is not looked into: far more than a phone keeps. */
const MOST_CHARACTERS = 300_000_000;
const MOST_CARDS = 5000;
const MOST_PICTURE = 4_000_000;
const PICTURE = /^data:image\/(?:jpeg|webp|png);base64,[A-Za-z0-9+/]*={0,2}$/;

const FILE = 'This file';
const refused = (says: string, field = ''): JobFileRead => ({
  ok: false,
  faults: [cardFault(FILE, field, says)],
});

/** Pictures of cards that were read; one that is no picture is left out and named. */
const picturesOf = (raw: unknown, cards: readonly JobCard[]): [Record<string, string>, CardFault[]] => {
  const pictures: [string, string][] = [];
  const faults: CardFault[] = [];
  if (!isRecord(raw))
    return [
      {},
      raw === undefined ? [] : [cardFault(FILE, 'photos', 'must be a group of fields; they are left out.')],
    ];
  for (const { name, photos } of cards)
    for (const [index, { id }] of photos.entries()) {
      const picture = entryOf(raw, id);
      if (picture === undefined) continue;
      if (typeof picture === 'string' && picture.length <= MOST_PICTURE && PICTURE.test(picture))
        pictures.push([id, picture]);
      else
        faults.push(
          cardFault(
            `“${name}”`,
            `photos, entry ${index + 1}`,
            'is no picture that can be kept; it is left out.',
          ),
        );
    }
  return [Object.fromEntries(pictures), faults];
};

const readCards = (list: readonly unknown[]): { cards: JobCard[]; faults: CardFault[]; leftOut: number } => {
  const cards = new Map<string, JobCard>();
  const faults: CardFault[] = [];
  let leftOut = 0;
  for (const [index, raw] of list.entries()) {
    const read = readCard(raw, `Card ${index + 1}`);
    if (read.ok && !cards.has(read.value.id)) {
      cards.set(read.value.id, read.value);
      continue;
    }
    leftOut += 1;
    if (read.ok)
      faults.push(cardFault(`“${read.value.name}”`, 'id', 'stands twice in this file; the first is taken.'));
    else if (faults.length < MOST_FAULTS) faults.push(...read.faults);
  }
  return { cards: [...cards.values()], faults, leftOut };
};

/** Cards that the other side took away; what is no such note is left out and told once. */
const removedOf = (raw: unknown): [RemovedCard[], CardFault[]] => {
  if (raw === undefined) return [[], []];
  const list: readonly unknown[] = Array.isArray(raw) ? raw.slice(0, MOST_CARDS_REMOVED) : [];
  const read = list.flatMap((one) => RemovedCard.safeParse(one).data ?? []);
  const whole = Array.isArray(raw) && read.length === raw.length;
  const says = 'could not all be read: a card that was taken away elsewhere may stay here.';
  return [read, whole ? [] : [cardFault(FILE, 'removed', says)]];
};

const readParsed = (raw: JsonRecord): JobFileRead => {
  if (raw['format'] !== 'halfdry-jobs')
    return refused('is no export of job cards; choose a file that the job cards page wrote.');
  const version = raw['version'];
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return refused('is missing or no number; choose a file that the job cards page wrote.', 'version');
  if (version > CARD_VERSION) return refused(NEWER);
  const list = raw['cards'];
  if (!Array.isArray(list)) return refused('is missing or no list; choose another file.', 'cards');
  if (list.length > MOST_CARDS)
    return refused(`holds more than ${MOST_CARDS} cards; export fewer at a time.`);
  const { cards, faults, leftOut } = readCards(list);
  const [fault, ...others] = faults;
  if (leftOut && !cards.length && fault)
    return { ok: false, faults: [fault, ...others.slice(0, MOST_FAULTS - 1)] };
  const [photos, lost] = picturesOf(raw['photos'], cards);
  const [removed, blurred] = removedOf(raw['removed']);
  const at = raw['writtenAt'];
  const writtenAt = typeof at === 'number' && Number.isSafeInteger(at) && at >= 0 ? at : 0;
  return {
    ok: true,
    value: {
      format: 'halfdry-jobs',
      version: CARD_VERSION,
      writtenAt,
      cards,
      ...(removed.length && { removed }),
      ...(Object.keys(photos).length && { photos }),
      ...(raw['practice'] !== undefined && { practice: raw['practice'] }),
    },
    leftOut,
    faults: [...faults, ...lost, ...blurred].slice(0, MOST_FAULTS),
  };
};

/**
 * An export, as text or already parsed. Never throws; a card with a fault is left out and named, the others are read.
 */
export const readJobFile = (input: unknown): JobFileRead => {
  try {
    if (typeof input === 'string' && input.length > MOST_CHARACTERS)
      return refused('is too large to read; export fewer cards, or without pictures.');
    const raw: unknown = typeof input === 'string' ? JSON.parse(input) : input;
    return isRecord(raw) ? readParsed(raw) : refused('is no export of job cards; choose another file.');
  } catch {
    return refused('cannot be read: it is damaged or no JSON. Choose another file.');
  }
};

/**
 * The export of cards with the pictures that are at hand, by the ids of their photos. An export of all cards also tells
 * which were taken away; one of a single card says nothing of others.
 */
export const jobFileOf = (
  cards: readonly JobCard[],
  pictures: Readonly<Record<string, string>>,
  now: number,
  removed: readonly RemovedCard[] = [],
): JobFile => {
  const ids = cards.flatMap(({ photos }) => photos.map(({ id }) => id));
  const held = ids.flatMap((id) => {
    const picture = entryOf(pictures, id);
    return picture === undefined ? [] : [[id, picture] as const];
  });
  return {
    format: 'halfdry-jobs',
    version: CARD_VERSION,
    writtenAt: now,
    cards: [...cards],
    ...(removed.length && { removed: removed.slice(0, MOST_CARDS_REMOVED) }),
    ...(held.length && { photos: Object.fromEntries(held) }),
  };
};

/** JSON Schema of the export. */
export const jobFileSchema = (): object => z.toJSONSchema(JobFile);
