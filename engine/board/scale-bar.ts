import type { Pixels } from './pixels.ts';

/** 3 × 5 dots a sign, top row first. */
const SIGNS: Readonly<Record<string, readonly number[]>> = {
  '0': [7, 5, 5, 5, 7],
  '1': [2, 6, 2, 2, 7],
  '2': [7, 1, 7, 4, 7],
  '5': [7, 4, 7, 1, 7],
  '.': [0, 0, 0, 0, 2],
  m: [0, 26, 21, 21, 21],
  ' ': [0, 0, 0, 0, 0],
};
const widthOf = (sign: string): number => (sign === 'm' ? 5 : 3);
const ROUND = [0.5, 1, 2, 5, 10, 20, 50, 100] as const;

export type ScaleBar = { millimeters: number; pixels: number };

/** A round length near a fifth of the board. */
const scaleBar = (widthMm: number, columns: number): ScaleBar => {
  const millimeters = ROUND.findLast((mm) => mm <= widthMm * 0.22) ?? 0.5;
  return { millimeters, pixels: (millimeters * columns) / widthMm };
};

const MARGIN = 12;

/** Draws the bar and its length in the lower right corner. */
export const drawScaleBar = (picture: Pixels, widthMm: number): ScaleBar => {
  const { width, height, data } = picture;
  const bar = scaleBar(widthMm, width);
  const dot = Math.max(1, Math.round(width / 240));
  const fill = (x: number, y: number, w: number, h: number, value: number, share: number) => {
    for (let row = Math.max(0, y); row < Math.min(height, y + h); row++)
      for (let column = Math.max(0, x); column < Math.min(width, x + w); column++)
        for (let c = 0; c < 3; c++) {
          const o = (row * width + column) * 4 + c;
          data[o] = Math.round(data[o]! * (1 - share) + value * share);
        }
  };
  const length = Math.round(bar.pixels);
  const x0 = width - MARGIN - length;
  const y0 = height - MARGIN - dot;
  const label = `${bar.millimeters} mm`;
  const labelWidth = [...label].reduce((sum, sign) => sum + (widthOf(sign) + 1) * dot, -dot);
  const plate = Math.max(length, labelWidth);
  fill(width - MARGIN - plate - 4, y0 - 7 * dot - 4, plate + 8, 8 * dot + 8, 20, 0.5);
  fill(x0, y0, length, dot, 245, 1);
  fill(x0, y0 - dot, dot, dot * 2, 245, 1);
  fill(x0 + length - dot, y0 - dot, dot, dot * 2, 245, 1);
  let x = width - MARGIN - labelWidth;
  for (const sign of label) {
    const wide = widthOf(sign);
    SIGNS[sign]?.forEach((bits, row) => {
      for (let k = 0; k < wide; k++)
        if (bits & (1 << (wide - 1 - k))) fill(x + k * dot, y0 - (7 - row) * dot, dot, dot, 245, 1);
    });
    x += (wide + 1) * dot;
  }
  return bar;
};
