import {
  askAboutLabel,
  type ClockStore,
  clockNow,
  type LaidCoat,
  layOnClock,
  MOST_ON_CLOCK,
  nextCoatAt,
  onOnePiece,
  type Products,
  replaceOnClock,
  sayInstant,
  type TimeStyle,
  untilOf,
} from '#engine/clock.ts';
import { canonical } from '#engine/jobs/canonical.ts';
import { FACTS } from '#engine/model/facts.ts';
import { entryOf } from '#engine/plain/entry-of.ts';
import { clockWords } from '../../shared/clock-words.ts';
import type { ClockQuestion, Questions } from './question.tsx';

/** The coat by whose button the form was filled: for the next one over it, or for itself, counted anew. */
type BegunAs = { readonly next?: LaidCoat | undefined; readonly anew?: LaidCoat | undefined };

/** The name of a piece, with a number where another has it, so that two pieces are told apart. */
const freeName = (piece: string, coats: readonly LaidCoat[]): string => {
  const taken = new Set(coats.map((coat) => coat.piece.toLowerCase()));
  if (!taken.has(piece.toLowerCase())) return piece;
  for (let number = 2; ; number++) {
    const name = `${piece.slice(0, 36)} ${number}`;
    if (!taken.has(name.toLowerCase())) return name;
  }
};

/** Why it is too early to lay over a coat; nothing where it is not. */
const tooEarly = (below: LaidCoat, products: Products, now: number, style: TimeStyle): string | undefined => {
  const product = entryOf(products, below.product);
  const reading = product && clockNow(product, below, now, products);
  const next = reading?.kind === 'running' ? nextCoatAt(reading.moments, now) : undefined;
  if (!next || next.may) return undefined;
  // Rounded as the clock itself has it.
  const { late } = untilOf(next.from.from, next.from.to, now, style);
  return `Its coat ${below.coatNumber} is ready for another only from ${late} on. A coat laid over it sooner can wrinkle it, and keeps it soft.`;
};

const aboutPiece = (
  below: LaidCoat,
  early: string | undefined,
  now: number,
  style: TimeStyle,
): ClockQuestion<'next' | 'other' | 'correct' | 'back'> => ({
  title: `“${below.piece}” is on the clock already`,
  says: [
    `Its coat ${below.coatNumber} was laid ${sayInstant(below.laidAt, now, style)}. What is this one?`,
    ...(early ? [early] : []),
  ],
  answers: [
    ['next', 'The next coat on that piece'],
    ['other', 'A coat on another piece'],
    ['correct', `Coat ${below.coatNumber} itself, told right this time`],
    ['back', 'None of these: back to the form'],
  ],
});

/** A coat that was read from the form, and what came before it. */
export type CoatStart = {
  readonly coat: LaidCoat;
  readonly begunAs: BegunAs;
  /** Why it should not be laid at all. */
  readonly against: readonly string[];
};

/** Where a coat is started: the clock as it lies in the store at each moment, and who is asked. */
export type Clock = {
  readonly load: () => Promise<ClockStore>;
  readonly change: (by: (store: ClockStore) => ClockStore) => Promise<unknown>;
  /** Those that the page knows, beside those of the clock. */
  readonly products: Products;
  readonly questions: Pick<Questions, 'ask'>;
  readonly style: TimeStyle;
  readonly now: () => number;
};

/** What she decided, and the coat of that piece that she decided it over; none where it is the first on the clock. */
type Decision = {
  readonly what: 'next' | 'other' | 'correct';
  readonly below: LaidCoat | undefined;
};

const coatOn = (store: ClockStore, coat: LaidCoat): LaidCoat | undefined =>
  store.coats.find((one) => onOnePiece(one, coat));

/** Whether a decision takes a place on the clock that no coat has now, and there is none. */
const isFull = (store: ClockStore, read: LaidCoat, { what }: Pick<Decision, 'what'>): boolean =>
  store.coats.length >= MOST_ON_CLOCK && (what === 'other' || !coatOn(store, read));

/** The coat that goes on the clock, by what she decided. */
const decided = (store: ClockStore, read: LaidCoat, { what, below }: Decision): LaidCoat => {
  if (what === 'other') return { ...read, piece: freeName(read.piece, store.coats) };
  if (!below) return read;
  const card = below.card ? { card: below.card } : {};
  if (what === 'next') {
    const coatNumber = Math.min(FACTS['coat-number'].max, Math.max(read.coatNumber, below.coatNumber + 1));
    return { ...read, coatNumber, ...card };
  }
  return {
    ...read,
    id: below.id,
    coatNumber: below.coatNumber,
    ...card,
    ...(below.below && { below: below.below }),
  };
};

/**
 * The clock with the coat as she decided. The same clock where another coat lies on the piece than the one that she was
 * asked about, or no place is left: then she has to be asked anew. Where that one was taken off meanwhile, hers is laid
 * all the same.
 */
const carriedOut = (
  store: ClockStore,
  read: LaidCoat,
  decision: Decision,
  laid: { readonly products: Products; readonly now: number },
): { readonly store: ClockStore; readonly coat?: LaidCoat } => {
  const there = coatOn(store, read);
  const isOther = there && canonical(there) !== canonical(decision.below);
  if (isOther || isFull(store, read, decision)) return { store };
  const coat = decided(store, read, decision);
  const start = { coat, ...laid };
  if (!there || decision.what !== 'correct') return { store: layOnClock(store, start), coat };
  const corrected = replaceOnClock(store, [there.id], start);
  return { store: { ...corrected, current: coat.id, seenAt: laid.now }, coat };
};

/** Whether it may be laid at all, and far-off times are this can's. */
const isSure = async ({ coat, against }: CoatStart, { questions, products }: Clock): Promise<boolean> => {
  if (against.length) {
    const lies = await questions.ask({
      title: 'Do not lay it',
      says: against,
      answers: [
        ['back', 'Back to the form'],
        ['lies', 'It lies already: start its clock'],
      ],
    });
    if (lies !== 'lies') return false;
  }
  const product = entryOf(products, coat.product);
  const odd = product ? askAboutLabel(clockWords, product, coat.label) : [];
  if (!odd.length) return true;
  const sure = await questions.ask({
    title: 'Is that what this can says?',
    says: odd.map(({ says }) => says),
    answers: [
      ['back', 'No: back to the form'],
      ['sure', 'Yes, this can says so'],
    ],
  });
  return sure === 'sure';
};

/** Which coat of which piece it is; nothing where she goes back to the form. */
const decide = async (
  store: ClockStore,
  { coat: read, begunAs }: CoatStart,
  { products: known, questions, style, now }: Clock,
): Promise<Decision | undefined> => {
  const below = coatOn(store, read);
  if (!below) return { what: 'next', below };
  const at = now();
  const early = tooEarly(below, { ...store.products, ...known }, at, style);
  const next = begunAs.next?.id === below.id && read.coatNumber > below.coatNumber && !early;
  const anew = begunAs.anew?.id === below.id && read.coatNumber === below.coatNumber;
  const what = anew ? 'correct' : next ? 'next' : await questions.ask(aboutPiece(below, early, at, style));
  return what === undefined || what === 'back' ? undefined : { what, below };
};

/**
 * Puts a coat that was read from the form on the clock, once she has said what has to be known: whether far-off times are
 * this can's, and which coat of which piece it is, so that none silently takes the place of another. What she says is
 * carried out on the clock as it is then, not as it was when she was asked: another tab may have changed it. Nothing
 * where she goes back to the form.
 */
export const startCoat = async (start: CoatStart, clock: Clock): Promise<LaidCoat | undefined> => {
  if (!(await isSure(start, clock))) return undefined;
  for (;;) {
    const seen = await clock.load();
    const decision = await decide(seen, start, clock);
    if (!decision) return undefined;
    let coat: LaidCoat | undefined;
    let full = false;
    await clock.change((there) => {
      const products = { ...there.products, ...clock.products };
      const after = carriedOut(there, start.coat, decision, { products, now: clock.now() });
      coat = after.coat;
      full = !coat && isFull(there, start.coat, decision);
      return after.store;
    });
    if (coat) return coat;
    if (!full) continue;
    await clock.questions.ask({
      title: `${MOST_ON_CLOCK} coats are on the clock`,
      says: ['More it does not keep. Take one that is cured off the clock, then start this one.'],
      answers: [['back', 'Back to the form']],
    });
    return undefined;
  }
};
