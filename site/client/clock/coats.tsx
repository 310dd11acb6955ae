import { render } from 'preact';
import * as v from 'valibot';
import {
  type ClockProduct,
  clockDoubt,
  type LaidCoat,
  onOnePiece,
  type Running,
  remindersOf,
  sayDoubt,
  takeOffClock,
} from '#engine/clock.ts';
import { type Judgement, type Laying, layingOfCoat, overCoat, pieceOfCase } from '#engine/fitness.ts';
import { without } from '#engine/index.ts';
import { clockWords } from '../../shared/clock-words.ts';
import { keepCase, readCase } from '../case/store.ts';
import { partIn } from '../shared/element.ts';
import { unitsIn } from '../shared/form/form.ts';
import type { Units } from '../shared/form/units.ts';
import { objectWith, readPageData } from '../shared/page-data.ts';
import { saveFile } from '../shared/save-file.ts';
import { forget, recall } from '../shared/storage.ts';
import { everyTick } from '../shared/tick.ts';
import { timeStyle } from '../shared/time-style.ts';
import { reasonsAgainst } from './before-coat.tsx';
import type { CoatActs } from './coat.tsx';
import { CoatList } from './coat-list.tsx';
import { CoatForm } from './form.tsx';
import { Questions } from './question.tsx';
import { startCoat } from './start-coat.ts';
import {
  changeClock,
  chooseCoat,
  currentCoat,
  dropAside,
  loadClock,
  noClock,
  noteSeen,
  type OnClock,
  onClockChange,
} from './store.ts';
import { Trouble } from './trouble.tsx';

const PRODUCTS = v.record(v.string(), objectWith<ClockProduct>('family', 'touch-minutes'));
/** So many are shown at once: a clock that holds more was soiled, and must not hold up the page. */
const SHOWN = 20;

/** The coat clock: the coats that are drying, and the form that lays one more. */
export class CoatsElement extends HTMLElement {
  #stop = new AbortController();
  #form: CoatForm | undefined;
  #questions: Questions | undefined;
  /** The coat whose next one was begun by its button. */
  #below: LaidCoat | undefined;
  /** The coat that is counted anew, in another air. */
  #anew: LaidCoat | undefined;
  #seen: OnClock = noClock;
  #shown = SHOWN;
  #reads = 0;
  /** What was done last ended in a bug of ours, so nothing of it is kept. */
  #broken = false;
  #back = 0;
  /** What was stopped last, as it stood, until another coat is laid. */
  #stopped: { readonly coat: LaidCoat; readonly current: string | undefined } | undefined;

  connectedCallback() {
    this.#stop = new AbortController();
    const { signal } = this.#stop;
    const form = this.querySelector('form');
    const asked = partIn(this, 'question');
    if (!form || !asked) return;
    this.#questions = new Questions(asked);
    this.#form = new CoatForm(
      form,
      {
        products: this.#products,
        layingOf: (coat) => this.#layingOf(coat),
        laid: (coat, judgement) => this.#lay(coat, judgement),
      },
      signal,
    );
    form.addEventListener('change', () => this.#draw(), { signal });
    onClockChange(() => void this.#read(), signal);
    void this.#begin(signal);
  }

  disconnectedCallback() {
    this.#stop.abort();
    for (const name of ['coats', 'troubles']) {
      const host = partIn(this, name);
      if (host) render(null, host);
    }
  }

  /** Shown at once as it stays: a form that was there first would be pushed down by the coats. */
  async #begin(signal: AbortSignal): Promise<void> {
    try {
      await this.#read();
      this.#open(!this.#seen.store.coats.length);
    } finally {
      this.hidden = false;
    }
    everyTick(() => void this.#read(), signal);
  }

  readonly #products = readPageData(PRODUCTS, document.getElementById('clock-products')?.textContent ?? '{}');

  get #units(): Units {
    const units = this.querySelector<HTMLInputElement>('[name=units]:checked')?.value;
    return unitsIn({ units: units ?? '' });
  }

  /** A coat as it comes to lie on its piece, over the one that is on the clock, where it is the next on that piece. */
  #layingOf(coat: LaidCoat): Laying {
    const laying = layingOfCoat(coat, pieceOfCase(readCase()));
    const below = this.#seen.store.coats.find((one) => onOnePiece(one, coat));
    if (!below || coat.coatNumber <= below.coatNumber) return laying;
    const products = { ...this.#seen.store.products, ...this.#products };
    return overCoat(laying, below, coat.laidAt, products);
  }

  /** What lies in the store, as of now. Where two readings overtake each other the later one stands. */
  async #read(): Promise<void> {
    const read = ++this.#reads;
    const seen = await loadClock();
    if (read !== this.#reads) return;
    this.#seen = seen;
    this.#noteBack();
    this.#draw();
    const now = Date.now();
    if (!clockDoubt(seen.store.seenAt, now)) await noteSeen(seen.store, now);
  }

  /** What was put back, here or on a page before, is told until she leaves this one. */
  #noteBack(): void {
    const back = recall('coats-back');
    if (!back) return;
    this.#back = back.coats;
    forget('coats-back');
  }

  #change(by: Parameters<typeof changeClock>[0]): Promise<void> {
    return this.#write(() => changeClock(by));
  }

  /** What stands on the page after something was written. A bug of ours is told as one here, and thrown on. */
  async #write(work: () => Promise<OnClock>): Promise<void> {
    this.#reads++;
    try {
      this.#seen = await work();
      this.#broken = false;
    } catch (error) {
      this.#broken = true;
      throw error;
    } finally {
      this.#draw();
    }
  }

  /** A new coat buries the one below: one coat a piece is on the clock. What she said of the old film is over. */
  async #lay(read: LaidCoat, judgement: Judgement | undefined): Promise<boolean> {
    if (!this.#questions) return false;
    const laid = await startCoat(
      {
        coat: read,
        begunAs: { next: this.#below, anew: this.#anew },
        against: reasonsAgainst(judgement, read, Date.now()),
      },
      {
        load: async () => (await loadClock()).store,
        change: (by) => this.#change(by),
        products: this.#products,
        questions: this.#questions,
        style: { ...timeStyle(), units: this.#units },
        now: Date.now,
      },
    );
    if (!laid) {
      this.#focusSubmit();
      return false;
    }
    this.#below = undefined;
    this.#anew = undefined;
    this.#stopped = undefined;
    keepCase(without(readCase(), 'stage'));
    this.#draw();
    this.#open(false);
    this.#toCoat(laid.id)?.scrollIntoView({ block: 'start' });
    return true;
  }

  #open(open: boolean): void {
    partIn(this, 'new')?.toggleAttribute('open', open);
  }

  #focusSubmit(): void {
    this.querySelector<HTMLElement>('[type=submit]')?.focus();
  }

  readonly #acts: CoatActs = {
    next: (coat) => {
      this.#form?.next(coat);
      this.#below = coat;
      this.#open(true);
      this.#focusSubmit();
    },
    anew: (coat) => {
      this.#form?.next({ ...coat, coatNumber: coat.coatNumber - 1 });
      this.#anew = coat;
      this.#open(true);
      this.#form?.fromNow();
    },
    look: (coat) => void this.#write(() => chooseCoat(coat)),
    off: (coat) => void this.#off(coat),
    remind: (coat, reading) => void this.#remind(coat, reading),
  };

  async #off(coat: LaidCoat): Promise<void> {
    this.#stopped = { coat, current: this.#seen.store.current };
    await this.#change((store) => takeOffClock(store, coat.id));
    this.#open(!this.#seen.store.coats.length);
    this.querySelector<HTMLElement>('[data-act=again]')?.focus();
  }

  async #again(): Promise<void> {
    const stopped = this.#stopped;
    if (!stopped) return;
    this.#stopped = undefined;
    const { coat, current } = stopped;
    await this.#change((store) =>
      store.coats.some(({ id }) => id === coat.id)
        ? store
        : {
            ...store,
            coats: [coat, ...store.coats],
            current,
          },
    );
    this.#open(false);
    this.#toCoat(coat.id);
  }

  /** Into the block of a coat, which is opened where it is folded. */
  #toCoat(id: string): HTMLElement | null {
    const block = this.querySelector<HTMLElement>(`[data-coat="${CSS.escape(id)}"]`);
    block?.closest('details')?.setAttribute('open', '');
    block?.focus({ preventScroll: true });
    return block;
  }

  async #remind(coat: LaidCoat, reading: Running): Promise<void> {
    const now = Date.now();
    const { reminderFile } = await import('./reminder-file.ts');
    saveFile(
      'halfdry-coat.ics',
      'text/calendar',
      reminderFile(remindersOf(clockWords, reading, coat, now), coat.id, now),
    );
  }

  /** All that stands on the page, as of now. */
  #draw(): void {
    const { store, aside, onDisk } = this.#seen;
    const now = Date.now();
    const style = { ...timeStyle(), units: this.#units };
    const found = clockDoubt(store.seenAt, now);
    const doubt = found && { kind: found.kind, says: sayDoubt(clockWords, found, now, style) };
    const current = currentCoat(store, now);
    const rest = store.coats.length - this.#shown;
    const [troubles, coats] = [partIn(this, 'troubles'), partIn(this, 'coats')];
    const says = partIn(this, 'new-says');
    if (says) says.textContent = store.coats.length ? 'Another coat' : 'Lay a coat';
    if (!troubles || !coats) return;
    render(
      <Trouble
        doubt={store.coats.length || doubt?.kind === 'unset' ? doubt : undefined}
        aside={aside}
        onDisk={onDisk}
        broken={this.#broken}
        back={this.#back}
        right={() => void this.#change((there) => ({ ...there, seenAt: Date.now() }))}
        drop={() => void this.#write(dropAside)}
      />,
      troubles,
    );
    render(
      <>
        {this.#stopped && (
          <p class="acts" role="status">
            {`The clock of ${this.#stopped.coat.piece}, coat ${this.#stopped.coat.coatNumber}, is stopped. `}
            <button type="button" class="quiet" data-act="again" onClick={() => void this.#again()}>
              Start it again
            </button>
          </p>
        )}
        <CoatList
          coats={store.coats}
          current={current}
          most={this.#shown}
          products={{ ...store.products, ...this.#products }}
          now={now}
          style={style}
          doubt={doubt?.says}
          acts={this.#acts}
        />
        {rest > 0 && (
          <button
            type="button"
            class="quiet"
            onClick={() => {
              this.#shown += SHOWN;
              this.#draw();
            }}
          >
            Show {Math.min(rest, SHOWN)} more of {rest}
          </button>
        )}
      </>,
      coats,
    );
  }
}
