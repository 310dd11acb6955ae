import type { CardFault } from '#engine/jobs.ts';
import { sayDateTime } from '../../shared/say-date.ts';
import { saveFound } from '../files/export.ts';
import { FaultList } from '../parts/fault-list.tsx';
import { mendCard, type Read, removeCard, setCardAside } from '../store/index.ts';
import { offerBack } from './card-files.tsx';
import { Act, LIST, useLoaded } from './controls.tsx';
import { useFrame } from './frame.ts';

type Unreadable = Extract<Read, { kind: 'unreadable' }>;

/** Of the one card that stands here: no other is meant. */
const unnamed = (faults: readonly CardFault[]): readonly CardFault[] =>
  faults.map((fault) => ({ ...fault, card: '' }));

/** A damaged record: never shown as a card, never written over; mended, set aside or taken away as she says. */
const Damaged = ({ id, read }: { readonly id: string; readonly read: Unreadable }) => {
  const frame = useFrame();
  const salvaged = useLoaded(async () => {
    frame.title('This card could not be read');
    const { salvageCard } = await import('../store/schema.ts');
    const { soundCopy } = await import('../store/whole.ts');
    return { found: salvageCard(read.raw, id, Date.now()), copy: await soundCopy(id) };
  }, id);
  const takeCopy = async () => {
    if (!salvaged?.copy) return;
    await mendCard(salvaged.copy);
    location.reload();
  };
  const mend = async () => {
    if (!salvaged?.found) return;
    await mendCard(salvaged.found.card);
    location.reload();
  };
  const aside = async () => {
    await setCardAside(id);
    location.hash = '';
  };
  const away = async () => {
    const sure = await frame.ask({
      says: 'Delete this card with its photos? Save what is there as a file first, if anything of it may still be wanted.',
      yes: 'Delete it',
      no: 'Keep it',
    });
    if (!sure) return;
    const removed = await removeCard(id);
    location.hash = '';
    if (removed) offerBack(frame.say, removed);
  };
  return (
    <>
      <p>
        What lies here is damaged, so it is not shown: a wrong card is worse than none. It stays as it is
        until you decide.
      </p>
      {read.faults.length > 0 && (
        <details>
          <summary>What is wrong with it</summary>
          <FaultList faults={unnamed(read.faults)} />
        </details>
      )}
      {salvaged?.copy && (
        <section>
          <h2>Its second copy is whole</h2>
          <p>
            {`It is the card as it was on ${sayDateTime(salvaged.copy.changedAt)}. It can take the place of the damaged one, which is set aside as it was found.`}
          </p>
          <Act class="go" act={takeCopy}>
            Take the second copy
          </Act>
        </section>
      )}
      {salvaged?.found && (
        <section>
          <h2>Most of it can be read</h2>
          <p>The card can be mended by leaving this out; the damaged one is set aside, as it was found:</p>
          <FaultList faults={unnamed(salvaged.found.leftOut)} />
          <Act class={salvaged.copy ? 'quiet' : 'go'} act={mend}>
            Mend it so
          </Act>
        </section>
      )}
      <div class="acts">
        <Act act={() => saveFound(id, read.raw)}>Save what is there as a file</Act>
        <Act act={aside}>Set it aside, out of the list</Act>
        <Act class="quiet away" act={away}>
          Delete it…
        </Act>
      </div>
      <p class="small">
        If you have saved this card as a file before: bring it in on the page of{' '}
        <a href={LIST}>all job cards</a>, and the sound card takes the place of this one.
      </p>
    </>
  );
};

/** What stands in place of a card that is not here, or is damaged: never a guess at it. */
export const Missing = ({
  id,
  read,
}: {
  readonly id: string;
  readonly read: Exclude<Read, { kind: 'card' }>;
}) => {
  const frame = useFrame();
  if (read.kind === 'unreadable') return <Damaged id={id} read={read} />;
  frame.title('No such card here');
  return (
    <>
      <p>
        This browser holds no card with this address. It may have been taken away, or made in another browser:
        bring it in from its file.
      </p>
      <p>
        <a href={LIST}>All job cards</a>
      </p>
    </>
  );
};
