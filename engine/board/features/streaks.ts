import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter } from '../field.ts';
import { turned } from '../mask.ts';
import { drawnOut, ease, noise } from '../noise.ts';

/** How wide the tool was, in lines. */
const TOOL = 9;

/** Flatting agent dragged into strings: lines of all widths the length of each pass, hardly any relief. */
export const streaks = (b: Board, f: FeatureOf<'streaks'>, from: number): void => {
  const { along, across } = turned(f.angle);
  const s = f['spacing-mm'];
  const tool = s * TOOL;
  everywhere(b, (i, x, y) => {
    const u = along(x, y);
    const v0 = across(x, y);
    const v = v0 + 0.9 * noise(u / 60, v0 / 40, from + 4) + 0.32 * noise(u / 17, v0 / 7, from + 5);
    const pass = Math.floor(v / tool);
    const inPass = v / tool - pass;
    // Each pass starts and lifts somewhere; its ends thin out.
    const begins = b.widthMm * (0.45 * noise(1.7, pass + 0.5, from + 6) - 0.05);
    const weight =
      ease(-8, 20, u - begins) *
      ease(0, 0.08, Math.min(inPass, 1 - inPass)) *
      (0.6 + 0.5 * noise(4.3, pass + 0.4, from + 7));
    const line =
      drawnOut(u + 400 * pass, v, 75, s * 0.4, from) + 0.8 * drawnOut(u, v, 50, s * 0.16, from + 1);
    const fades = Math.max(
      0,
      0.6 + 0.6 * noise(u / 26, v / (s * 0.5), from + 2) + 0.2 * noise(u / 3, v / (s * 0.3), from + 8),
    );
    const pale = ease(0.15, 1.1, line) * weight * fades;
    const dull = ease(0.05, 0.8, -line) * weight * fades;
    scatter(b, i, Math.max(0, 0.2 * f.strength * pale));
    roughen(b, i, b.roughness[i]! * 2.2 + 0.02, Math.min(1, Math.max(0, f.strength * dull)));
    // Each string stands up as a low ridge, lit on one side.
    raise(b, i, 0.5 * line + 2.6 * weight * fades * (ease(0.1, 0.9, line) - 0.6 * ease(0, 0.7, -line)));
  });
};
