import { useState } from 'preact/hooks';
import { changed, coatsInOrder, laidCoatOf } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { careCardUrl } from '../../../shared/jobs-urls.ts';
import { correctClock } from '../parts/clock.ts';
import { handOverDoubt, handOverRefusal } from '../parts/hand-over.ts';
import { Act } from './controls.tsx';
import { useFrame } from './frame.ts';
import type { CardActsProps } from './hands.ts';

/** The last coat, the care card, and the day it goes to the buyer. */
export const HandOver = ({ card, data, hands, written }: CardActsProps) => {
  /** What is told of a tap stands below the buttons: the head of the card may be far away. */
  const [said, setSaid] = useState('');
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
    const saidAt = (there: JobCard) =>
      Math.max(Date.now(), coatsInOrder(there).at(-1)?.laidAt ?? Number.NEGATIVE_INFINITY);
    const noted = await hands.now((there) =>
      changed(there, { finishedAt: is ? undefined : saidAt(there) }, Date.now()),
    );
    if (!noted) return;
    setSaid(is ? '' : 'Noted: the last coat. Its clock leads on to no other.');
    const latest = await written();
    const coat = coatsInOrder(latest).at(-1);
    if (coat) await correctClock(laidCoatOf(latest, coat), data.products);
  };
  const last = coatsInOrder(card).at(-1)?.laidAt;
  const over = card.handedOverAt !== undefined;
  const refusal = over ? undefined : handOverRefusal(card, data, Date.now());
  const early = over ? undefined : (refusal ?? handOverDoubt(card, data, Date.now()));
  const finished = card.finishedAt !== undefined && last !== undefined && card.finishedAt >= last;
  return (
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
          <Act act={finish(finished)}>{finished ? 'One more coat after all' : 'That was the last coat'}</Act>
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
  );
};
