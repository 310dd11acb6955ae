import { coatOwed, coatsInOrder, productOfRepair } from '#engine/jobs.ts';
import type { CardFlaw, JobCard } from '#engine/model/job-card.ts';
import { entryOf } from '#engine/plain/entry-of.ts';
import type { CoatOnCard } from '../parts/coat-form.tsx';
import type { JobsData } from '../parts/data.ts';
import { type CardVerdict, isNotYet } from '../parts/verdict.ts';
import { Act } from './controls.tsx';
import type { TakeOff } from './take-off.tsx';

/** What the card says of now: the verdict in large, why below it. */
export const VerdictHead = ({ verdict }: { readonly verdict: CardVerdict }) => (
  <>
    <p class={`verdict ${verdict.doing}`}>
      <span data-part="verdict">
        {verdict.large ?? verdict.verdict}
        {verdict.earliest && <span class="unseen">, </span>}
        {verdict.earliest && <small>{verdict.earliest}</small>}
      </span>
    </p>
    <p class="why">{verdict.why}</p>
  </>
);

/** What the button that lays a coat is called, and how it looks: the first thing to do, one of two, or none to be done now. */
const layingNext = (card: JobCard, { doing, enough }: CardVerdict): { says: string; look: string } => {
  if (enough) return { says: 'Lay a coat: thick enough', look: 'go later' };
  if (isNotYet(doing)) return { says: 'Lay a coat: not yet', look: 'go later' };
  const lastLaid = coatsInOrder(card).at(-1)?.laidAt ?? Number.POSITIVE_INFINITY;
  const isLast = card.finishedAt !== undefined && card.finishedAt >= lastLaid;
  return isLast ? { says: 'One more coat', look: 'go second' } : { says: 'Lay a coat', look: 'go' };
};

type Props = {
  readonly card: JobCard;
  readonly data: JobsData;
  readonly verdict: CardVerdict;
  readonly coat: CoatOnCard;
  readonly takeOff: TakeOff;
  readonly settle: (flaw: CardFlaw) => unknown;
  readonly wrong: () => unknown;
};

/** The few things that are done from here; where a repair laid a coat that is not on the card, that comes first. */
export const MainActs = ({ card, data, verdict, coat, takeOff, settle, wrong }: Props) => {
  const owed = card.handedOverAt === undefined ? coatOwed(card, data.lays) : undefined;
  const lays = owed && entryOf(data.lays, owed.remedy);
  const { gone } = verdict;
  const laying = layingNext(card, verdict);
  return (
    <div class="main-acts">
      {owed ? (
        <>
          <Act class="go" act={() => coat.open(lays && productOfRepair(card, data.products, lays))}>
            Put its coat on the clock
          </Act>
          <Act class="go second" act={() => takeOff.itsCoat(owed)}>
            It laid no coat
          </Act>
        </>
      ) : (
        <>
          {gone && (
            <Act class="go" act={() => settle(gone)}>
              It is gone
            </Act>
          )}
          <Act class={laying.look} act={() => coat.open()}>
            {laying.says}
          </Act>
        </>
      )}
      <Act class="go second" act={wrong}>
        Something looks wrong
      </Act>
    </div>
  );
};
