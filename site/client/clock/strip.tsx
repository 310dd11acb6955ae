import { render } from 'preact';
import {
  type ClockProduct,
  clockDoubt,
  clockNow,
  type LaidCoat,
  type Reading,
  sayNow,
  unreadyOf,
  wettestFirst,
} from '#engine/clock.ts';
import { entryOf } from '#engine/plain/entry-of.ts';
import { clockWords } from '../../shared/clock-words.ts';
import { standingNow } from '../../shared/stages.ts';
import { partIn } from '../shared/element.ts';
import { everyTick } from '../shared/tick.ts';
import { timeStyle } from '../shared/time-style.ts';
import { toldOnce } from '../shared/told-once.ts';
import { piecesApart } from './apart.ts';
import { showClockOnWalk } from './on-walk.ts';
import { showStepTimes } from './step-times.ts';
import { currentCoat, loadClock, noteSeen, onClockChange } from './store.ts';

type Props = {
  readonly url: string;
  readonly coat: LaidCoat;
  readonly product: ClockProduct | undefined;
  readonly reading: Reading | undefined;
  readonly now: number;
  readonly inBand: boolean;
  /** What tells it from others of its name. */
  readonly apart: string | undefined;
};

const isDrying = (reading: Reading | undefined): boolean =>
  reading?.kind === 'refused' || (reading?.kind === 'running' && reading.stage !== 'cured');

/** From so many letters on the band of a phone has two lines for the verdict, in smaller type, and the same room. */
const LONG = 34;

const Strip = ({ url, coat, product, reading, now, inBand, apart }: Props) => {
  const said = reading && sayNow(clockWords, reading, now, timeStyle());
  const verdict = said
    ? // The band has the late end alone: hands stay off until then.
      said[inBand ? 'large' : 'verdict']
    : `${product ? 'The clock of this device is to be doubted' : 'Its product is not known here'}. Open the clock.`;
  const standing = reading?.kind === 'running' ? standingNow(reading) : undefined;
  return (
    <a class={inBand ? 'in-band' : 'tape'} href={url}>
      <b>{coat.piece}</b> {apart && <i>{apart}</i>}{' '}
      {standing && <i>{inBand ? `· ${standing}` : `· Now ${standing}`}</i>}{' '}
      <span class={verdict.length > LONG ? 'long' : undefined}>{verdict}</span>
    </a>
  );
};

/**
 * Where the clock speaks: over the foot of a page, or, on the first page, in the band that says hands off anyway. What
 * stood there comes back when no coat runs.
 */
const placeFor = (host: HTMLElement): HTMLElement => {
  const band = partIn(document, 'first-word')?.querySelector('span');
  if (!band || band.parentElement?.dataset['clocked'] !== undefined) return band ?? host;
  const words = band.textContent;
  band.replaceChildren();
  if (band.parentElement) band.parentElement.dataset['clocked'] = words;
  return band;
};

/** The band has its first word back. */
const leave = (host: HTMLElement): void => {
  const band = partIn(document, 'first-word');
  const place = band?.querySelector('span');
  render(null, host);
  const words = band?.dataset['clocked'];
  if (!band || !place || words === undefined) return;
  render(null, place);
  place.textContent = words;
  delete band.dataset['clocked'];
};

/** Draws the strip of the coat in hand and tells the page what the clock knows, again and again. */
export const runStrip = (host: HTMLElement, signal: AbortSignal): void => {
  const url = host.dataset['clock'] ?? '/';
  const tell = async (): Promise<void> => {
    const { store } = await loadClock();
    if (signal.aborted) return;
    const coat = currentCoat(store, Date.now());
    if (!coat) {
      leave(host);
      return;
    }
    const now = Date.now();
    const style = timeStyle();
    const doubt = clockDoubt(store.seenAt, now);
    toldOnce('of', coat.id);
    const place = placeFor(host);
    if (place === host) {
      host.setAttribute('role', 'region');
      host.setAttribute('aria-label', 'Coat clock');
    }
    const read = (one: LaidCoat): Reading | undefined => {
      const known = entryOf(store.products, one.product);
      return known && !doubt ? clockNow(known, one, now, store.products) : undefined;
    };
    const reading = read(coat);
    const apart = piecesApart(store.coats, store.products, now, style);
    // The band has the room of one coat: the wettest, which hands stay off longest.
    const shown = (place === host ? undefined : unreadyOf(store, now)[0]) ?? coat;
    render(
      <Strip
        url={url}
        coat={shown}
        product={entryOf(store.products, shown.product)}
        reading={read(shown)}
        now={now}
        inBand={place !== host}
        apart={apart.get(shown.id)}
      />,
      place,
    );
    if (reading?.kind === 'running' && reading.stage !== 'cured') {
      const others = wettestFirst(store, now).filter((one) => one !== coat && isDrying(read(one)));
      const nameOf = ({ id, piece }: LaidCoat) => [piece, apart.get(id)].filter(Boolean).join(', ');
      showStepTimes(reading, now, style);
      showClockOnWalk({ coat, others, nameOf }, reading, now, style, signal);
    }
    if (!doubt) await noteSeen(store, now);
  };
  everyTick(() => void tell(), signal);
  onClockChange(() => void tell(), signal);
};
