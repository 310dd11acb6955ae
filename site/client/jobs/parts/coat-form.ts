import { type CoatFault, type LaidCoat, sayInstant } from '#engine/clock.ts';
import { changed, coatsInOrder, laidCoatOf, passedBy, withCoat } from '#engine/jobs.ts';
import type { CardCoat, JobCard } from '#engine/model/job-card.ts';
import type { JobsData } from '../../../shared/jobs-data.ts';
import { CLOCK } from '../../../shared/urls.ts';
import { CoatForm } from '../../clock/form.tsx';
import { corrected, draftOf } from '../../clock/refill.ts';
import { timeStyle } from '../../shared/time-style.ts';
import { button, type CardHands, type JobsFrame, link } from '../views/view.ts';
import { correctClock, forgetStage, startClock } from './clock.ts';
import { cardCoatOf, coatRow } from './coats.ts';

const LAY = { title: 'Lay a coat', go: 'Coat laid: start the clock' } as const;

/** The form of a coat on a card: a new one goes onto the card and the clock, one that stands there is corrected. */
export class LayCoat {
  readonly place: HTMLElement;
  readonly #frame: JobsFrame;
  readonly #data: JobsData;
  readonly #hands: CardHands;
  readonly #card: () => JobCard;
  #form: CoatForm | undefined;
  /** The coat that is corrected, as the form found it. */
  #coat: CardCoat | undefined;
  readonly #leave = button('Leave it as it was', () => this.#close(), 'quiet leave-it');

  constructor(frame: JobsFrame, data: JobsData, hands: CardHands, card: () => JobCard) {
    this.#frame = frame;
    this.#data = data;
    this.#hands = hands;
    this.#card = card;
    this.place = frame.root.querySelector('.lay-coat') as HTMLElement;
    this.place.addEventListener(
      'keydown',
      (event) => {
        if (event.key === 'Escape' && this.#coat) this.#close();
      },
      { signal: frame.signal },
    );
    frame.signal.addEventListener('abort', () => this.#forget());
  }

  /** Whether a correction is typed and not yet on the card. */
  get unsaved(): boolean {
    return this.#coat !== undefined && (this.#form?.typedOver ?? false);
  }

  /** Lays the next coat. */
  open(): void {
    if (!this.#mayTurn()) return;
    this.#forget();
    const { coats, product, name } = this.#card();
    const next = { product: coats.at(-1)?.product ?? product ?? '', piece: name, coatNumber: coats.length };
    this.#show(LAY.title, LAY.go)?.next(next);
  }

  /** Corrects a coat that stands on the card. */
  correct(coat: CardCoat): void {
    if (coat.id !== this.#coat?.id && !this.#mayTurn()) return;
    this.#forget();
    const number = this.#numberOf(coat);
    const form = this.#show(`Correct coat ${number}`, 'Save it as it stands here');
    this.place.querySelector('.go')?.after(this.#leave);
    this.#coat = coat;
    // Only its own label: what the card says of the can stays with the card.
    const { label: _card, ...laid } = laidCoatOf(this.#card(), coat);
    const was = { ...laid, coatNumber: Math.min(number, 20), label: coat.label as LaidCoat['label'] };
    form?.correct({
      draft: (units) => draftOf(was, units),
      corrected: (read, touched) => corrected(was, read, touched),
      faults: (read) => this.#outOfPlace(read),
    });
  }

  #show(title: string, go: string): CoatForm | undefined {
    const form = this.place.querySelector('form');
    if (!form) return undefined;
    this.place.hidden = false;
    const { signal } = this.#frame;
    this.#form ??= new CoatForm(form, this.#data.products, (coat) => this.#laid(coat), signal);
    this.#name(title, go);
    this.place.scrollIntoView({ block: 'start' });
    form.querySelector<HTMLElement>('select')?.focus({ preventScroll: true });
    return this.#form;
  }

  #name(title: string, go: string): void {
    this.place.querySelector('h2')?.replaceChildren(title);
    this.place.querySelector('.go')?.replaceChildren(go);
  }

  #numberOf({ id }: CardCoat): number {
    return coatsInOrder(this.#card()).findIndex((one) => one.id === id) + 1;
  }

  /** A coat keeps its place among the others: with a time beyond its neighbor's it would not. */
  #outOfPlace(read: LaidCoat): readonly CoatFault[] {
    const passed = Number.isFinite(read.laidAt) && passedBy(this.#card(), cardCoatOf(read));
    if (!passed) return [];
    const at = sayInstant(passed.coat.laidAt, Date.now(), timeStyle());
    const says = `Coat ${passed.number}, ${passed.lies} it, was laid ${at}: this coat has to be ${passed.lies === 'below' ? 'later' : 'earlier'}. If the other time is wrong, correct that coat first.`;
    return [{ field: 'laidAt', says, stops: true }];
  }

  /** A correction that was begun is not thrown away unasked. */
  #mayTurn(): boolean {
    return !this.unsaved || confirm('The correction of this coat is not saved. Leave the coat as it was?');
  }

  #forget(): void {
    this.#coat = undefined;
    this.#form?.end();
    this.#leave.remove();
    this.#name(LAY.title, LAY.go);
  }

  /** Back to the coat’s row, where she came from. */
  #close(): void {
    const coat = this.#coat;
    if (!this.#mayTurn()) return;
    this.#forget();
    this.place.hidden = true;
    if (coat) this.#toRow(coat);
  }

  #toRow({ id }: CardCoat): void {
    const row = coatRow(this.#frame.place, id);
    row?.scrollIntoView({ block: 'nearest' });
    row?.querySelector<HTMLElement>('[data-correct]')?.focus({ preventScroll: true });
  }

  async #laid(laid: LaidCoat): Promise<boolean> {
    const was = this.#coat;
    if (was) {
      this.#forget();
      this.place.hidden = true;
      await this.#keep(was, cardCoatOf({ ...laid, id: was.id }));
      return false;
    }
    await this.#lay(laid);
    return true;
  }

  async #keep(was: CardCoat, coat: CardCoat): Promise<void> {
    const put = async (one: CardCoat) => {
      const note = one.note ?? was.note;
      const whole = note === undefined ? one : { ...one, note };
      const kept = await this.#hands.now((card) => withCoat(card, whole, Date.now()));
      await correctClock(laidCoatOf(this.#card(), whole), this.#data.products);
      this.#toRow(whole);
      return kept;
    };
    if (!(await put(coat))) return;
    const back = button('Put it as it was', async () => {
      if (await put(was)) this.#frame.say('The coat is as it was.');
    });
    this.#frame.say(`Coat ${this.#numberOf(coat)} is corrected. `, back);
  }

  async #lay(laid: LaidCoat): Promise<void> {
    const coat = cardCoatOf(laid);
    const kept = await this.#hands.now((card) => {
      const product = card.product ?? coat.product;
      return changed(withCoat(card, coat, Date.now()), { product }, Date.now());
    });
    this.place.hidden = true;
    const card = this.#card();
    const started = await startClock(laidCoatOf(card, coat), this.#data.products, Date.now());
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
