import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { flawOver, withFlaw } from '#engine/jobs.ts';
import type { CardFlaw, JobCard } from '#engine/model/job-card.ts';
import looks from '../../../styles/jobs-open.css?inline';
import { tellFlaw } from '../../clock/open-flaw.ts';
import { DefinitionRows } from '../../shared/definition-rows.tsx';
import { wear } from '../../shared/late-style.ts';
import { pageUnits } from '../../shared/say-date.ts';
import { toldOnce } from '../../shared/told-once.ts';
import { lastCoatNow } from '../parts/clock.ts';
import { CoatOnCard } from '../parts/coat-form.tsx';
import { CoatList } from '../parts/coats.tsx';
import { type JobsData, jobsData } from '../parts/data.ts';
import { FilmSection } from '../parts/drawing.tsx';
import { FlawList, RepairList } from '../parts/flaws.tsx';
import { Notes } from '../parts/notes.tsx';
import { PhotoBoard } from '../parts/photos.tsx';
import { fillPiece, pieceFacts } from '../parts/piece-form.ts';
import { sayCan } from '../parts/say-can.ts';
import { cardVerdict } from '../parts/verdict.ts';
import { type KeptClash, readClashes, readOne } from '../store/index.ts';
import { CardActs } from './card-acts.tsx';
import { CardStops } from './card-stops.tsx';
import { ClashChoice } from './clash-choice.tsx';
import { Adopted, LIST, pieceFormIn, useLoaded, useNow } from './controls.tsx';
import { useFrame } from './frame.ts';
import { MainActs, VerdictHead } from './main-acts.tsx';
import { Missing } from './missing.tsx';
import { takeOffOf } from './take-off.tsx';
import { toFlaw, toSearch } from './to-walk.tsx';
import { useSaver } from './use-saver.ts';
import { useWhileOpen } from './while-open.tsx';

wear(looks);

/** One card: what is to do now, what lies on the piece, and all that was noted. Each change is written at once. */
export const CardView = ({ id }: { readonly id: string }) => {
  const frame = useFrame();
  const loaded = useLoaded(async () => {
    frame.title('Job card');
    const [read, data, clashes] = await Promise.all([readOne(id), jobsData(), readClashes(id)]);
    return { read, data, clashes };
  }, id);
  if (!loaded) return <p class="small">Opening the card…</p>;
  const { read, data, clashes } = loaded;
  if (read.kind !== 'card') return <Missing id={id} read={read} />;
  return <OpenCard first={read.card} data={data} found={clashes} />;
};

/** Fills the form of the piece as the card changes; gives what it says, in rows. */
const useFilledPiece = (card: JobCard, about: HTMLFormElement): ReturnType<typeof pieceFacts> => {
  const frame = useFrame();
  const shown = useRef<JobCard | undefined>(undefined);
  const [facts, setFacts] = useState<ReturnType<typeof pieceFacts>>([]);
  useLayoutEffect(() => {
    frame.title(card.name);
    fillPiece(about, card, shown.current, pageUnits());
    shown.current = card;
    setFacts(pieceFacts(about));
  }, [card.changedAt]);
  return facts;
};

type OpenProps = {
  readonly first: JobCard;
  readonly data: JobsData;
  readonly found: readonly KeptClash[];
};

const OpenCard = ({ first, data, found }: OpenProps) => {
  const frame = useFrame();
  const now = useNow();
  const [about] = useState(() => pieceFormIn(frame.host));
  const open = useSaver(first, found, about);
  const { saver, hands, clashes, written } = open;
  const { card } = saver;
  const [coat] = useState(() => new CoatOnCard(frame, data, hands));
  const flaw = flawOver(card);
  useLayoutEffect(() => {
    void tellFlaw(saver.card);
  }, [flaw]);
  useWhileOpen(open, data, about, coat);
  const facts = useFilledPiece(card, about);

  const us = pageUnits() === 'us';
  const can = sayCan(card, us);
  const takeOff = takeOffOf(frame, open, data);
  const reading = lastCoatNow(card, data.products, now)?.reading;
  const stage = reading?.kind === 'running' ? reading.stage : undefined;
  const settle = ({ settledAt, ...one }: CardFlaw) =>
    hands.now((there) =>
      withFlaw(there, settledAt === undefined ? { ...one, settledAt: Date.now() } : one, Date.now()),
    );
  const verdict = cardVerdict(card, data, now);
  useLayoutEffect(() => {
    toldOnce('head', verdict.coat);
    return () => toldOnce('head', undefined);
  }, [verdict.coat]);
  return (
    <>
      <p class="back">
        <a href={LIST}>All job cards</a>
      </p>
      <VerdictHead verdict={verdict} />
      <CardStops card={card} data={data} verdict={verdict} reading={reading} about={about} coat={coat} />
      <p class="small" role="status">
        {open.saved}
      </p>
      <div class="clash">
        {clashes.map((clash) => (
          <ClashChoice
            key={clash.id}
            clash={clash}
            card={card}
            hands={hands}
            over={() => open.setClashes((all) => all.filter(({ id }) => id !== clash.id))}
          />
        ))}
      </div>
      <MainActs
        card={card}
        data={data}
        verdict={verdict}
        coat={coat}
        takeOff={takeOff}
        settle={settle}
        wrong={async () => toSearch(frame, await written(), data)}
      />
      <Adopted element={coat.place} shown={false} />
      <div class="paper">
        <DefinitionRows class="facts" of={can ? [...facts, ['The can says', can]] : facts} />
        <details class="piece">
          <summary>Edit the details of the piece</summary>
          <Adopted element={about} />
        </details>
        <div class="sheet">
          <div>
            <FilmSection card={card} data={data} us={us} />
            <Notes card={card} hands={hands} />
          </div>
          <div class="lists">
            <CoatList
              card={card}
              data={data}
              us={us}
              correct={(one) => coat.correct(one)}
              takeOff={takeOff.coat}
            />
            <FlawList
              card={card}
              data={data}
              stage={stage}
              look={async (one) => toFlaw(await written(), data, one, stage)}
              settle={settle}
              takeOff={takeOff.flaw}
            />
            <RepairList card={card} data={data} takeOff={takeOff.repair} />
            <PhotoBoard card={card} hands={hands} />
          </div>
        </div>
      </div>
      <CardActs card={card} data={data} hands={hands} written={written} />
    </>
  );
};
