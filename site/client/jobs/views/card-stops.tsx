import { mayHoldLead, type Reading, rightAgain } from '#engine/clock.ts';
import { coatsInOrder, layersOf } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { clockWords } from '../../../shared/clock-words.ts';
import { LEAD } from '../../../shared/lead.ts';
import { ruleUrl } from '../../../shared/urls.ts';
import { Caution } from '../../shared/caution.tsx';
import type { CoatOnCard } from '../parts/coat-form.tsx';
import type { JobsData } from '../parts/data.ts';
import type { CardVerdict } from '../parts/verdict.ts';
import { Act } from './controls.tsx';

/** Opens every fold round the field of the coldest night, and goes to it. */
const toNight = (about: HTMLFormElement): void => {
  const field = about.elements.namedItem('night');
  if (!(field instanceof HTMLElement)) return;
  for (let fold = field.closest('details'); fold; fold = fold.parentElement?.closest('details') ?? null)
    fold.open = true;
  field.focus();
};

/** The stop over old paint that may hold lead, with where it leads on. */
const LeadStop = ({ rule }: { readonly rule: JobsData['lead'] }) => (
  <div class="weather">
    <Caution rule={rule} />
    <p>
      <a href={ruleUrl('is-there-old-paint-below')}>Is there old paint below?</a>{' '}
      <a href={ruleUrl(LEAD)}>How to test it</a>
    </p>
  </div>
);

type Props = {
  readonly card: JobCard;
  readonly data: JobsData;
  readonly verdict: CardVerdict;
  readonly reading: Reading | undefined;
  readonly about: HTMLFormElement;
  readonly coat: CoatOnCard;
};

/** What stands right below the verdict: how a coat that can not be told is counted anew, and the stop of the piece. */
export const CardStops = ({ card, data, verdict, reading, about, coat }: Props) => {
  const top = coatsInOrder(card).at(-1);
  return (
    <>
      {reading?.kind === 'refused' && top && verdict.doing === 'leave' && (
        <p class="acts">
          {reading.night !== undefined && (
            <Act act={() => toNight(about)}>The nights are not so cold: correct them</Act>
          )}
          <Act act={() => coat.fromNow(top)}>{`${rightAgain(clockWords, reading)}: count from now`}</Act>
        </p>
      )}
      {mayHoldLead(card.age) && <LeadStop rule={data.lead} />}
      {layersOf(card, data.products).twoPart === 'surely' && (
        <div class="weather">
          <Caution rule={data.twoPart} />
        </div>
      )}
    </>
  );
};
