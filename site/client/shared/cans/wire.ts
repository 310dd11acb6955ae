import { button, element, partIn, statusLine } from '../element.ts';
import type { AnyFields } from '../form/form.ts';
import { draftIn, fillForm } from '../form/in-page.ts';
import { newId } from '../id.ts';
import { type KeptCan, keep, recall } from '../storage.ts';
import { asDraft, canIn, MOST_IN_NAME, withCan } from './kept.ts';

const PICKED = 'can:';
const keptCans = (): readonly KeptCan[] => recall('cans')?.cans ?? [];

/** Her own cans in a form: kept by a name, taken from the top of the list of top coats, let go of again. */
class OwnCans<F extends AnyFields<F>> {
  readonly #form: HTMLFormElement;
  readonly #fields: F;
  readonly #list = element('ul', { className: 'kept-cans' });
  readonly #said = statusLine();
  readonly #name = element('input', { type: 'text', maxLength: MOST_IN_NAME, autocomplete: 'off' });

  constructor(form: HTMLFormElement, fields: F, place: HTMLElement, signal: AbortSignal) {
    this.#form = form;
    this.#fields = fields;
    const name = element('label', { className: 'fit' }, 'Name of this can', this.#name);
    place.replaceChildren(
      name,
      button('Keep this can', () => this.#keep(), 'quiet'),
      this.#said,
      this.#list,
    );
    // Else Enter would send the form.
    this.#name.addEventListener(
      'keydown',
      (event) => {
        if (event.key !== 'Enter') return;
        event.preventDefault();
        this.#keep();
      },
      { signal },
    );
    // Before the form hears of it: a can is no top coat of its own.
    form.addEventListener('change', (event) => this.#picked(event), { capture: true, signal });
    this.#show();
  }

  get #select(): HTMLSelectElement | undefined {
    const select = this.#form.elements.namedItem('product');
    return select instanceof HTMLSelectElement ? select : undefined;
  }

  #keep(): void {
    const name = this.#name.value.trim();
    const can = canIn(draftIn(this.#form), name, newId());
    if (!name) this.#tell('Give the can a name: its brand and sheen, as you call it.');
    else if (!can) this.#tell('Nothing of the can is filled in yet.');
    else if (!can.product) this.#tell('Choose the top coat first.');
    else if (!keep('cans', { version: 1, cans: [...withCan(keptCans(), can)] }))
      this.#tell('This browser keeps nothing: the can could not be kept.');
    else {
      this.#name.value = '';
      this.#tell(`“${can.name}” is kept: it stands on top of the list of top coats.`);
      this.#show();
    }
  }

  #tell(words: string): void {
    this.#said.textContent = words;
  }

  #picked(event: Event): void {
    const select = this.#select;
    if (!select || event.target !== select || !select.value.startsWith(PICKED)) return;
    event.stopImmediatePropagation();
    const can = keptCans().find(({ id }) => `${PICKED}${id}` === select.value);
    if (can) this.#use(can);
  }

  #use(can: KeptCan): void {
    const filled = asDraft(this.#fields, can, draftIn(this.#form));
    fillForm(this.#form, filled);
    this.#tell(`Filled in from “${can.name}”.`);
    // The form hears that its can was filled in, as if it were typed.
    const [field] = Object.keys(filled).filter((name) => name !== 'product');
    const control = this.#form.elements.namedItem(field ?? '');
    if (control instanceof HTMLElement) control.dispatchEvent(new Event('change', { bubbles: true }));
  }

  #letGo({ id, name }: KeptCan): void {
    keep('cans', { version: 1, cans: keptCans().filter((can) => can.id !== id) });
    this.#tell(`“${name}” is let go.`);
    this.#show();
  }

  /** The kept cans, on top of the top coats and below the fields. */
  #show(): void {
    const cans = keptCans();
    const select = this.#select;
    select?.querySelector('optgroup')?.remove();
    if (select && cans.length) {
      const group = element('optgroup', { label: 'My cans' });
      group.append(...cans.map(({ id, name }) => new Option(name, `${PICKED}${id}`)));
      select.prepend(group);
    }
    this.#list.replaceChildren(
      ...cans.map((can) =>
        element(
          'li',
          {},
          element('b', {}, can.name),
          button('Use it', () => this.#use(can), 'quiet'),
          button('Delete it', () => this.#letGo(can), 'quiet'),
        ),
      ),
    );
  }
}

/** Lets cans be kept and taken in a form that has a place for it. */
export const wireCans = <F extends AnyFields<F>>(
  form: HTMLFormElement,
  fields: F,
  signal: AbortSignal,
): void => {
  const place = partIn(form, 'cans');
  if (place) new OwnCans(form, fields, place, signal);
};
