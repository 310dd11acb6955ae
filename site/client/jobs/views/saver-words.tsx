import { tellFaults } from '../../shared/form/in-page.ts';
import { sayTime } from '../../shared/say-date.ts';
import { exportCards } from '../files/export.ts';
import { refusedFields } from '../parts/piece-form.ts';
import { CardRefused, JobsFault } from '../store/fault.ts';
import { Act } from './controls.tsx';
import type { JobsFrame } from './frame.ts';
import type { CardSaver, SaverEvent } from './saver.ts';

const GONE =
  'This card is not in the store any more: it was taken away in another tab, or the browser cleared its storage. What you see here can be saved as a file and brought in again.';
const DAMAGED =
  'What lies in the store for this card could not be read any more, so nothing was written over it.';
const MERGED =
  'Another tab had changed this card meanwhile. What you see now is the newer card, with your change in it.';
const CLASHED =
  'Another tab had changed the same thing meanwhile. What you see now is the newer card; both versions are kept below until you choose.';

/** Shows what the saver tells, where it belongs; gives the line on how far the card is saved. */
export const tellSaver = (
  event: SaverEvent,
  frame: JobsFrame,
  saver: CardSaver,
  about: HTMLFormElement,
): string => {
  const rescue = <Act act={() => exportCards([saver.card], false)}>Save this card as a file</Act>;
  switch (event.kind) {
    case 'saving':
      return 'Saving…';
    case 'saved':
      frame.calm();
      if (event.merged) frame.say(event.clashes.length ? CLASHED : MERGED);
      return `Saved ${sayTime(Date.now())}`;
    case 'refused':
      frame.trouble(new CardRefused(event.refusals));
      tellFaults(about, 'plan', refusedFields(event.refusals));
      return 'Not saved.';
    case 'gone':
    case 'unreadable':
      frame.trouble(event.kind === 'gone' ? GONE : DAMAGED, rescue);
      return 'Not saved yet.';
    case 'failed':
      frame.trouble(
        event.error,
        <>
          {rescue} {event.error instanceof JobsFault && <Act act={() => saver.flush()}>Try again</Act>}
        </>,
      );
      return 'Not saved yet.';
    default:
      return event satisfies never;
  }
};
