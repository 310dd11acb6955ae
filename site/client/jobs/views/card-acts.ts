import { changed, coatsInOrder } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { careUrl } from '../../../shared/jobs-urls.ts';
import { SCHEDULE } from '../../../shared/urls.ts';
import { make } from '../../shared/make.ts';
import { exportCards } from '../files/export.ts';
import { removeCard } from '../store/index.ts';
import { offerUndo } from './undo.ts';
import { button, type CardHands, type JobsFrame, link } from './view.ts';

/** Writes what waits and hands back the card. */
type Written = () => Promise<JobCard>;

const remove = async (frame: JobsFrame, written: Written, { name }: JobCard): Promise<void> => {
  if (!confirm(`Take away the card “${name}” with its photos?`)) return;
  const { id } = await written();
  try {
    const removed = await removeCard(id);
    location.hash = '';
    if (removed) offerUndo(frame, removed);
  } catch (error) {
    frame.trouble(error);
  }
};

/** What can be done with a whole card, beside laying a coat. */
export const cardActs = (
  card: JobCard,
  frame: JobsFrame,
  hands: CardHands,
  written: Written,
): readonly HTMLElement[] => {
  const set = (field: 'finishedAt' | 'handedOverAt', is: boolean) => async () => {
    await hands.now((there) => changed(there, { [field]: is ? undefined : Date.now() }, Date.now()));
  };
  const save = (photos: boolean) => async () => {
    try {
      await exportCards([await written()], photos);
    } catch (error) {
      frame.trouble(error);
    }
  };
  const over = card.handedOverAt !== undefined;
  const last = coatsInOrder(card).at(-1)?.laidAt;
  const finished = card.finishedAt !== undefined && last !== undefined && card.finishedAt >= last;
  const group = (title: string, ...inside: readonly HTMLElement[]) =>
    make('section', make('h2', title), make('div.acts', ...inside));
  return [
    group(
      'Hand over',
      link('Care card for the buyer', careUrl(card.id), 'quiet'),
      ...(last === undefined || over
        ? []
        : [
            button(
              finished ? 'One more coat after all' : 'That was the last coat',
              set('finishedAt', finished),
            ),
          ]),
      button(over ? 'Not handed over after all' : 'Handed over today', set('handedOverAt', over)),
    ),
    group(
      'Paper and files',
      ...(card.plan ? [link('The plan of this piece', `${SCHEDULE}#${card.plan}`, 'quiet')] : []),
      button('Print this card', () => print()),
      button('Save as a file, with photos', save(true)),
      button('Save as a file, without photos', save(false)),
      button('Take this card away…', () => remove(frame, written, card), 'quiet away'),
    ),
  ];
};
