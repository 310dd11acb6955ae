import { element, statusLine } from '../shared/element.ts';

/** A field above a long list: what does not hold all words typed is hidden, and how many are left is told. */
class SiftElement extends HTMLElement {
  #said = statusLine();

  connectedCallback() {
    const input = element('input', { type: 'search', autocomplete: 'off' });
    input.addEventListener('input', () => this.#sift(input.value));
    this.append(
      element(
        'label',
        {},
        this.dataset['label'] ?? 'Find in this list',
        element('span', { className: 'field' }, input),
      ),
      this.#said,
    );
  }

  disconnectedCallback() {
    this.#sift('');
    this.replaceChildren();
  }

  #sift(typed: string) {
    const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
    const rows = [...(this.nextElementSibling?.children ?? [])].filter((row) => row instanceof HTMLElement);
    for (const row of rows) {
      const text = row.textContent.toLowerCase();
      row.hidden = !words.every((word) => text.includes(word));
    }
    const left = rows.filter(({ hidden }) => !hidden).length;
    this.#said.textContent = words.length
      ? left
        ? `${left} of ${rows.length}`
        : 'None has these words.'
      : '';
  }
}

customElements.define('hd-sift', SiftElement);
