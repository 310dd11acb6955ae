import { type Running, sayUntil, type TimeStyle } from '#engine/clock.ts';
import { isKeyOf } from '#engine/plain/entry-of.ts';
import { element } from '../shared/element.ts';

const MOMENT = { 'dry-to-touch': 'touch', recoatable: 'recoat', cured: 'cure' } as const;

/** From these steps on it is another film, whose clock has not begun. */
const NEW_FILM = ['coat', 'strip'];

/** Writes the clock's time on every step that waits for this film. */
export const showStepTimes = ({ moments }: Running, now: number, style: TimeStyle): void => {
  for (const list of document.querySelectorAll('section[data-remedy] ol'))
    for (const step of list.querySelectorAll<HTMLElement>(':scope > *')) {
      if (NEW_FILM.includes(step.dataset['kind'] ?? '')) break;
      const label = step.querySelector<HTMLElement>('[data-until]');
      const until = label?.dataset['until'];
      const moment = isKeyOf(MOMENT, until) ? moments[MOMENT[until]] : undefined;
      label?.querySelector('time')?.remove();
      if (moment && now < moment.to)
        label?.append(element('time', {}, `, ${sayUntil(moment.from, moment.to, now, style)}`));
    }
};
