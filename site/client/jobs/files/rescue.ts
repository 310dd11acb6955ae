import { changed } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { make, words } from '../../shared/make.ts';
import { fileName, saveFile } from '../../shared/save-file.ts';
import { sayMoment } from '../parts/words.ts';
import type { Clash } from '../store/merge.ts';
import { button } from '../views/view.ts';

const sayValue = (value: unknown): string => {
  if (value === undefined || value === '') return 'nothing';
  if (typeof value === 'number') return sayMoment(value);
  return typeof value === 'string' ? value : 'an entry of a list';
};

/** What two tabs changed at once: the other tab's stands on the card, and mine is offered here. */
export const offerRescue = (
  card: JobCard,
  clashes: readonly Clash[],
  now: (by: (card: JobCard) => JobCard) => Promise<boolean>,
): readonly HTMLElement[] =>
  clashes.map(({ field, mine, theirs }) => {
    const plain = typeof mine !== 'object' && !field.includes(' ');
    const box = make(
      'div',
      make('p', `Two tabs changed “${words(field)}”. On the card stands: `, make('b', sayValue(theirs))),
      make('p', 'Yours was: ', make('b', sayValue(mine))),
      ...(plain
        ? [
            button('Put mine in its place', async () => {
              if (await now((there) => changed(there, { [field]: mine }, Date.now()))) box.remove();
            }),
          ]
        : []),
      button('Save mine as a file', () =>
        saveFile(
          `${fileName(card.name)}-rescued.json`,
          'application/json',
          JSON.stringify({ field, mine, theirs }),
        ),
      ),
      button('Leave it as it stands', () => box.remove()),
    );
    return box;
  });
