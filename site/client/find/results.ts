import type { Found } from './pages.ts';

const SHOWN = 12;

/** What fits the words in the address, above the list of all flaws. */
export class ResultsElement extends HTMLElement {
  connectedCallback() {
    const words = new URLSearchParams(location.search).get('q')?.trim() ?? '';
    const input = document.querySelector('input');
    if (input) input.value = words;
    if (words) void this.#answer(words);
  }

  disconnectedCallback() {
    this.replaceChildren();
  }

  async #answer(words: string) {
    const said = document.createElement('p');
    said.setAttribute('role', 'status');
    this.replaceChildren(said);
    try {
      const { findPages } = await import('./pages.ts');
      const found = await findPages(words, SHOWN);
      said.textContent = found.length
        ? `For “${words}”:`
        : `Nothing fits “${words}”. Try what you see: its color, its shape, what it feels like.`;
      if (found.length) this.append(this.#list(found));
    } catch {
      said.textContent = 'The search could not be loaded. All flaws are listed below.';
    }
  }

  #list(found: readonly Found[]): HTMLUListElement {
    const list = document.createElement('ul');
    list.className = 'flags';
    list.append(
      ...found.map(({ title, url }) => {
        const item = document.createElement('li');
        item.append(
          Object.assign(document.createElement('a'), {
            className: 'tape flag',
            href: url,
            textContent: title,
          }),
        );
        return item;
      }),
    );
    return list;
  }
}
