import { bothTexts, changed, withMine } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { make, words } from '../../shared/make.ts';
import { fileName, saveFile } from '../../shared/save-file.ts';
import { sayMoment } from '../../shared/say-date.ts';
import { type CardEdit, type Changed, type KeptClash, settleClash } from '../store/index.ts';
import { button } from '../views/view.ts';

const sayValue = (value: unknown): string => {
  if (value === undefined || value === '') return 'nothing';
  if (typeof value === 'number') return sayMoment(value);
  return typeof value === 'string' ? value : 'an entry of a list';
};

/** What two tabs changed at once: the other tab's stands on the card, and mine is offered here until she has chosen. */
export const offerRescue = (
  card: JobCard,
  clash: KeptClash,
  run: (work: () => Promise<Changed>) => Promise<boolean>,
): HTMLElement => {
  const choose = async (by?: CardEdit) => {
    if (await run(() => settleClash(clash, by))) box.remove();
  };
  const both = bothTexts(clash);
  const box = make(
    'div',
    make(
      'p',
      `Two tabs changed “${words('field' in clash ? clash.field : clash.list)}”. On the card stands: `,
      make('b', sayValue(clash.theirs)),
    ),
    make('p', 'Yours was: ', make('b', sayValue(clash.mine))),
    button('Put mine in its place', () => choose((there) => withMine(there, clash, Date.now()))),
    ...(both === undefined
      ? []
      : [button('Keep both', () => choose((there) => changed(there, { notes: both }, Date.now())))]),
    button('Save mine as a file', () =>
      saveFile(`${fileName(card.name)}-rescued.json`, 'application/json', JSON.stringify(clash)),
    ),
    button('Leave it as it stands', () => choose()),
  );
  box.dataset['clash'] = clash.id;
  return box;
};
