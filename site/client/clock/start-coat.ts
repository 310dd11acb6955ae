import {
  askAboutLabel,
  type ClockProduct,
  type ClockStore,
  clockNow,
  type LaidCoat,
  MOST_ON_CLOCK,
  onOnePiece,
  sayInstant,
  type TimeStyle,
  untilOf,
  withLaid,
} from '#engine/clock.ts';
import { entryOf } from '#engine/plain/entry-of.ts';
import type { ClockQuestion, Questions } from './question.tsx';

/** What is done with a coat that was read from the form. */
export type CoatStart = { readonly coat: LaidCoat; readonly change: (store: ClockStore) => ClockStore };

/** The coat by whose button the form was filled: for the next one over it, or for itself, counted anew. */
type BegunAs = { readonly next?: LaidCoat | undefined; readonly anew?: LaidCoat | undefined };

type Products = Readonly<Record<string, ClockProduct>>;

/** The same name with a number, so that two pieces are told apart. */
const freeName = (piece: string, coats: readonly LaidCoat[]): string => {
  const taken = new Set(coats.map((coat) => coat.piece.toLowerCase()));
  for (let number = 2; ; number++) {
    const name = `${piece.slice(0, 36)} ${number}`;
    if (!taken.has(name.toLowerCase())) return name;
  }
};

/** Why it is too early to lay over a coat; nothing where it is not. */
const tooEarly = (below: LaidCoat, products: Products, now: number, style: TimeStyle): string | undefined => {
  const product = entryOf(products, below.product);
  const reading = product && clockNow(product, below, now, products);
  if (reading?.kind !== 'running' || now >= reading.moments.recoat.to) return undefined;
  const { from, to } = reading.moments.recoat;
  // Rounded as the clock itself has it.
  const { late } = untilOf(from, to, now, style);
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

const withCoat =
  (coat: LaidCoat, products: Products, now: number) =>
  (store: ClockStore): ClockStore => ({
    ...store,
    coats: withLaid(store.coats, coat),
    products: { ...store.products, ...productOf(coat, products) },
    current: coat.id,
    seenAt: now,
  });

const inPlaceOf =
  (was: LaidCoat, coat: LaidCoat, products: Products, now: number) =>
  (store: ClockStore): ClockStore => ({
    ...store,
    coats: store.coats.map((one) => (one.id === was.id ? coat : one)),
    products: { ...store.products, ...productOf(coat, products) },
    current: coat.id,
    seenAt: now,
  });

const productOf = ({ product }: LaidCoat, products: Products): Products => {
  const found = entryOf(products, product);
  return found ? { [product]: found } : {};
};

/**
 * Asks what has to be known before a coat goes on the clock: whether far-off times are this can's, and which coat of
 * which piece it is, so that none silently takes the place of another. Nothing where she goes back to the form.
 */
export const askBeforeStart = async (
  read: LaidCoat,
  begunAs: BegunAs,
  coats: readonly LaidCoat[],
  products: Products,
  questions: Questions,
  /** Why it should not be laid at all. */
  against: readonly string[],
  now: number,
  style: TimeStyle,
): Promise<CoatStart | undefined> => {
  if (against.length) {
    const lies = await questions.ask({
      title: 'Do not lay it',
      says: against,
      answers: [
        ['back', 'Back to the form'],
        ['lies', 'It lies already: start its clock'],
      ],
    });
    if (lies !== 'lies') return undefined;
  }
  const product = entryOf(products, read.product);
  const odd = product ? askAboutLabel(product, read.label) : [];
  if (odd.length) {
    const sure = await questions.ask({
      title: 'Is that what this can says?',
      says: odd.map(({ says }) => says),
      answers: [
        ['back', 'No: back to the form'],
        ['sure', 'Yes, this can says so'],
      ],
    });
    if (sure !== 'sure') return undefined;
  }
  const there = coats.filter((one) => onOnePiece(one, read));
  const below = there[0];
  if (!below) {
    if (coats.length < MOST_ON_CLOCK) return { coat: read, change: withCoat(read, products, now) };
    await questions.ask({
      title: `${MOST_ON_CLOCK} coats are on the clock`,
      says: ['More it does not keep. Take one that is cured off the clock, then start this one.'],
      answers: [['back', 'Back to the form']],
    });
    return undefined;
  }
  const early = tooEarly(below, products, now, style);
  const next = begunAs.next?.id === below.id && read.coatNumber > below.coatNumber && !early;
  const anew = begunAs.anew?.id === below.id && read.coatNumber === below.coatNumber;
  const what = anew ? 'correct' : next ? 'next' : await questions.ask(aboutPiece(below, early, now, style));
  if (what === 'next') {
    const coat = {
      ...read,
      coatNumber: Math.min(20, Math.max(read.coatNumber, below.coatNumber + 1)),
      ...(below.card && { card: below.card }),
    };
    return { coat, change: withCoat(coat, products, now) };
  }
  if (what === 'other') {
    const coat = { ...read, piece: freeName(read.piece, coats) };
    return { coat, change: withCoat(coat, products, now) };
  }
  if (what !== 'correct') return undefined;
  const coat = {
    ...read,
    id: below.id,
    coatNumber: below.coatNumber,
    ...(below.card && { card: below.card }),
    ...(below.below && { below: below.below }),
  };
  return { coat, change: inPlaceOf(below, coat, products, now) };
};
