import { grainMicrometers } from '#engine/calc/abrasives.ts';
import { dewPoint } from '#engine/calc/dew-point.ts';
import { dryFilmMicrometers } from '#engine/calc/film.ts';
import { toFahrenheit, toMils } from '#engine/calc/units.ts';
import { type ClockProduct, clockNow, clockProduct } from '#engine/clock.ts';
import type { Knowledge, Stage } from '#engine/index.ts';
import type { LESSON_DRAWINGS } from '#engine/model/lesson.ts';
import { DAY_MIN, MINUTE_MS } from '#engine/plain/time.ts';

export type LessonDrawingName = (typeof LESSON_DRAWINGS)[number];

/** A drawing in a view box of `WIDE` by `tall`: boxes, lines and words, each with a class for its color. */
export type LessonDrawing = {
  readonly tall: number;
  /** What it shows, for who can not see it. */
  readonly says: string;
  readonly caption: string;
  readonly boxes: readonly { x: number; y: number; w: number; h: number; is: string }[];
  readonly lines: readonly { d: string; is: string }[];
  readonly words: readonly { x: number; y: number; text: string; is: string }[];
};
/** So narrow that its words of 18 are read on a phone, where it is drawn about as wide as it says. */
export const WIDE = 420;

type Parts = {
  -readonly [K in 'boxes' | 'lines' | 'words']: LessonDrawing[K][number][];
};
const blank = (): Parts => ({ boxes: [], lines: [], words: [] });

/** A thin length in both units, as it is read on a gauge. */
const thin = (micrometers: number): string => {
  const mils = toMils(micrometers).toFixed(1).replace('.0', '');
  return `${mils} ${mils === '1' ? 'mil' : 'mils'} (${Math.round(micrometers)} µm)`;
};
const fahrenheit = (celsius: number): number => Math.round(toFahrenheit(celsius));

/** Minutes on a line of equal factors: a minute and a month both have their room. */
const onLog = (minutes: number, from: number, to: number, left: number, right: number): number =>
  left + ((right - left) * Math.log(Math.max(minutes, from) / from)) / Math.log(to / from);

const SHOWN_STAGES: readonly (readonly [Stage, string])[] = [
  ['wet', 'wet'],
  ['setting', 'setting'],
  ['dry-to-touch', 'dry to touch'],
  ['recoatable', 'ready for a coat'],
  ['cured', 'cured'],
];

/** The clock's own times for three ways of hardening, in a warm room and in a cool, damp one. */
const drying = (known: Knowledge): LessonDrawing => {
  const parts = blank();
  const [left, right, first, last] = [8, WIDE - 8, 1, 60 * DAY_MIN];
  const rooms = [
    [23, 0.5, 'in a warm room, 73 °F (23 °C) and 50 %'],
    [13, 0.65, 'in a cool, damp one, 55 °F (13 °C) and 65 %'],
  ] as const;
  const kinds = [
    ['water-based-polyurethane', 'Water leaves, drops melt together'],
    ['shellac', 'Solvent leaves'],
    ['oil-based-polyurethane', 'Oil takes up oxygen'],
  ] as const;
  let y = 26;
  const said: string[] = [];
  for (const [id, how] of kinds) {
    const product: ClockProduct = clockProduct(known.get('product', id));
    parts.words.push({ x: left, y, text: product.name, is: 'strong' });
    y += 22;
    parts.words.push({ x: left, y, text: how, is: 'plain' });
    y += 10;
    for (const [celsius, relativeHumidity, where] of rooms) {
      const coat = { id: '', piece: '', product: id, laidAt: 0, celsius, relativeHumidity, coatNumber: 1 };
      const reading = clockNow(product, coat, 0);
      if (reading.kind !== 'running') continue;
      const { open, touch, recoat, cure } = reading.moments;
      const ends = [open, touch, recoat, cure].map(
        ({ from, to }) => [from / MINUTE_MS, to / MINUTE_MS] as const,
      );
      let at = left;
      SHOWN_STAGES.forEach(([stage], index) => {
        const end = ends[index];
        const to = end ? onLog(end[1], first, last, left, right) : right;
        parts.boxes.push({ x: at, y, w: Math.max(0, to - at), h: 22, is: stage });
        if (end) {
          const sure = onLog(end[0], first, last, left, right);
          parts.boxes.push({ x: sure, y, w: Math.max(0, to - sure), h: 22, is: 'perhaps' });
        }
        at = to;
      });
      y += 41;
      parts.words.push({ x: left, y, text: where, is: 'plain' });
      y += 9;
      said.push(
        `${product.name} ${where}: dry to touch after ${Math.round(ends[1]?.[0] ?? 0)} to ${Math.round(ends[1]?.[1] ?? 0)} minutes`,
      );
    }
    y += 26;
  }
  for (const [minutes, text] of [
    [1, '1 min'],
    [10, '10'],
    [60, '1 h'],
    [600, '10 h'],
    [2 * DAY_MIN, '2 days'],
    [21 * DAY_MIN, '3 weeks'],
  ] as const) {
    const x = onLog(minutes, first, last, left, right);
    parts.lines.push({ d: `M${x} 54V${y - 18}`, is: 'grid' });
    parts.words.push({ x: Math.min(x, WIDE - 60), y, text, is: 'plain' });
  }
  y += 14;
  SHOWN_STAGES.forEach(([stage, name], index) => {
    const x = left + (index % 2) * 200;
    const row = y + Math.floor(index / 2) * 30;
    parts.boxes.push({ x, y: row, w: 26, h: 18, is: stage });
    parts.words.push({ x: x + 34, y: row + 15, text: name, is: 'plain' });
  });
  parts.boxes.push({ x: left + 200, y: y + 60, w: 26, h: 18, is: 'perhaps' });
  parts.words.push({ x: left + 234, y: y + 75, text: 'one or the other', is: 'plain' });
  return {
    ...parts,
    tall: y + 88,
    says: `Stages of three coats over time. ${said.join('. ')}.`,
    caption:
      'Reckoned by the coat clock for thin coats. Each step to the right is ten times as long. The can wins.',
  };
};

/** A top laid from end to end, the far side first. */
const strokes = (): LessonDrawing => {
  const parts = blank();
  const [left, top, wide, high, band, over] = [16, 32, 388, 250, 62, 12];
  parts.boxes.push({ x: left, y: top, w: wide, h: high, is: 'base' });
  for (let n = 0; n < 5; n++) {
    const y = top + n * (band - over);
    parts.boxes.push({ x: left, y, w: wide, h: band, is: n % 2 ? 'laid' : 'laid too' });
    if (n > 0) parts.boxes.push({ x: left, y, w: wide, h: over, is: 'perhaps' });
    const mid = y + band / 2 + (n ? 6 : 0);
    parts.words.push({ x: left + 12, y: mid + 7, text: String(n + 1), is: 'strong on' });
    parts.lines.push({
      d: `M${left + 112} ${mid}H${left + wide - 8}m-12 -8l12 8l-12 8`,
      is: 'arrow on',
    });
    parts.lines.push({ d: `M${left + 100} ${mid}H${left + 32}m12 -8l-12 8l12 8`, is: 'arrow thin on' });
  }
  parts.words.push({ x: left, y: 24, text: 'Far side', is: 'plain' });
  parts.words.push({ x: left, y: top + high + 38, text: 'You stand here', is: 'plain' });
  return {
    ...parts,
    tall: top + high + 50,
    says: 'A table top in five strokes, numbered from the far side. Each begins a hand from the left end, goes out over that end, then all the way to the right end. Each overlaps the one before by a finger.',
    caption:
      'Start a hand from the end, go out over it, then all the way back. The dark rims are the overlaps.',
  };
};

/** How a film grows: what is laid wet, what stays, and what a table asks for. */
const filmBuild = (known: Knowledge): LessonDrawing => {
  const parts = blank();
  const product = known.get('product', 'water-based-polyurethane');
  const wet = product['reference-wet-film-micrometers'];
  const [low, high] = product['volume-solids'];
  const found = dryFilmMicrometers(wet, (low + high) / 2);
  const dry = found.ok ? found.value : 0;
  const [left, foot, each] = [8, 330, 1.7];
  for (const [um, text] of [
    [25, 'A frame'],
    [50, 'A dresser'],
    [75, 'A table'],
  ] as const) {
    const y = foot - um * each;
    parts.lines.push({ d: `M${left} ${y}H${WIDE - 8}`, is: 'grid' });
    parts.words.push({ x: left + 220, y: y - 6, text, is: 'strong' });
    parts.words.push({ x: left + 220, y: y + 19, text: thin(um), is: 'plain' });
  }
  for (let coats = 1; coats <= 4; coats++) {
    const x = left + (coats - 1) * 52;
    parts.boxes.push({
      x,
      y: foot - ((coats - 1) * dry + wet) * each,
      w: 44,
      h: (wet - dry) * each,
      is: 'water',
    });
    for (let n = 0; n < coats; n++)
      parts.boxes.push({ x, y: foot - (n + 1) * dry * each, w: 44, h: dry * each - 1, is: 'laid' });
    parts.words.push({ x: x + 17, y: foot + 24, text: String(coats), is: 'strong' });
  }
  parts.words.push({ x: left + 212, y: foot + 24, text: 'coats', is: 'plain' });
  return {
    ...parts,
    tall: foot + 40,
    says: `Four coats of ${thin(wet)} wet film. Each leaves about ${thin(dry)} when its water has gone: two coats make ${thin(2 * dry)}, three ${thin(3 * dry)}.`,
    caption: `A coat of ${thin(wet)}, about as thick as a hair, leaves about ${thin(dry)}: pale is the water that goes. A run is ten such coats in one place.`,
  };
};

/** The shadow of a nib under two lights. */
const lowLight = (): LessonDrawing => {
  const parts = blank();
  const rows = [
    [14, 10, 110, ['Light at 14°: the shadow is four times', 'as long as the bump is high']],
    [58, 190, 300, ['Light at 58°: hardly a shadow']],
  ] as const;
  for (const [degrees, top, foot, texts] of rows) {
    const [x, high] = [170, 40];
    const tangent = Math.tan((degrees * Math.PI) / 180);
    const long = high / tangent;
    parts.boxes.push({ x: 10, y: foot, w: WIDE - 20, h: 14, is: 'laid' });
    // It lies on the film, which is as light in the dark.
    parts.boxes.push({ x: x + 16, y: foot, w: long, h: 6, is: 'shadow' });
    parts.lines.push({ d: `M${x - 16} ${foot}q16 ${-2 * high} 32 0z`, is: 'bump' });
    const back = Math.min(150, (foot - high - top) / tangent);
    for (const at of [0, -34, -68])
      parts.lines.push({
        d: `M${x + at - back} ${foot - high - (back * tangent) / 1}L${x + at} ${foot - high}`,
        is: 'ray',
      });
    for (const [line, text] of texts.entries())
      parts.words.push({ x: 10, y: foot + 38 + 22 * line, text, is: 'plain' });
  }
  return {
    ...parts,
    tall: 352,
    says: 'A bump under two lights. At 14 degrees its shadow is four times as long as it is high; at 58 degrees less than once.',
    caption:
      'The shadow is the height divided by the tangent of the angle. That is why a flashlight lies on the board.',
  };
};

/** Grooves of paper against a hair. */
const grooves = (): LessonDrawing => {
  const parts = blank();
  let y = 28;
  const said: string[] = [];
  const bar = (text: string, um: number, is: string) => {
    parts.words.push({ x: 8, y: y + 17, text, is: 'strong' });
    parts.boxes.push({ x: 72, y, w: um * 2.4, h: 22, is });
    parts.words.push({ x: 80 + um * 2.4, y: y + 17, text: thin(um), is: 'plain' });
    y += 40;
  };
  bar('A hair', 70, 'water');
  for (const grade of [180, 220, 320, 400, 600]) {
    const grain = grainMicrometers('FEPA P', grade);
    if (!grain.ok) continue;
    bar(`P${grade}`, grain.value, 'laid');
    said.push(`P${grade} ${thin(grain.value)}`);
  }
  return {
    ...parts,
    tall: y + 6,
    says: `Width of a grain, about as wide as the groove that it leaves: ${said.join(', ')}; a hair has about ${thin(70)}.`,
    caption:
      'The grain of each paper, about as wide as its groove, beside a hair. P320 and finer go under the next coat.',
  };
};

/** The dew point of the air in a shop, by warmth and humidity. */
const dewPoints = (): LessonDrawing => {
  const parts = blank();
  const [left, right, top, foot] = [62, WIDE - 102, 20, 320];
  const x = (share: number) => left + ((right - left) * (share - 0.3)) / 0.6;
  const y = (celsius: number) => foot - ((foot - top) * celsius) / 26;
  for (const celsius of [0, 5, 10, 15, 20, 25]) {
    parts.lines.push({ d: `M${left} ${y(celsius)}H${right}`, is: 'grid' });
    parts.words.push({
      x: 4,
      y: y(celsius) + 6,
      text: `${fahrenheit(celsius)} °F`,
      is: 'plain',
    });
    parts.words.push({ x: 4, y: y(celsius) + 26, text: `${celsius} °C`, is: 'plain' });
  }
  for (const share of [0.3, 0.5, 0.7, 0.9])
    parts.words.push({ x: x(share) - 16, y: foot + 46, text: `${share * 100} %`, is: 'plain' });
  const said: string[] = [];
  for (const celsius of [12, 18, 24]) {
    const points = Array.from({ length: 13 }, (_, n) => 0.3 + n * 0.05).flatMap((share) => {
      const found = dewPoint({ celsius, relativeHumidity: share });
      return found.ok && found.value >= 0 ? [[share, found.value] as const] : [];
    });
    parts.lines.push({
      d: `M${points.map(([share, at]) => `${x(share).toFixed(1)} ${y(at).toFixed(1)}`).join('L')}`,
      is: 'curve',
    });
    const [, end] = points.at(-1) ?? [0, 0];
    parts.words.push({
      x: right + 8,
      y: y(end) - 4,
      text: `air ${fahrenheit(celsius)} °F`,
      is: 'strong',
    });
    parts.words.push({ x: right + 8, y: y(end) + 16, text: `${celsius} °C`, is: 'plain' });
    const middle = dewPoint({ celsius, relativeHumidity: 0.7 });
    if (middle.ok)
      said.push(
        `at ${fahrenheit(celsius)} °F (${celsius} °C) and 70 % the dew point is ${fahrenheit(middle.value)} °F (${Math.round(middle.value)} °C)`,
      );
  }
  return {
    ...parts,
    tall: foot + 58,
    says: `Dew point against humidity for three temperatures of the air: ${said.join('; ')}.`,
    caption: `Left: the dew point. ${said[1]?.replace(/^a/, 'A') ?? ''}. A piece must be 5 °F (3 °C) warmer than that, for shellac and lacquer the air 20 °F (11 °C).`,
  };
};

export const lessonDrawing = (known: Knowledge, name: LessonDrawingName): LessonDrawing =>
  ({
    drying: () => drying(known),
    strokes,
    'film-build': () => filmBuild(known),
    'low-light': lowLight,
    grooves,
    'dew-point': dewPoints,
  })[name]();
