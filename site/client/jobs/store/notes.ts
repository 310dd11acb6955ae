import { canonical } from '#engine/jobs/canonical.ts';
import { coatsInOrder, withFlaw, withRepair } from '#engine/jobs.ts';
import type { CardFlaw, CardRepair, JobCard } from '#engine/model/job-card.ts';
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
    const { kind } = await addToCard(id, by);
    if (kind === 'unreadable') return 'refused';
    return kind === 'refused' ? 'full' : kind;
  } catch (error) {
    if (error instanceof JobsFault) return 'refused';
    throw error;
  }
};

/** Notes what a walk found. A walk that is read again does not note its flaw twice. */
export const noteFlaw = (
  cardId: string,
  found: Pick<CardFlaw, 'defect' | 'answers' | 'address' | 'part'>,
): Promise<Noted> =>
  note(cardId, (card) => {
    const { defect, answers, address, part } = found;
    const noted = card.flaws.find(
      (flaw) =>
        flaw.settledAt === undefined &&
        flaw.defect === defect &&
        flaw.part === part &&
        canonical(flaw.answers) === canonical(answers),
    );
    if (noted) return card;
    const now = Date.now();
    const coat = coatsInOrder(card).at(-1)?.id;
    const flaw = { id: newId(), foundAt: now, defect, answers: [...answers] };
    return withFlaw(
      card,
      { ...flaw, ...(coat && { coat }), ...(address && { address }), ...(part && { part }) },
      now,
    );
  });

/** Notes a repair that was done; by default for the open flaw that was found last. */
export const noteRepair = (
  cardId: string,
  done: Pick<CardRepair, 'remedy' | 'flaw' | 'note'>,
): Promise<Noted> =>
  note(cardId, (card) => {
    const now = Date.now();
    const flaw = done.flaw ?? card.flaws.findLast(({ settledAt }) => settledAt === undefined)?.id;
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
