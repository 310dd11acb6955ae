import type { Case } from '#engine/index.ts';
import { CHOICES_OF_THE_PIECE } from '#engine/model/facts.ts';
import { keepCardInHand } from '../case/card-in-hand.ts';
import { keepCase } from '../case/store.ts';
import { clockFacts } from '../clock/facts.ts';
import { caseOfCard } from '../jobs/parts/clock.ts';
import { jobsData } from '../jobs/parts/data.ts';
import { readOne } from '../jobs/store/index.ts';
import type { RunningCoat } from './running.ts';

/** What of a case the page that listens takes for told. How dry it is and the weather are the clock's. */
export const toldOf = (on: Case): Readonly<Record<string, string>> =>
  Object.fromEntries(
    (['family', ...CHOICES_OF_THE_PIECE] as const).flatMap((name) => {
      const value = on[name]?.value;
      return typeof value === 'string' ? [[name, value]] : [];
    }),
  );

/**
 * What is known of the piece whose coat is on the clock. Where it has a card, that is in hand from now on, as if she had
 * come from it.
 */
export const takeInHand = async ({ card: id }: RunningCoat): Promise<Readonly<Record<string, string>>> => {
  const read = id === undefined ? undefined : await readOne(id);
  if (read?.kind !== 'card') return toldOf(await clockFacts());
  const { products } = await jobsData();
  const on = await caseOfCard(read.card, products, Date.now());
  if (keepCase(on)) keepCardInHand(read.card);
  return toldOf(on);
};
