import { make } from '../../shared/make.ts';
import { saveFound } from '../files/export.ts';
import type { Read } from '../store/index.ts';
import { button, type JobsFrame, link } from './view.ts';

/** What stands in place of a card that is not here, or is damaged: never a guess at it. */
export const showMissing = (frame: JobsFrame, id: string, read: Exclude<Read, { kind: 'card' }>): void => {
  const { place, title } = frame;
  const back = make('p', link('All job cards', '#'));
  if (read.kind === 'gone') {
    title('No such card here');
    place.replaceChildren(
      make(
        'p',
        'This browser holds no card with this address. It may have been taken away, or made in another browser: bring it in from its file.',
      ),
      back,
    );
    return;
  }
  title('This card could not be read');
  const save = button('Save what is there as a file', () => saveFound(id, read.raw));
  place.replaceChildren(
    make(
      'p',
      'What lies here is damaged, so it is not shown: a wrong card is worse than none. It stays as it is. Save it as a file; what is in it may be rescued from there.',
    ),
    make('p', save),
    back,
  );
};
