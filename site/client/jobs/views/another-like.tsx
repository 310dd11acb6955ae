import { useState } from 'preact/hooks';
import { anotherLike } from '#engine/jobs.ts';
import { jobCardUrl } from '../../../shared/jobs-urls.ts';
import { newId } from '../../shared/id.ts';
import { addCard, listCards } from '../store/index.ts';
import { Act } from './controls.tsx';
import type { CardActsProps } from './hands.ts';

/** A card for a pair: the same piece once more, with its coats where she wants them. */
export const AnotherLike = ({ card, written }: Pick<CardActsProps, 'card' | 'written'>) => {
  const [withCoats, setWithCoats] = useState(false);
  const another = async () => {
    const latest = await written();
    const { all, first } = await listCards();
    const names = [...first, ...(await all())].flatMap(({ summary }) => summary?.name ?? []);
    const made = anotherLike(latest, { id: newId(), now: Date.now(), coats: withCoats, taken: names });
    await addCard(made);
    location.assign(jobCardUrl(made.id));
  };
  return (
    <section>
      <h2>Another like this</h2>
      <div class="acts">
        {card.coats.length > 0 && (
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
  );
};
