import { PRACTICE_LEVELS, type PracticeKey, type PracticeLevel, readPracticeId } from '#engine/practice.ts';

/** What stands behind # of the practice page: a level to practise at, or a set that a teacher made. */
export type PracticeLink = {
  readonly level: PracticeLevel | undefined;
  /** The title of a class, and its boards in their order. */
  readonly title: string;
  readonly boards: readonly PracticeKey[];
  /** How many boards of it could not be read, since the link was cut or made up. */
  readonly unread: number;
  /** The set is still in the hands of who makes it, of these flaws alone; empty: of any. */
  readonly making?: readonly string[] | undefined;
};

export const MOST_IN_A_SET = 40;
export const LONGEST_TITLE = 80;

/** Reads what it can: a board of a link that was cut is left out, and counted. */
export const readLink = (hash: string): PracticeLink => {
  const given = new URLSearchParams(hash.replace(/^#/, ''));
  const level = given.get('level');
  const ids = given.get('boards')?.split('_').slice(0, MOST_IN_A_SET) ?? [];
  const boards = ids.flatMap((id) => readPracticeId(id) ?? []);
  return {
    level: PRACTICE_LEVELS.find((one) => one === level),
    title: (given.get('class') ?? '').trim().slice(0, LONGEST_TITLE),
    boards,
    unread: ids.length - boards.length,
    making: given.get('make')?.split('_').filter(Boolean),
  };
};

export const writeLink = ({ level, title, boards, making }: Partial<PracticeLink>): string => {
  const parts = new URLSearchParams();
  if (level) parts.set('level', level);
  if (title) parts.set('class', title);
  if (boards?.length)
    parts.set('boards', boards.map((key) => `${key.level}.${key.flaw}.${key.seed}`).join('_'));
  if (making) parts.set('make', making.join('_'));
  return parts.toString();
};
