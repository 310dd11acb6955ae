import { type Board, everywhere, roughen, tint } from './field.ts';

const BENCH = [0.022, 0.02, 0.018] as const;
/** How far below the board's edge the bench lies, µm. */
const BELOW_UM = 2500;

/** Shows the bench below the lower edge of the board; returns where the edge lies, mm from the top. */
export const lowerEdge = (b: Board): number => {
  const edge = b.heightMm * 0.87;
  everywhere(b, (i, _x, y) => {
    if (y <= edge) return;
    tint(b, i, BENCH, 1);
    b.height[i] = -BELOW_UM;
    b.film[i] = 5;
    b.haze[i] = 0;
    roughen(b, i, 0.4, 1);
  });
  return edge;
};
