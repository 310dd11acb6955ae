import { TELL } from '../../shared/urls.ts';
import { element } from '../shared/element.ts';
import { late, unlessOffline } from '../shared/fetch-json.ts';
import type { FoundPage } from './pages.ts';

const SHOWN = 6;
const loadPages = () => late(() => import('./pages.ts'));
const loadHearing = () => late(() => import('./heard.ts'));
/** So many words are a story whatever is heard in them. */
const STORY = 6;
/** So long the words wait for the ear, milliseconds; then they are searched for. */
const PATIENCE = 2500;
let made = 0;

/** The search box as a combobox: arrows move, Enter opens, Escape closes. Without a choice Enter sends the form. */
export class SearchElement extends HTMLElement {
  #stop = new AbortController();
  #list = document.createElement('ul');
  #found: readonly FoundPage[] = [];
  #at = -1;
  #asked = 0;
  /** What can not wait, where the words tell of it. */
  #call: HTMLElement | undefined;

  connectedCallback() {
    const input = this.querySelector('input');
    if (!input) return;
    this.#stop = new AbortController();
    const { signal } = this.#stop;
    this.#list.id = `hits-${made++}`;
    this.#list.className = 'hits';
    this.#list.hidden = true;
    this.#list.setAttribute('role', 'listbox');
    this.#list.setAttribute('aria-label', 'Pages that fit');
    this.append(this.#list);
    input.setAttribute('role', 'combobox');
    input.setAttribute('aria-autocomplete', 'list');
    input.setAttribute('aria-expanded', 'false');
    input.setAttribute('aria-controls', this.#list.id);
    input.addEventListener(
      'focus',
      () =>
        void unlessOffline(
          Promise.all([
            loadPages().then((pages) => pages.loadIndex()),
            loadHearing().then((hearing) => hearing.loadEar()),
            late(() => import('../shared/warm-up.ts')),
          ]).then(([index, ear, { warmUp }]) => warmUp(ear, index)),
        ),
      { once: true, signal },
    );
    input.addEventListener('input', () => void this.#look(input), { signal });
    input.addEventListener('keydown', (event) => this.#key(event, input), { signal });
    input.form?.addEventListener('submit', (event) => this.#listen(event, input.value.trim()), { signal });
    input.addEventListener('blur', () => this.#close(input), { signal });
    this.addEventListener(
      'focusout',
      ({ relatedTarget }) => {
        if (!(relatedTarget instanceof Node && this.contains(relatedTarget))) this.#calls(undefined);
      },
      { signal },
    );
    // A press on a hit must not take the focus from the box before the click arrives.
    this.#list.addEventListener('pointerdown', (event) => event.preventDefault(), { signal });
    this.#list.addEventListener(
      'click',
      ({ target }) => this.#open(target instanceof Element ? target.closest('li') : null),
      {
        signal,
      },
    );
  }

  disconnectedCallback() {
    this.#stop.abort();
    this.#list.remove();
    this.#calls(undefined);
  }

  async #look(input: HTMLInputElement) {
    const asked = ++this.#asked;
    const words = input.value;
    // Offline before the first search: the form still works, so nothing is said.
    const found =
      (await unlessOffline(loadPages().then((pages) => pages.findPages(words, SHOWN, true)))) ?? [];
    const heard = await unlessOffline(loadHearing().then((hearing) => hearing.hearWords(words)));
    const first = heard?.call && (await unlessOffline(late(() => import('./first-call.ts'))));
    if (asked !== this.#asked) return;
    this.#calls(heard?.call && first?.firstCall(heard.call, heard.places));
    this.#found = this.#call ? [] : found;
    this.#at = -1;
    this.#list.replaceChildren(...this.#found.map((one, index) => this.#option(one, index)));
    this.#show(input, this.#found.length > 0);
  }

  /** In place of the list, so that nothing stands before the number; it is told again only where it changes. */
  #calls(call: HTMLElement | undefined) {
    if (call && this.#call?.textContent === call.textContent) return;
    this.#call?.remove();
    this.#call = call;
    if (!call) return;
    // A press on the number must not take the focus from the box before the click arrives.
    call.addEventListener('pointerdown', (event) => event.preventDefault());
    this.append(call);
  }

  #option({ title }: FoundPage, index: number): HTMLLIElement {
    const option = element('li', { id: `${this.#list.id}-${index}` }, title);
    option.setAttribute('role', 'option');
    option.setAttribute('aria-selected', 'false');
    return option;
  }

  #show(input: HTMLInputElement, open: boolean) {
    this.#list.hidden = !open;
    input.setAttribute('aria-expanded', String(open));
    input.removeAttribute('aria-activedescendant');
  }

  #close(input: HTMLInputElement) {
    this.#asked++;
    this.#show(input, false);
  }

  /** A story goes to the page that listens, by what is heard in it; all else, and without the ear, is searched for. */
  #listen(event: SubmitEvent, words: string) {
    const form = event.target;
    if (!words || !(form instanceof HTMLFormElement)) return;
    event.preventDefault();
    void this.#goalOf(words).then((goal) => (goal ? location.assign(goal) : form.submit()));
  }

  /** The address that answers the words; none where they are to be searched for. */
  async #goalOf(words: string): Promise<string | undefined> {
    const tooLate = new Promise<undefined>((resolve) => setTimeout(resolve, PATIENCE));
    const hearing = unlessOffline(loadHearing().then(({ hearWords }) => hearWords(words)));
    const heard = await Promise.race([hearing, tooLate]);
    if (heard?.which) return heard.which;
    const isStory = heard?.isStory || (!heard?.isSilent && words.split(/\s+/).length >= STORY);
    return isStory ? `${TELL}#${new URLSearchParams({ say: words })}` : undefined;
  }

  #key(event: KeyboardEvent, input: HTMLInputElement) {
    if (event.key === 'Escape' && (this.#call || !this.#list.hidden)) {
      event.preventDefault();
      this.#calls(undefined);
      this.#close(input);
    } else if ((event.key === 'ArrowDown' || event.key === 'ArrowUp') && !this.#list.hidden) {
      event.preventDefault();
      this.#move(input, event.key === 'ArrowDown' ? 1 : -1);
    } else if (event.key === 'Enter' && this.#at >= 0 && !this.#list.hidden) {
      event.preventDefault();
      this.#open(this.#list.children[this.#at]);
    }
  }

  /** Past either end the mark leaves the list, so that the words typed can be sent. */
  #move(input: HTMLInputElement, by: 1 | -1) {
    const places = this.#found.length + 1;
    this.#at = ((this.#at + 1 + by + places) % places) - 1;
    for (const [index, option] of [...this.#list.children].entries())
      option.setAttribute('aria-selected', String(index === this.#at));
    if (this.#at >= 0) input.setAttribute('aria-activedescendant', `${this.#list.id}-${this.#at}`);
    else input.removeAttribute('aria-activedescendant');
  }

  #open(option: Element | null | undefined) {
    const hit = option && this.#found[[...this.#list.children].indexOf(option)];
    if (hit) location.assign(hit.url);
  }
}
