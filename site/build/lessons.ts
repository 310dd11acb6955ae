import type { Entry } from '#engine/index.ts';
import type { LESSON_PARTS } from '#engine/model/lesson.ts';
import { PRACTICE } from '../shared/urls.ts';
import { knowledge } from './knowledge.ts';

type Lesson = Entry<'lesson'>;

/** The course from its first lesson to its last. */
export const lessonsInOrder: readonly Lesson[] = [...knowledge.lessons].sort(
  (one, two) => one.place - two.place,
);

export const PART_WORDS: Readonly<Record<(typeof LESSON_PARTS)[number], string>> = {
  before: 'Before the first coat',
  ready: 'Getting the piece ready',
  laying: 'Laying a coat',
  between: 'Between coats',
  'wax-and-below': 'Wax, and what lies below',
  safe: 'Safe hands',
  sold: 'Sold and told',
};

/** The set of practice boards that belongs to a lesson. */
export const practiceOf = ({ title, items }: Lesson): string => {
  const boards = items.map(({ level, flaw, seed }) => `${level}.${flaw}.${seed}`).join('_');
  return `${PRACTICE}#${new URLSearchParams({ class: title, boards })}`;
};

/** Lessons that lead to a flaw or a repair. */
export const lessonsOn = (kind: 'defects' | 'remedies', id: string): readonly Lesson[] =>
  lessonsInOrder.filter((lesson) => lesson[kind].some((one) => one === id));
