import { type Case, withFact, without } from '#engine/index.ts';
import { TOLD, type ToldFact } from '../../shared/told.ts';
import { TOLD_EVENT } from '../case/facts-changed.ts';
import { keepCase, readCase } from '../case/store.ts';
import { note } from '../shared/note.ts';

const make = <K extends keyof HTMLElementTagNameMap>(name: K, words = ''): HTMLElementTagNameMap[K] =>
  Object.assign(document.createElement(name), { textContent: words });

const tell = (host: Element, fact: ToldFact, value: string): void => {
  const on = value ? withFact(readCase(), fact, value as never) : without(readCase(), fact);
  if (!keepCase(on)) note(host, 'This browser keeps no notes, so this can not be remembered.');
  document.dispatchEvent(new Event(TOLD_EVENT));
};

const given = (on: Case, fact: ToldFact): string => {
  const value = on[fact]?.value;
  return typeof value === 'string' && value in TOLD[fact].values ? value : '';
};

/** One fact as a row of strips, where a caution hangs on it. */
const asStrips = (host: Element, fact: ToldFact): HTMLElement => {
  const group = make('fieldset');
  group.append(make('legend', TOLD[fact].ask));
  for (const [value, words] of Object.entries(TOLD[fact].values)) {
    const button = Object.assign(make('button', words), { type: 'button' });
    button.setAttribute('aria-pressed', String(given(readCase(), fact) === value));
    button.addEventListener('click', () => tell(host, fact, value));
    group.append(button);
  }
  return group;
};

/** One fact as a list to choose from. */
const asList = (host: Element, fact: ToldFact): HTMLElement => {
  const label = make('label', TOLD[fact].ask);
  const list = make('select');
  const choices = [['', 'Not told'], ...Object.entries(TOLD[fact].values)] as const;
  for (const [value, words] of choices) list.append(new Option(words, value));
  list.value = given(readCase(), fact);
  list.addEventListener('change', () => tell(host, fact, list.value));
  label.append(list);
  return label;
};

const MANY = 4;

/** Told once: what is known of the piece beside the answers. Without script nothing stands here. */
class ToldElement extends HTMLElement {
  #stop = new AbortController();

  connectedCallback() {
    this.#stop = new AbortController();
    const fact = this.dataset['fact'] as ToldFact | undefined;
    if (fact && !(fact in TOLD)) return;
    if (fact) this.#askOne(fact);
    else this.#askAll();
  }

  #askOne(fact: ToldFact) {
    const chips = this.dataset['chips'] !== undefined;
    // Told before this visit, it is not asked again; the list beside the page changes it.
    if (chips && given(readCase(), fact)) return;
    const ask = !chips && Object.keys(TOLD[fact].values).length > MANY ? asList : asStrips;
    const show = () => {
      const at = [...this.querySelectorAll('button')].indexOf(document.activeElement as HTMLButtonElement);
      this.replaceChildren(ask(this, fact));
      this.querySelectorAll('button')[at]?.focus();
    };
    show();
    document.addEventListener(TOLD_EVENT, show, { signal: this.#stop.signal });
  }

  #askAll() {
    const details = make('details');
    const facts = Object.keys(TOLD) as ToldFact[];
    const summary = make('summary');
    const count = () => {
      const told = facts.filter((one) => given(readCase(), one)).length;
      summary.textContent = told ? `Your piece: ${told} details` : 'Add details of your piece';
    };
    count();
    details.append(summary, ...facts.map((one) => asList(this, one)));
    this.replaceChildren(details);
    if (document.documentElement.dataset['fit'] !== undefined) void this.#fit();
    document.addEventListener(
      TOLD_EVENT,
      () => {
        count();
        void this.#fit();
        for (const [index, one] of facts.entries()) {
          const list = details.querySelectorAll('select')[index];
          if (list) list.value = given(readCase(), one);
        }
      },
      { signal: this.#stop.signal },
    );
  }

  /** The page waits for this (see told.css). Where the rules can not be had it stands as it was built, for unknown facts. */
  async #fit() {
    if (document.querySelector('#verdict, .procedure[data-remedy]'))
      await import('./advice.ts').then(({ fitAdvice }) => fitAdvice()).catch(() => undefined);
    delete document.documentElement.dataset['fit'];
  }

  disconnectedCallback() {
    this.#stop.abort();
    this.replaceChildren();
  }
}

customElements.define('hd-told', ToldElement);
