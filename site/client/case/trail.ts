import { without } from '#engine/index.ts';
import { HOME } from '../../shared/urls.ts';
import { button } from '../shared/element.ts';
import { dropCardInHand } from './card-in-hand.ts';
import { forgetCase, keepCase, readCase } from './store.ts';

/** The line of tape with the answers so far: a tap takes one back, a button starts a new case. */
export class TrailElement extends HTMLElement {
  #stop = new AbortController();
  #fresh: HTMLButtonElement | undefined;

  connectedCallback() {
    this.#stop = new AbortController();
    this.addEventListener('click', this.#change, { signal: this.#stop.signal });
    if (!Object.keys(readCase()).length) return;
    this.#fresh = button('Start a new case: forget these answers', this.#forget);
    this.querySelector('nav')?.append(this.#fresh);
  }

  disconnectedCallback() {
    this.#stop.abort();
    this.#fresh?.remove();
  }

  #change = ({ target }: Event) => {
    const question = target instanceof Element && target.closest<HTMLElement>('[data-ask]')?.dataset['ask'];
    if (question) keepCase(without(readCase(), question));
  };

  #forget = () => {
    forgetCase();
    dropCardInHand();
    location.assign(HOME);
  };
}
