import { BASE } from '../../shared/urls.ts';
import { button, statusLine } from '../shared/element.ts';

const WORKER = `${BASE}sw.js`;

/** The page's policy lets no script in by address but this one. Older browsers know no such rule. */
const trusted = (): string => {
  const rules: ScriptUrlRules = {
    createScriptURL: (url) => {
      if (url !== WORKER) throw new TypeError(`${url} is not the worker`);
      return url;
    },
  };
  return window.trustedTypes?.createPolicy('sw', rules).createScriptURL(WORKER) ?? WORKER;
};

/** Keeps the whole site on the device, says how far it is, and offers newer knowledge without ever forcing it. */
export class OfflineElement extends HTMLElement {
  #said = statusLine('', 'small');
  #stop = new AbortController();

  connectedCallback() {
    if (!('serviceWorker' in navigator) || !import.meta.env.PROD) return;
    this.#stop = new AbortController();
    this.append(this.#said);
    const start = () => void this.#register().catch(() => this.#failed());
    // The page that she came for has the line to itself.
    if (document.readyState === 'complete') start();
    else addEventListener('load', start, { signal: this.#stop.signal });
  }

  disconnectedCallback() {
    this.#stop.abort();
    this.replaceChildren();
  }

  async #register() {
    const { serviceWorker } = navigator;
    const { signal } = this.#stop;
    const had = serviceWorker.controller !== null;
    serviceWorker.addEventListener('message', ({ data }) => this.#progress(data), { signal });
    // A worker taking over changes the version under every open page, so each is read anew. The first one does not.
    serviceWorker.addEventListener('controllerchange', () => had && location.reload(), { signal });
    serviceWorker.startMessages();
    const registration = await serviceWorker.register(trusted(), { scope: BASE, updateViaCache: 'none' });
    if (!registration) return;
    this.#say(registration.active ? '' : 'Saving everything to this device…');
    this.#watch(registration);
    registration.addEventListener('updatefound', () => this.#watch(registration), { signal });
    const { active } = await serviceWorker.ready;
    active?.postMessage('fill');
  }

  #watch(registration: ServiceWorkerRegistration) {
    if (registration.waiting && registration.active) this.#offer(registration.waiting);
    const { installing } = registration;
    installing?.addEventListener(
      'statechange',
      () => {
        if (installing.state === 'installed' && registration.active) this.#offer(installing);
        if (installing.state === 'redundant' && !registration.active) this.#failed();
      },
      { signal: this.#stop.signal },
    );
  }

  #say(text: string) {
    this.#said.textContent = text;
  }

  #failed() {
    this.#say('Not saved on this device yet: this page needs a network.');
  }

  #progress(data: unknown) {
    const saved: unknown = typeof data === 'object' && data && 'saved' in data ? data.saved : undefined;
    if (saved === 1) this.#say('Everything is on this device.');
    else if (typeof saved === 'number')
      this.#say(`All words are on this device. Saving the pictures: ${Math.floor(saved * 100)}\u00a0%`);
    else if (saved === 'failed') this.#say('All words are on this device; some pictures are still missing.');
  }

  #offer(waiting: ServiceWorker) {
    if (this.querySelector('button')) return;
    this.append(button('New knowledge is here. Show it', () => waiting.postMessage('take over'), 'quiet'));
  }
}
