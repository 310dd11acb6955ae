import { type Given, newCard } from '#engine/jobs.ts';
import { cardUrl } from '../../../shared/jobs-urls.ts';
import { nameUnits } from '../../shared/form/in-page.ts';
import { newId } from '../../shared/id.ts';
import { make } from '../../shared/make.ts';
import { askToStay } from '../../shared/persist.ts';
import { usUnits } from '../../shared/say-date.ts';
import { exportCards } from '../files/export.ts';
import { changeOfAll, tellFieldFaults } from '../parts/fields.ts';
import { addCard } from '../store/index.ts';
import { button, type JobsFrame, type JobsView, link } from './view.ts';

/** A new card: what a repair must know of the piece, and no more. */
export class NewView implements JobsView {
  readonly #frame: JobsFrame;

  constructor(frame: JobsFrame) {
    this.#frame = frame;
  }

  async show(): Promise<void> {
    const { place, root, signal, title } = this.#frame;
    title('A new job card');
    const form = root.querySelector<HTMLFormElement>('form.about');
    if (!form) return;
    form.reset();
    nameUnits(form, usUnits() ? 'us' : 'metric');
    form.hidden = false;
    tellNothing(form);
    place.replaceChildren(make('p', link('All job cards', '#')), form);
    form.addEventListener(
      'submit',
      (event) => {
        event.preventDefault();
        void this.#make(form);
      },
      { signal },
    );
  }

  async #make(form: HTMLFormElement): Promise<void> {
    const { trouble } = this.#frame;
    if (tellFieldFaults(form)) {
      form.querySelector<HTMLElement>('[aria-invalid]')?.focus();
      return;
    }
    const card = newCard(changeOfAll(form) as Given, newId(), Date.now());
    try {
      await addCard(card);
      void askToStay();
      location.replace(cardUrl(card.id));
    } catch (error) {
      trouble(
        error,
        ' ',
        button('Save this card as a file', () => exportCards([card], false)),
      );
    }
  }

  async changed(): Promise<void> {}
  async leave(): Promise<boolean> {
    return true;
  }
}

const tellNothing = (form: HTMLFormElement): void => {
  for (const place of form.querySelectorAll('.fault')) place.textContent = '';
  for (const field of form.querySelectorAll('[aria-invalid]')) field.removeAttribute('aria-invalid');
};
