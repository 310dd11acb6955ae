import type { OpenFlaw } from '../clock/coat.ts';
import type { CardFlaw, CardRepair, JobCard } from '../model/job-card.ts';

/** The flaw that is open on a card, the last found, and its repair where one was noted. */
export const openFlaw = (
  card: JobCard,
): { readonly flaw: CardFlaw; readonly repair: CardRepair | undefined } | undefined => {
  const flaw = card.flaws.findLast(({ settledAt }) => settledAt === undefined);
  return flaw && { flaw, repair: card.repairs.findLast((repair) => repair.flaw === flaw.id) };
};

/** The same as the clock needs it, which knows no card. */
export const flawOver = (card: JobCard): OpenFlaw | undefined => {
  const open = openFlaw(card);
  return open && (open.repair ? 'repaired' : 'open');
};
