import { coatsInOrder, isSameFlaw, withFlaw, withRepair } from '#engine/jobs.ts';
import type { CardFlaw, CardRepair, JobCard } from '#engine/model/job-card.ts';
import { tellFlaw } from '../../clock/open-flaw.ts';
import { newId } from '../../shared/id.ts';
import { JobsFault } from './fault.ts';
import { addToCard } from './write.ts';

/**
 * `gone`: there is no such card any more. `full`: the card holds as many as a card can. `refused`: it could not be
 * written, or is damaged. Nothing is changed then.
 */
export type Noted = 'saved' | 'gone' | 'full' | 'refused';

const note = async (id: string, by: (card: JobCard) => JobCard): Promise<Noted> => {
  try {
    let after: JobCard | undefined;
    const { kind } = await addToCard(id, (card) => {
      after = by(card);
      return after;
    });
    if (kind === 'saved' && after) await tellFlaw(after);
    if (kind === 'unreadable') return 'refused';
    return kind === 'refused' ? 'full' : kind;
  } catch (error) {
    if (error instanceof JobsFault) return 'refused';
    throw error;
  }
};

/**
 * Notes what a walk found. A flaw that is open already and found again is one entry: it keeps the day on which it was
 * found and takes the answers of now, and its change tells when.
 */
export const noteFlaw = (
  cardId: string,
  found: Pick<CardFlaw, 'defect' | 'answers' | 'address' | 'part'>,
): Promise<Noted> =>
  note(cardId, (card) => {
    const { defect, answers, address, part } = found;
    const now = Date.now();
    const noted = card.flaws.findLast(
      (flaw) => flaw.settledAt === undefined && isSameFlaw(flaw, { defect, ...(part && { part }) }),
    );
    if (noted) {
      const again = { ...noted, answers: [...answers], ...(address && { address }), ...(part && { part }) };
      return withFlaw(card, again, now);
    }
    const coat = coatsInOrder(card).at(-1)?.id;
    const flaw = { id: newId(), foundAt: now, defect, answers: [...answers] };
    return withFlaw(
      card,
      { ...flaw, ...(coat && { coat }), ...(address && { address }), ...(part && { part }) },
      now,
    );
  });

/** Notes a repair that was done, for the open flaw that its walk was about; by default for the one found last. */
export const noteRepair = (
  cardId: string,
  done: Pick<CardRepair, 'remedy' | 'flaw' | 'note'>,
  defect?: string,
): Promise<Noted> =>
  note(cardId, (card) => {
    const now = Date.now();
    const open = card.flaws.filter(({ settledAt }) => settledAt === undefined);
    const flaw = done.flaw ?? (open.findLast((one) => one.defect === defect) ?? open.at(-1))?.id;
    const repair = { id: newId(), doneAt: now, remedy: done.remedy };
    return withRepair(card, { ...repair, ...(flaw && { flaw }), ...(done.note && { note: done.note }) }, now);
  });

/** Notes that a flaw is repaired or good enough, or that it is not after all. */
export const setSettled = (cardId: string, flawId: string, settled = true): Promise<Noted> =>
  note(cardId, (card) => {
    const flaw = card.flaws.find(({ id }) => id === flawId);
    if (!flaw) return card;
    const { settledAt: _before, ...open } = flaw;
    const now = Date.now();
    return withFlaw(card, settled ? { ...open, settledAt: now } : open, now);
  });

/** Notes that the flaw is gone that this repair was done for. */
export const settleRepaired = (cardId: string, remedy: string): Promise<Noted> =>
  note(cardId, (card) => {
    const done = card.repairs.findLast((repair) => repair.remedy === remedy)?.flaw;
    const flaw = card.flaws.find(({ id }) => id === done);
    const now = Date.now();
    return flaw && flaw.settledAt === undefined ? withFlaw(card, { ...flaw, settledAt: now }, now) : card;
  });
