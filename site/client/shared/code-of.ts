import { qrPath } from '../../shared/qr.ts';
import { element } from './element.ts';

/** Nobody types an address of more parts: the code has all of them. */
const MANY = 4;
const SVG = 'http://www.w3.org/2000/svg';

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

/** The code that leads to an address, with the address below it. */
export const codeOf = (to: URL): HTMLElement => {
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
