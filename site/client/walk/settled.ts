import type { Case } from '#engine/index.ts';
import { isToldFact, TOLD } from '../../shared/told.ts';
import { button, element, partIn } from '../shared/element.ts';
import { tellFact, toldValue } from './tell-fact.ts';

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
  const says = facts.flatMap((fact) => {
    const values: Readonly<Record<string, string>> = TOLD[fact].values;
    return [
      `${TOLD[fact].ask} `,
      element('b', {}, values[toldValue(on, fact)] ?? ''),
      ' ',
      button('Change', () => tellFact(fact, '')),
    ];
  });
  line.replaceChildren(...says);
  if (tookBack && !stops.hidden) {
    stops.scrollIntoView();
    stops.querySelector('button')?.focus({ preventScroll: true });
  }
};
