import { clockNow, sayNow } from '#engine/clock.ts';
import { STAGE_WORDS } from '../../shared/stages.ts';
import { everyTick } from '../shared/tick.ts';
import { timeStyle } from '../shared/time-style.ts';
import { tellSteps } from './on-steps.ts';
import { tellWalk } from './on-walk.ts';
import { currentCoat, loadClock, watchClock } from './store.ts';

const text = (name: string, words: string): HTMLElement =>
  Object.assign(document.createElement(name), { textContent: words });

/** Writes the strip of the coat in hand and tells the page what the clock knows, again and again. */
export const runStrip = (host: HTMLElement, signal: AbortSignal): void => {
  const url = host.dataset['clock'] ?? '/';
  everyTick(() => {
    const { store } = loadClock();
    const coat = currentCoat(store);
    const product = coat && store.products[coat.product];
    host.replaceChildren();
    if (!coat) return;
    const now = Date.now();
    const link = Object.assign(document.createElement('a'), { className: 'tape', href: url });
    host.append(link);
    host.setAttribute('role', 'region');
    host.setAttribute('aria-label', 'Coat clock');
    link.append(text('b', coat.piece), ' ');
    const back = watchClock(store, now);
    if (!product || back) {
      const why = back ? 'The clock of this device has gone back' : 'Its product is not known here';
      link.append(text('span', `${why}. Open the clock.`));
      return;
    }
    const reading = clockNow(product, coat, now);
    const style = timeStyle();
    if (reading.kind === 'running')
      link.append(text('i', `${STAGE_WORDS[reading.stage].name}, ${reading.sureness}`), ' ');
    link.append(text('span', sayNow(reading, now, style).verdict));
    if (reading.kind !== 'running' || reading.stage === 'cured') return;
    tellSteps(reading, now, style);
    tellWalk(reading, now, style, signal);
  }, signal);
};
