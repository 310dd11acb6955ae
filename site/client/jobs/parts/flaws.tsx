import type { CardFlaw, CardRepair, JobCard } from '#engine/model/job-card.ts';
import type { Stage } from '#engine/model/stage.ts';
import { entryOf } from '#engine/plain/entry-of.ts';
import { HOUR_MS } from '#engine/plain/time.ts';
import { choices } from '../../../shared/choices.ts';
import { nowUrl, remedyUrl } from '../../../shared/urls.ts';
import { counted } from '../../shared/counted.ts';
import { sayDate, sayDateTime } from '../../shared/say-date.ts';
import { Act } from '../views/controls.tsx';
import type { JobsData } from './data.ts';
import { LimitNote } from './limit-note.tsx';
import { nameIn } from './names.ts';

const ANSWER = { yes: 'yes', no: 'no', unsure: 'can’t tell' } as const;

/** When it was found, and where it was found again since. */
const sayFound = ({ foundAt, changedAt, settledAt }: CardFlaw): string => {
  if (settledAt !== undefined) return `${sayDate(settledAt)}; found ${sayDateTime(foundAt)}`;
  // A second tap is no second look.
  return changedAt === undefined || changedAt - foundAt < HOUR_MS
    ? `Found ${sayDateTime(foundAt)}`
    : `Found ${sayDateTime(foundAt)}, noted again ${sayDateTime(changedAt)}`;
};

type FlawProps = {
  readonly flaw: CardFlaw;
  readonly data: JobsData;
  /** Its page for the film as it is now. */
  readonly url: string;
  readonly look: () => Promise<unknown>;
  readonly settle: () => Promise<unknown>;
  readonly takeOff: () => Promise<unknown>;
};

const FlawRow = ({ flaw, data, url, look, settle, takeOff }: FlawProps) => {
  const known = entryOf(data.defects, flaw.defect);
  const open = flaw.settledAt === undefined;
  return (
    <li>
      {known ? (
        <a
          href={url}
          onClick={(event) => {
            event.preventDefault();
            void look();
          }}
        >
          {known}
        </a>
      ) : (
        <b>{nameIn(data.defects, flaw.defect)}</b>
      )}
      <span class="when">
        <b class={open ? 'label stop' : 'label'}>{open ? 'open' : 'settled'}</b>
        {sayFound(flaw)}
        {flaw.part && `, ${choices.part.values[flaw.part].toLowerCase()}`}
      </span>
      {flaw.answers.length > 0 && (
        <details>
          <summary>{counted(flaw.answers.length, 'answer')}</summary>
          <ul>
            {flaw.answers.map(([question, answer], index) => (
              <li key={index}>
                {nameIn(data.questions, question)} <b>{ANSWER[answer]}</b>
              </li>
            ))}
          </ul>
        </details>
      )}
      <p class="row-acts">
        <Act class="plain" act={settle}>
          {open ? 'Settled: repaired or good enough' : 'Not settled after all'}
        </Act>
        <Act class="plain" act={takeOff}>
          Take it off the card
        </Act>
      </p>
    </li>
  );
};

type Entries<T> = {
  readonly card: JobCard;
  readonly data: JobsData;
  readonly takeOff: (entry: T) => Promise<unknown>;
};

/** What was found, how it was answered, and whether it is settled. */
export const FlawList = ({
  card,
  data,
  stage,
  look,
  settle,
  takeOff,
}: Entries<CardFlaw> & {
  /** How dry the film is now, by its clock. */
  readonly stage: Stage | undefined;
  readonly look: (flaw: CardFlaw) => Promise<unknown>;
  readonly settle: (flaw: CardFlaw) => Promise<unknown>;
}) => (
  <section>
    <h2>Flaws</h2>
    {card.flaws.length ? (
      <ul class="found">
        {card.flaws.map((flaw) => (
          <FlawRow
            key={flaw.id}
            flaw={flaw}
            data={data}
            url={nowUrl(flaw.defect, stage)}
            look={() => look(flaw)}
            settle={() => settle(flaw)}
            takeOff={() => takeOff(flaw)}
          />
        ))}
      </ul>
    ) : (
      <p class="small">None noted. ‘Something looks wrong’ walks you to the cause and notes it here.</p>
    )}
    <LimitNote list="flaws" card={card} />
  </section>
);

export const RepairList = ({ card, data, takeOff }: Entries<CardRepair>) => (
  <section>
    <h2>Repairs</h2>
    {card.repairs.length ? (
      <ul class="found">
        {card.repairs.map((repair) => {
          const known = entryOf(data.remedies, repair.remedy);
          const flaw = card.flaws.find(({ id }) => id === repair.flaw);
          return (
            <li key={repair.id}>
              {known ? (
                <a href={remedyUrl(repair.remedy)}>{known}</a>
              ) : (
                <b>{nameIn(data.remedies, repair.remedy)}</b>
              )}
              <span class="when">
                {sayDateTime(repair.doneAt)}
                {flaw && `, for ${nameIn(data.defects, flaw.defect).toLowerCase()}`}
              </span>
              {repair.note && <p class="small">{repair.note}</p>}
              {repair.laidNoCoat && <p class="small">No coat was laid.</p>}
              <Act class="plain" act={() => takeOff(repair)}>
                Take it off the card
              </Act>
            </li>
          );
        })}
      </ul>
    ) : (
      <p class="small">None noted.</p>
    )}
    <LimitNote list="repairs" card={card} />
  </section>
);
