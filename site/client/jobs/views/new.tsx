import { useLayoutEffect, useMemo } from 'preact/hooks';
import { newCard } from '#engine/jobs.ts';
import { jobCardUrl } from '../../../shared/jobs-urls.ts';
import { draftIn, nameUnits, plainNumbers, tellFaults } from '../../shared/form/in-page.ts';
import { newId } from '../../shared/id.ts';
import { askForLastingStorage } from '../../shared/persist.ts';
import { pageUnits } from '../../shared/say-date.ts';
import { exportCards } from '../files/export.ts';
import { PIECE_FIELDS, readPiece, refusedFields } from '../parts/piece-form.ts';
import { CardRefused } from '../store/fault.ts';
import { addCard } from '../store/index.ts';
import { Act, Adopted, LIST, pieceFormIn } from './controls.tsx';
import { useFrame } from './frame.ts';

/** A new card: what a repair must know of the piece, and no more. */
export const NewView = () => {
  const frame = useFrame();
  const form = useMemo(() => pieceFormIn(frame.host), []);
  const make = async () => {
    const read = readPiece(draftIn(form), pageUnits());
    const first = tellFaults(form, 'plan', read.faults);
    if (!read.given) {
      first?.closest('details')?.setAttribute('open', '');
      first?.focus();
      return;
    }
    const card = newCard(read.given, newId(), Date.now());
    try {
      await addCard(card);
      form.reset();
      void askForLastingStorage();
      location.replace(jobCardUrl(card.id));
    } catch (error) {
      if (error instanceof CardRefused) {
        tellFaults(form, 'plan', refusedFields(error.refusals));
        frame.trouble(error);
        return;
      }
      frame.trouble(error, <Act act={() => exportCards([card], false)}>Save this card as a file</Act>);
    }
  };
  useLayoutEffect(() => {
    const { signal } = frame;
    frame.title('A new job card');
    form.reset();
    nameUnits(form, pageUnits());
    tellFaults(form, 'plan', []);
    plainNumbers(form, PIECE_FIELDS, pageUnits, signal);
    form.addEventListener(
      'submit',
      (event) => {
        event.preventDefault();
        void make();
      },
      { signal },
    );
    const typed = () => Boolean(draftIn(form)['name']?.trim());
    addEventListener('beforeunload', (event) => typed() && event.preventDefault(), { signal });
    frame.shown();
  }, []);
  return (
    <>
      <p>
        <a href={LIST}>All job cards</a>
      </p>
      <Adopted element={form} />
    </>
  );
};
