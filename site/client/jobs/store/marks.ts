import { keep as keepValue, recall } from '../../shared/storage.ts';

/** Beside the cards: how many there were, and how many changes no export holds yet. */
export type JobsMarks = {
  readonly cards: number;
  readonly changes: number;
  readonly exportedAt: number | undefined;
};

/** After so many changes she is reminded to save a file. */
export const REMIND_AFTER = 10;

/** Zero of everything where nothing is kept, it is damaged, or storage is denied. */
export const readMarks = (): JobsMarks => {
  const { cards = 0, changes = 0, exportedAt } = recall('job-marks') ?? {};
  return { cards, changes, exportedAt: exportedAt || undefined };
};

/** Where the browser refuses, only the reminder is lost: the cards themselves lie elsewhere. */
const keep = ({ cards, changes, exportedAt }: JobsMarks): void => {
  keepValue('job-marks', { cards, changes, ...(exportedAt && { exportedAt }) });
};

/** Counts a change that no export holds; `cards` is how many there are now, where that changed. */
export const markChange = (more = 0, changes = 1): void => {
  const marks = readMarks();
  keep({ ...marks, cards: Math.max(0, marks.cards + more), changes: marks.changes + changes });
};
export const markCards = (cards: number): void => keep({ ...readMarks(), cards });
export const markExport = (now: number): void => keep({ ...readMarks(), changes: 0, exportedAt: now });
