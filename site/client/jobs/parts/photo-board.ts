import { withPhoto } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { make } from '../../shared/make.ts';
import { addPhoto, readPhotos, removePhoto } from '../store/index.ts';
import type { CardHands, JobsFrame } from '../views/view.ts';
import { scalePhoto } from './photo.ts';
import { photoList } from './photos.ts';

/** As many as a card may hold. */
const MOST = 60;

/** The photos of a card, and the way to add one. They are on this device only. */
export class PhotoBoard {
  readonly element = make('section', make('h2.tape', 'Photos'));
  readonly #card: JobCard;
  readonly #frame: JobsFrame;
  readonly #hands: CardHands;

  constructor(card: JobCard, frame: JobsFrame, hands: CardHands) {
    this.#card = card;
    this.#frame = frame;
    this.#hands = hands;
    const field = Object.assign(document.createElement('input'), {
      type: 'file',
      accept: 'image/*',
      multiple: true,
      className: 'unseen',
    });
    field.addEventListener('change', () => void this.#add([...(field.files ?? [])]));
    const label = make('label.quiet.file', 'Add photos', field);
    this.element.append(label, make('p.small', 'Scaled down, kept on this device, never sent.'));
    void this.#list();
  }

  async #list(): Promise<void> {
    if (!this.#card.photos.length) return;
    const kept = await readPhotos(this.#card.id).catch(() => []);
    this.element.querySelector('h2')?.after(
      photoList(
        this.#card,
        kept,
        (photo, text) => {
          const { caption: _old, ...bare } = photo;
          void this.#hands.now((card) =>
            withPhoto(card, text ? { ...bare, caption: text } : bare, Date.now()),
          );
        },
        async (photo) => {
          if (!confirm('Take this photo away for good?')) return;
          await this.#hands.run(() => removePhoto(this.#card.id, photo.id));
        },
      ),
    );
  }

  async #add(files: readonly File[]): Promise<void> {
    for (const file of files.slice(0, MOST - this.#card.photos.length)) {
      const now = Date.now();
      try {
        const { entry, photo } = await scalePhoto(file, this.#card.id, now);
        if (!(await this.#hands.run(() => addPhoto(photo, (card) => withPhoto(card, entry, now))))) return;
      } catch {
        this.#frame.say(`“${file.name}” is no picture that this browser can read; it is not on the card.`);
      }
    }
  }
}
