import { kubelkaMunk } from '../calc/kubelka-munk.ts';
import type { Board } from './field.ts';
import type { Light } from './light.ts';
import { doublePass, FILM_INDEX, fresnel, slopesBetween, slopesNear } from './optics.ts';
import { castShadows } from './shadow.ts';
import { toByte } from './tone.ts';

/** Warm color of an aged film: density a µm in red, green and blue at amber 1 (chosen by eye for oil varnish). */
const AMBER = [0.0005, 0.0034, 0.0098] as const;
/** The lens is never perfectly sharp. */
const LENS = 0.007;
/** Below this much film (µm) the base is not wetted and looks dry and pale. */
const WETTED_UM = 4;
/** Half width of the lit wall around the window, and of the lamp, as slopes. */
const WALL = 0.1;
const LAMP = 0.035;
/** Half width of the borders of things in the room: they stand out of focus. */
const EDGE = 0.012;
/** Relief shades what lies under a thin film fully; under a film this thick (µm) by half, as light spreads in it. */
const CLEAR_UM = 120;
/** The room throws light back on what leans away: steep sides differ less than the window alone would make them. */
const STEEP = 0.3;
/** The window is wide: what leans away from it darkens little by little, over about this much of full light. */
const DUSK = 0.5;
const FULL = (1 + Math.sqrt(1 + DUSK * DUSK)) / 2;
/** Light reaches the bottom of a narrow hollow less: so much a step in slope, and at most. */
const HOLLOW = 0.7;
const MOST_HOLLOW = 0.22;
/** A lens lets less light through to the corners of the picture. */
const CORNERS = 0.16;
/** Light of the sky is cooler than that of the room. */
const SKY = [0.985, 1, 1.03] as const;

/** Fills `out` (RGBA) with the board as seen in this light. */
export const shade = (b: Board, light: Light, out: Uint8ClampedArray): void => {
  const { columns, rows, height, film, haze, roughness, red, green, blue, veil, amber } = b;
  const shadow = castShadows(b, light);
  const perMm = 1 / (2000 * b.pitch);
  const perStep = 1 / (1000 * b.pitch);
  const {
    towardX: tx,
    towardY: ty,
    sine,
    cosine,
    halfAlong,
    halfAcross,
    bar,
    crossBar,
    halfBar,
    aside,
    edges,
    ambient,
    level,
    fall,
  } = light;
  const direct = 1 - ambient;
  const f = fresnel(light.incidence, FILM_INDEX);
  const through = 1 - f;
  const mirrored = f * light.window;
  const room = f * light.room;
  const lamp = f * light.lamp;
  const wall = f * light.wall;
  const [densityR, densityG, densityB] = [AMBER[0] * amber, AMBER[1] * amber, AMBER[2] * amber];
  const acrossMid = (columns * -ty + rows * tx) / 2;
  const reach = Math.abs(tx) * columns + Math.abs(ty) * rows;
  const nearest = (tx > 0 ? columns * tx : 0) + (ty > 0 ? rows * ty : 0);
  const ratio = cosine / sine;
  for (let row = 0, i = 0; row < rows; row++) {
    const up = row > 0 ? columns : 0;
    const down = row < rows - 1 ? columns : 0;
    for (let column = 0; column < columns; column++, i++) {
      const left = column > 0 ? 1 : 0;
      const right = column < columns - 1 ? 1 : 0;
      const h = height[i]!;
      const hl = height[i - left]!;
      const hr = height[i + right]!;
      const hu = height[i - up]!;
      const hd = height[i + down]!;
      const sx = (hr - hl) * perMm;
      const sy = (hd - hu) * perMm;
      const bendX = (hr - 2 * h + hl) * perStep;
      const bendY = (hd - 2 * h + hu) * perStep;
      const far = (nearest - column * tx - row * ty) / reach;
      const tilt = -(sx * tx + sy * ty);
      const twist = -(sy * tx - sx * ty);
      const dark = shadow[i]!;

      const slope2 = sx * sx + sy * sy;
      const lean = tilt * ratio * (CLEAR_UM / (CLEAR_UM + film[i]!));
      const facing = (1 + lean / (1 + STEEP * Math.abs(lean))) / Math.sqrt(1 + slope2);
      let lit = ((facing + Math.sqrt(facing * facing + DUSK * DUSK)) / (2 * FULL)) * (1 - dark);
      if (lit > 1.5) lit = 1.5 + (lit - 1.5) / (1 + 1.4 * (lit - 1.5));
      const hollow = Math.min(MOST_HOLLOW, Math.max(0, HOLLOW * (bendX + bendY)));
      const midX = column / columns - 0.46;
      const midY = row / rows - 0.52;
      const lens = 1 - CORNERS * 2 * (midX * midX + midY * midY);
      const light0 =
        lens *
        level *
        (1 + fall * (0.5 - far)) *
        (ambient * (1 - 0.3 * dark) + direct * lit) *
        (1 - 0.6 * hollow);

      const r0 = roughness[i]!;
      const spread = r0 * r0 + LENS * LENS + 0.2 * (bendX * bendX + bendY * bendY);
      const middle = light.nearTilt + light.tiltGrowth * far - tilt;
      const sideways = 0.2 * ((column * -ty + row * tx - acrossMid) / reach) - twist + aside;
      const gleam =
        (slopesBetween(middle - halfAlong, middle + halfAlong, spread) -
          slopesNear(middle - bar, halfBar, spread)) *
        (slopesBetween(sideways - halfAcross, sideways + halfAcross, spread) -
          slopesNear(sideways - crossBar, halfBar, spread));
      const p1 = middle + light.lampTilt;
      const near = spread + LAMP * LAMP;
      const spark = (LAMP * LAMP * near) / (near + p1 * p1 + sideways * sideways) ** 2;
      let around = 1 + Math.max(-0.5, Math.min(0.5, tilt));
      for (let e = 0; e < edges.length; e += 4) {
        const beyond = middle * edges[e]! + sideways * edges[e + 1]! - edges[e + 2]!;
        around += (edges[e + 3]! * beyond) / Math.sqrt(beyond * beyond + spread + EDGE * EDGE);
      }
      const glare =
        lens *
        (1 - hollow) *
        ((mirrored * gleam + lamp * spark + (wall * WALL * WALL) / (WALL * WALL + spread + middle * middle)) *
          (1 - 0.8 * dark) +
          (room * Math.max(0.1, around)) / (1 + spread));

      const um = film[i]!;
      const s = haze[i]!;
      let r = red[i]!;
      let g = green[i]!;
      let u = blue[i]!;
      if (um < WETTED_UM) {
        const dry = 1 - um / WETTED_UM;
        r += dry * (0.025 + 0.28 * r) * (1 - r);
        g += dry * (0.025 + 0.28 * g) * (1 - g);
        u += dry * (0.025 + 0.28 * u) * (1 - u);
      }
      if (amber > 0) {
        r *= doublePass(densityR, um);
        g *= doublePass(densityG, um);
        u *= doublePass(densityB, um);
      }
      if (s > 0) {
        r = kubelkaMunk(0, s * veil[0], r);
        g = kubelkaMunk(0, s * veil[1], g);
        u = kubelkaMunk(0, s * veil[2], u);
      }
      const body = through * light0;
      const o = i * 4;
      out[o] = toByte(r * body + glare * SKY[0]);
      out[o + 1] = toByte(g * body + glare * SKY[1]);
      out[o + 2] = toByte(u * body + glare * SKY[2]);
      out[o + 3] = 255;
    }
  }
};
