import type { LaidCoat } from '#engine/clock.ts';
import { coatsInOrder } from '#engine/jobs.ts';
import type { CardCoat, JobCard } from '#engine/model/job-card.ts';
import type { JobsData } from '../../../shared/jobs-data.ts';
import { make, words } from '../../shared/make.ts';
import { sayMoment } from '../../shared/say-date.ts';
import { sayAir, sayArea, sayLiters } from '../../shared/say-units.ts';
import { button } from '../views/view.ts';

/** A coat from the form of the clock, as it stands on a card. */
export const cardCoatOf = (laid: LaidCoat): CardCoat => {
  const { piece: _piece, card: _card, coatNumber: _number, baseTone: _tone, sheen: _sheen, ...coat } = laid;
  return Object.fromEntries(Object.entries(coat).filter(([, value]) => value !== undefined)) as CardCoat;
};

const amountOf = ({ amount }: CardCoat, us: boolean): string =>
  amount ? `${sayLiters(amount.milliliters / 1000, us)} on ${sayArea(amount.squareMeters, us)}` : '';

/** The row of a coat, by its id. */
export const coatRow = (place: HTMLElement, id: string): HTMLElement | undefined =>
  [...place.querySelectorAll<HTMLElement>('.laid > li')].find((row) => row.dataset['coat'] === id);

/** The number on a piece of tape; the words beside it say it again. */
const numbered = (number: number): HTMLElement => {
  const tape = make('i.tape', String(number));
  tape.setAttribute('aria-hidden', 'true');
  return tape;
};

type Act = (coat: CardCoat) => void | Promise<void>;

/** Each coat in the order laid, with all that was noted. */
export const coatList = (card: JobCard, data: JobsData, us: boolean, correct: Act, off: Act): HTMLElement => {
  const list = make('ol.laid');
  for (const [index, coat] of coatsInOrder(card).entries()) {
    const product = data.products[coat.product]?.name ?? words(coat.product);
    const told = [
      amountOf(coat, us),
      coat.applicator ? `by ${words(coat.applicator)}` : '',
      sayAir(coat),
      coat.note ?? '',
    ].filter(Boolean);
    const change = button(`Correct coat ${index + 1}`, () => correct(coat), 'plain');
    change.dataset['correct'] = '';
    const take = button('Take it off the card', () => off(coat), 'plain');
    const row = make(
      'li',
      numbered(index + 1),
      make('b', `Coat ${index + 1}, ${product.toLowerCase()}`),
      make('span.when', sayMoment(coat.laidAt)),
      make('p.small', told.join('; ')),
      make('p.row-acts', change, take),
    );
    row.dataset['coat'] = coat.id;
    list.append(row);
  }
  return list;
};
