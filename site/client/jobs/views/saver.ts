import type { JobCard } from '#engine/model/job-card.ts';
import { type Changed, changeCard } from '../store/index.ts';

type Edit = (card: JobCard) => JobCard;
/** `refused`: the reader would not take this change, so it is out of hand; all others are kept. */
export type SaverState = 'saved' | 'saving' | 'failed' | 'refused';

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
      // One that is refused must not take the others with it.
      if (!(await this.#put(edits)))
        for (const edit of edits) if (!(await this.#put([edit]))) this.#drop(edit);
    } catch (error) {
      this.#told('failed', error);
    }
  }

  #drop(edit: Edit): void {
    this.#waiting = this.#waiting.filter((one) => one !== edit);
  }

  /** False where the reader refuses the card as it would become; of a single change that is told. */
  async #put(edits: readonly Edit[]): Promise<boolean> {
    if (edits.some((edit) => !this.#waiting.includes(edit))) return true;
    const outcome = await changeCard(this.#kept, (card) => edits.reduce((so, edit) => edit(so), card));
    if (outcome.kind === 'refused') {
      if (edits.length === 1) this.#told('refused', outcome);
      return false;
    }
    if (outcome.kind !== 'saved') {
      this.#told('failed', outcome);
      return true;
    }
    this.#kept = outcome.card;
    for (const edit of edits) this.#drop(edit);
    this.#told(this.pending ? 'saving' : 'saved', outcome);
    return true;
  }
}
