import { useState } from 'preact/hooks';
import { anotherLike, changed, coatsInOrder, laidCoatOf } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { MINUTE_MS } from '#engine/plain/time.ts';
import { careCardUrl, jobCardUrl } from '../../../shared/jobs-urls.ts';
import { SCHEDULE } from '../../../shared/urls.ts';
import { newId } from '../../shared/id.ts';
import { exportCards } from '../files/export.ts';
import { correctClock } from '../parts/clock.ts';
import type { JobsData } from '../parts/data.ts';
import { handOverDoubt, handOverRefusal } from '../parts/hand-over.ts';
import { addCard, listCards, type Removed, removeCard, restoreCards } from '../store/index.ts';
import { Act } from './controls.tsx';
import { type JobsFrame, useFrame } from './frame.ts';
import type { CardHands } from './hands.ts';

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

type Props = {
  readonly card: JobCard;
  readonly data: JobsData;
  readonly hands: CardHands;
  /** Writes what waits and hands back the card. */
  readonly written: () => Promise<JobCard>;
};

/** What can be done with a whole card, beside laying a coat. */
export const CardActs = ({ card, data, hands, written }: Props) => {
  const frame = useFrame();
  const setHandedOver = (is: boolean) => () =>
    hands.now((there) => changed(there, { handedOverAt: is ? undefined : Date.now() }, Date.now()));
  const handOver = async () => {
    const latest = await written();
    const refusal = handOverRefusal(latest, data, Date.now());
    if (refusal) return setSaid(refusal);
    setSaid('');
    const doubt = handOverDoubt(latest, data, Date.now());
    const says = `${doubt} Was it handed over all the same?`;
    if (doubt && !(await frame.ask({ says, yes: 'Yes, it is with the buyer', no: 'No, not yet' }))) return;
    await setHandedOver(false)();
  };
  /** The clock, too, leads on to no other coat. */
  const finish = (is: boolean) => async () => {
    // A coat laid just now may bear the next full minute: what was said of it is not said before it.
    const said = (there: JobCard) =>
      Math.max(Date.now(), coatsInOrder(there).at(-1)?.laidAt ?? Number.NEGATIVE_INFINITY);
    const noted = await hands.now((there) =>
      changed(there, { finishedAt: is ? undefined : said(there) }, Date.now()),
    );
    if (!noted) return;
    setSaid(is ? '' : 'Noted: the last coat. Its clock leads on to no other.');
    const latest = await written();
    const coat = coatsInOrder(latest).at(-1);
    if (coat) await correctClock(laidCoatOf(latest, coat), data.products);
  };
  /** What is told of a tap stands below the buttons: the head of the card may be far away. */
  const [said, setSaid] = useState('');
  const [withCoats, setWithCoats] = useState(false);
  const another = async () => {
    const latest = await written();
    const { all, first } = await listCards();
    const names = [...first, ...(await all())].flatMap(({ summary }) => summary?.name ?? []);
    const made = anotherLike(latest, { id: newId(), now: Date.now(), coats: withCoats, taken: names });
    await addCard(made);
    location.assign(jobCardUrl(made.id));
  };
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
  const last = coatsInOrder(card).at(-1)?.laidAt;
  const over = card.handedOverAt !== undefined;
  const refusal = over ? undefined : handOverRefusal(card, data, Date.now());
  const early = over ? undefined : (refusal ?? handOverDoubt(card, data, Date.now()));
  const finished = card.finishedAt !== undefined && last !== undefined && card.finishedAt >= last;
  return (
    <div class="card-acts">
      <section>
        <h2>Hand over</h2>
        <div class="acts">
          {last === undefined ? (
            <p class="small">The care card for the buyer comes with the first coat.</p>
          ) : (
            <a class="quiet" href={careCardUrl(card.id)}>
              Care card for the buyer
            </a>
          )}
          {last !== undefined && !over && (
            <Act act={finish(finished)}>
              {finished ? 'One more coat after all' : 'That was the last coat'}
            </Act>
          )}
          {!refusal && (
            <Act act={over ? setHandedOver(true) : handOver}>
              {over ? 'Not handed over after all' : early ? 'The buyer has it already' : 'Handed over today'}
            </Act>
          )}
        </div>
        <p class="told" role="status">
          {said}
        </p>
        {early && (
          <p class="small" data-part="early">
            {early}
          </p>
        )}
      </section>
      <section>
        <h2>Another like this</h2>
        <div class="acts">
          {last !== undefined && (
            <label class="tick">
              <input
                type="checkbox"
                checked={withCoats}
                onChange={({ currentTarget }) => setWithCoats(currentTarget.checked)}
              />{' '}
              with the coats that lie on it, laid at the same times
            </label>
          )}
          <Act mark="another" act={another}>
            Make a card like this one
          </Act>
        </div>
      </section>
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
    </div>
  );
};
