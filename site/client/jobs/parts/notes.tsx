import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { changed, MOST_LETTERS } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import type { CardHands } from '../views/hands.ts';

const MOST = MOST_LETTERS.notes;
/** From here on the end is told before it is reached. */
const NEAR = MOST - 400;

/** The notes of a card, saved while she types. Text beyond what a card holds stays in the field, and is said not to be saved. */
export const Notes = ({ card, hands }: { readonly card: JobCard; readonly hands: CardHands }) => {
  const field = useRef<HTMLTextAreaElement>(null);
  const [length, setLength] = useState(card.notes.length);
  useLayoutEffect(() => {
    const { current } = field;
    // What she types is pending from the first key on, so that what is not pending is the card's.
    if (!current || hands.pending() || current.value === card.notes) return;
    if (current.value.length > MOST && document.activeElement === current) return;
    current.value = card.notes;
    setLength(card.notes.length);
  }, [card.notes, hands.pending()]);
  const over = length - MOST;
  return (
    <section class="notes">
      <h2>
        <label for="job-notes">Notes</label>
      </h2>
      <textarea
        id="job-notes"
        ref={field}
        rows={4}
        aria-invalid={over > 0 ? 'true' : undefined}
        aria-describedby="job-notes-fault"
        defaultValue={card.notes}
        onInput={({ currentTarget: { value } }) => {
          setLength(value.length);
          hands.hold(value.length > MOST);
          if (value.length <= MOST) hands.soon((there) => changed(there, { notes: value }, Date.now()));
        }}
      />
      <p class="fault" id="job-notes-fault" aria-live="polite">
        {over > 0
          ? `Not saved: the notes hold ${MOST} letters, and ${over} are too many. What was saved before is kept.`
          : length > NEAR
            ? `Room for ${MOST - length} more letters.`
            : ''}
      </p>
    </section>
  );
};
