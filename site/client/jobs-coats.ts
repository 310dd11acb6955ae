import type { LaidCoat } from '#engine/clock.ts';
import { coatsInOrder } from '#engine/jobs.ts';
import type { CardCoat, JobCard } from '#engine/model/job-card.ts';
import type { JobsData } from '../lib/jobs.ts';
import { sayAir } from './clock-units.ts';
import { sayMoment } from './jobs-say.ts';
import { button } from './jobs-view.ts';
import { make, words } from './schedule-make.ts';
import { sayArea, sayLiters } from './schedule-units.ts';

/** A coat from the form of the clock, as it stands on a card. */
export const cardCoatOf = (laid: LaidCoat): CardCoat => {
  const { piece: _piece, coatNumber: _number, baseTone: _tone, sheen: _sheen, ...coat } = laid;
  return Object.fromEntries(Object.entries(coat).filter(([, value]) => value !== undefined)) as CardCoat;
};

const amountOf = ({ amount }: CardCoat, us: boolean): string =>
  amount ? `${sayLiters(amount.milliliters / 1000, us)} on ${sayArea(amount.squareMeters, us)}` : '';

/** Each coat in the order laid, with all that was noted. */
export const coatList = (
  card: JobCard,
  data: JobsData,
  us: boolean,
  off: (coat: CardCoat) => void | Promise<void>,
): HTMLElement => {
  const list = make('ol.laid');
  for (const [index, coat] of coatsInOrder(card).entries()) {
    const product = data.products[coat.product]?.name ?? words(coat.product);
    const told = [
      amountOf(coat, us),
      coat.applicator ? `by ${words(coat.applicator)}` : '',
      sayAir(coat),
      coat.note ?? '',
    ].filter(Boolean);
    list.append(
      make(
        'li',
        make('b', `Coat ${index + 1}, ${product.toLowerCase()}`),
        make('span.when', sayMoment(coat.laidAt)),
        make('p.small', told.join('; ')),
        button('Take it off the card', () => off(coat), 'plain'),
      ),
    );
  }
  return list;
};
