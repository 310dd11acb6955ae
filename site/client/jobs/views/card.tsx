import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { type Case, withAnswer } from '#engine/index.ts';
import {
  changed,
  coatOwed,
  coatsInOrder,
  flawOver,
  laidCoatOf,
  productOfRepair,
  putBack,
  withFlaw,
  withoutCoat,
  withoutFlaw,
  withoutItsCoat,
  withoutRepair,
} from '#engine/jobs.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import type { CardCoat, CardRepair, JobCard } from '#engine/model/job-card.ts';
import { entryOf } from '#engine/plain/entry-of.ts';
import { nodeUrl, nowUrl, seeUrl } from '../../../shared/urls.ts';
import { keepCardInHand } from '../../case/card-in-hand.ts';
import { keepCase } from '../../case/store.ts';
import { tellFlaw } from '../../clock/open-flaw.ts';
import { DefinitionRows } from '../../shared/definition-rows.tsx';
import { draftIn, onWhole, tellFaults } from '../../shared/form/in-page.ts';
import { pageUnits } from '../../shared/say-date.ts';
import { walkKnowledge } from '../../shared/walk-knowledge.ts';
import { adoptCoats, caseOfCard, lastCoatNow, startClock, stopClock } from '../parts/clock.ts';
import { CoatOnCard } from '../parts/coat-form.tsx';
import { CoatList } from '../parts/coats.tsx';
import { type JobsData, jobsData } from '../parts/data.ts';
import { FilmSection } from '../parts/drawing.tsx';
import { FlawList, RepairList } from '../parts/flaws.tsx';
import { Notes } from '../parts/notes.tsx';
import { PhotoBoard } from '../parts/photos.tsx';
import { fillPiece, pieceFacts, readPiece } from '../parts/piece-form.ts';
import { cardVerdict } from '../parts/verdict.ts';
import { type CardEdit, type KeptClash, readClashes, readOne } from '../store/index.ts';
import { CardActs } from './card-acts.tsx';
import { ClashChoice } from './clash-choice.tsx';
import { Act, Adopted, LIST, pieceFormIn, useLoaded, useNow, useRedraw } from './controls.tsx';
import { useFrame } from './frame.ts';
import type { CardHands } from './hands.ts';
import { Missing } from './missing.tsx';
import { CardSaver } from './saver.ts';
import { tellSaver } from './saver-words.tsx';

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

type OpenProps = {
  readonly first: JobCard;
  readonly data: JobsData;
  readonly found: readonly KeptClash[];
};

const OpenCard = ({ first, data, found }: OpenProps) => {
  const frame = useFrame();
  const redraw = useRedraw();
  const now = useNow();
  const [saved, setSaved] = useState('');
  const [clashes, setClashes] = useState(found);
  const held = useRef(false);
  const units = pageUnits();
  const us = units === 'us';
  const about = useMemo(() => pieceFormIn(frame.host), []);

  const saver = useMemo(() => {
    const made: CardSaver = new CardSaver(first, (event) => {
      setSaved(tellSaver(event, frame, made, about));
      if (event.kind === 'saved' && event.clashes.length)
        setClashes((before) => [...before, ...event.clashes]);
      redraw();
    });
    return made;
  }, []);
  const hands = useMemo(
    (): CardHands => ({
      card: () => saver.card,
      now: (by) => saver.now(by),
      soon: (by) => saver.soon(by),
      run: (work) => saver.run(work),
      pending: () => saver.pending,
      hold: (is) => {
        held.current = is;
      },
    }),
    [],
  );
  const { card } = saver;
  const coat = useMemo(() => new CoatOnCard(frame, data, hands), []);
  const written = async (): Promise<JobCard> => {
    await saver.flush();
    return saver.card;
  };

  const flaw = flawOver(card);
  useLayoutEffect(() => {
    void tellFlaw(saver.card);
  }, [flaw]);
  useLayoutEffect(() => {
    // The coat below one that a repair laid says nothing any more: its clock rests until that one is on the card.
    const buried = coatOwed(card, data.lays) && coatsInOrder(card).at(-1);
    void (buried ? stopClock(buried.id) : adoptCoats(card, data.products, Date.now()));
    const { signal } = frame;
    const flush = () => void saver.flush();
    document.addEventListener('visibilitychange', flush, { signal });
    addEventListener('pagehide', flush, { signal });
    addEventListener(
      'beforeunload',
      (event) => (saver.pending || held.current || coat.unsaved) && event.preventDefault(),
      { signal },
    );
    frame.beforeLeaving(async () => {
      await saver.flush();
      const what = coat.unsaved
        ? 'The correction of this coat is'
        : saver.pending || held.current
          ? 'A change of this card is'
          : undefined;
      return (
        !what ||
        frame.ask({ says: `${what} not saved. Leave it all the same?`, yes: 'Leave it', no: 'Stay here' })
      );
    });
    frame.onOthers(async (ids) => {
      if (!ids.includes(first.id)) return;
      const read = await readOne(first.id);
      if (read.kind === 'gone' && !saver.pending)
        frame.trouble('This card was taken away in another tab.', <a href={LIST}>All job cards</a>);
      if (read.kind !== 'card' || read.card.changedAt === saver.card.changedAt || !saver.take(read.card))
        return;
      setClashes(await readClashes(first.id));
      redraw();
      frame.say('Changed in another tab: this is the newer card.');
    });
    onWhole(
      about,
      ({ name }) => {
        const read = readPiece(draftIn(about), units);
        tellFaults(about, 'plan', read.faults);
        const change = read.changeOf(name);
        if (change) void hands.now((there) => changed(there, change, Date.now()));
      },
      signal,
    );
    about.addEventListener('submit', (event) => event.preventDefault(), { signal });
  }, []);

  const shown = useRef<JobCard | undefined>(undefined);
  const [facts, setFacts] = useState<ReturnType<typeof pieceFacts>>([]);
  const { changedAt } = card;
  useLayoutEffect(() => {
    frame.title(card.name);
    fillPiece(about, card, shown.current, units);
    shown.current = card;
    setFacts(pieceFacts(about));
  }, [changedAt]);

  const wrong = async () => {
    const latest = await written();
    if (keepCase(await caseOfCard(latest, data.products, Date.now())) && keepCardInHand(latest))
      location.assign(seeUrl([]));
    else
      frame.trouble(
        'This browser keeps no notes, so the walk can not begin with what is on this card, nor write to it.',
        <a href={seeUrl([])}>Begin it without</a>,
      );
  };
  const takeOff =
    (list: 'flaws' | 'repairs', what: string, by: (there: JobCard, id: string, at: number) => JobCard) =>
    async ({ id }: { readonly id: string }) => {
      const before = saver.card;
      if (!(await hands.now((there) => by(there, id, Date.now())))) return;
      const back = async () => {
        if (await hands.now((there) => putBack(there, before, list, id, Date.now())))
          frame.say('It is back on the card.');
      };
      frame.say(
        <>
          {what} is off the card. <Act act={back}>Put it back</Act>
        </>,
      );
    };
  const reading = lastCoatNow(card, data.products, now)?.reading;
  const stage = reading?.kind === 'running' ? reading.stage : undefined;
  /** To the page of a flaw for the film as it is now, with the answers that were given for it. */
  const lookAgain = async ({ defect, answers }: JobCard['flaws'][number]) => {
    const latest = await written();
    const on = answers.reduce<Case>(
      (so, [question, answer]) => withAnswer(so, question as QuestionId, answer),
      await caseOfCard(latest, data.products, Date.now()),
    );
    if (keepCase(on)) keepCardInHand(latest);
    const [known, { addressFor }] = await Promise.all([
      walkKnowledge(defect),
      import('../../../shared/way.ts'),
    ]);
    location.assign(
      known && stage ? nodeUrl(defect, addressFor(known, defect, stage, on)) : nowUrl(defect, stage),
    );
  };
  /** What is off the card is off the clock, where the coat below goes on; what comes back runs again. */
  const coatOff = async (one: CardCoat) => {
    const before = saver.card;
    if (!(await hands.now((there) => withoutCoat(there, one.id, Date.now())))) return;
    const ran = await stopClock(one.id);
    await adoptCoats(saver.card, data.products, Date.now());
    const back = async () => {
      if (!(await hands.now((there) => putBack(there, before, 'coats', one.id, Date.now())))) return;
      if (ran) await startClock(laidCoatOf(saver.card, one), data.products, Date.now());
      frame.say(ran ? 'It is back on the card, and its clock runs.' : 'It is back on the card.');
    };
    frame.say(
      <>
        {ran ? 'The coat is off the card, and its clock is stopped.' : 'The coat is off the card.'}{' '}
        <Act act={back}>Put it back</Act>
      </>,
    );
  };
  const itLaidNone = async (owed: CardRepair) => {
    if (await hands.now((there) => withoutItsCoat(there, owed, Date.now())))
      await adoptCoats(saver.card, data.products, Date.now());
  };
  const settled =
    ({ settledAt, ...flaw }: JobCard['flaws'][number]): CardEdit =>
    (there) =>
      withFlaw(there, settledAt === undefined ? { ...flaw, settledAt: Date.now() } : flaw, Date.now());

  const verdict = cardVerdict(card, data, now);
  const owed = card.handedOverAt === undefined ? coatOwed(card, data.lays) : undefined;
  const lays = owed && entryOf(data.lays, owed.remedy);
  const productOwed = lays && productOfRepair(card, data.products, lays);
  const { gone, enough } = verdict;
  const notYet = ['leave', 'wait', 'wipe-back'].includes(verdict.doing);
  const lastLaid = coatsInOrder(card).at(-1)?.laidAt ?? Number.POSITIVE_INFINITY;
  const isLast = card.finishedAt !== undefined && card.finishedAt >= lastLaid;
  return (
    <>
      <p class="back">
        <a href={LIST}>All job cards</a>
      </p>
      <p class={`verdict ${verdict.doing}`}>
        <span data-part="verdict">
          {verdict.large ?? verdict.verdict}
          {verdict.perhaps && <span class="unseen">, </span>}
          {verdict.perhaps && <small>{verdict.perhaps}</small>}
        </span>
      </p>
      <p class="why">{verdict.why}</p>
      <p class="small" role="status">
        {saved}
      </p>
      <div class="clash">
        {clashes.map((clash) => (
          <ClashChoice
            key={clash.id}
            clash={clash}
            card={card}
            hands={hands}
            over={() => setClashes((open) => open.filter(({ id }) => id !== clash.id))}
          />
        ))}
      </div>
      <div class="main-acts">
        {owed ? (
          <>
            <Act class="go" act={() => coat.open(productOwed)}>
              Put its coat on the clock
            </Act>
            <Act class="go second" act={() => itLaidNone(owed)}>
              It laid no coat
            </Act>
          </>
        ) : (
          <>
            {gone && (
              <Act class="go" act={() => hands.now(settled(gone))}>
                It is gone
              </Act>
            )}
            <Act class={notYet || isLast || enough ? 'go second' : 'go'} act={() => coat.open()}>
              {enough
                ? 'Lay a coat: thick enough'
                : notYet
                  ? 'Lay a coat: not yet'
                  : isLast
                    ? 'One more coat'
                    : 'Lay a coat'}
            </Act>
          </>
        )}
        <Act class="go second" act={wrong}>
          Something looks wrong
        </Act>
      </div>
      <Adopted element={coat.place} shown={false} />
      <div class="paper">
        <DefinitionRows class="facts" of={facts} />
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
              correct={(one: CardCoat) => coat.correct(one)}
              takeOff={coatOff}
            />
            <FlawList
              card={card}
              data={data}
              stage={stage}
              look={lookAgain}
              settle={(flaw) => hands.now(settled(flaw))}
              takeOff={takeOff('flaws', 'The flaw', withoutFlaw)}
            />
            <RepairList card={card} data={data} takeOff={takeOff('repairs', 'The repair', withoutRepair)} />
            <PhotoBoard card={card} hands={hands} />
          </div>
        </div>
      </div>
      <CardActs card={card} data={data} hands={hands} written={written} />
    </>
  );
};
