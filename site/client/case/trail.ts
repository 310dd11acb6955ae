import { without } from '#engine/index.ts';
import { HOME, howDryUrl, seeUrl } from '../../shared/urls.ts';
import { cameFromHere } from '../shared/came-from-here.ts';
import { button, partIn } from '../shared/element.ts';
import { lookUp } from '../shared/storage.ts';
import { dropCardInHand } from './card-in-hand.ts';
import { forgetCase, keepCase, readCase } from './store.ts';

/** The line of tape with the answers so far: a tap takes one back, a button starts a new case. */
export class TrailElement extends HTMLElement {
  #stop = new AbortController();
  #fresh: HTMLButtonElement | undefined;

  connectedCallback() {
    this.#stop = new AbortController();
    this.addEventListener('click', this.#change, { signal: this.#stop.signal });
    if (this.#ofSomebodyElse()) {
      // One text takes the place of the other whole, so that none moves.
      const whose = partIn(this, 'whose');
      whose?.replaceChildren(whose.textContent.replace(/^So far/, 'From the link'));
      this.#offer('Start your own', () => location.assign(this.#beginning));
      return;
    }
    if (Object.keys(readCase()).length) this.#offer('Start a new case: forget these answers', this.#forget);
  }

  #offer(words: string, act: () => void) {
    this.#fresh = button(words, act);
    this.querySelector('nav')?.append(this.#fresh);
  }

  disconnectedCallback() {
    this.#stop.abort();
    this.#fresh?.remove();
  }

  /** Whether the answers of the address came with a link: none of them was given here. */
  #ofSomebodyElse(): boolean {
    const asked = [...this.querySelectorAll<HTMLElement>('[data-ask]')].map(({ dataset }) => dataset['ask']);
    const on = readCase();
    return (
      asked.length > 0 &&
      lookUp('case').kind !== 'denied' &&
      !cameFromHere() &&
      !asked.some((ask) => ask && on[ask])
    );
  }

  /** Where the questions of this walk begin. */
  get #beginning(): string {
    const { defect } = this.dataset;
    return defect ? howDryUrl(defect) : seeUrl([]);
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
