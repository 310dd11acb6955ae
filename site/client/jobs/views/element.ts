import { JOBS, type JobsPlace, readJobsPlace } from '../../../shared/jobs-urls.ts';
import { onJobsTrouble } from '../store/db.ts';
import { CardRefused, JobsFault, TROUBLE_SAYS } from '../store/fault.ts';
import { onOtherTabs } from '../store/tabs.ts';
import { ListView } from './list.ts';
import { type JobsFrame, type JobsView, jobsData, OutOfReach } from './view.ts';

/** What an error is to her: only one of the store says anything of what was saved. */
const sayError = (error: unknown): string => {
  if (error instanceof JobsFault) return error.message;
  if (error instanceof CardRefused) return `Not saved: ${error.message}`;
  if (error instanceof OutOfReach) return error.message;
  reportError(error);
  return 'This page has a fault of its own, so it can not show this. The cards are as they were saved. Load the page again.';
};

const viewOf = async (place: JobsPlace, frame: JobsFrame): Promise<JobsView> => {
  switch (place.kind) {
    case 'list':
      return new ListView(frame);
    case 'new':
      return new (await import('./new.ts')).NewView(frame);
    case 'card':
      return new (await import('./card.ts')).CardView(frame, place.id);
    case 'care':
      return new (await import('./care.ts')).CareView(frame, place.id);
    default:
      return place satisfies never;
  }
};

/** The job cards: a list, one card, or its care card, by what stands in the address behind #. */
export class JobsElement extends HTMLElement {
  #stop = new AbortController();
  #shown: { view: JobsView; stop: AbortController; hash: string } | undefined;

  connectedCallback() {
    this.#stop = new AbortController();
    const { signal } = this.#stop;
    this.hidden = false;
    addEventListener('hashchange', () => void this.#go(), { signal });
    onJobsTrouble((trouble) => (trouble ? this.#trouble(TROUBLE_SAYS[trouble]) : this.#calm()), signal);
    onOtherTabs((ids) => void this.#shown?.view.changed(ids), signal);
    void this.#go();
  }

  disconnectedCallback() {
    this.#stop.abort();
    this.#shown?.stop.abort();
    this.#shown = undefined;
  }

  async #go(): Promise<void> {
    const { hash } = location;
    if (this.#shown?.hash === hash) return;
    const left = (await this.#shown?.view.leave()) ?? true;
    if (!left) {
      history.replaceState(history.state, '', `${JOBS}${this.#shown?.hash ?? ''}`);
      return;
    }
    this.#shown?.stop.abort();
    const stop = new AbortController();
    const place = readJobsPlace(hash);
    document.body.dataset['view'] = place.kind;
    const root = this.querySelector('.view');
    if (!(root instanceof HTMLElement)) return;
    for (const form of this.querySelectorAll<HTMLElement>('.lay-coat, .about')) {
      form.hidden = true;
      this.append(form);
    }
    this.#calm();
    this.#say();
    try {
      const view = await viewOf(place, this.#frame(root, stop.signal));
      const again = this.#shown !== undefined;
      this.#shown = { view, stop, hash };
      await view.show();
      if (again) {
        scrollTo(0, 0);
        const title = document.getElementById('jobs-title');
        title?.setAttribute('tabindex', '-1');
        title?.focus({ preventScroll: true });
      }
    } catch (error) {
      this.#trouble(sayError(error));
    }
  }

  #frame(place: HTMLElement, signal: AbortSignal): JobsFrame {
    return {
      root: this,
      place,
      signal,
      data: jobsData,
      title: (text) => {
        const title = document.getElementById('jobs-title');
        if (title) title.textContent = text;
        document.title = `${text} · Halfdry`;
      },
      say: (...inside) => this.#say(...inside),
      calm: () => this.#calm(),
      trouble: (error, ...more) =>
        this.#trouble(typeof error === 'string' ? error : sayError(error), ...more),
    };
  }

  #say(...inside: readonly (string | Node)[]): void {
    this.querySelector('.told')?.replaceChildren(...inside);
  }

  #trouble(text: string, ...more: readonly (string | Node)[]): void {
    const place = this.querySelector<HTMLElement>('.trouble');
    if (!place) return;
    place.replaceChildren(text, ...more);
    place.hidden = false;
  }

  #calm(): void {
    const place = this.querySelector<HTMLElement>('.trouble');
    if (!place) return;
    place.replaceChildren();
    place.hidden = true;
  }
}
