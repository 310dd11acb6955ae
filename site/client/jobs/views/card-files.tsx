import { MINUTE_MS } from '#engine/plain/time.ts';
import { jobCardUrl } from '../../../shared/jobs-urls.ts';
import { SCHEDULE } from '../../../shared/urls.ts';
import { exportCards } from '../files/export.ts';
import { type Removed, removeCard, restoreCards } from '../store/index.ts';
import { Act } from './controls.tsx';
import { type JobsFrame, useFrame } from './frame.ts';
import type { CardActsProps } from './hands.ts';

/** How long a card that was taken away can be put back with one tap. */
const OFFERED = MINUTE_MS;

/** Offers to put a card back that was taken away, once the list has said its own things. */
export const offerBack = (say: JobsFrame['say'], removed: Removed): void => {
  const back = async () => {
    await restoreCards([removed]);
    location.assign(jobCardUrl(removed.id));
  };
  const offer = (still: boolean) =>
    say(
      <span data-mark="taken-away">
        {`“${removed.name}” is taken away. `}
        {still && <Act act={back}>Put it back</Act>}
      </span>,
    );
  setTimeout(() => offer(true), 0);
  setTimeout(() => {
    if (document.querySelector('[data-mark=taken-away]')) offer(false);
  }, OFFERED);
};

/** The card on paper and in files, and its end. */
export const CardFiles = ({ card, written }: Pick<CardActsProps, 'card' | 'written'>) => {
  const frame = useFrame();
  const save = (photos: boolean) => async () => exportCards([await written()], photos);
  const takeAway = async () => {
    const sure = await frame.ask({
      says: `Delete the card “${card.name}” with its photos?`,
      yes: 'Delete it',
      no: 'Keep it',
    });
    if (!sure) return;
    const { id } = await written();
    const removed = await removeCard(id);
    location.hash = '';
    if (removed) offerBack(frame.say, removed);
  };
  return (
    <details class="files">
      <summary>Paper and files</summary>
      <div class="acts">
        {card.plan && (
          <a class="quiet" href={`${SCHEDULE}#${card.plan}`}>
            The plan of this piece
          </a>
        )}
        <Act act={() => print()}>Print this card</Act>
        <Act act={save(true)}>Save as a file, with photos</Act>
        <Act act={save(false)}>Save as a file, without photos</Act>
        <Act class="quiet away" act={takeAway}>
          Delete this card…
        </Act>
      </div>
    </details>
  );
};
