import { type CoatFault, type LaidCoat, sayInstant } from '#engine/clock.ts';
import { type Judgement, type Laying, overCoat } from '#engine/fitness.ts';
import {
  changed,
  coatOwed,
  coatsInOrder,
  filmBelow,
  laidCoatOf,
  layingOfCard,
  passedBy,
  withCoat,
} from '#engine/jobs.ts';
import { FACTS } from '#engine/model/facts.ts';
import type { CardCoat } from '#engine/model/job-card.ts';
import { lower } from '#engine/plain/text.ts';
import { CLOCK } from '../../../shared/urls.ts';
import { reasonsAgainst } from '../../clock/before-coat.tsx';
import { CoatForm } from '../../clock/form.tsx';
import { corrected, draftOf } from '../../clock/refill.ts';
import { button, element, partIn } from '../../shared/element.ts';
import { newId } from '../../shared/id.ts';
import { timeStyle } from '../../shared/time-style.ts';
import { Act } from '../views/controls.tsx';
import type { JobsFrame } from '../views/frame.ts';
import type { CardHands } from '../views/hands.ts';
import { correctClock, forgetStage, startClock } from './clock.ts';
import { cardCoatOf, coatRow } from './coats.tsx';
import type { JobsData } from './data.ts';
import { canOf, hardenerOf, toolOf, withCan } from './from-plan.ts';
import { cardVerdict, isNotYet } from './verdict.ts';

const LAY = { title: 'Lay a coat', go: 'Coat laid: start the clock' } as const;

/** The form of a coat on a card: a new one goes onto the card and the clock, one that stands there is corrected. */
export class CoatOnCard {
  readonly place: HTMLElement;
  readonly #frame: JobsFrame;
  readonly #data: JobsData;
  readonly #hands: CardHands;
  #form: CoatForm | undefined;
  /** The coat that is corrected, as the form found it. */
  #coat: CardCoat | undefined;
  readonly #notYet = element('p', { className: 'caution stop' });
  readonly #leave = button('Leave it as it was', () => void this.#close(), 'quiet leave-it');

  constructor(frame: JobsFrame, data: JobsData, hands: CardHands) {
    this.#frame = frame;
    this.#data = data;
    this.#hands = hands;
    const place = partIn(frame.host, 'lay-coat');
    if (!place) throw new Error('the page brought no form for a coat');
    this.place = place;
    place.hidden = true;
    const { signal } = frame;
    place.addEventListener(
      'keydown',
      (event) => {
        if (event.key !== 'Escape' || !this.#coat) return;
        // Else the same key would close the question that it opens.
        event.preventDefault();
        void this.#close();
      },
      { signal },
    );
    signal.addEventListener('abort', () => this.#forget());
  }

  /** Whether a correction is typed and not yet on the card. */
  get unsaved(): boolean {
    return this.#coat !== undefined && (this.#form?.typedOver ?? false);
  }

  /** Lays the next coat, of the product below unless another is named. */
  async open(of?: string): Promise<void> {
    if (!(await this.#mayTurn())) return;
    this.#forget();
    const card = this.#hands.card();
    const { coats, product, name } = card;
    const below = of ?? coats.at(-1)?.product ?? product;
    const form = this.#show(LAY.title, LAY.go);
    this.#sayNotYet();
    form?.next({
      product: below ?? '',
      piece: name,
      coatNumber: coats.length,
      applicator: toolOf(card, below),
      hardener: hardenerOf(card, below),
      label: canOf(card, below),
    });
  }

  /** Over a coat that is not ready the form says so before all else. */
  #sayNotYet(): void {
    const { doing, enough, verdict } = cardVerdict(this.#hands.card(), this.#data, Date.now());
    if (!enough && !isNotYet(doing)) return;
    this.#notYet.replaceChildren(
      element('b', {}, enough ? `${verdict}.` : `Not yet: ${lower(verdict)}.`),
      ' Only a coat that lies already is noted here.',
    );
    this.place.querySelector('h2')?.after(this.#notYet);
  }

  /** Counts a coat from now on, in an air that is right for it. */
  async fromNow(coat: CardCoat): Promise<void> {
    await this.correct(coat);
    if (this.#coat?.id === coat.id) this.#form?.fromNow();
  }

  /** Corrects a coat that stands on the card. */
  async correct(coat: CardCoat): Promise<void> {
    if (coat.id !== this.#coat?.id && !(await this.#mayTurn())) return;
    this.#forget();
    const number = this.#numberOf(coat);
    const form = this.#show(`Correct coat ${number}`, 'Save it as it stands here');
    this.place.querySelector('[type=submit]')?.after(this.#leave);
    this.#coat = coat;
    // Only its own label: what the card says of the can stays with the card.
    const was = laidCoatOf({ ...this.#hands.card(), label: undefined }, coat);
    const standing = { ...was, coatNumber: Math.min(number, FACTS['coat-number'].max) };
    form?.correct({
      draft: (units) => draftOf(standing, units),
      corrected: (read, touched) => corrected(standing, read, touched),
      faults: (read) => this.#outOfPlace(read),
    });
  }

  #show(title: string, go: string): CoatForm | undefined {
    const form = this.place.querySelector('form');
    if (!form) return undefined;
    this.place.hidden = false;
    const { signal } = this.#frame;
    this.#form ??= new CoatForm(
      form,
      {
        products: this.#data.products,
        layingOf: (coat) => this.#layingOf(cardCoatOf(coat)),
        laid: (coat, judgement) => this.#laid(coat, judgement),
      },
      signal,
    );
    this.#name(title, go);
    this.place.scrollIntoView({ block: 'start' });
    form.querySelector<HTMLElement>('select')?.focus({ preventScroll: true });
    return this.#form;
  }

  /** A coat as it comes to lie on the piece: over the one below once that bears it, were it laid within the same minute. */
  #layingOf(coat: CardCoat): Laying {
    const card = this.#hands.card();
    const { products } = this.#data;
    const laying = { ...layingOfCard(card, coat), film: filmBelow(card, coat, products) };
    const below = coatsInOrder(card).findLast(({ id, laidAt }) => id !== coat.id && laidAt <= coat.laidAt);
    const over = overCoat(laying, below && laidCoatOf(card, below), coat.laidAt, products);
    // The coat that a repair laid is part of it.
    return coatOwed(card, this.#data.lays) ? { ...over, openFlaw: undefined } : over;
  }

  #name(title: string, go: string): void {
    this.place.querySelector('h2')?.replaceChildren(title);
    this.place.querySelector('[type=submit]')?.replaceChildren(go);
  }

  #numberOf({ id }: CardCoat): number {
    return coatsInOrder(this.#hands.card()).findIndex((one) => one.id === id) + 1;
  }

  /** A coat keeps its place among the others: with a time beyond its neighbor's it would not. */
  #outOfPlace(read: LaidCoat): readonly CoatFault[] {
    const passed = Number.isFinite(read.laidAt) && passedBy(this.#hands.card(), cardCoatOf(read));
    if (!passed) return [];
    const at = sayInstant(passed.coat.laidAt, Date.now(), timeStyle());
    const says = `Coat ${passed.number}, ${passed.lies} it, was laid ${at}: this coat has to be ${passed.lies === 'below' ? 'later' : 'earlier'}. If the other time is wrong, correct that coat first.`;
    return [{ field: 'laidAt', says, stops: true }];
  }

  /** Whether a coat goes onto the card. One that is judged a no does only where it lies already. */
  async #mayLay(laid: LaidCoat, judgement: Judgement | undefined): Promise<boolean> {
    const against = reasonsAgainst(judgement, laid, Date.now());
    return (
      !against.length ||
      this.#frame.ask({
        says: `Do not lay it. ${against.join(' ')}`,
        yes: 'It lies already: note it',
        no: 'Leave it: nothing is noted',
      })
    );
  }

  /** A correction that was begun is not thrown away unasked. */
  async #mayTurn(): Promise<boolean> {
    return (
      !this.unsaved ||
      this.#frame.ask({
        says: 'The correction of this coat is not saved. Leave the coat as it was?',
        yes: 'Leave it as it was',
        no: 'Go on correcting',
      })
    );
  }

  #forget(): void {
    this.#coat = undefined;
    this.#form?.end();
    this.#leave.remove();
    this.#notYet.remove();
    this.#name(LAY.title, LAY.go);
  }

  /** Back to the coat’s row, where she came from. */
  async #close(): Promise<void> {
    const coat = this.#coat;
    if (!(await this.#mayTurn())) return;
    this.#forget();
    this.place.hidden = true;
    if (coat) this.#toRow(coat);
  }

  #toRow({ id }: CardCoat): void {
    const row = coatRow(this.#frame.host, id);
    row?.scrollIntoView({ block: 'nearest' });
    row?.querySelector<HTMLElement>('[data-mark=correct]')?.focus({ preventScroll: true });
  }

  /** True once a new coat is laid. */
  async #laid(laid: LaidCoat, judgement: Judgement | undefined): Promise<boolean> {
    try {
      const was = this.#coat;
      if (!was) return (await this.#mayLay(laid, judgement)) && (await this.#lay(laid));
      this.#forget();
      this.place.hidden = true;
      await this.#keep(was, cardCoatOf({ ...laid, id: was.id }));
    } catch (error) {
      this.#frame.trouble(error);
    }
    return false;
  }

  async #keep(was: CardCoat, coat: CardCoat): Promise<void> {
    const put = async (one: CardCoat) => {
      const note = one.note ?? was.note;
      const whole = note === undefined ? one : { ...one, note };
      const kept = await this.#hands.now((card) => withCoat(card, whole, Date.now()));
      if (kept) await correctClock(laidCoatOf(this.#hands.card(), whole), this.#data.products);
      this.#toRow(whole);
      return kept;
    };
    if (!(await put(coat))) return;
    const back = async () => {
      if (await put(was)) this.#frame.say('The coat is as it was.');
    };
    this.#frame.say(
      <>
        {`Coat ${this.#numberOf(coat)} is corrected. `}
        <Act act={back}>Put it as it was</Act>
      </>,
    );
  }

  async #lay(laid: LaidCoat): Promise<boolean> {
    // The form names a coat by its minute: two tabs may lay one in the same.
    const coat = cardCoatOf({ ...withCan(this.#hands.card(), laid), id: newId() });
    const kept = await this.#hands.now((card) => {
      const product = card.product ?? coat.product;
      return changed(withCoat(card, coat, Date.now()), { product }, Date.now());
    });
    // Refused: what she typed stays in the form. Only not written yet: it is laid all the same, and its time runs.
    if (!kept && !this.#hands.pending()) return false;
    this.place.hidden = true;
    const card = this.#hands.card();
    const started = await startClock(laidCoatOf(card, coat), this.#data.products, Date.now());
    forgetStage();
    if (!kept) return true;
    this.#frame.say(
      <>
        {`Coat ${this.#numberOf(coat)} is on the card. `}
        {started ? (
          <>
            Its <a href={CLOCK}>clock</a> runs.
          </>
        ) : (
          'This browser does not keep its clock: write the times down.'
        )}
      </>,
    );
    this.#frame.host.scrollIntoView({ block: 'start' });
    this.#frame.toTitle();
    return true;
  }
}
