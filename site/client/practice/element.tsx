import { type ComponentType, render } from 'preact';
import { NetworkFault } from '../shared/fetch-json.ts';
import { type Dealer, loadDealer } from './load.ts';

/** An element whose place is filled with a view once the boards can be dealt; until then it holds what works without script. */
export const practiceElement = (View: ComponentType<{ readonly dealer: Dealer }>) =>
  class extends HTMLElement {
    connectedCallback() {
      void this.#open();
    }

    disconnectedCallback() {
      render(null, this);
    }

    async #open() {
      try {
        const dealer = await loadDealer();
        this.replaceChildren();
        render(<View dealer={dealer} />, this);
      } catch (error) {
        if (!(error instanceof NetworkFault)) throw error;
        this.querySelector('.before-script')?.classList.remove('before-script');
        const said = Object.assign(document.createElement('p'), {
          textContent: 'The boards could not be loaded: no signal? Load this page again, or print the sheet.',
        });
        said.setAttribute('role', 'status');
        this.prepend(said);
      }
    }
  };
