import type { LaidCoat } from '#engine/clock.ts';
import { changed, laidCoatOf, withCoat } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import type { JobsData } from '../lib/jobs.ts';
import { CLOCK } from '../lib/urls.ts';
import { CoatForm } from './clock-form.ts';
import { forgetStage, startClock } from './jobs-clock.ts';
import { cardCoatOf } from './jobs-coats.ts';
import { type CardHands, type JobsFrame, link } from './jobs-view.ts';

/** The form of a new coat on a card: what is laid stands on the card and on the clock. */
export class LayCoat {
  readonly place: HTMLElement;
  readonly #frame: JobsFrame;
  readonly #data: JobsData;
  readonly #hands: CardHands;
  readonly #card: () => JobCard;
  #form: CoatForm | undefined;

  constructor(frame: JobsFrame, data: JobsData, hands: CardHands, card: () => JobCard) {
    this.#frame = frame;
    this.#data = data;
    this.#hands = hands;
    this.#card = card;
    this.place = frame.root.querySelector('.lay-coat') as HTMLElement;
  }

  open(): void {
    const form = this.place.querySelector('form');
    if (!form) return;
    this.place.hidden = false;
    const { signal } = this.#frame;
    this.#form ??= new CoatForm(form, this.#data.products, (coat) => void this.#lay(coat), signal);
    const { coats, product, name } = this.#card();
    const next = { product: coats.at(-1)?.product ?? product, piece: name, coatNumber: coats.length };
    this.#form.next(next as LaidCoat);
    this.place.scrollIntoView({ block: 'start' });
    form.querySelector<HTMLElement>('select')?.focus({ preventScroll: true });
  }

  async #lay(laid: LaidCoat): Promise<void> {
    const coat = cardCoatOf(laid);
    const kept = await this.#hands.now((card) => {
      const product = card.product ?? coat.product;
      return changed(withCoat(card, coat, Date.now()), { product }, Date.now());
    });
    this.place.hidden = true;
    const card = this.#card();
    const started = startClock(laidCoatOf(card, coat), this.#data.products, Date.now());
    forgetStage();
    if (!kept) return;
    this.#frame.say(
      `Coat ${card.coats.length} is on the card. `,
      ...(started
        ? ['Its ', link('clock', CLOCK), ' runs.']
        : ['This browser does not keep its clock: write the times down.']),
    );
    this.#frame.place.scrollIntoView({ block: 'start' });
  }
}
