import { type Running, sayUntil, type TimeStyle } from '#engine/clock.ts';

const MOMENT = { 'dry-to-touch': 'touch', recoatable: 'recoat', cured: 'cure' } as const;

/** From these steps on it is another film, whose clock has not begun. */
const NEW_FILM = ['coat', 'strip'];

/** Writes the clock's time on every step that waits for this film. */
export const tellSteps = ({ moments }: Running, now: number, style: TimeStyle): void => {
  for (const list of document.querySelectorAll('.steps')) {
    for (const step of list.children) {
      if (NEW_FILM.includes((step as HTMLElement).dataset['kind'] ?? '')) break;
      const label = step.querySelector<HTMLElement>('[data-until]');
      const moment = moments[MOMENT[label?.dataset['until'] as keyof typeof MOMENT]];
      label?.querySelector('time')?.remove();
      if (label && moment && now < moment.to)
        label.append(
          Object.assign(document.createElement('time'), {
            textContent: `, ${sayUntil(moment.from, moment.to, now, style)}`,
          }),
        );
    }
  }
};
