import { note } from '../shared/note.ts';

/** What to pass on: the verdict first, then what the page is about, then an address that lasts. */
const message = () => {
  const title = document.title.replace(/ · Halfdry$/, '');
  const verdict = document.querySelector('main .verdict')?.textContent.replace(/\s+/g, ' ').trim() ?? '';
  const short = document.querySelector<HTMLLinkElement>('link[rel=shortlink]');
  const text = verdict && !title.startsWith(verdict) ? `${verdict}. ${title}` : title;
  return { text, url: short?.href ?? location.origin + location.pathname };
};

const canShare = (): boolean => typeof navigator.share === 'function';

/** A button that hands the page to the phone's own sharing, or copies it where there is none. */
export class ShareElement extends HTMLElement {
  #button: HTMLButtonElement | undefined;

  connectedCallback() {
    this.#button = document.createElement('button');
    this.#button.type = 'button';
    this.#button.className = 'quiet';
    this.#button.textContent = canShare() ? 'Share' : 'Copy the link';
    this.#button.addEventListener('click', () => void this.#share());
    this.append(this.#button);
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
      note(this, 'Copied.');
    } catch (error) {
      // She closed the sheet: nothing to say.
      if (error instanceof DOMException && error.name === 'AbortError') return;
      note(this, `Not copied. The link is ${url}`);
    }
  }
}
