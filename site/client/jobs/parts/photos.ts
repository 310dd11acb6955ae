import type { CardPhoto } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { make } from '../../shared/make.ts';
import { sayMoment } from '../../shared/say-date.ts';
import type { KeptPhoto } from '../store/photos.ts';
import { button } from '../views/view.ts';
import { dataUrlOf } from './photo.ts';

/** The photos of a card. Bytes that are gone or are no picture are told, and their caption stays. */
export const photoList = (
  card: JobCard,
  kept: readonly KeptPhoto[],
  caption: (photo: CardPhoto, text: string) => void,
  off: (photo: CardPhoto) => void | Promise<void>,
): HTMLElement => {
  const list = make('ul.photos');
  for (const photo of card.photos) {
    const bytes = kept.find(({ id }) => id === photo.id);
    const taken = sayMoment(photo.takenAt);
    const field = Object.assign(document.createElement('input'), {
      type: 'text',
      value: photo.caption ?? '',
      maxLength: 300,
      placeholder: 'What it shows',
    });
    field.setAttribute('aria-label', `What the photo of ${taken} shows`);
    field.addEventListener('change', () => caption(photo, field.value.trim()));
    const item = make(
      'li',
      make('p.small', taken),
      field,
      button('Take the photo away', () => off(photo), 'plain'),
    );
    list.append(item);
    const lost = () =>
      item.prepend(make('p.lost', 'This photo can not be shown: its picture is missing here.'));
    if (!bytes) {
      lost();
      continue;
    }
    const picture = Object.assign(document.createElement('img'), {
      alt: photo.caption || `Photo of ${taken}`,
      width: photo.width,
      height: photo.height,
      loading: 'lazy' as const,
    });
    picture.addEventListener('error', () => {
      picture.remove();
      lost();
    });
    item.prepend(picture);
    dataUrlOf(bytes).then((address) => {
      picture.src = address;
    }, lost);
  }
  return list;
};
