import { type ComponentChildren, type ComponentType, render } from 'preact';
import { JOBS, type JobsAddress, readJobsAddress } from '../../../shared/jobs-urls.ts';
import { partIn } from '../../shared/element.ts';
import { NetworkFault } from '../../shared/fetch-json.ts';
import { onJobsTrouble } from '../store/db.ts';
import { CardRefused, JobsFault, TROUBLE_SAYS } from '../store/fault.ts';
import { onOtherTabs } from '../store/tabs.ts';
import { askIn } from './ask.tsx';
import { FrameProvider, type JobsFrame } from './frame.ts';
import { ListView } from './list.tsx';

const viewOf = async (address: JobsAddress): Promise<ComponentType<{ id: string }>> => {
  switch (address.kind) {
    case 'list':
      return ListView;
    case 'new':
      return (await import('./new.tsx')).NewView;
    case 'card':
      return (await import('./card.tsx')).CardView;
    case 'care':
      return (await import('./care.tsx')).CareView;
    default:
      return address satisfies never;
  }
};

/** What an error is to her. Only one of the store says anything of what was saved; a bug is told as one, and reported. */
const sayError = (error: unknown): string => {
  if (typeof error === 'string') return error;
  if (error instanceof JobsFault || error instanceof CardRefused) return error.message;
  if (error instanceof NetworkFault)
    return 'The names and figures that belong to the cards could not be loaded: no signal? The cards are safe on this device. Load the page again when there is one.';
  reportError(error);
  return 'This page has a fault of its own and cannot show this. The cards are as they were saved. Load the page again.';
};

type ShownView = { readonly hash: string; readonly stop: AbortController; mayLeave: () => Promise<boolean> };

/** So long a message stays in sight of whoever is far down a card. */
const AFAR_MS = 20_000;

const toTitle = (): void => {
  const title = document.getElementById('jobs-title');
  title?.setAttribute('tabindex', '-1');
  title?.focus({ preventScroll: true });
};

/** The job cards: a list, one card, or its care card, by what stands in the address behind #. */
export class JobsElement extends HTMLElement {
  #stop = new AbortController();
  #shown: ShownView | undefined;
  #afar: ReturnType<typeof setTimeout> | undefined;

  connectedCallback() {
    this.#stop = new AbortController();
    const { signal } = this.#stop;
    this.hidden = false;
    addEventListener('hashchange', () => void this.#go(), { signal });
    onJobsTrouble((trouble) => (trouble ? this.#trouble(TROUBLE_SAYS[trouble]) : this.#calm()), signal);
    void this.#go();
  }

  disconnectedCallback() {
    this.#stop.abort();
    this.#shown?.stop.abort();
    this.#shown = undefined;
    const view = partIn(this, 'view');
    if (view) render(null, view);
  }

  async #go(): Promise<void> {
    const { hash } = location;
    const before = this.#shown;
    if (before?.hash === hash) return;
    if (before && !(await before.mayLeave())) {
      history.replaceState(history.state, '', `${JOBS}${before.hash}`);
      return;
    }
    before?.stop.abort();
    const address = readJobsAddress(hash);
    const view = partIn(this, 'view');
    if (!view) return;
    const shown: ShownView = { hash, stop: new AbortController(), mayLeave: async () => true };
    this.#shown = shown;
    document.body.dataset['view'] = address.kind;
    this.#calm();
    this.#say();
    try {
      const View = await viewOf(address);
      if (this.#shown !== shown) return;
      render(
        <FrameProvider key={hash} value={this.#frame(shown, before !== undefined)}>
          <View id={'id' in address ? address.id : ''} />
        </FrameProvider>,
        view,
      );
    } catch (error) {
      this.#trouble(sayError(error));
    }
  }

  #frame(shown: ShownView, again: boolean): JobsFrame {
    const { signal } = shown.stop;
    return {
      host: this,
      signal,
      title: (text) => {
        const title = document.getElementById('jobs-title');
        if (title) title.textContent = text;
        document.title = `${text} · Halfdry`;
      },
      say: (words) => this.#say(words),
      calm: () => this.#calm(),
      trouble: (error, more) => this.#trouble(sayError(error), more),
      ask: (question) => askIn(this, question),
      shown: () => {
        if (!again) return;
        scrollTo(0, 0);
        toTitle();
      },
      toTitle,
      onOthers: (changed) => onOtherTabs(changed, signal),
      beforeLeaving: (may) => {
        shown.mayLeave = may;
      },
    };
  }

  /** Written anew each time, so that it is read out each time. */
  #say(words?: ComponentChildren): void {
    const line = partIn(this, 'said');
    if (!line) return;
    render(null, line);
    line.replaceChildren();
    const frame = this.#shown && this.#frame(this.#shown, false);
    line.classList.remove('afar');
    clearTimeout(this.#afar);
    if (words === undefined) return;
    render(<FrameProvider value={frame}>{words}</FrameProvider>, line);
    // Where its place is off the screen it comes along for a while, at the head of what is seen.
    if (line.getBoundingClientRect().bottom > 0) return;
    line.classList.add('afar');
    this.#afar = setTimeout(() => line.classList.remove('afar'), AFAR_MS);
  }

  #trouble(text: string, more?: ComponentChildren): void {
    const line = partIn(this, 'trouble');
    if (!line) return;
    const frame = this.#shown && this.#frame(this.#shown, false);
    render(
      <FrameProvider value={frame}>
        {text}
        {more !== undefined && ' '}
        {more}
      </FrameProvider>,
      line,
    );
    line.hidden = false;
  }

  #calm(): void {
    const line = partIn(this, 'trouble');
    if (!line) return;
    render(null, line);
    line.hidden = true;
  }
}
