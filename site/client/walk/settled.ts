import type { Case } from '#engine/index.ts';
import { isToldFact } from '../../shared/told.ts';
import { partIn } from '../shared/element.ts';
import { toldValue } from './tell-fact.ts';
import { toldLine } from './told-line.ts';

/** Where what is told settled the stops at the head of the page, one line says so in their place, and takes it back. */
export const fitSettled = (on: Case): void => {
  const line = partIn(document, 'settled-line');
  const stops = partIn(document, 'stops');
  if (!line || !stops) return;
  const tookBack = line.contains(document.activeElement);
  const facts = [...stops.querySelectorAll<HTMLElement>('hd-told')]
    .map(({ dataset }) => dataset['fact'] ?? '')
    .filter(isToldFact)
    .filter((fact) => toldValue(on, fact));
  line.hidden = !stops.hidden || !facts.length;
  line.replaceChildren(...facts.flatMap((fact) => toldLine(on, fact)));
  if (tookBack && !stops.hidden) {
    stops.scrollIntoView();
    stops.querySelector('button')?.focus({ preventScroll: true });
  }
};
