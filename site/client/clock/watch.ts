import { coatKept } from './key.ts';

/** The strip of a running coat, on every page. Without a coat nothing is loaded. */
export class ClockElement extends HTMLElement {
  #stop = new AbortController();

  connectedCallback() {
    this.#stop = new AbortController();
    const { signal } = this.#stop;
    if (coatKept())
      void import('./strip.ts').then(({ runStrip }) => runStrip(this, signal)).catch(() => undefined);
  }

  disconnectedCallback() {
    this.#stop.abort();
    this.replaceChildren();
  }
}
