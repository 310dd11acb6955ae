import { render } from 'preact';
import { NetworkFault } from '../shared/fetch-json.ts';
import { loadListening } from './listen.ts';
import { TellPage } from './page.tsx';

/** The page that listens; without script its place says where to search and to be walked through it. */
export class TellElement extends HTMLElement {
  connectedCallback() {
    void this.#open();
  }

  disconnectedCallback() {
    render(null, this);
  }

  async #open() {
    try {
      const listening = await loadListening();
      this.replaceChildren();
      render(<TellPage listening={listening} />, this);
    } catch (error) {
      if (!(error instanceof NetworkFault)) throw error;
      const said = Object.assign(document.createElement('p'), {
        textContent:
          'What it needs to listen could not be loaded: no signal? Load this page again, or search.',
      });
      said.setAttribute('role', 'status');
      this.prepend(said);
    }
  }
}
