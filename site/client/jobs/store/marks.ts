/** Beside the cards: how many there were, and how many changes no export holds yet. */
export type JobsMarks = {
  readonly cards: number;
  readonly changes: number;
  readonly exportedAt: number | undefined;
};

const KEY = 'halfdry.jobs';
/** After so many changes she is reminded to save a file. */
export const REMIND_AFTER = 10;

const count = (value: unknown): number =>
  Number.isSafeInteger(value) && Number(value) > 0 ? Number(value) : 0;

/** Zero of everything where nothing is kept, it is damaged, or storage is denied. */
export const readMarks = (): JobsMarks => {
  let kept: Record<string, unknown> = {};
  try {
    kept = (JSON.parse(localStorage.getItem(KEY) ?? '{}') as Record<string, unknown> | null) ?? {};
  } catch {
    // Denied or damaged: the cards themselves lie elsewhere, so nothing is lost.
  }
  const { cards, changes, exportedAt } = kept;
  return { cards: count(cards), changes: count(changes), exportedAt: count(exportedAt) || undefined };
};

const keep = (marks: JobsMarks): void => {
  try {
    localStorage.setItem(KEY, JSON.stringify(marks));
  } catch {
    // Only the reminder is lost.
  }
};

/** Counts a change that no export holds; `cards` is how many there are now, where that changed. */
export const markChange = (more = 0, changes = 1): void => {
  const marks = readMarks();
  keep({ ...marks, cards: Math.max(0, marks.cards + more), changes: marks.changes + changes });
};
export const markCards = (cards: number): void => keep({ ...readMarks(), cards });
export const markExport = (now: number): void => keep({ ...readMarks(), changes: 0, exportedAt: now });
