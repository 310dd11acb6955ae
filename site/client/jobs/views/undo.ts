import { cardUrl } from '../../../shared/jobs-urls.ts';
import { type Removed, restoreCards } from '../store/index.ts';
import { button, type JobsFrame } from './view.ts';

/** How long a card that was taken away can be put back with one tap. */
const OFFERED = 60_000;

/** Keeps a removed card in this page for a while, to put it back. */
export const offerUndo = (frame: JobsFrame, removed: Removed): void => {
  const back = button('Put it back', async () => {
    try {
      await restoreCards([removed]);
      location.assign(cardUrl(removed.id));
    } catch (error) {
      frame.trouble(error);
    }
  });
  const offer = () => frame.say(`“${removed.name}” is taken away. `, back);
  // The list says its own things first.
  setTimeout(offer, 0);
  setTimeout(() => back.remove(), OFFERED);
};
