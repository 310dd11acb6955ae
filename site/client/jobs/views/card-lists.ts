import { putBack, withFlaw, withoutCoat, withoutFlaw, withoutRepair } from '#engine/jobs.ts';
import type { CardCoat, JobCard } from '#engine/model/job-card.ts';
import type { JobsData } from '../../../shared/jobs-data.ts';
import { make } from '../../shared/make.ts';
import { coatList } from '../parts/coats.ts';
import { flawList, repairList } from '../parts/flaws.ts';
import { PhotoBoard } from '../parts/photo-board.ts';
import { button, type CardHands, type JobsFrame } from './view.ts';

type Edit = (card: JobCard) => JobCard;
type ListName = 'coats' | 'flaws' | 'repairs';

/** Coats, flaws, repairs and photos of a card. What is taken off can be put back as long as the page is open. */
export const cardLists = (
  card: JobCard,
  data: JobsData,
  us: boolean,
  frame: JobsFrame,
  hands: CardHands,
  correct: (coat: CardCoat) => void,
): readonly HTMLElement[] => {
  const takeOff = async (list: ListName, what: string, id: string, by: Edit) => {
    if (!(await hands.now(by))) return;
    const back = button('Put it back', async () => {
      await hands.now((there) => putBack(there, card, list, id, Date.now()));
      frame.say('It is back on the card.');
    });
    frame.say(`${what} is off the card. `, back);
  };
  const none = (text: string) => make('p.small', text);
  return [
    make(
      'section',
      make('h2.tape', 'Coats'),
      card.coats.length
        ? coatList(card, data, us, correct, (coat) =>
            takeOff('coats', 'The coat', coat.id, (there) => withoutCoat(there, coat.id, Date.now())),
          )
        : none('None yet.'),
    ),
    make(
      'section',
      make('h2.tape', 'Flaws'),
      card.flaws.length
        ? flawList(
            card,
            data,
            async ({ settledAt, ...flaw }) => {
              const at = Date.now();
              await hands.now((there) =>
                withFlaw(there, settledAt === undefined ? { ...flaw, settledAt: at } : flaw, at),
              );
            },
            (flaw) =>
              takeOff('flaws', 'The flaw', flaw.id, (there) => withoutFlaw(there, flaw.id, Date.now())),
          )
        : none('None noted. ‘Something looks wrong’ walks you to the cause and notes it here.'),
    ),
    make(
      'section',
      make('h2.tape', 'Repairs'),
      card.repairs.length
        ? repairList(card, data, (repair) =>
            takeOff('repairs', 'The repair', repair.id, (there) =>
              withoutRepair(there, repair.id, Date.now()),
            ),
          )
        : none('None noted.'),
    ),
    new PhotoBoard(card, frame, hands).element,
  ];
};
