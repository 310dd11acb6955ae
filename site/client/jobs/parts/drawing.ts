import { toMils } from '#engine/calc/units.ts';
import { layersOf, sectionOf } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import type { JobsData } from '../../../shared/jobs-data.ts';
import { sourceUrl } from '../../../shared/urls.ts';
import { make } from '../../shared/make.ts';
import { link } from '../views/view.ts';

const SVG = 'http://www.w3.org/2000/svg';
/** Room beside the film for the warning's line. */
const PAD = 2;
/** Height of a line of writing. */
const LETTER = 14;

/** The base alone needs no room above it. */
const BARE = { width: 320, height: 60, base: 1, least: 22 };

const shape = (tag: string, attributes: Record<string, string | number>, text?: string): Element => {
  const element = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
  if (text !== undefined) element.textContent = text;
  return element;
};

const mils = ({ from, to }: { from: number; to: number }): string =>
  `${toMils(from).toFixed(1)}–${toMils(to).toFixed(1)} mil`;

/** The film as a drawn section with what it allows, in words that tell the same as the drawing. */
export const drawSection = (card: JobCard, data: JobsData, us: boolean): readonly Node[] => {
  const layers = layersOf(card, data.products);
  const bare = !layers.layers.length;
  const { width, height, rects, warn, inProportion, advice, says } = bare
    ? sectionOf(card, layers, data, BARE)
    : sectionOf(card, layers, data);
  const svg = shape('svg', {
    class: 'film',
    viewBox: `${-PAD} ${-PAD} ${width + 2 * PAD} ${height + 2 * PAD}`,
    role: 'img',
    'aria-label': `Section of the film. ${says}`,
  });
  for (const { kind, x, y, width: wide, height: tall, label, known } of rects) {
    const tone = kind === 'base' ? `base ${card.tone}` : known ? 'coat' : 'coat unknown';
    svg.append(
      shape('rect', { class: tone, x, y, width: wide, height: tall }),
      shape('text', { class: kind, x: x + 10, y: y + tall / 2 + 4.5 }, label),
    );
  }
  if (warn)
    svg.append(
      shape('path', { class: 'warn', d: `M0 ${warn.y}h${width}` }),
      shape(
        'text',
        {
          class: 'warn',
          x: width - 8,
          y: warn.y < LETTER ? warn.y + LETTER : warn.y - 5,
          'text-anchor': 'end',
        },
        warn.says,
      ),
    );
  const sources = advice.grounds.flatMap(({ source }, index) =>
    source ? [index ? ', ' : ' From: ', link('published', sourceUrl(source))] : [],
  );
  return [
    make('h2.tape', 'The film'),
    svg as HTMLElement,
    make('p', bare ? layers.says : says, us && layers.total.to > 0 ? ` That is ${mils(layers.total)}.` : ''),
    ...(inProportion
      ? []
      : [make('p.small', 'A thin coat is drawn thicker than it is, so that it can be seen.')]),
    make('p.advice', advice.says, make('span.small', ...sources)),
  ];
};
