import type { CardFlaw, CardRepair, JobCard } from '../model/job-card.ts';
import type { Step } from '../model/step.ts';
import { entryOf, isOneOf } from '../plain/entry-of.ts';
import { DAY_MS, HOUR_MS } from '../plain/time.ts';
import { withRepair } from './card.ts';
import { coatsInOrder } from './coat.ts';
import { type Products, productOf } from './layers.ts';

/** Coats of the product that lies below. */
const SAME_AS_BELOW = ['same', 'same-in-gloss', 'tinted-same', 'mist-of-same'] as const;
/** Steps that leave a new top coat, whose time the clock has to count. */
const TOP_COATS = [...SAME_AS_BELOW, 'dewaxed-shellac', 'water-based', 'wax', 'oil'] as const;
export type CoatOfRepair = (typeof TOP_COATS)[number];

/** The last top coat that a repair lays; nothing where it lays none. */
export const coatOfRepair = (steps: readonly Step[]): CoatOfRepair | undefined =>
  steps
    .flatMap((step) => (step.kind === 'coat' ? TOP_COATS.filter((coat) => coat === step.product) : []))
    .at(-1);

/** Remedies that lay a top coat, and which. */
export type Lays = Readonly<Record<string, CoatOfRepair>>;

/** A coat laid so shortly before its repair was noted is the repair's own: no other is ready for the next so soon. */
const ITS_OWN = 2 * HOUR_MS;

/** Whether the coat of a repair is not on the card: the one on top is the one that the flaw was found in. */
const isOwed = (card: JobCard, repair: CardRepair): boolean => {
  const last = coatsInOrder(card).at(-1);
  const laidAt = last?.laidAt ?? Number.NEGATIVE_INFINITY;
  if (laidAt >= repair.doneAt - ITS_OWN) return false;
  const flaw = card.flaws.find(({ id }) => id === repair.flaw);
  const first = card.repairs.find((one) => one.flaw === repair.flaw);
  return flaw && first?.id === repair.id ? last?.id === flaw.coat : laidAt < repair.doneAt - DAY_MS;
};

/** The repair whose coat lies on the piece and is not on the card, unless she said that it laid none. */
export const coatOwed = (card: JobCard, lays: Lays): CardRepair | undefined =>
  card.repairs.findLast(
    (repair) => entryOf(lays, repair.remedy) && !repair.laidNoCoat && isOwed(card, repair),
  );

/**
 * The product of a repair's coat: that of the coat below, or the one that its kind leaves no choice of; else nothing.
 */
export const productOfRepair = (
  card: JobCard,
  products: Products,
  lays: CoatOfRepair,
): string | undefined => {
  const own = coatsInOrder(card).at(-1)?.product ?? card.product;
  if (isOneOf<CoatOfRepair>(SAME_AS_BELOW, lays)) return own;
  const family = lays === 'dewaxed-shellac' ? 'shellac' : lays;
  if (productOf(products, own)?.family === family) return own;
  const fitting = Object.keys(products).filter((id) => productOf(products, id)?.family === family);
  return fitting.length === 1 ? fitting[0] : undefined;
};

/** Whether two notes are of one flaw; a place that was not told may be any. */
export const isSameFlaw = (
  one: Pick<CardFlaw, 'defect' | 'part'>,
  two: Pick<CardFlaw, 'defect' | 'part'>,
): boolean =>
  one.defect === two.defect && (one.part === two.part || one.part === undefined || two.part === undefined);

/** The card where a repair laid no coat this time, so that none is waited for. */
export const withoutItsCoat = (card: JobCard, repair: CardRepair, now: number): JobCard =>
  withRepair(card, { ...repair, laidNoCoat: true }, now);
