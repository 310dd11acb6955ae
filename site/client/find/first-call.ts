import type { ToldRule } from '#engine/hear.ts';
import type { CallPlace } from '#engine/model/calls.ts';
import { numbersIn } from '#engine/model/whom.ts';
import { dialedIn } from '../../shared/dialed.ts';
import { sentencesOf } from '../../shared/sentences.ts';
import { ruleUrl } from '../../shared/urls.ts';
import { element } from '../shared/element.ts';
import { placeHere } from '../shared/place-here.ts';

/** So many orders stand in a search box; the rest is a tap away. */
const FEW = 2;

/** What has happened already, before any page: the number, what to do at once, and the way to the rest. */
export const firstCall = (
  { id, say, title, atOnce = [] }: ToldRule,
  places: readonly CallPlace[],
  few = FEW,
): HTMLElement => {
  const here = placeHere(places);
  // Where only the words of a case tell whom to call, they come first.
  const first = numbersIn(say).length ? say : [...atOnce, say].join(' ');
  const orders = sentencesOf(first)
    .slice(0, few)
    .map((says) =>
      element(
        'p',
        {},
        ...dialedIn(says, here).map(({ text, tel }) => (tel ? element('a', { href: tel }, text) : text)),
      ),
    );
  const call = element(
    'div',
    { className: 'first-call' },
    ...orders,
    element('p', {}, element('a', { href: ruleUrl(id) }, `${title}: all of it`)),
  );
  call.setAttribute('role', 'alert');
  return call;
};
