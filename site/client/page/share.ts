import { button, statusLine } from '../shared/element.ts';
import { printWhole } from './print-whole.ts';

/** What to pass on: the verdict first, then what the page is about, then an address that lasts. */
const message = () => {
  const title = document.title.replace(/ · Halfdry$/, '');
  const verdict =
    document.querySelector('main :is(#stop, #verdict)')?.textContent.replace(/\s+/g, ' ').trim() ?? '';
  const short = document.querySelector<HTMLLinkElement>('link[rel=shortlink]');
  const text = verdict && !title.startsWith(verdict) ? `${verdict}. ${title}` : title;
  return { text, url: short?.href ?? location.origin + location.pathname };
};

const canShare = (): boolean => typeof navigator.share === 'function';

/** A button that hands the page to the phone's own sharing, or copies it where there is none; one that prints, where paper is meant. */
export class ShareElement extends HTMLElement {
  connectedCallback() {
    this.append(button(canShare() ? 'Share' : 'Copy the link', () => void this.#share(), 'quiet'));
    if (this.dataset['print'] !== undefined) this.append(button('Print', () => void printWhole(), 'quiet'));
  }

  disconnectedCallback() {
    this.replaceChildren();
  }

  async #share() {
    const { text, url } = message();
    this.querySelector('p')?.remove();
    try {
      if (canShare()) return await navigator.share({ text, url });
      await navigator.clipboard.writeText(`${text}\n${url}`);
      this.append(statusLine('Copied.', 'small'));
    } catch (error) {
      // She closed the sheet: nothing to say.
      if (error instanceof DOMException && error.name === 'AbortError') return;
      this.append(statusLine(`Not copied. The link is ${url}`, 'small'));
    }
  }
}
