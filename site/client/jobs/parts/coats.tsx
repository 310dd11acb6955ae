import type { LaidCoat } from '#engine/clock.ts';
import { coatsInOrder } from '#engine/jobs.ts';
import type { CardCoat, JobCard } from '#engine/model/job-card.ts';
import { plainId } from '../../shared/plain-id.ts';
import { sayDateTime } from '../../shared/say-date.ts';
import { sayHardener } from '../../shared/say-hardener.ts';
import { sayAir, sayArea, sayLiters } from '../../shared/say-units.ts';
import { Act } from '../views/controls.tsx';
import type { JobsData } from './data.ts';
import { LimitNote } from './limit-note.tsx';
import { productNameOf } from './names.ts';

/** A coat from the form of the clock, as it stands on a card: without what the card itself knows, or what is not told. */
export const cardCoatOf = (laid: LaidCoat): CardCoat => {
  const {
    id,
    laidAt,
    product,
    label,
    celsius,
    relativeHumidity,
    surfaceCelsius,
    applicator,
    hardener,
    amount,
  } = laid;
  return {
    id,
    laidAt,
    product,
    celsius,
    relativeHumidity,
    ...(label !== undefined && { label }),
    ...(surfaceCelsius !== undefined && { surfaceCelsius }),
    ...(applicator !== undefined && { applicator }),
    ...(hardener !== undefined && { hardener }),
    ...(amount !== undefined && { amount }),
    // One that is corrected keeps when it was before.
    ...('changedAt' in laid && typeof laid.changedAt === 'number' && { changedAt: laid.changedAt }),
  };
};

const amountOf = ({ amount }: CardCoat, us: boolean): string =>
  amount ? `${sayLiters(amount.milliliters / 1000, us)} on ${sayArea(amount.squareMeters, us)}` : '';

/** The row of a coat, by its id. */
export const coatRow = (list: HTMLElement, id: string): HTMLElement | undefined =>
  [...list.querySelectorAll<HTMLElement>('li[data-coat]')].find((row) => row.dataset['coat'] === id);

type CoatAct = (coat: CardCoat) => Promise<unknown>;
type Props = {
  readonly card: JobCard;
  readonly data: JobsData;
  readonly us: boolean;
  readonly correct: CoatAct;
  readonly takeOff: CoatAct;
};

/** Each coat in the order laid, with all that was noted. */
export const CoatList = ({ card, data, us, correct, takeOff }: Props) => (
  <section>
    <h2>Coats</h2>
    {card.coats.length ? (
      <ol class="laid">
        {coatsInOrder(card).map((coat, index) => (
          <li key={coat.id} data-coat={coat.id}>
            {/* The words beside the tape say the number again. */}
            <i class="tape" aria-hidden="true">
              {index + 1}
            </i>
            <b>{`Coat ${index + 1}, ${productNameOf(data, coat.product).toLowerCase()}`}</b>
            <span class="when">{sayDateTime(coat.laidAt)}</span>
            <p class="small">
              {[
                amountOf(coat, us),
                coat.applicator && `by ${plainId(coat.applicator)}`,
                coat.hardener && sayHardener(coat.hardener),
                sayAir(coat, us ? 'us' : 'metric'),
                coat.note,
              ]
                .filter(Boolean)
                .join('; ')}
            </p>
            <p class="row-acts">
              <Act class="plain" mark="correct" act={() => correct(coat)}>
                {`Correct coat ${index + 1}`}
              </Act>
              <Act class="plain" act={() => takeOff(coat)}>
                Take it off the card
              </Act>
            </p>
          </li>
        ))}
      </ol>
    ) : (
      <p class="small">None yet.</p>
    )}
    <LimitNote list="coats" card={card} />
  </section>
);
