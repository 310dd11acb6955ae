import { answer, type Result, refuse } from './quantity.ts';

/** CIE 1976 L*a*b* under D65: lightness 0–100, red–green, yellow–blue. */
export type Lab = readonly [lightness: number, redGreen: number, yellowBlue: number];
export type Xyz = readonly [x: number, y: number, z: number];

/** D65 white of the 2° observer from its chromaticity x 0.3127, y 0.3290 (IEC 61966-2-1). */
export const WHITE: Xyz = [0.3127 / 0.329, 1, (1 - 0.3127 - 0.329) / 0.329];

const cubeRoot = (t: number): number => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116);

/** Lab from XYZ scaled so that white has Y = 1 (CIE 15, with the exact constants 216/24389 and 24389/27). */
export const labFromXyz = ([x, y, z]: Xyz): Lab => {
  const [fx, fy, fz] = [cubeRoot(x / WHITE[0]), cubeRoot(y / WHITE[1]), cubeRoot(z / WHITE[2])];
  return [116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)];
};

const linear = (channel: number): number =>
  channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;

const HEX = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i;

/** Lab (D65) of an sRGB color written `#rrggbb` (IEC 61966-2-1). Anything else is refused. */
export const labFromHex = (hex: string): Result<Lab> => {
  const [red, green, blue] = (HEX.exec(hex) ?? [])
    .slice(1)
    .map((pair) => linear(Number.parseInt(pair, 16) / 255));
  if (red === undefined || green === undefined || blue === undefined)
    return refuse({
      code: 'unknown-value',
      quantity: 'color (#rrggbb)',
      unit: '',
      value: hex,
      min: 0,
      max: 0,
    });
  return answer(
    labFromXyz([
      (506752 / 1228815) * red + (87881 / 245763) * green + (12673 / 70218) * blue,
      (87098 / 409605) * red + (175762 / 245763) * green + (12673 / 175545) * blue,
      (7918 / 409605) * red + (87881 / 737289) * green + (1001167 / 1053270) * blue,
    ]),
  );
};
