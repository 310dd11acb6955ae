import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scaleFilm, stain } from '../field.ts';
import { remnant } from '../mask.ts';
import { between, drawnOut, ease, noise, random, rough } from '../noise.ts';

/** What was covered kept its first color: share of the yellow that is left there. */
const KEPT = 0.14;
const GRIME = [0.6, 0.72, 0.95] as const;
const STEP_UM = 9;

/** The film itself turns yellow, deeper where it lies thicker; a strip that was covered shows what color it was. */
export const ambering = (b: Board, f: FeatureOf<'ambering'>, from: number): void => {
  b.amber = Math.max(b.amber, f.strength);
  const next = random(from);
  const left = b.widthMm * between(next, 0.16, 0.24);
  const wide = b.widthMm * 0.24;
  const lean = between(next, -0.09, -0.03);
  everywhere(b, (i, x, y) => {
    const uneven = 2 * (x / b.widthMm - 0.5) + 0.8 * rough(x / 34, y / 16, from, 2);
    const v = y + 0.06 * x + 0.8 * noise(x / 24, y / 13, from + 14);
    const furrow = 0.2 * drawnOut(x, v, 24, 2.2, from + 1) + 0.12 * drawnOut(x, v, 12, 0.7, from + 2);
    scaleFilm(
      b,
      i,
      Math.max(0.15, 1 + f.drift * uneven + 0.3 * furrow + 0.03 * noise(x / 0.5, y / 0.5, from + 15)),
    );
    raise(b, i, 5 * furrow);
    if (f.reference === 'none') return;
    const across = x - left - lean * y;
    // Under the tape the finish crept in here and there.
    const crept =
      0.04 * noise(y / 18, across > wide / 2 ? 2 : 9, from + 5) +
      0.04 * noise(y / 2.6, across > wide / 2 ? 8 : 1, from + 13) +
      0.22 * furrow * ease(-0.2, 0.6, noise(y / 6, across > wide / 2 ? 5 : 3, from + 4)) +
      0.7 * Math.max(0, noise(y / 2.3, across > wide / 2 ? 4 : 7, from + 6) - 0.42);
    const d = Math.max(-across, across - wide) + crept;
    const covered = 1 - ease(-0.16, 0.3, d + 0.1 * noise(y / 1.2, across > wide / 2 ? 1 : 6, from + 3));
    scaleFilm(b, i, 1 - (1 - KEPT) * covered);
    raise(
      b,
      i,
      STEP_UM * (0.16 * remnant(x, y, 7, from + 7) * Math.exp(-(((d - 0.35) / 0.3) ** 2)) - covered),
    );
    // Bare paint: brushed and handled, and a little of the glue of the tape stayed.
    const glue = ease(0.2, 0.9, noise(x / 6, y / 11, from + 8) + 0.2 * noise(x / 0.8, y / 0.7, from + 9));
    raise(b, i, covered * (3 * drawnOut(x, y + 0.1 * x, 18, 0.9, from + 10) + 1.5 * glue));
    stain(
      b,
      i,
      GRIME,
      covered *
        (0.05 +
          0.06 * noise(x / 9, y / 14, from + 11) +
          0.03 * drawnOut(x, y + 0.1 * x, 12, 0.7, from + 12) +
          0.04 * glue),
    );
    roughen(b, i, 0.1, 0.45 * covered);
    // Against the edge of the tape the film stood thickest.
    scaleFilm(b, i, 1 + 0.14 * Math.exp(-(((d - 0.5) / 0.5) ** 2)) * (1 - covered));
  });
};
