import { useState } from 'preact/hooks';
import { type ImportRow, previewShelves } from '#engine/jobs/preview.ts';
import type { JobCard, JobFile } from '#engine/model/job-card.ts';
import { entryOf } from '#engine/plain/entry-of.ts';
import { counted } from '../../shared/counted.ts';
import { bringDeck, deckIn } from '../../shared/decks.ts';
import { partIn } from '../../shared/element.ts';
import { FaultList } from '../parts/fault-list.tsx';
import { photoOf } from '../parts/photo.ts';
import { mendCard, putCards, readOne, readRemoved, restoreCards } from '../store/index.ts';
import type { KeptPhoto } from '../store/records.ts';
import { Act } from '../views/controls.tsx';
import type { JobsFrame } from '../views/frame.ts';
import { importCards } from './import-cards.ts';
import { sayRow } from './import-words.ts';

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

const photosOf = ({ cards, photos = {} }: JobFile, ids: ReadonlySet<string>): readonly KeptPhoto[] =>
  cards
    .filter(({ id }) => ids.has(id))
    .flatMap((card) =>
      card.photos.flatMap(({ id }) => {
        const address = entryOf(photos, id);
        return (address && photoOf(id, card.id, address)) || [];
      }),
    );

type RowProps = {
  readonly row: ImportRow;
  readonly broken: boolean;
  /** Brings this one in all the same. */
  readonly bring: () => Promise<void>;
};

/** What would become of one card; where it would stay away or damaged, the way to bring it in all the same. */
const Row = ({ row, broken, bring }: RowProps) => {
  const [back, setBack] = useState(false);
  const act = async () => {
    await bring();
    setBack(true);
  };
  return (
    <li>
      <b>{row.name}</b>
      {`: ${broken ? 'here it could not be read; the damaged one stays, unless you take the one of the file' : sayRow(row)}`}{' '}
      {back ? (
        <b> It is back.</b>
      ) : (
        (broken || row.kind === 'gone-here') && (
          <Act class="plain" act={act}>
            {broken ? 'Take the one of the file; set the damaged one aside' : 'Bring it back all the same'}
          </Act>
        )
      )}
    </li>
  );
};

/** Shows what a file would change here, and changes it only when she says so. */
export const previewFile = async (file: File, frame: JobsFrame, done: () => Promise<void>): Promise<void> => {
  const { readJobFile } = await import('../store/schema.ts');
  const read = readJobFile(await file.text());
  if (!read.ok) {
    frame.say(
      <>
        {`Nothing was brought in from “${file.name}”.`}
        <FaultList faults={read.faults} />
      </>,
    );
    return;
  }
  const { cards, removed = [] } = read.value;
  const deck = deckIn(read.value.practice);
  const { mine, broken } = await standing([...new Set([...cards, ...removed].map(({ id }) => id))]);
  const rows = previewShelves({ cards: mine, removed: await readRemoved() }, { cards, removed });
  const wanted = rows.filter(({ id, kind }) => CHANGES.includes(kind) && !broken.has(id));
  const going = wanted.filter(({ kind }) => kind === 'goes');
  const coming = new Set(wanted.flatMap(({ id, kind }) => (kind === 'goes' ? [] : id)));

  /** From now on it is the later word, against a removal or a damaged record. */
  const bringOne = async ({ id }: ImportRow): Promise<void> => {
    const card = cards.find((one) => one.id === id);
    if (!card) return;
    const photos = photosOf(read.value, new Set([id]));
    if (broken.has(id)) await mendCard(card, photos);
    else await putCards([{ ...card, changedAt: Date.now() }], photos);
    await done();
  };
  const Rows = ({ of }: { readonly of: readonly ImportRow[] }) => (
    <ul class="preview">
      {of.map((row) => (
        <Row key={row.id} row={row} broken={broken.has(row.id)} bring={() => bringOne(row)} />
      ))}
    </ul>
  );
  const summary = (come: string, go: string): string =>
    [...(coming.size ? [come] : []), ...(going.length ? [go] : [])].join(', ');

  const learned = deck && ` It also holds practice on ${counted(deck.boards, 'board')}.`;
  const bringLearned = (): string =>
    !deck ? '' : bringDeck(deck) ? ' The practice came with them.' : ' This browser keeps no practice.';
  const confirm = async () => {
    const gone = await importCards({
      cards: cards.filter(({ id }) => coming.has(id)),
      photos: photosOf(read.value, coming),
      removed,
      rows: going,
    });
    const brought = bringLearned();
    await done();
    const putBack = async () => {
      await restoreCards(gone, true);
      await done();
      frame.say('It is back.');
    };
    const [come, go] = [counted(coming.size, 'card'), counted(gone.length, 'card')];
    frame.say(
      <>
        {`${summary(`${come} brought in`, `${go} taken away`)}.${brought}`}
        <Rows of={wanted} />
        {gone.length > 0 && <Act act={putBack}>Put back what went</Act>}
      </>,
    );
  };
  const [come, go] = [counted(coming.size, 'card'), counted(going.length, 'card')];
  frame.say(
    <>
      <b>{`“${file.name}”`}</b>
      {` holds ${counted(cards.length, 'card')} that can be read.`}
      {read.leftOut > 0 && ` ${read.leftOut} could not be read and would be left out:`}
      <FaultList faults={read.faults} />
      {learned}
      <Rows of={rows} />
      {wanted.length ? (
        <Act class="go" act={confirm}>
          {summary(`Bring in ${come}`, `${coming.size ? 'take' : 'Take'} ${go} away`)}
        </Act>
      ) : (
        <>
          <p>So there is no card to bring in.</p>
          {deck && (
            <Act
              class="go"
              act={() =>
                frame.say(
                  bringDeck(deck) ? 'The practice was brought in.' : 'This browser keeps no practice.',
                )
              }
            >
              Bring in the practice
            </Act>
          )}
        </>
      )}{' '}
      <Act act={() => frame.say()}>Leave all as it is</Act>
    </>,
  );
  partIn(frame.host, 'said')?.scrollIntoView({ block: 'start' });
};
