import { type ImportRow, previewShelves } from '#engine/jobs/preview.ts';
import type { JobCard, JobFile } from '#engine/model/job-card.ts';
import { entryOf } from '#engine/plain/entry-of.ts';
import { deckIn } from '../../shared/decks.ts';
import { photoOf } from '../parts/photo.ts';
import { mendCard, putCards, readOne, readRemoved } from '../store/index.ts';
import type { KeptPhoto } from '../store/records.ts';
import { importCards } from './import-cards.ts';

const CHANGES: readonly ImportRow['kind'][] = ['new', 'theirs-newer', 'both-changed', 'goes'];

/** What a file would change here. */
export type ImportPlan = {
  readonly file: JobFile;
  readonly rows: readonly ImportRow[];
  /** The rows that change something once she says so. */
  readonly wanted: readonly ImportRow[];
  readonly coming: ReadonlySet<string>;
  readonly going: readonly ImportRow[];
  /** Cards of the file whose record here can not be read. */
  readonly broken: ReadonlySet<string>;
  readonly deck: ReturnType<typeof deckIn>;
};

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

const photosOf = ({ cards, photos = {} }: JobFile, ids: ReadonlySet<string>): readonly KeptPhoto[] =>
  cards
    .filter(({ id }) => ids.has(id))
    .flatMap((card) =>
      card.photos.flatMap(({ id }) => {
        const address = entryOf(photos, id);
        return (address && photoOf(id, card.id, address)) || [];
      }),
    );

export const planImport = async (file: JobFile): Promise<ImportPlan> => {
  const { cards, removed = [] } = file;
  const { mine, broken } = await standing([...new Set([...cards, ...removed].map(({ id }) => id))]);
  const rows = previewShelves({ cards: mine, removed: await readRemoved() }, { cards, removed });
  const wanted = rows.filter(({ id, kind }) => CHANGES.includes(kind) && !broken.has(id));
  return {
    file,
    rows,
    wanted,
    coming: new Set(wanted.flatMap(({ id, kind }) => (kind === 'goes' ? [] : id))),
    going: wanted.filter(({ kind }) => kind === 'goes'),
    broken,
    deck: deckIn(file.practice),
  };
};

/** One card in spite of what stands here: from now on it is the later word, against a removal or a damaged record. */
export const bringOne = async ({ file, broken }: ImportPlan, id: string): Promise<void> => {
  const card = file.cards.find((one) => one.id === id);
  if (!card) return;
  const photos = photosOf(file, new Set([id]));
  if (broken.has(id)) await mendCard(card, photos);
  else await putCards([{ ...card, changedAt: Date.now() }], photos);
};

/** All that is wanted; gives what was taken away here. */
export const bringWanted = ({ file, coming, going }: ImportPlan): ReturnType<typeof importCards> =>
  importCards({
    cards: file.cards.filter(({ id }) => coming.has(id)),
    photos: photosOf(file, coming),
    removed: file.removed ?? [],
    rows: going,
  });
