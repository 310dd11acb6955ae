import { codeOf } from '../shared/code-of.ts';
import { ownOrigin } from '../shared/own-host.ts';

/**
 * What the code leads to: this page, and of a plan the very plan, which stands in its address. A card stays on its device.
 * A page that only hands over to another flaw leads there.
 */
const address = (): URL => {
  const { pathname, search, hash } =
    document.querySelector<HTMLAnchorElement>('a[data-part=onward]') ?? location;
  const here = new URL(pathname + search + hash, ownOrigin());
  if (!document.querySelector('[data-part=plan]:not([hidden])')) here.hash = '';
  return here;
};

/** A page that brought no code of its own has one while it is printed: paper leads back to the screen. */
let shown: HTMLElement | undefined;
addEventListener('beforeprint', () => {
  const main = document.querySelector('main');
  shown?.remove();
  // The buyer of a piece has no cards: a code on the care card would lead to an empty list.
  if (!main || main.querySelector('[data-part=code]') || document.body.dataset['view'] === 'care') return;
  shown = codeOf(address());
  main.prepend(shown);
});
addEventListener('afterprint', () => {
  shown?.remove();
  shown = undefined;
});
