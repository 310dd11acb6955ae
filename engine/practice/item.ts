import type { Case } from '../case/case.ts';
import type { LaidCoat } from '../clock/coat.ts';
import type { Running } from '../clock/reading.ts';
import type { BoardRecipe } from '../model/board.ts';
import type { Standing } from '../model/stage.ts';
import { isOneOf } from '../plain/entry-of.ts';

/** What a board asks for: its look alone; look and stage; the whole case with weather and can. */
export const PRACTICE_LEVELS = ['look', 'stage', 'case'] as const;
export type PracticeLevel = (typeof PRACTICE_LEVELS)[number];

/** Where nothing is wrong with the board. */
export const SOUND = 'sound';

/** An answer that is offered, and what comes of it. */
export type PracticeChoice = {
  readonly id: string;
  readonly says: string;
  readonly right: boolean;
  /** Why it is right, or what it would have led to. */
  readonly because: string;
};

/** flaw: what is it. hands: what do hands do now. until: until when. repair: what mends it. */
export type PracticeAsk = {
  readonly kind: 'flaw' | 'hands' | 'until' | 'repair';
  readonly ask: string;
  /** One of them is right. In the order in which they are shown. */
  readonly choices: readonly PracticeChoice[];
};

/** A check that was made on the piece, and what it showed. */
export type PracticeFinding = {
  readonly question: string;
  readonly answer: 'yes' | 'no';
  readonly ask: string;
  readonly says: string;
};

/** The sign that tells the flaw from the one that is taken for it, and what each shows. */
type PracticeSign = {
  readonly question: string;
  readonly ask: string;
  readonly here: string;
  readonly there: string;
};

/** A flaw that it may be taken for: both boards, cut alike, and what tells them apart. */
export type PracticeRival = {
  readonly flaw: string;
  readonly name: string;
  readonly board: BoardRecipe;
  /** The item's own board, cut as wide as this one. */
  readonly own: BoardRecipe;
  readonly sign: PracticeSign;
};

/** The coat of a whole case: when it was laid, in what air, and what stands on its can. */
export type PracticeCoat = {
  readonly laid: LaidCoat;
  readonly now: number;
  readonly reading: Running;
  readonly touchMinutes: number;
  readonly recoatMinutes: number;
};

export type PracticeItem = {
  /** `level.flaw.seed`: the same item on every machine that has the same knowledge. */
  readonly id: string;
  readonly level: PracticeLevel;
  readonly seed: number;
  /** The id of the flaw, or `sound`. */
  readonly flaw: string;
  readonly name: string;
  readonly standing: Standing | undefined;
  /** All that is told, as facts: what the walk judges by. */
  readonly on: Case;
  /** The coat of a whole case, as the clock has it. */
  readonly coat: PracticeCoat | undefined;
  readonly story: readonly string[];
  readonly found: readonly PracticeFinding[];
  readonly board: BoardRecipe;
  /** Every flaw that is offered beside it, the nearest first. */
  readonly rivals: readonly [PracticeRival, ...PracticeRival[]];
  readonly asks: readonly PracticeAsk[];
  /** What hands do, in the words of the verdict, and until when it holds. */
  readonly verdict: { readonly say: string; readonly why: string; readonly not: string } | undefined;
};

/** What an item is known by. */
export type PracticeKey = Pick<PracticeItem, 'level' | 'seed' | 'flaw'>;

const KEY = /^([a-z]+)\.([a-z][a-z0-9-]{0,60})\.(\d{1,10})$/;
export const MOST_PRACTICE_SEED = 2_147_483_647;

/** The key that an id spells; nothing where it spells none. Whether the flaw is there, the knowledge must tell. */
export const readPracticeId = (id: string): PracticeKey | undefined => {
  const [, level, flaw, digits] = KEY.exec(id) ?? [];
  const seed = Number(digits);
  return isOneOf(PRACTICE_LEVELS, level) && flaw && seed <= MOST_PRACTICE_SEED
    ? { level, flaw, seed }
    : undefined;
};
