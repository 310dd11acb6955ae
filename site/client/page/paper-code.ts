import { qrPath } from '../../shared/qr.ts';
import { element } from '../shared/element.ts';
import { ownOrigin } from './own-host.ts';

/** Nobody types an address of more parts: the code has all of them. */
const MANY = 4;
const SVG = 'http://www.w3.org/2000/svg';

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

const drawn = (text: string, label: string): SVGElement => {
  const { size, path } = qrPath(text);
  const svg = document.createElementNS(SVG, 'svg');
  svg.setAttribute('viewBox', `0 -.5 ${size} ${size}`);
  svg.setAttribute('role', 'img');
  svg.setAttribute('aria-label', label);
  const line = document.createElementNS(SVG, 'path');
  for (const [name, value] of [
    ['d', path],
    ['stroke', 'currentColor'],
    ['shape-rendering', 'crispEdges'],
  ] as const)
    line.setAttribute(name, value);
  svg.append(line);
  return svg;
};

/** As a person reads it from paper: it breaks behind a slash. */
const spoken = ({ host, pathname }: URL): string => `${host}${pathname}`.replace(/\/$/, '');

const codeOf = (to: URL): HTMLElement => {
  const words = spoken(to);
  const all = words.split(/(?<=\/)/);
  const said = all.length > MANY ? [...all.slice(0, MANY - 1), '…'] : all;
  const parts = said.flatMap((part) => [part, document.createElement('wbr')]);
  const figure = element(
    'figure',
    { className: 'qr' },
    drawn(to.href, `Code that leads to ${words}`),
    element('figcaption', {}, ...parts),
  );
  figure.classList.toggle('fine', to.hash !== '');
  return figure;
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
