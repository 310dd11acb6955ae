import type { JobCard } from '#engine/model/job-card.ts';
import { type Changed, changeCard } from '../store/index.ts';

type Edit = (card: JobCard) => JobCard;
export type SaverState = 'saved' | 'saving' | 'failed';

/** Time for the next key before a typed field is written. */
const REST = 500;

/**
 * Writes the changes of one card, one after another. A change that could not be written stays in hand and is
 * written with the next; nothing is told as saved before it is on the disk.
 */
export class CardSaver {
  /** The card as it lies in the store, as far as this page knows. */
  #kept: JobCard;
  #waiting: Edit[] = [];
  #timer: ReturnType<typeof setTimeout> | undefined;
  #running: Promise<void> = Promise.resolve();
  readonly #told: (state: SaverState, outcome?: unknown) => void;

  constructor(card: JobCard, told: (state: SaverState, outcome?: unknown) => void) {
    this.#kept = card;
    this.#told = told;
  }

  /** The card with all that is not written yet. */
  get card(): JobCard {
    return this.#waiting.reduce((card, edit) => edit(card), this.#kept);
  }

  get pending(): boolean {
    return this.#waiting.length > 0;
  }

  /** A newer card from another tab. Refused while changes wait: they are put onto it when they are written. */
  take(card: JobCard): boolean {
    if (this.pending) return false;
    this.#kept = card;
    return true;
  }

  /** Changes the card after a rest, for typing. */
  soon(edit: Edit): void {
    this.#waiting.push(edit);
    this.#told('saving');
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.flush(), REST);
  }

  /** Changes the card; resolves when it is written or has failed. */
  now(edit: Edit): Promise<void> {
    this.#waiting.push(edit);
    this.#told('saving');
    return this.flush();
  }

  /** Another way of writing to this card, in its turn. True once it is written. */
  run(work: () => Promise<Changed>): Promise<boolean> {
    const done = this.flush().then(async () => {
      try {
        const outcome = await work();
        if (outcome.kind === 'saved') this.#kept = outcome.card;
        this.#told(outcome.kind === 'saved' ? 'saved' : 'failed', outcome);
        return outcome.kind === 'saved';
      } catch (error) {
        this.#told('failed', error);
        return false;
      }
    });
    this.#running = done.then(() => undefined);
    return done;
  }

  flush(): Promise<void> {
    clearTimeout(this.#timer);
    this.#running = this.#running.then(() => this.#write());
    return this.#running;
  }

  async #write(): Promise<void> {
    const edits = [...this.#waiting];
    if (!edits.length) return;
    try {
      const outcome = await changeCard(this.#kept, (card) => edits.reduce((so, edit) => edit(so), card));
      if (outcome.kind !== 'saved') {
        this.#told('failed', outcome);
        return;
      }
      this.#kept = outcome.card;
      this.#waiting = this.#waiting.slice(edits.length);
      this.#told(this.#waiting.length ? 'saving' : 'saved', outcome);
    } catch (error) {
      this.#told('failed', error);
    }
  }
}
