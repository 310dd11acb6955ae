import type { Board } from './field.ts';
import type { Light } from './light.ts';

/** So many pixels beyond the border the sweep begins. */
const BEYOND = 60;
/** Depth below the shadow's edge at which it is full, µm. */
const FADE_UM = 12;

/**
 * How deep each pixel lies in the shadow of the relief, 0 lit to 1 dark. One sweep from the light's side:
 * the edge of the shadow falls by the light's tangent from pixel to pixel.
 */
export const castShadows = (b: Board, light: Light): Float32Array => {
  const { columns, rows, pitch, height } = b;
  const along = Math.abs(light.towardX) >= Math.abs(light.towardY);
  const major = along ? light.towardX : light.towardY;
  const minor = (along ? light.towardY : light.towardX) / Math.abs(major);
  const step = major > 0 ? 1 : -1;
  const drop = pitch * 1000 * light.tangent * Math.sqrt(1 + minor * minor);
  // A window is wide: a shadow fades towards its end, so that low relief has only a faint one.
  const soft = Math.max(drop * 0.9, FADE_UM);
  const majors = along ? columns : rows;
  const minors = along ? rows : columns;
  const majorStride = along ? 1 : columns;
  const minorStride = along ? columns : 1;
  const shift = Math.floor(minor);
  const part = minor - shift;
  const shadow = new Float32Array(columns * rows);
  let edge = new Float32Array(minors).fill(-1e9);
  let next = new Float32Array(minors);
  // The board goes on beyond the border as it is there.
  for (let n = -BEYOND; n < majors; n++) {
    const m = step > 0 ? majors - 1 - Math.max(0, n) : Math.max(0, n);
    for (let k = 0; k < minors; k++) {
      const from = Math.min(minors - 1, Math.max(0, k + shift));
      const beside = Math.min(minors - 1, Math.max(0, k + shift + 1));
      const line = edge[from]! * (1 - part) + edge[beside]! * part - drop;
      const i = m * majorStride + k * minorStride;
      const h = height[i]!;
      if (line > h) {
        shadow[i] = Math.min(1, (line - h) / soft);
        next[k] = line;
      } else next[k] = h;
    }
    [edge, next] = [next, edge];
  }
  return shadow;
};
