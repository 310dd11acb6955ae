import { besideProblem, sayWeatherReasons } from '#engine/calc/say-weather.ts';
import { weatherVerdict } from '#engine/calc/weather.ts';
import {
  type ClockProduct,
  clockNow,
  isLateAtOnce,
  type LaidCoat,
  labelHere,
  laidBeforeClocks,
  nextCoatSpan,
  type Running,
  rightAgain,
  sayInstant,
  sayMoment,
  sayNow,
  sayReasons,
  type TimeStyle,
  unsandedFor,
  wetFilmOf,
} from '#engine/clock.ts';
import { entryOf } from '#engine/plain/entry-of.ts';
import { upper } from '#engine/plain/text.ts';
import { clockWords } from '../../shared/clock-words.ts';
import { jobCardUrl } from '../../shared/jobs-urls.ts';
import { standingNow } from '../../shared/stages.ts';
import type { Units } from '../shared/form/units.ts';
import { sayAir, sayFilm, sayWholeDegrees } from '../shared/say-units.ts';
import { recall } from '../shared/storage.ts';
import { canOf } from './draft.ts';
import { LifeLine } from './life-line.tsx';

export type CoatActs = {
  readonly next: (coat: LaidCoat) => void;
  /** Counts the coat anew, from a time at which its air was right. */
  readonly anew: (coat: LaidCoat) => void;
  readonly remind: (coat: LaidCoat, reading: Running) => void;
  readonly look: (coat: LaidCoat) => void;
  readonly off: (coat: LaidCoat) => void;
};
type Props = {
  readonly coat: LaidCoat;
  readonly products: Readonly<Record<string, ClockProduct>>;
  readonly now: number;
  readonly style: TimeStyle & { readonly units: Units };
  /** Why nothing that the device says of the time can be trusted; nothing where it can. */
  readonly doubt: string | undefined;
  /** The only coat, the one that answers in the questions, or one of several. */
  readonly rank: 'one' | 'current' | 'other';
  readonly acts: CoatActs;
};

/** What each time is called; once it is over it says since when. Over the last coat, and over a film that is thick enough, comes no other. */
const namesOf = (running: Running, now: number) => {
  const { sanded, thin, last, pastMost, buff, moments } = running;
  const unsanded = unsandedFor(clockWords, running);
  const next = thin || buff || unsanded ? 'Next coat' : sanded ? 'Sand and recoat' : 'Buff and recoat';
  const span = nextCoatSpan(moments, now);
  const asItIs = span.to === moments['no-coat']?.from;
  const late = unsanded ? unsanded.due : thin ? 'dull it first' : 'always sand first';
  const isLate = now >= (moments['sand-if-beyond']?.from ?? Number.POSITIVE_INFINITY);
  const always = unsanded
    ? upper(unsanded.due)
    : thin
      ? 'Dull it before the next coat'
      : 'Sand before the next coat';
  const coats = [
    ['recoat', asItIs ? 'Next coat, as it is' : now >= span.to ? next : `${next} from`],
    ['no-coat', 'No coat on it'],
    ['sand-if-beyond', isLateAtOnce(moments) ? always : isLate ? upper(late) : `Later than this, ${late}`],
  ] as const;
  const handled = [['handle', 'Handle or turn it']] as const;
  const handledLate = (moments.handle?.to ?? 0) > moments.recoat.to;
  return [
    ['touch', buff ? 'Dull: buff it' : 'Dry to the touch'],
    ...(handledLate ? [] : handled),
    ...(last || pastMost !== undefined ? [] : coats),
    ...(handledLate ? handled : []),
    ['light-use', 'Light use'],
    ['cure', 'Fully cured'],
  ] as const;
};

/** Where no night is told the clock knows one air; the care card and the plan let nights be colder, so their dates are later. */
const SAME_AIR =
  'Light use and full cure are told for the air above, day and night. Colder nights put them off, and a cold one may keep a fresh film from drying at all: a care card and the plan allow for that, so theirs are the dates to promise.';
const withNight = (celsius: number, units: Units): string =>
  `Nights of ${sayWholeDegrees(celsius, units === 'us')} are allowed for in all of these times.`;

/** What the times make of nights; of many clocks only what is told of its own. */
export const SameAir = ({ night, units }: { readonly night?: number | undefined; readonly units: Units }) => (
  <p class="small" data-part="nights">
    {night === undefined ? SAME_AIR : withNight(night, units)}
  </p>
);

type TimesProps = {
  readonly coat: LaidCoat;
  readonly reading: Running;
  /** The only coat on the clock: what holds for all is said with its times. */
  readonly alone: boolean;
} & Pick<Props, 'now' | 'style'>;

/** The times of a coat in their order, what makes each uncertain, and what the can has to do with it. */
const Times = ({ coat, reading, alone, now, style }: TimesProps) => {
  const common = sayReasons(clockWords, reading.moments.touch.reasons);
  const can = labelHere(clockWords, coat, reading, style.units);
  const anyway = (milestone: string) => milestone === 'sand-if-beyond' && isLateAtOnce(reading.moments);
  return (
    <>
      <dl class="moments">
        {namesOf(reading, now).map(([milestone, name]) => {
          const moment = reading.moments[milestone];
          if (!moment) return null;
          const span = milestone === 'recoat' ? nextCoatSpan(reading.moments, now) : moment;
          // Hours that are a rule of the can are no guess.
          const isRule = reading.moments['no-coat'] && ['recoat', 'no-coat'].includes(milestone);
          const reasons = now >= moment.to || isRule ? '' : sayReasons(clockWords, moment.reasons);
          const byCan = can.find((one) => one.milestone === milestone)?.says;
          return (
            <div key={milestone} data-moment={milestone}>
              <dt>{name}</dt>
              <dd>
                <b>{anyway(milestone) ? 'in any case' : sayMoment(milestone, span, now, style)}</b>{' '}
                <span class="small">
                  {[byCan, anyway(milestone) ? clockWords.late.always : reasons === common ? '' : reasons]
                    .filter(Boolean)
                    .join(' ')}
                </span>
              </dd>
            </div>
          );
        })}
      </dl>
      <p class="small" data-part="doubt">
        {common}
      </p>
      {now < reading.moments.cure.to && (alone || reading.night) && (
        <SameAir night={reading.night?.celsius} units={style.units} />
      )}
    </>
  );
};

/** The wet film, where its amount was measured: a gauge reads the same. */
const sayWetFilm = (product: ClockProduct, coat: LaidCoat, units: Units): string => {
  const film = coat.amount && wetFilmOf(product, coat);
  return film ? `, ${sayFilm(film, film, units === 'us')} wet` : '';
};

const UNKNOWN = (product: string) =>
  `This coat was kept with a product, “${product}”, that this clock does not know. Lay it again with the product that is on the can.`;
const UNSET =
  'It was noted while the clock of this device was not set, so nothing can be told from its time. Lay it again with the time at which it was laid.';

/** What leads on right where no time can be told: the time is counted from now. A card holds its coats itself. */
const InTheWarm = ({
  coat,
  reading,
  anew,
}: {
  readonly coat: LaidCoat;
  readonly reading: Parameters<typeof rightAgain>[1];
  readonly anew: CoatActs['anew'];
}) => (
  <p class="acts">
    {coat.card ? (
      <a class="quiet" href={jobCardUrl(coat.card)}>
        {rightAgain(clockWords, reading)}: say so on its card
      </a>
    ) : (
      <button type="button" class="quiet" data-act="anew" onClick={() => anew(coat)}>
        {rightAgain(clockWords, reading)}: count from now
      </button>
    )}
  </p>
);

/** What stands against any time of this coat, and what the clock reads where nothing does. */
export const readCoat = ({
  coat,
  products,
  now,
  doubt,
}: Pick<Props, 'coat' | 'products' | 'now' | 'doubt'>) => {
  const product = entryOf(products, coat.product);
  const why = product
    ? (doubt ?? (laidBeforeClocks(coat.laidAt) ? UNSET : undefined))
    : UNKNOWN(coat.product);
  return { product, why, reading: product && !why ? clockNow(product, coat, now, products) : undefined };
};

/** One coat on the clock: what hands do now, until when, and what comes later. */
export const CoatOnClock = ({ coat, products, now, style, doubt, rank, acts }: Props) => {
  const { product, why, reading } = readCoat({ coat, products, now, doubt });
  const running = reading?.kind === 'running' ? reading : undefined;
  const said = reading
    ? sayNow(clockWords, reading, now, style)
    : { doing: 'leave', large: 'Hands off, and no time can be told', earliest: undefined, why };
  const weather = product && weatherVerdict(product, coat);
  const can = canOf(coat, recall('cans')?.cans ?? []);
  // What no time can be told for is said above, with what leads on.
  const problem = reading?.kind === 'refused' ? reading.problem : undefined;
  const against = weather?.ok && { ...weather.value, reasons: besideProblem(weather.value.reasons, problem) };
  return (
    <article class={`on-clock ${rank}`} tabIndex={-1} data-coat={coat.id}>
      <h2>{coat.piece}</h2>
      <p class="small" data-part="what">
        {product &&
          `Coat ${coat.coatNumber}, ${product.name.toLowerCase()}${can ? ` “${can}”` : ''}, laid ${sayInstant(coat.laidAt, now, style)} at ${sayAir(coat, style.units)}${sayWetFilm(product, coat, style.units)}`}
      </p>
      <p class={`verdict ${said.doing}`}>
        <span data-part="verdict">
          {said.large}
          {said.earliest && <span class="unseen">, </span>}
          {said.earliest && <small>{said.earliest}</small>}
        </span>
      </p>
      <p class="why" data-part="why">
        {said.why}
      </p>
      {reading?.kind === 'refused' && <InTheWarm coat={coat} reading={reading} anew={acts.anew} />}
      <p role="status">
        <b data-part="stage">{running && `Now: ${standingNow(running)}.`}</b>
      </p>
      {running && <LifeLine reading={running} coat={coat} now={now} />}
      {running && <Times coat={coat} reading={running} alone={rank === 'one'} now={now} style={style} />}
      <ul class="weather-now">
        {against &&
          sayWeatherReasons(clockWords, against, problem ? 'told' : 'during', style.units).map(
            ({ reason, says }) => <li key={reason.code}>{says}</li>,
          )}
      </ul>
      <p class="acts">
        <button type="button" class="quiet" data-act="next" onClick={() => acts.next(coat)}>
          Next coat on this piece
        </button>
        {running && (
          <button type="button" class="quiet" data-act="remind" onClick={() => acts.remind(coat, running)}>
            Reminders for the calendar
          </button>
        )}
        {rank === 'other' && (
          <button type="button" class="quiet" data-act="look" onClick={() => acts.look(coat)}>
            Look at this one in the questions
          </button>
        )}
        {coat.card && (
          <a class="quiet" href={jobCardUrl(coat.card)}>
            Its job card
          </a>
        )}
        <button type="button" class="plain" data-act="off" onClick={() => acts.off(coat)}>
          Stop this clock
        </button>
      </p>
    </article>
  );
};
