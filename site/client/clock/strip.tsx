import { render } from 'preact';
import {
  type ClockProduct,
  clockDoubt,
  clockNow,
  type LaidCoat,
  type Reading,
  sayNow,
} from '#engine/clock.ts';
import { entryOf } from '#engine/entry-of.ts';
import { standingNow } from '../../shared/stages.ts';
import { everyTick } from '../shared/tick.ts';
import { timeStyle } from '../shared/time-style.ts';
import { showClockOnWalk } from './on-walk.ts';
import { showStepTimes } from './step-times.ts';
import { currentCoat, loadClock, noteSeen, onClockChange } from './store.ts';

type Props = {
  readonly url: string;
  readonly coat: LaidCoat;
  readonly product: ClockProduct | undefined;
  readonly reading: Reading | undefined;
  readonly now: number;
};

const Strip = ({ url, coat, product, reading, now }: Props) => (
  <a class="tape" href={url}>
    <b>{coat.piece}</b>{' '}
    {reading?.kind === 'running' && <i>Now {standingNow(reading.stage, reading.sureness)}</i>}{' '}
    <span>
      {reading
        ? sayNow(reading, now, timeStyle()).verdict
        : `${product ? 'The clock of this device is to be doubted' : 'Its product is not known here'}. Open the clock.`}
    </span>
  </a>
);

/** Draws the strip of the coat in hand and tells the page what the clock knows, again and again. */
export const runStrip = (host: HTMLElement, signal: AbortSignal): void => {
  const url = host.dataset['clock'] ?? '/';
  const tell = async (): Promise<void> => {
    const { store } = await loadClock();
    if (signal.aborted) return;
    const coat = currentCoat(store);
    if (!coat) {
      render(null, host);
      return;
    }
    const now = Date.now();
    const style = timeStyle();
    const product = entryOf(store.products, coat.product);
    const doubt = clockDoubt(store.seenAt, now, style);
    const reading = product && !doubt ? clockNow(product, coat, now, store.products) : undefined;
    host.setAttribute('role', 'region');
    host.setAttribute('aria-label', 'Coat clock');
    render(<Strip url={url} coat={coat} product={product} reading={reading} now={now} />, host);
    if (reading?.kind === 'running' && reading.stage !== 'cured') {
      showStepTimes(reading, now, style);
      showClockOnWalk(reading, now, style, signal);
    }
    if (!doubt) await noteSeen(store, now);
  };
  everyTick(() => void tell(), signal);
  onClockChange(() => void tell(), signal);
};
