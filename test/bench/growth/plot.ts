/** Curves of growth as an SVG of our own: both scales logarithmic, each curve beside its own value at 1×. */
import type { Grown } from './figures.ts';

const WIDTH = 960;
const HEIGHT = 600;
const PAD = { left: 70, right: 330, top: 40, bottom: 50 };
/** Told apart also by who sees few colors: each curve has a dash of its own as well. */
const COLORS = ['#1b4f9c', '#b3541e', '#2f7d4f', '#8a2f6b', '#6b6b1e', '#0f7a86', '#7a3b12'];
const DASHES = ['', '8 3', '2 3', '10 3 2 3'];
const LINE = 15;

type Curve = {
  readonly name: string;
  readonly points: readonly (readonly [number, number])[];
  readonly look: string;
};

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

const curvesOf = (grown: readonly Grown[]): readonly Curve[] =>
  grown.flatMap(({ what, points, exponent }, at) => {
    const base = points[0]?.[1] ?? 0;
    if (points.length < 2 || base <= 0) return [];
    const color = COLORS[at % COLORS.length];
    const dash = DASHES[Math.floor(at / COLORS.length) % DASHES.length];
    return [
      {
        name: `${what}: n^${exponent.toFixed(2)}`,
        points: points.map(([size, value]) => [size, value / base] as const),
        look: `stroke="${color}"${dash ? ` stroke-dasharray="${dash}"` : ''}`,
      },
    ];
  });

/** Names that would stand on each other are moved apart, downwards. */
const apart = (places: readonly number[]): readonly number[] => {
  const order = [...places.keys()].sort((a, b) => (places[a] ?? 0) - (places[b] ?? 0));
  const moved = [...places];
  let least = PAD.top;
  for (const at of order) {
    moved[at] = Math.max(moved[at] ?? 0, least);
    least = (moved[at] ?? 0) + LINE;
  }
  const over = Math.max(0, least - LINE - (HEIGHT - PAD.bottom));
  return moved.map((place) => place - over);
};

export const plot = (grown: readonly Grown[], flaws: number): string => {
  const curves = curvesOf(grown);
  const sizes = [...new Set(curves.flatMap(({ points }) => points.map(([size]) => size)))].sort(
    (a, b) => a - b,
  );
  const widest = sizes.at(-1) ?? 10;
  const values = curves.flatMap(({ points }) => points.map(([, value]) => value));
  const top = 10 ** Math.ceil(Math.log10(Math.max(10, ...values)));
  const low = Math.min(1, ...values);
  const bottom = low < 0.95 ? 10 ** Math.floor(Math.log10(low)) : 1;
  const x = (size: number) => PAD.left + ((WIDTH - PAD.left - PAD.right) * Math.log(size)) / Math.log(widest);
  const y = (value: number) =>
    HEIGHT -
    PAD.bottom -
    ((HEIGHT - PAD.top - PAD.bottom) * Math.log(value / bottom)) / Math.log(top / bottom);
  const way = (points: readonly (readonly [number, number])[]) =>
    points
      .map(([size, value], at) => `${at ? 'L' : 'M'}${x(size).toFixed(1)} ${y(value).toFixed(1)}`)
      .join('');
  const decades = Array.from(
    { length: Math.round(Math.log10(top / bottom)) + 1 },
    (_, at) => bottom * 10 ** at,
  );
  const ends = apart(curves.map(({ points }) => y(points.at(-1)?.[1] ?? 1)));
  const nLogN = sizes.map((size) => [size, (size * Math.log(size * flaws)) / Math.log(flaws)] as const);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${HEIGHT}" font-family="sans-serif" font-size="12" fill="#222">`,
    `<title>How each figure grows with the knowledge, 1× to ${widest}×</title>`,
    `<rect width="${WIDTH}" height="${HEIGHT}" fill="#fff"/>`,
    ...decades.map(
      (value) =>
        `<path d="M${PAD.left} ${y(value).toFixed(1)}H${WIDTH - PAD.right}" stroke="#ddd"/><text x="${PAD.left - 8}" y="${(y(value) + 4).toFixed(1)}" text-anchor="end">${value}×</text>`,
    ),
    ...sizes.map(
      (size) =>
        `<path d="M${x(size).toFixed(1)} ${PAD.top}V${HEIGHT - PAD.bottom}" stroke="#eee"/><text x="${x(size).toFixed(1)}" y="${HEIGHT - PAD.bottom + 18}" text-anchor="middle">${size}×</text>`,
    ),
    `<path d="${way(nLogN)}" fill="none" stroke="#999" stroke-width="6" stroke-opacity=".35"/>`,
    `<text x="${PAD.left}" y="22">Beside its own value at 1× (${flaws} flaws); the wide gray line is n log n</text>`,
    `<text x="${(PAD.left + WIDTH - PAD.right) / 2}" y="${HEIGHT - 10}" text-anchor="middle">Size of the knowledge</text>`,
    ...curves.flatMap(({ name, points, look }, at) => {
      const [size = 1, value = 1] = points.at(-1) ?? [];
      const end = ends[at] ?? 0;
      return [
        `<path d="${way(points)}" fill="none" stroke-width="2" ${look}/>`,
        `<path d="M${x(size).toFixed(1)} ${y(value).toFixed(1)}L${WIDTH - PAD.right + 8} ${end.toFixed(1)}" fill="none" stroke-opacity=".4" ${look}/>`,
        `<text x="${WIDTH - PAD.right + 12}" y="${(end + 4).toFixed(1)}">${escaped(name)}</text>`,
      ];
    }),
    '</svg>\n',
  ].join('\n');
};
