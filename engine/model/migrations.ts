import { isRecord, type JsonRecord } from '../plain/record.ts';
import { DAY_MIN } from '../plain/time.ts';
import type { Migrations } from './migrate.ts';

/** The longest time that a can prints, minutes, as version 3 began to ask it. Frozen, whatever is asked later. */
const MOST_MINUTES_3: Readonly<Record<string, number>> = {
  open: 2 * DAY_MIN,
  touch: 30 * DAY_MIN,
  recoat: 90 * DAY_MIN,
  'light-use': 365 * DAY_MIN,
  cure: 1000 * DAY_MIN,
  'sand-if-beyond': 365 * DAY_MIN,
};
const LEAST_MINUTES_3 = 0.1;
const MOST_NOTES_3 = 4000;

/** Whether a label time is one that version 2 took and no can prints. What is no time at all is left for the reader. */
const isImpossible = (milestone: string, span: unknown): boolean => {
  const most = MOST_MINUTES_3[milestone];
  if (most === undefined || !isRecord(span)) return false;
  return [span['from'], span['to']].some(
    (minutes) =>
      typeof minutes === 'number' && (minutes > most || (minutes > 0 && minutes < LEAST_MINUTES_3)),
  );
};

/** A label without such times, and what was left out of it, in words. */
const possible = (label: unknown, whose: string): { label: unknown; left: readonly string[] } => {
  const minutes = isRecord(label) ? label['minutes'] : undefined;
  if (!isRecord(label) || !isRecord(minutes)) return { label, left: [] };
  const all = Object.entries(minutes);
  const out = all.filter(([milestone, span]) => isImpossible(milestone, span));
  if (!out.length) return { label, left: [] };
  const kept = Object.fromEntries(all.filter((one) => !out.includes(one)));
  const left = out.map(([milestone, span]) => `${whose}, ${milestone}: ${JSON.stringify(span)} minutes`);
  return { label: { ...label, minutes: kept }, left };
};

/** Version 2 took label times that no can prints, and nothing could be reckoned with them: they move into the notes. */
const withoutImpossibleTimes = (card: JsonRecord): JsonRecord => {
  const own = possible(card['label'], 'card');
  const coats = Array.isArray(card['coats']) ? card['coats'] : [];
  const laid = coats.map((coat, index) => {
    if (!isRecord(coat)) return { coat, left: [] };
    const { label, left } = possible(coat['label'], `coat ${index + 1}`);
    return { coat: left.length ? { ...coat, label } : coat, left };
  });
  const left = [...own.left, ...laid.flatMap((one) => one.left)];
  if (!left.length) return card;
  const notes = typeof card['notes'] === 'string' ? card['notes'] : '';
  const told = `${notes}\nLeft out, since no can prints such a time: ${left.join('; ')}.`.trim();
  return {
    ...card,
    ...(own.left.length && { label: own.label }),
    coats: laid.map(({ coat }) => coat),
    // Full notes keep what she wrote, and as much of this as still fits.
    notes: told.slice(0, Math.max(notes.length, MOST_NOTES_3)),
  };
};

/** What stood at the end of a note up to version 3 where a repair laid no coat. Frozen. */
const NO_COAT_LAID_3 = 'No coat was laid.';

/**
 * Up to version 3 a repair laid no coat where its note ended with that sentence. It goes out of the note where it is a
 * line of its own, as it was put there; within a line of hers it is hers.
 */
const withLaidNoCoat = (card: JsonRecord): JsonRecord => {
  const { repairs } = card;
  if (!Array.isArray(repairs)) return card;
  return {
    ...card,
    repairs: repairs.map((repair: unknown) => {
      const note = isRecord(repair) ? repair['note'] : undefined;
      if (!isRecord(repair) || typeof note !== 'string' || !note.endsWith(NO_COAT_LAID_3)) return repair;
      const { note: _note, ...rest } = repair;
      const lines = note.split('\n');
      const left = lines.at(-1) === NO_COAT_LAID_3 ? lines.slice(0, -1).join('\n') : note;
      return { ...rest, laidNoCoat: true, ...(left && { note: left }) };
    }),
  };
};

/** By the version that they start from. None may ever change: it stands for what lies in browsers and files. */
export const MIGRATIONS: Migrations = {
  // Version 2 only added fields that may be missing.
  1: (card) => card,
  2: withoutImpossibleTimes,
  3: withLaidNoCoat,
};
