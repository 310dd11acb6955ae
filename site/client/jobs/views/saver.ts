import type { JobCard } from '#engine/model/job-card.ts';
import { type CardEdit, type Changed, changeCard } from '../store/index.ts';

type Outcome<K extends Changed['kind']> = Extract<Changed, { readonly kind: K }>;
export type SaverEvent =
  | { readonly kind: 'saving' }
  | Outcome<'saved'>
  /** The reader would not take this change, so it is out of hand; all others are kept. */
  | Outcome<'refused' | 'gone' | 'unreadable'>
  | { readonly kind: 'failed'; readonly error: unknown };

/** Time for the next key before a typed field is written. */
const REST = 500;

/**
 * Writes the changes of one card, one after another. A change that could not be written stays in hand and is
 * written with the next; nothing is told as saved before it is on the disk.
 */
export class CardSaver {
  /**
   * The card that the waiting changes were made on: as it lies in the store, but for what other tabs changed after she
   * made them. Such changes come in when nothing waits, so that none is written over that she has not seen.
   */
  #kept: JobCard;
  #waiting: CardEdit[] = [];
  /**
   * The card with all that waits, as it is shown; nothing where that has to be put together anew. An edit notes the time
   * at which it is made, so that each putting together gives another card.
   */
  #shown: JobCard | undefined;
  readonly #written = new WeakSet<CardEdit>();
  #timer: ReturnType<typeof setTimeout> | undefined;
  #running: Promise<void> = Promise.resolve();
  readonly #tell: (event: SaverEvent) => void;

  constructor(card: JobCard, tell: (event: SaverEvent) => void) {
    this.#kept = card;
    this.#tell = tell;
  }

  /** The card with all that is not written yet. */
  get card(): JobCard {
    this.#shown ??= this.#waiting.reduce((card, edit) => edit(card), this.#kept);
    return this.#shown;
  }

  get pending(): boolean {
    return this.#waiting.length > 0;
  }

  /** A newer card from another tab. Refused while changes wait: they are put onto it when they are written. */
  take(card: JobCard): boolean {
    if (this.pending) return false;
    this.#keep(card);
    return true;
  }

  /** Changes the card after a rest, for typing. */
  soon(edit: CardEdit): void {
    this.#wait(edit);
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.flush(), REST);
  }

  /** Changes the card; true once it is written, false where it is refused or could not be. */
  async now(edit: CardEdit): Promise<boolean> {
    this.#wait(edit);
    await this.flush();
    return this.#written.has(edit);
  }

  /** Another way of writing to this card, in its turn. True once it is written. */
  run(work: (seen: JobCard) => Promise<Changed>): Promise<boolean> {
    const done = this.flush().then(async () => {
      try {
        const outcome = await work(this.#kept);
        if (outcome.kind === 'saved' && !(outcome.merged && this.pending)) this.#keep(outcome.card);
        this.#tell(outcome);
        return outcome.kind === 'saved';
      } catch (error) {
        this.#tell({ kind: 'failed', error });
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
      if (!(await this.#put(edits))) for (const edit of edits) await this.#put([edit]);
    } catch (error) {
      this.#tell({ kind: 'failed', error });
    }
  }

  /** False where the reader refuses several changes together. A single one that it refuses is told, and let go. */
  async #put(edits: readonly CardEdit[]): Promise<boolean> {
    const outcome = await changeCard(this.#kept, (card) => edits.reduce((so, edit) => edit(so), card));
    if (outcome.kind === 'refused' && edits.length > 1) return false;
    if (outcome.kind === 'saved' || outcome.kind === 'refused') this.#drop(edits);
    if (outcome.kind === 'saved') {
      const own = edits.reduce((card, edit) => edit(card), this.#kept);
      this.#keep(outcome.merged && this.pending ? own : outcome.card);
      for (const edit of edits) this.#written.add(edit);
    }
    this.#tell(outcome);
    if (outcome.kind === 'saved' && this.pending) this.#tell({ kind: 'saving' });
    return true;
  }

  #drop(edits: readonly CardEdit[]): void {
    this.#waiting = this.#waiting.filter((one) => !edits.includes(one));
    this.#shown = undefined;
  }

  #wait(edit: CardEdit): void {
    this.#shown = edit(this.card);
    this.#waiting.push(edit);
    this.#tell({ kind: 'saving' });
  }

  #keep(card: JobCard): void {
    this.#kept = card;
    this.#shown = undefined;
  }
}
