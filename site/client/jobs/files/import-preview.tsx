import { useState } from 'preact/hooks';
import type { ImportRow } from '#engine/jobs/preview.ts';
import { counted } from '../../shared/counted.ts';
import { bringDeck } from '../../shared/decks.ts';
import { partIn } from '../../shared/element.ts';
import { FaultList } from '../parts/fault-list.tsx';
import { restoreCards } from '../store/index.ts';
import { Act } from '../views/controls.tsx';
import type { JobsFrame } from '../views/frame.ts';
import { bringOne, bringWanted, type ImportPlan, planImport } from './import-plan.ts';
import { sayRow } from './import-words.ts';

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

type RowsProps = {
  readonly plan: ImportPlan;
  readonly of: readonly ImportRow[];
  readonly done: () => Promise<void>;
};

const Rows = ({ plan, of, done }: RowsProps) => {
  const bring = async (id: string) => {
    await bringOne(plan, id);
    await done();
  };
  return (
    <ul class="preview">
      {of.map((row) => (
        <Row key={row.id} row={row} broken={plan.broken.has(row.id)} bring={() => bring(row.id)} />
      ))}
    </ul>
  );
};

const summary = (come: readonly [number, string], go: readonly [number, string]): string =>
  [come, go].flatMap(([count, says]) => (count ? [says] : [])).join(', ');

const KEEPS_NO_PRACTICE = 'This browser keeps no practice.';

/** Brings in what is wanted, and says what came and what went, with the way back. */
const bringIn = async (plan: ImportPlan, frame: JobsFrame, done: () => Promise<void>): Promise<void> => {
  const { deck, coming, wanted } = plan;
  const gone = await bringWanted(plan);
  const brought = !deck ? '' : bringDeck(deck) ? ' The practice came with them.' : ` ${KEEPS_NO_PRACTICE}`;
  await done();
  const putBack = async () => {
    await restoreCards(gone, true);
    await done();
    frame.say('It is back.');
  };
  const says = summary(
    [coming.size, `${counted(coming.size, 'card')} brought in`],
    [gone.length, `${counted(gone.length, 'card')} taken away`],
  );
  frame.say(
    <>
      {`${says}.${brought}`}
      <Rows plan={plan} of={wanted} done={done} />
      {gone.length > 0 && <Act act={putBack}>Put back what went</Act>}
    </>,
  );
};

/** What can be done with the file. */
const Choice = ({ plan, frame, done }: { plan: ImportPlan; frame: JobsFrame; done: () => Promise<void> }) => {
  const { deck, wanted, coming, going } = plan;
  if (wanted.length)
    return (
      <Act class="go" act={() => bringIn(plan, frame, done)}>
        {summary(
          [coming.size, `Bring in ${counted(coming.size, 'card')}`],
          [going.length, `${coming.size ? 'take' : 'Take'} ${counted(going.length, 'card')} away`],
        )}
      </Act>
    );
  return (
    <>
      <p>So there is no card to bring in.</p>
      {deck && (
        <Act
          class="go"
          act={() => frame.say(bringDeck(deck) ? 'The practice was brought in.' : KEEPS_NO_PRACTICE)}
        >
          Bring in the practice
        </Act>
      )}
    </>
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
  const plan = await planImport(read.value);
  frame.say(
    <>
      <b>{`“${file.name}”`}</b>
      {` holds ${counted(read.value.cards.length, 'card')} that can be read.`}
      {read.leftOut > 0 && ` ${read.leftOut} could not be read and would be left out:`}
      <FaultList faults={read.faults} />
      {plan.deck && ` It also holds practice on ${counted(plan.deck.boards, 'board')}.`}
      <Rows plan={plan} of={plan.rows} done={done} />
      <Choice plan={plan} frame={frame} done={done} /> <Act act={() => frame.say()}>Leave all as it is</Act>
    </>,
  );
  partIn(frame.host, 'said')?.scrollIntoView({ block: 'start' });
};
