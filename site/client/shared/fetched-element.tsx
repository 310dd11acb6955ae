import { type ComponentChild, render } from 'preact';
import { partIn, statusLine } from './element.ts';
import { NetworkFault } from './fetch-json.ts';

/**
 * An element whose place is filled with a view once what it needs is there; until then, and without a signal, it holds
 * what works without script. `sorry` is said where the signal is missing; any other fault is a bug, and thrown.
 */
export const fetchedElement = <T,>(
  load: () => Promise<T>,
  view: (fetched: T) => ComponentChild,
  sorry: string,
) =>
  class extends HTMLElement {
    connectedCallback() {
      void this.#open();
    }

    disconnectedCallback() {
      render(null, this);
    }

    async #open() {
      try {
        const fetched = await load();
        this.replaceChildren();
        render(view(fetched), this);
      } catch (error) {
        if (!(error instanceof NetworkFault)) throw error;
        partIn(this, 'before-script')?.classList.remove('before-script');
        this.prepend(statusLine(sorry));
      }
    }
  };
