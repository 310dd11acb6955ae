import {
  type ClockProduct,
  type ClockStore,
  clockNow,
  type LaidCoat,
  remindersOf,
  withLaid,
} from '#engine/clock.ts';
import { without } from '#engine/index.ts';
import { keepCase, readCase } from '../case/store.ts';
import { everyTick } from '../shared/tick.ts';
import { timeStyle } from '../shared/time-style.ts';
import { CoatCard } from './card.ts';
import { CoatForm } from './form.ts';
import { currentCoat, keepClock, loadClock, watchClock } from './store.ts';

/** The coat clock: the coats that are drying, and the form that lays one more. */
export class CoatsElement extends HTMLElement {
  #stop = new AbortController();
  #cards = new Map<string, CoatCard>();
  #form: CoatForm | undefined;
  #below: LaidCoat | undefined;
  #refused = false;
  #lost = 0;

  connectedCallback() {
    this.#stop = new AbortController();
    const { signal } = this.#stop;
    const form = this.querySelector('form');
    if (!form) return;
    this.hidden = false;
    this.#form = new CoatForm(form, this.#products, (coat) => this.#lay(coat), signal);
    this.addEventListener('click', this.#act, { signal });
    const { store, lost } = loadClock();
    this.#lost = lost;
    this.#keep({ ...store, products: this.#productsOf(store.coats) });
    this.#open(!store.coats.length);
    everyTick(() => this.#tell(), signal);
  }

  disconnectedCallback() {
    this.#stop.abort();
    for (const card of this.#cards.values()) card.element.remove();
    this.#cards.clear();
  }

  get #products(): Readonly<Record<string, ClockProduct>> {
    return JSON.parse(document.getElementById('clock-products')?.textContent ?? '{}');
  }

  #productsOf(coats: readonly LaidCoat[]): ClockStore['products'] {
    const all = this.#products;
    return Object.fromEntries(
      coats.flatMap(({ product }) => (all[product] ? [[product, all[product]]] : [])),
    );
  }

  #keep(store: ClockStore): void {
    this.#refused = !keepClock(store);
  }

  /** A new coat buries the one below: one coat a piece is on the clock. What she said of the old film is over. */
  #lay(coat: LaidCoat): void {
    const { store } = loadClock();
    const coats = withLaid(store.coats, this.#nextOf(coat));
    this.#keep({ ...store, coats, products: this.#productsOf(coats), current: coat.id, seenAt: Date.now() });
    keepCase(without(readCase(), 'stage'));
    this.#open(false);
    this.#tell();
    const card = this.#cards.get(coat.id)?.element;
    card?.focus({ preventScroll: true });
    card?.scrollIntoView({ block: 'start' });
  }

  /** A coat that was begun as the next one of a piece is on its card, as long as the piece has the same name. */
  #nextOf(coat: LaidCoat): LaidCoat {
    const below = this.#below;
    this.#below = undefined;
    return below?.card && below.piece === coat.piece ? { ...coat, card: below.card } : coat;
  }

  #open(open: boolean): void {
    this.querySelector('details.new')?.toggleAttribute('open', open);
  }

  /** All that stands on the page, as of now. */
  #tell(): void {
    const { store } = loadClock();
    const now = Date.now();
    const back = watchClock(store, now);
    this.#trouble(back);
    const products = this.#products;
    const current = currentCoat(store);
    const list = this.querySelector('.coats');
    for (const [id, card] of this.#cards)
      if (!store.coats.some((coat) => coat.id === id)) {
        card.element.remove();
        this.#cards.delete(id);
      }
    for (const [index, coat] of store.coats.entries()) {
      const card = this.#cards.get(coat.id) ?? new CoatCard(coat);
      this.#cards.set(coat.id, card);
      if (list?.children[index] !== card.element)
        list?.insertBefore(card.element, list.children[index] ?? null);
      card.element.classList.toggle('current', store.coats.length > 1 && coat === current);
      if (back) card.doubt('The clock of this device has gone back.');
      else card.tell(products[coat.product], now, timeStyle());
      card.element.classList.toggle('one', store.coats.length === 1);
    }
  }

  #trouble(back: number): void {
    const said = [
      ...(back
        ? [
            `The clock of this device has gone back ${back} min since it was last read. Set it right. If it is right now, lay the coats again: their times can not be trusted.`,
          ]
        : []),
      ...(this.#refused
        ? [
            'This browser keeps nothing (its storage is full or closed). The clock runs as long as this page stays open: write the times down.',
          ]
        : []),
      ...(this.#lost
        ? ['A coat that was kept here could not be read and is left out. Lay it again with its time.']
        : []),
    ].join(' ');
    const place = this.querySelector<HTMLElement>('.trouble');
    if (!place || place.textContent === said) return;
    place.textContent = said;
    place.hidden = !said;
  }

  #act = (event: Event) => {
    const button = (event.target as Element).closest<HTMLElement>('[data-act]');
    const id = button?.closest<HTMLElement>('.on-clock')?.dataset['coat'];
    const { store } = loadClock();
    const coat = store.coats.find((one) => one.id === id);
    if (!coat) return;
    const act = button?.dataset['act'];
    if (act === 'off') this.#off(store, coat);
    else if (act === 'look') {
      this.#keep({ ...store, current: coat.id });
      keepCase(without(readCase(), 'stage'));
      this.#tell();
    } else if (act === 'next') {
      this.#form?.next(coat);
      this.#below = coat;
      this.#open(true);
      this.querySelector<HTMLElement>('.go')?.focus();
    } else void this.#remind(coat);
  };

  #off(store: ClockStore, coat: LaidCoat): void {
    const coats = store.coats.filter((one) => one !== coat);
    this.#keep({ ...store, coats, products: this.#productsOf(coats) });
    this.#open(!coats.length);
    this.#tell();
    this.querySelector<HTMLElement>('details.new > summary')?.focus();
  }

  async #remind(coat: LaidCoat) {
    const product = this.#products[coat.product];
    const now = Date.now();
    const reading = product && clockNow(product, coat, now);
    if (reading?.kind !== 'running') return;
    const { reminderFile } = await import('./reminder-file.ts');
    const file = new Blob([reminderFile(remindersOf(reading, coat, now), coat.id, now)], {
      type: 'text/calendar',
    });
    const href = URL.createObjectURL(file);
    Object.assign(document.createElement('a'), { href, download: 'halfdry-coat.ics' }).click();
    setTimeout(() => URL.revokeObjectURL(href), 60_000);
  }
}
