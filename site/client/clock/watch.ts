import { coatMayRun } from './key.ts';

/** The strip of a running coat, on every page. Without a coat nothing is loaded. */
export class ClockElement extends HTMLElement {
  #stop = new AbortController();

  connectedCallback() {
    this.#stop = new AbortController();
    void this.#run(this.#stop.signal);
  }

  async #run(signal: AbortSignal): Promise<void> {
    if (!(await coatMayRun())) return;
    const { runStrip } = await import('./strip.tsx');
    runStrip(this, signal);
  }

  disconnectedCallback() {
    this.#stop.abort();
    this.replaceChildren();
  }
}
