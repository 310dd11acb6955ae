import type { Lay } from './light.ts';
import { random } from './noise.ts';
import type { Pixels } from './pixels.ts';

/** How far from the middle all is sharp, and how far from there it is least so, as shares of the picture's width. */
const SHARP = 0.2;
const RUNS_OUT = 0.64;
/** Rounds of smoothing at most: two by 1 2 1 blur as far as a pixel. */
const ROUNDS = 2;
/** Bytes by which two equally bright pixels may differ, and by how much more in the dark. */
const GRAIN = 1.6;
const DARK_GRAIN = 1.6;

/** Smooths one line of pixels by 1 2 1, each as far as it is out of focus. */
const smoothLine = (
  data: Uint8ClampedArray,
  focus: Float32Array,
  first: number,
  step: number,
  count: number,
): void => {
  for (let channel = 0; channel < 3; channel++) {
    let before = data[4 * first + channel]!;
    for (let n = 1, i = first + step; n < count - 1; n++, i += step) {
      const o = 4 * i + channel;
      const here = data[o]!;
      const blurred = focus[i]!;
      if (blurred > 0) data[o] = here + 0.25 * blurred * (before + data[o + 4 * step]! - 2 * here);
      before = here;
    }
  }
};

let blur = new Float32Array(0);
let grain = new Float32Array(0);
let focusedFor = '';

/** Where a lens held over the board is out of focus, 0 to 1: towards one side, which differs from board to board. */
const focusOver = (columns: number, rows: number, lay: Lay): void => {
  const towards = (lay.turn * Math.PI) / 12;
  const [c, s] = [Math.cos(towards) / columns, Math.sin(towards) / columns];
  for (let row = 0, i = 0; row < rows; row++)
    for (let column = 0; column < columns; column++, i++) {
      const away = (column - columns / 2) * c + (row - rows / 2) * s;
      const t = Math.min(1, Math.max(0, (away - SHARP) / (RUNS_OUT - SHARP)));
      blur[i] = t * (2 - t);
    }
};

/** What a camera makes of it: sharp where it was aimed, softer toward one side, with a trace of grain. */
export const throughLens = ({ width, height, data }: Pixels, lay: Lay): void => {
  const key = [width, height, lay.turn].join();
  if (grain.length !== width * height) {
    blur = new Float32Array(width * height);
    const next = random(1);
    grain = Float32Array.from(blur, () => next() + next() - 1);
  }
  if (key !== focusedFor) focusOver(width, height, lay);
  focusedFor = key;
  for (let round = 0; round < ROUNDS; round++) {
    for (let row = 0; row < height; row++) smoothLine(data, blur, row * width, 1, width);
    for (let column = 0; column < width; column++) smoothLine(data, blur, column, width, height);
  }
  for (let i = 0, o = 0; i < grain.length; i++, o += 4) {
    const by = grain[i]! * (GRAIN + DARK_GRAIN * (1 - data[o + 1]! / 255));
    data[o] = data[o]! + by;
    data[o + 1] = data[o + 1]! + by;
    data[o + 2] = data[o + 2]! + by;
  }
};
