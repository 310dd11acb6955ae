import type { JobCard } from '#engine/model/job-card.ts';
import type { JobsData } from '../../../shared/jobs-data.ts';
import { JOBS_DATA } from '../../../shared/jobs-urls.ts';
import type { Changed } from '../store/index.ts';

/** What each view of the job cards is given. */
export type JobsFrame = {
  readonly root: HTMLElement;
  readonly place: HTMLElement;
  readonly title: (text: string) => void;
  /** Read out, and shown until the next. */
  readonly say: (...inside: readonly (string | Node)[]) => void;
  /** Stays until it is over. */
  readonly trouble: (error: unknown, ...more: readonly (string | Node)[]) => void;
  readonly calm: () => void;
  readonly data: () => Promise<JobsData>;
  readonly signal: AbortSignal;
};

/** How the parts of a card write to it; each is true once it is written. */
export type CardHands = {
  readonly now: (by: (card: JobCard) => JobCard) => Promise<boolean>;
  readonly run: (work: () => Promise<Changed>) => Promise<boolean>;
};

export type JobsView = {
  readonly show: () => Promise<void>;
  /** Another tab has changed these cards. */
  readonly changed: (ids: readonly string[]) => Promise<void>;
  /** Before another view takes its place; false where something is not written yet. */
  readonly leave: () => Promise<boolean>;
};

/** What the page needs beside the cards did not come over the network. */
export class OutOfReach extends Error {
  constructor(cause?: unknown) {
    super(
      'The names and figures that belong to the cards could not be loaded: no signal? The cards are safe on this device. Try again when there is one.',
      { cause },
    );
  }
}

let data: Promise<JobsData> | undefined;
/** The names and figures, fetched once; a failed fetch is tried again at the next call. */
export const jobsData = (): Promise<JobsData> => {
  data ??= fetch(JOBS_DATA).then(
    (answer) => {
      if (!answer.ok) throw new OutOfReach(answer.status);
      return answer.json() as Promise<JobsData>;
    },
    (error) => {
      throw new OutOfReach(error);
    },
  );
  data.catch(() => {
    data = undefined;
  });
  return data;
};

/** A button that does one thing. */
export const button = (
  words: string,
  act: () => void | Promise<void>,
  className = 'quiet',
): HTMLButtonElement => {
  const element = Object.assign(document.createElement('button'), {
    type: 'button' as const,
    className,
    textContent: words,
  });
  element.addEventListener('click', () => void act());
  return element;
};

export const link = (words: string, href: string, className = ''): HTMLAnchorElement =>
  Object.assign(document.createElement('a'), { textContent: words, href, className });
