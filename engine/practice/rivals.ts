import type { Case } from '../case/case.ts';
import { FREQUENCY } from '../model/frequency.ts';
import { type Separation, separatedBy } from '../see/separated.ts';
import type { Chance } from './chance.ts';
import type { PracticeFlaw, PracticeKnowledge } from './knowledge.ts';
import { canBeTold, type Situation } from './situation.ts';

/** A flaw that is offered and is not it, and the sign that rules it out. */
export type Rival = { readonly flaw: PracticeFlaw; readonly sign: Separation; readonly seen: boolean };
/** Such flaws, the nearest first. */
export type Rivals = readonly [Rival, ...Rival[]];

/** Answers to choose from, the right one among them. */
export const OFFERED = 4;

/** Seen on the board, or at least by looking at the piece; what must be told stands last. */
const bySight = (known: PracticeKnowledge, { question }: Separation): number => {
  const { by, boards, effort } = known.get('question', question);
  return (by !== 'look' ? 10 : boards ? 0 : 5) + effort;
};

/** The sign that best rules `other` out for this case; nothing where none may be told at this stage. */
const rivalOf = (
  known: PracticeKnowledge,
  on: Case,
  flaw: PracticeFlaw,
  other: PracticeFlaw,
  shows: Situation['shows'],
): Rival | undefined => {
  const [sign] = separatedBy(flaw, other)
    .filter(({ question, a }) => (shows[question] ?? a) === a && canBeTold(known, on, question, a))
    .sort((one, two) => bySight(known, one) - bySight(known, two));
  if (!sign) return undefined;
  const { by, boards } = known.get('question', sign.question);
  return { flaw: other, sign, seen: by === 'look' && boards !== undefined };
};

/**
 * Flaws to offer beside the right one: first one that it is truly taken for, then others of its kind. Each is ruled out by
 * a sign that the board shows or that is told.
 */
export const rivalsOf = (
  known: PracticeKnowledge,
  { on, shows }: Pick<Situation, 'on' | 'shows'>,
  flaw: PracticeFlaw,
  chance: Chance,
): Rivals | undefined => {
  const alike = new Set<string>(flaw['look-alikes']);
  const back = known.defects.filter((one) => one['look-alikes'].some((id) => id === flaw.id));
  const family = on['family']?.value;
  const fits = ({ id, families }: PracticeFlaw) => id !== flaw.id && families.some((one) => one === family);
  const rivals = (of: readonly PracticeFlaw[]) =>
    chance.mixed(of.filter(fits)).flatMap((other) => rivalOf(known, on, flaw, other, shows) ?? []);
  const own = rivals(known.defects.filter(({ id }) => alike.has(id)));
  // A look-alike of another kind of coat is still one, where no own kind has any.
  const truly = own.length
    ? own
    : chance
        .mixed(known.defects.filter(({ id }) => alike.has(id) && id !== flaw.id))
        .flatMap((other) => rivalOf(known, on, flaw, other, shows) ?? []);
  const sorted = [...truly].sort((one, two) => Number(two.seen) - Number(one.seen));
  const taken = new Set(sorted.map((one) => one.flaw.id));
  const more = [
    ...rivals(back.filter(({ id }) => !taken.has(id))),
    ...rivals(known.defects.filter(({ often, id }) => !taken.has(id) && FREQUENCY[often] > 1)).filter(
      ({ seen }) => seen,
    ),
  ];
  const all = [...sorted, ...more].filter(
    (one, index, list) => list.findIndex((other) => other.flaw.id === one.flaw.id) === index,
  );
  const [first, ...others] = all.slice(0, OFFERED - 1);
  return first && sorted.length && others.length === OFFERED - 2 ? [first, ...others] : undefined;
};
