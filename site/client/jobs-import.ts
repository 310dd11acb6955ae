import { type ImportRow, mergeCards, previewImport } from '#engine/jobs/merge.ts';
import type { JobCard, JobFile } from '#engine/model/job-card.ts';
import { photoOf } from './jobs-photo.ts';
import { putCards, readOne } from './jobs-store.ts';
import { button, type JobsFrame } from './jobs-view.ts';
import { make } from './schedule-make.ts';

const KINDS: Readonly<Record<ImportRow['kind'], string>> = {
  new: 'new here',
  same: 'the same as here',
  'theirs-newer': 'newer in the file',
  'mine-newer': 'newer here; stays as it is',
  'both-changed': 'changed on both sides; both are put together',
  'too-large': 'too much on both sides together; stays as it is',
};
const UNREADABLE = 'here it could not be read; stays as it lies here';
const CHANGES: readonly ImportRow['kind'][] = ['new', 'theirs-newer', 'both-changed'];

/** The cards of the file that stand here too, and which of those here can not be read. */
const standing = async (cards: readonly JobCard[]) => {
  const mine: JobCard[] = [];
  const broken = new Set<string>();
  for (const { id } of cards) {
    const read = await readOne(id);
    if (read.kind === 'card') mine.push(read.card);
    else if (read.kind === 'unreadable') broken.add(id);
  }
  return { mine, broken };
};

const gainsOf = ({ kind, gains }: ImportRow): string =>
  kind === 'new'
    ? ''
    : Object.entries(gains)
        .filter(([, count]) => count > 0)
        .map(([what, count]) => `${count} more ${count === 1 ? what.slice(0, -1) : what}`)
        .join(', ');

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
  const { readJobFile, sayCardFault } = await import('./jobs-schema.ts');
  const read = readJobFile(await file.text());
  const faults = make('ul', ...read.faults.map((fault) => make('li', sayCardFault(fault))));
  if (!read.ok) {
    frame.say(`Nothing was brought in from “${file.name}”.`, faults);
    return;
  }
  const { cards } = read.value;
  const { mine, broken } = await standing(cards);
  const rows = previewImport(mine, cards);
  const wanted = rows.filter(({ id, kind }) => CHANGES.includes(kind) && !broken.has(id));
  const ids = new Set(wanted.map(({ id }) => id));
  const list = make(
    'ul.preview',
    ...rows.map((row) =>
      make(
        'li',
        make('b', row.name),
        `: ${broken.has(row.id) ? UNREADABLE : KINDS[row.kind]}`,
        gainsOf(row) && ` (${gainsOf(row)})`,
      ),
    ),
  );
  const confirm = button(
    `Bring in ${wanted.length} ${wanted.length === 1 ? 'card' : 'cards'}`,
    async () => {
      confirm.disabled = true;
      try {
        await putCards(
          cards.filter(({ id }) => ids.has(id)),
          keptPhotos(read.value, ids),
          (there, card) => mergeCards([there], [card])[0] ?? there,
        );
        await done();
        frame.say(`${wanted.length} ${wanted.length === 1 ? 'card' : 'cards'} brought in.`);
      } catch (error) {
        confirm.disabled = false;
        frame.trouble(error);
      }
    },
    'go',
  );
  frame.say(
    make('b', `“${file.name}”`),
    ` holds ${cards.length} ${cards.length === 1 ? 'card' : 'cards'} that can be read.`,
    ...(read.leftOut ? [` ${read.leftOut} could not be read and would be left out:`, faults] : []),
    list,
    ...(wanted.length ? [confirm] : [make('p', 'So there is nothing to bring in.')]),
    button('Leave all as it is', () => frame.say()),
  );
  frame.root.querySelector('.told')?.scrollIntoView({ block: 'start' });
};
