import { changed } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import type { JobsData } from '../../../shared/jobs-data.ts';
import { seeUrl } from '../../../shared/urls.ts';
import { keepCardInHand } from '../../case/card-in-hand.ts';
import { keepCase } from '../../case/store.ts';
import { make } from '../../shared/make.ts';
import { sayTime, usUnits } from '../../shared/say-date.ts';
import { everyTick } from '../../shared/tick.ts';
import { exportCards } from '../files/export.ts';
import { offerRescue } from '../files/rescue.ts';
import { adoptCoats, caseOfCard } from '../parts/clock.ts';
import { LayCoat } from '../parts/coat-form.ts';
import { drawSection } from '../parts/drawing.ts';
import { changeOf, fillFields, pieceFacts, tellFieldFaults } from '../parts/fields.ts';
import { notesSection } from '../parts/notes-field.ts';
import { cardVerdict } from '../parts/verdict.ts';
import { CardRefused, JobsFault } from '../store/fault.ts';
import { type Changed, type KeptClash, readClashes, readOne } from '../store/index.ts';
import { cardActs } from './card-acts.ts';
import { cardLists } from './card-lists.ts';
import { showMissing } from './missing.ts';
import { CardSaver, type SaverState } from './saver.ts';
import { button, type CardHands, type JobsFrame, type JobsView, link } from './view.ts';

/** One card: what is to do now, what lies on the piece, and all that was noted. Each change is written at once. */
export class CardView implements JobsView {
  readonly #frame: JobsFrame;
  readonly #id: string;
  #saver: CardSaver | undefined;
  #shown: JobCard | undefined;
  #data: JobsData | undefined;
  readonly #us = usUnits();
  readonly #parts = {
    verdict: make('p.verdict'),
    why: make('p.why'),
    saved: make('p.small'),
    clash: make('div.clash'),
    section: make('section.layers'),
    lists: make('div.lists'),
    acts: make('div.card-acts'),
    facts: make('dl.facts'),
    lay: button('Lay a coat', () => this.#coat?.open(), 'go'),
  };
  readonly #hands: CardHands = {
    now: (by) => this.#now(by),
    run: (work) => this.#run(work),
  };
  #coat: LayCoat | undefined;
  readonly #notes = document.createElement('textarea');

  constructor(frame: JobsFrame, id: string) {
    this.#frame = frame;
    this.#id = id;
  }

  async show(): Promise<void> {
    const { place, title } = this.#frame;
    title('Job card');
    place.replaceChildren(make('p.small', 'Opening the card…'));
    const [read, data] = await Promise.all([readOne(this.#id), this.#frame.data()]);
    if (read.kind !== 'card') {
      showMissing(this.#frame, this.#id, read);
      return;
    }
    this.#data = data;
    await adoptCoats(read.card, data.products, Date.now());
    this.#saver = new CardSaver(read.card, (state, outcome) => this.#told(state, outcome));
    this.#coat = new LayCoat(this.#frame, data, this.#hands, () => this.#card);
    this.#build(this.#coat.place);
    this.#render();
    this.#offer(await readClashes(this.#id));
    const { signal } = this.#frame;
    everyTick(() => this.#tick(), signal);
    const flush = () => void this.#saver?.flush();
    document.addEventListener('visibilitychange', flush, { signal });
    addEventListener('pagehide', flush, { signal });
    addEventListener(
      'beforeunload',
      (event) => (this.#saver?.pending || this.#coat?.unsaved) && event.preventDefault(),
      { signal },
    );
  }

  /** What stands on the page for as long as the card is open. */
  #build(form: HTMLElement): void {
    const { place, root, signal } = this.#frame;
    const { verdict, why, saved, clash, section, lists, acts, facts, lay } = this.#parts;
    saved.setAttribute('role', 'status');
    const about = root.querySelector('form.about') as HTMLFormElement;
    about.hidden = false;
    about.addEventListener(
      'change',
      (event) => {
        const { name } = event.target as HTMLInputElement;
        if (!tellFieldFaults(about))
          void this.#now((card) => changed(card, changeOf(about, name), Date.now()));
      },
      { signal },
    );
    about.addEventListener('submit', (event) => event.preventDefault(), { signal });
    const notes = notesSection(this.#notes, signal, (text) =>
      this.#saver?.soon((card) => changed(card, { notes: text }, Date.now())),
    );
    place.replaceChildren(
      make('p.back', link('All job cards', '#')),
      verdict,
      why,
      saved,
      clash,
      make(
        'div.main-acts',
        lay,
        button('Something looks wrong', () => this.#wrong(), 'go second'),
      ),
      form,
      make(
        'div.paper',
        facts,
        make('details.piece', make('summary', 'Change what is noted of the piece'), about),
        make('div.sheet', make('div', section, notes), lists),
      ),
      acts,
    );
  }

  get #card(): JobCard {
    return this.#saver?.card as JobCard;
  }

  /** All that depends on the card, anew. */
  #render(): void {
    const [card, data] = [this.#card, this.#data];
    if (!data) return;
    this.#frame.title(card.name);
    const about = this.#frame.root.querySelector('form.about') as HTMLFormElement;
    fillFields(about, card, this.#shown);
    // What she types is pending from the first key on, so that what is not pending is the card's.
    if (!this.#saver?.pending && this.#notes.value !== card.notes) this.#notes.value = card.notes;
    this.#shown = card;
    const { section, lists, acts, facts } = this.#parts;
    facts.replaceChildren(...pieceFacts(about));
    section.replaceChildren(...drawSection(card, data, this.#us));
    lists.replaceChildren(
      ...cardLists(card, data, this.#us, this.#frame, this.#hands, (coat) => this.#coat?.correct(coat)),
    );
    acts.replaceChildren(...cardActs(card, this.#frame, this.#hands, () => this.#written()));
    this.#tick();
  }

  #tick(): void {
    const { verdict, why, lay } = this.#parts;
    if (!this.#data) return;
    const told = cardVerdict(this.#card, this.#data, Date.now());
    const write = (place: HTMLElement, words: string) => {
      if (place.textContent !== words) place.textContent = words;
    };
    verdict.className = `verdict ${told.doing}`;
    write(verdict, told.verdict);
    write(why, told.why);
    const notYet = told.doing === 'leave' || told.doing === 'wait';
    write(lay, notYet ? 'Lay a coat: not yet' : 'Lay a coat');
    lay.classList.toggle('second', notYet);
  }

  async #now(by: (card: JobCard) => JobCard): Promise<boolean> {
    await this.#saver?.now(by);
    this.#render();
    return !this.#saver?.pending;
  }

  async #run(work: () => Promise<Changed>): Promise<boolean> {
    const written = (await this.#saver?.run(work)) ?? false;
    this.#render();
    return written;
  }

  #told(state: SaverState, outcome: unknown): void {
    const { saved } = this.#parts;
    if (state === 'saving') {
      saved.textContent = 'Saving…';
      return;
    }
    if (state === 'refused') {
      saved.textContent = 'Not saved.';
      const { faults } = outcome as Changed & { kind: 'refused' };
      this.#frame.trouble(new CardRefused(faults));
      return;
    }
    if (state === 'failed') {
      saved.textContent = 'Not saved yet.';
      const rescue = button('Save this card as a file', () => exportCards([this.#card], false));
      const again = button('Try again', () => void this.#saver?.flush());
      const gone = outcome as Changed;
      const words =
        outcome instanceof Error
          ? outcome
          : gone.kind === 'gone'
            ? 'This card is not in the store any more: it was taken away in another tab, or the browser cleared its storage. What you see here can be saved as a file and brought in again.'
            : gone.kind === 'refused'
              ? `Not saved: ${new CardRefused(gone.faults).message}`
              : 'What lies in the store for this card could not be read any more, so nothing was written over it.';
      this.#frame.trouble(words, ' ', rescue, outcome instanceof JobsFault ? again : '');
      return;
    }
    const { merged, clashes } = outcome as Changed & { kind: 'saved' };
    this.#frame.calm();
    saved.textContent = `Saved ${sayTime(Date.now())}`;
    if (merged) {
      this.#frame.say(
        clashes.length
          ? 'Another tab had changed the same thing meanwhile. What you see now is the newer card; both versions are kept here until you choose.'
          : 'Another tab had changed this card meanwhile. What you see now is the newer card, with your change in it.',
      );
      this.#render();
    }
    this.#offer(clashes);
  }

  /** Each clash stays until she has chosen. */
  #offer(clashes: readonly KeptClash[]): void {
    const { clash } = this.#parts;
    const shown = new Set(
      [...clash.children].map((box) => (box instanceof HTMLElement ? box.dataset['clash'] : '')),
    );
    clash.append(
      ...clashes
        .filter(({ id }) => !shown.has(id))
        .map((one) => offerRescue(this.#card, one, (work) => this.#run(work))),
    );
  }

  async #wrong(): Promise<void> {
    const data = this.#data;
    if (!data) return;
    await this.#saver?.flush();
    const card = this.#card;
    if (keepCase(await caseOfCard(card, data.products, Date.now())) && keepCardInHand(card))
      location.assign(seeUrl([]));
    else
      this.#frame.trouble(
        'This browser keeps no notes, so the walk can not begin with what is on this card, nor write to it. ',
        link('Begin it without', seeUrl([])),
      );
  }

  /** The card once all that waits is written, or could not be. */
  async #written(): Promise<JobCard> {
    await this.#saver?.flush();
    return this.#card;
  }

  async changed(ids: readonly string[]): Promise<void> {
    const saver = this.#saver;
    if (!saver || !ids.includes(this.#id)) return;
    const read = await readOne(this.#id);
    if (read.kind === 'gone' && !saver.pending) {
      this.#frame.trouble('This card was taken away in another tab. ', link('All job cards', '#'));
      return;
    }
    if (read.kind !== 'card' || read.card.changedAt === this.#shown?.changedAt || !saver.take(read.card))
      return;
    this.#render();
    this.#frame.say('Changed in another tab: this is the newer card.');
  }

  async leave(): Promise<boolean> {
    await this.#saver?.flush();
    if (this.#coat?.unsaved && !confirm('The correction of this coat is not saved. Leave it all the same?'))
      return false;
    return !this.#saver?.pending || confirm('A change of this card is not saved. Leave it all the same?');
  }
}
