import {
  laidCoatOf,
  putBack,
  withoutCoat,
  withoutFlaw,
  withoutItsCoat,
  withoutRepair,
} from '#engine/jobs.ts';
import type { CardCoat, CardRepair, JobCard } from '#engine/model/job-card.ts';
import { adoptCoats, startClock, stopClock } from '../parts/clock.ts';
import type { JobsData } from '../parts/data.ts';
import { Act } from './controls.tsx';
import type { JobsFrame } from './frame.ts';
import type { OpenCard } from './use-saver.ts';

type WithId = { readonly id: string };

/** What takes something off the card; each tells what it did, with a button that undoes it. */
export type TakeOff = {
  readonly coat: (coat: CardCoat) => Promise<void>;
  readonly flaw: (flaw: WithId) => Promise<void>;
  readonly repair: (repair: WithId) => Promise<void>;
  /** The coat that a repair was to lay, which it did not. */
  readonly itsCoat: (repair: CardRepair) => Promise<void>;
};

export const takeOffOf = (frame: JobsFrame, { saver, hands }: OpenCard, data: JobsData): TakeOff => {
  const tell = (what: string, back: () => Promise<void>) =>
    frame.say(
      <>
        {what} <Act act={back}>Put it back</Act>
      </>,
    );
  const one =
    (list: 'flaws' | 'repairs', what: string, by: (there: JobCard, id: string, at: number) => JobCard) =>
    async ({ id }: WithId) => {
      const before = saver.card;
      if (!(await hands.now((there) => by(there, id, Date.now())))) return;
      tell(`${what} is off the card.`, async () => {
        if (await hands.now((there) => putBack(there, before, list, id, Date.now())))
          frame.say('It is back on the card.');
      });
    };
  return {
    flaw: one('flaws', 'The flaw', withoutFlaw),
    repair: one('repairs', 'The repair', withoutRepair),
    // What is off the card is off the clock, where the coat below goes on; what comes back runs again.
    coat: async (coat) => {
      const before = saver.card;
      if (!(await hands.now((there) => withoutCoat(there, coat.id, Date.now())))) return;
      const ran = await stopClock(coat.id);
      await adoptCoats(saver.card, data.products, Date.now());
      tell(
        ran ? 'The coat is off the card, and its clock is stopped.' : 'The coat is off the card.',
        async () => {
          if (!(await hands.now((there) => putBack(there, before, 'coats', coat.id, Date.now())))) return;
          if (ran) await startClock(laidCoatOf(saver.card, coat), data.products, Date.now());
          frame.say(ran ? 'It is back on the card, and its clock runs.' : 'It is back on the card.');
        },
      );
    },
    itsCoat: async (repair) => {
      if (await hands.now((there) => withoutItsCoat(there, repair, Date.now())))
        await adoptCoats(saver.card, data.products, Date.now());
    },
  };
};
