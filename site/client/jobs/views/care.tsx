import { useLayoutEffect, useState } from 'preact/hooks';
import { careOf } from '#engine/jobs/care.ts';
import { datesOfCard } from '#engine/jobs/care-dates.ts';
import { jobCardUrl } from '../../../shared/jobs-urls.ts';
import looks from '../../../styles/jobs-care.css?inline';
import { calendarAt } from '../../shared/calendar.ts';
import { wear } from '../../shared/late-style.ts';
import { pageUnits, sayLongDate } from '../../shared/say-date.ts';
import { jobsData } from '../parts/data.ts';
import { onBothFaces } from '../parts/from-plan.ts';
import { nightOfCard, sayNights } from '../parts/night.ts';
import { readOne } from '../store/index.ts';
import { Act, LIST, useLoaded } from './controls.tsx';
import { useFrame } from './frame.ts';

wear(looks);

const Lines = ({ title, lines }: { readonly title: string; readonly lines: readonly { say: string }[] }) =>
  lines.length ? (
    <section>
      <h2>{title}</h2>
      <ul>
        {lines.map(({ say }) => (
          <li key={say}>{say}</li>
        ))}
      </ul>
    </section>
  ) : null;

type Care = Extract<ReturnType<typeof careOf>, { kind: 'care' }>;

/** What is not done yet, each date once; nothing for one where none is promised. */
const byDate = (notYet: Care['notYet']): readonly (readonly [until: string, say: string])[] => {
  const days = new Map<string, string[]>();
  for (const { until, say } of notYet) {
    const day = until === undefined ? '' : sayLongDate(until);
    days.set(day, [...(days.get(day) ?? []), say]);
  }
  return [...days].flatMap(([day, all]) =>
    day ? [[day, all.join(' ')] as const] : all.map((say) => ['', say] as const),
  );
};

const Moment = ({ name, at }: { readonly name: string; readonly at: number }) => (
  <div class="tape">
    <dt>{name}</dt>
    <dd>{sayLongDate(at)}</dd>
  </div>
);

/** What paper alone has. */
const TO_FILL_IN = ['Shop', 'Telephone', 'Handed over on', 'Signed'];

const Paper = ({ care }: { readonly care: Care }) => (
  <article class="care">
    <p class="made-of">{care.madeOf.map(({ say }) => say).join(' ')}</p>
    {care.dates ? (
      <dl class="dates">
        {care.dates.handOver !== undefined && care.dates.handOver !== care.dates.lightUse && (
          <Moment name="Ready to hand over" at={care.dates.handOver} />
        )}
        <Moment
          name={
            care.dates.handOver === care.dates.lightUse
              ? 'Ready; light, careful use from'
              : 'Light, careful use from'
          }
          at={care.dates.lightUse}
        />
        <Moment name="Full use from" at={care.dates.fullUse} />
      </dl>
    ) : (
      <p class="caution">{care.noDates ?? ''}</p>
    )}
    <div class="rows">
      {care.notYet.length > 0 && (
        <section>
          <h2>Not yet</h2>
          <ul>
            {byDate(care.notYet).map(([until, say]) => (
              <li key={say}>
                {until && <b>{`Until ${until}: `}</b>}
                {say}
              </li>
            ))}
          </ul>
        </section>
      )}
      <Lines title="Cleaning" lines={care.cleaning} />
      <Lines title="Upkeep" lines={care.upkeep} />
      <Lines title="Take care" lines={care.cautions} />
      <Lines title="What is not promised" lines={care.promise} />
    </div>
    {/* Filled in by hand where it changes hands. */}
    <dl class="for-paper ruled">
      {TO_FILL_IN.map((line) => (
        <div key={line}>
          <dt>{line}</dt>
          <dd />
        </div>
      ))}
    </dl>
  </article>
);

/** The card that goes with the piece to its buyer: one page of paper. */
export const CareView = ({ id }: { readonly id: string }) => {
  const frame = useFrame();
  const [version, setVersion] = useState(0);
  const loaded = useLoaded(async () => {
    const [read, data] = await Promise.all([readOne(id), jobsData()]);
    return { read, data };
  }, `${id} ${version}`);
  useLayoutEffect(() => {
    frame.title('Care card');
    frame.onOthers((ids) => ids.includes(id) && setVersion((count) => count + 1));
  }, []);
  const back = (
    <p class="back">
      <a href={jobCardUrl(id)}>Back to the job card</a>
    </p>
  );
  if (!loaded) return null;
  const { read, data } = loaded;
  if (read.kind !== 'card')
    return (
      <>
        <p>Without its job card there is no care card: the card is not here, or could not be read.</p>
        <p>
          <a href={LIST}>All job cards</a>
        </p>
      </>
    );
  const { card } = read;
  const night = nightOfCard(card);
  const dates = datesOfCard(
    night ? { ...card, night } : card,
    data.products,
    data.plan,
    calendarAt,
    pageUnits(),
  );
  const care = careOf(card, data.products, data.care, dates, onBothFaces(card));
  if (care.kind === 'no')
    return (
      <>
        <p class="verdict stop">No care card</p>
        {care.why.map(({ say }) => (
          <p class="why" key={say}>
            {say}
          </p>
        ))}
        {back}
      </>
    );
  frame.title(`Care card: ${card.name}`);
  return (
    <>
      <p class="care-acts">
        <Act class="go" act={() => print()}>
          Print this care card
        </Act>
      </p>
      <Paper care={care} />
      {dates.kind === 'dates' && dates.unknownNights && (
        <p class="wide-dates">{sayNights(dates, data.plan.night['supposed-colder'], pageUnits() === 'us')}</p>
      )}
      {back}
    </>
  );
};
