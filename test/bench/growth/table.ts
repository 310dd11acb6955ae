/** Growth as a table of the guide: a line for each figure, a column for each size. */
import { markdown } from '../markdown.ts';
import type { Grown, GrowthFigures } from './figures.ts';

const said = (value: number, unit: Grown['unit']): string => {
  if (unit === 'bytes')
    return value < 1e6 ? `${Math.round(value / 1e3)} kB` : `${(value / 1e6).toFixed(1)} MB`;
  if (unit === 'pages') return Math.round(value).toLocaleString('en-US');
  if (unit === 'ms' && value >= 1e3) return `${(value / 1e3).toFixed(1)} s`;
  return `${value < 10 ? value.toFixed(2) : value.toFixed(0)} ${unit}`;
};

/** Times of one run are no finer than this. */
const ROUGHLY = 0.05;

export const growthTables = ({ sizes, flaws, grown, memory, nLogN }: GrowthFigures): string =>
  [
    `${flaws} flaws at 1×. Least squares over what was measured; n log n would show ${nLogN.toFixed(2)} over all sizes. The whole run took ${(memory / 1e9).toFixed(1)} GB at its most.`,
    markdown(
      ['what', ...sizes.map((size) => `${size}×`), 'exponent', 'worse than n log n'],
      grown.map(({ what, unit, points, exponent }) => [
        what,
        ...sizes.map((size) => {
          const found = points.find(([at]) => at === size);
          return found ? said(found[1], unit) : '–';
        }),
        points.length > 1 ? exponent.toFixed(2) : '–',
        points.length > 1 && exponent > nLogN + ROUGHLY ? '**yes**' : '',
      ]),
    ),
  ].join('\n\n');
