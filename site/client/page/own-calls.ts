import { CALL_WORDS } from '../../shared/calls.ts';
import { dialedIn } from '../../shared/dialed.ts';
import { button, element } from '../shared/element.ts';
import { placeHere } from '../shared/place-here.ts';

const words = (text: string | undefined): readonly string[] => text?.split(' ') ?? [];

/** Whom to call: the numbers of where she seems to be, with all others a tap away. Where that is not known, all stand. */
class CallsElement extends HTMLElement {
  connectedCallback() {
    const rows = [...this.querySelectorAll<HTMLElement>('li[data-regions]')];
    const own = placeHere(
      rows.map((row) => ({
        row,
        regions: words(row.dataset['regions']),
      })),
    )?.row;
    if (!own) return;
    rows[0]?.before(own);
    own.dataset['own'] = '';
    this.dataset['one'] = '';
    const others = button(
      CALL_WORDS.others,
      () => {
        delete this.dataset['one'];
        others.remove();
        rows
          .find((row) => row !== own)
          ?.querySelector('a')
          ?.focus();
      },
      'quiet',
    );
    this.append(others);
    this.#beside(own);
  }

  /** Wherever else on the page a number of the US stands. */
  #beside(own: HTMLElement): void {
    const { emergency, poison } = own.dataset;
    if (!emergency) return;
    const place = { emergency, ...(poison && { poison: { number: poison } }) };
    const links = [...document.querySelectorAll('main a[href^="tel:"]')];
    for (const link of links.filter((one) => !this.contains(one)))
      link.replaceWith(
        ...dialedIn(link.textContent ?? '', place).map(({ text, tel }) =>
          tel ? element('a', { href: tel }, text) : text,
        ),
      );
  }
}

customElements.define('hd-calls', CallsElement);
