import type { Lab } from './lab.ts';

const degrees = Math.PI / 180;
/** Chroma above which the blue and gray terms saturate, to the seventh power. */
const POWER = 25 ** 7;

const hue = (a: number, b: number): number =>
  a === 0 && b === 0 ? 0 : (Math.atan2(b, a) / degrees + 360) % 360;

const hueStep = (from: number, to: number, gray: boolean): number => {
  if (gray) return 0;
  const step = to - from;
  if (step > 180) return step - 360;
  return step < -180 ? step + 360 : step;
};

const meanHue = (one: number, two: number, gray: boolean): number => {
  if (gray) return one + two;
  if (Math.abs(one - two) <= 180) return (one + two) / 2;
  return one + two < 360 ? (one + two + 360) / 2 : (one + two - 360) / 2;
};

/**
 * CIEDE2000 with kL = kC = kH = 1: how different two colors look; about 1 is just seen side by side.
 * Sharma, Wu and Dalal, Color Research and Application 30(1), 2005, whose 34 pairs it reproduces.
 * Symmetric; defined for every Lab triple; made for differences below about 5.
 */
export const ciede2000 = ([l1, a1, b1]: Lab, [l2, a2, b2]: Lab): number => {
  const meanChroma = (Math.hypot(a1, b1) + Math.hypot(a2, b2)) / 2;
  const stretch = 1 + 0.5 * (1 - Math.sqrt(meanChroma ** 7 / (meanChroma ** 7 + POWER)));
  const [c1, c2] = [Math.hypot(stretch * a1, b1), Math.hypot(stretch * a2, b2)];
  const [h1, h2] = [hue(stretch * a1, b1), hue(stretch * a2, b2)];
  const gray = c1 * c2 === 0;

  const dL = l2 - l1;
  const dC = c2 - c1;
  const dH = 2 * Math.sqrt(c1 * c2) * Math.sin((hueStep(h1, h2, gray) / 2) * degrees);

  const l = (l1 + l2) / 2;
  const c = (c1 + c2) / 2;
  const h = meanHue(h1, h2, gray);
  const t =
    1 -
    0.17 * Math.cos((h - 30) * degrees) +
    0.24 * Math.cos(2 * h * degrees) +
    0.32 * Math.cos((3 * h + 6) * degrees) -
    0.2 * Math.cos((4 * h - 63) * degrees);
  const sL = 1 + (0.015 * (l - 50) ** 2) / Math.sqrt(20 + (l - 50) ** 2);
  const sC = 1 + 0.045 * c;
  const sH = 1 + 0.015 * c * t;
  const turn = 60 * Math.exp(-(((h - 275) / 25) ** 2)) * degrees;
  const rT = -2 * Math.sqrt(c ** 7 / (c ** 7 + POWER)) * Math.sin(turn);
  return Math.sqrt((dL / sL) ** 2 + (dC / sC) ** 2 + (dH / sH) ** 2 + rT * (dC / sC) * (dH / sH));
};

/** CIE 1976 difference: the straight line in Lab. Older thresholds (2.3 just noticeable) are told in it. */
export const cie76 = ([l1, a1, b1]: Lab, [l2, a2, b2]: Lab): number => Math.hypot(l2 - l1, a2 - a1, b2 - b1);
