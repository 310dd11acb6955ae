import { type ImportRow, previewShelves } from '#engine/jobs/preview.ts';
import type { JobCard, JobFile } from '#engine/model/job-card.ts';
import { make } from '../../shared/make.ts';
import { photoOf } from '../parts/photo.ts';
import { putCards, readOne, readRemoved, restoreCards } from '../store/index.ts';
import { button, type JobsFrame } from '../views/view.ts';
import { bringIn } from './bring-in.ts';
import { sayRow } from './import-words.ts';

const cardsOf = (count: number): string => `${count} ${count === 1 ? 'card' : 'cards'}`;
const UNREADABLE = 'here it could not be read; stays as it lies here';
const CHANGES: readonly ImportRow['kind'][] = ['new', 'theirs-newer', 'both-changed', 'goes'];

/** The cards of the file that stand here too, and which of those here can not be read. */
const standing = async (ids: readonly string[]) => {
  const mine: JobCard[] = [];
  const broken = new Set<string>();
  for (const id of ids) {
    const read = await readOne(id);
    if (read.kind === 'card') mine.push(read.card);
    else if (read.kind === 'unreadable') broken.add(id);
  }
  return { mine, broken };
};

const keptPhotos = ({ cards, photos = {} }: JobFile, ids: ReadonlySet<string>) =>
  cards
    .filter(({ id }) => ids.has(id))
    .flatMap((card) =>
      card.photos.flatMap(({ id }) => {
        const photo = photos[id] && photoOf(id, card.id, photos[id]);
        return photo ? [photo] : [];
      }),
    );

/** Shows what a file would change here, and changes it only when she says so. */
export const previewFile = async (file: File, frame: JobsFrame, done: () => Promise<void>): Promise<void> => {
  const { readJobFile, sayCardFault } = await import('../store/schema.ts');
  const read = readJobFile(await file.text());
  const faults = make('ul', ...read.faults.map((fault) => make('li', sayCardFault(fault))));
  if (!read.ok) {
    frame.say(`Nothing was brought in from “${file.name}”.`, faults);
    return;
  }
  const { cards, removed = [] } = read.value;
  const ids = [...cards, ...removed].map(({ id }) => id);
  const { mine, broken } = await standing([...new Set(ids)]);
  const rows = previewShelves({ cards: mine, removed: await readRemoved() }, { cards, removed });
  const wanted = rows.filter(({ id, kind }) => CHANGES.includes(kind) && !broken.has(id));
  const going = wanted.filter(({ kind }) => kind === 'goes');
  const coming = new Set(wanted.flatMap(({ id, kind }) => (kind === 'goes' ? [] : id)));
  const lineOf = (row: ImportRow) =>
    make('li', make('b', row.name), `: ${broken.has(row.id) ? UNREADABLE : sayRow(row)}`);

  /** A card that was taken away here, brought back all the same: from now on it is the later word. */
  const bringBack = ({ id }: ImportRow): HTMLElement => {
    const back = button(
      'Bring it back all the same',
      async () => {
        const card = cards.find((one) => one.id === id);
        if (!card) return;
        try {
          await putCards([{ ...card, changedAt: Date.now() }], keptPhotos(read.value, new Set([id])));
          back.replaceWith(make('b', ' It is back.'));
        } catch (error) {
          frame.trouble(error);
        }
      },
      'plain',
    );
    return back;
  };
  const list = make(
    'ul.preview',
    ...rows.map((row) => {
      const line = lineOf(row);
      if (row.kind === 'gone-here') line.append(' ', bringBack(row));
      return line;
    }),
  );
  const does = [
    ...(coming.size ? [`Bring in ${cardsOf(coming.size)}`] : []),
    ...(going.length ? [`${coming.size ? 'take' : 'Take'} ${cardsOf(going.length)} away`] : []),
  ].join(', ');
  const confirm = button(
    does,
    async () => {
      confirm.disabled = true;
      try {
        const gone = await bringIn({
          cards: cards.filter(({ id }) => coming.has(id)),
          photos: keptPhotos(read.value, coming),
          removed,
          rows: going,
        });
        await done();
        const back = button('Put back what went', async () => {
          try {
            await restoreCards(gone, true);
            await done();
            frame.say('It is back.');
          } catch (error) {
            frame.trouble(error);
          }
        });
        frame.say(
          `${[...(coming.size ? [`${cardsOf(coming.size)} brought in`] : []), ...(gone.length ? [`${cardsOf(gone.length)} taken away`] : [])].join(', ')}.`,
          make('ul.preview', ...wanted.map(lineOf)),
          ...(gone.length ? [back] : []),
        );
      } catch (error) {
        confirm.disabled = false;
        frame.trouble(error);
      }
    },
    'go',
  );
  frame.say(
    make('b', `“${file.name}”`),
    ` holds ${cardsOf(cards.length)} that can be read.`,
    ...(read.leftOut ? [` ${read.leftOut} could not be read and would be left out:`] : []),
    ...(read.faults.length ? [faults] : []),
    list,
    ...(wanted.length ? [confirm] : [make('p', 'So there is nothing to bring in.')]),
    button('Leave all as it is', () => frame.say()),
  );
  frame.root.querySelector('.told')?.scrollIntoView({ block: 'start' });
};
