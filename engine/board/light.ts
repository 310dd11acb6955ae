import { between, random } from './noise.ts';

export type LightAngles = { azimuthDegrees: number; elevationDegrees: number };
export type LightChoice = LightAngles | 'facing' | 'raking';

/** Low light from the upper left, and light over the shoulder; relief reads as raised when lit from the upper left. */
export const NAMED_LIGHTS: Readonly<Record<'facing' | 'raking', LightAngles>> = {
  facing: { azimuthDegrees: 106, elevationDegrees: 58 },
  raking: { azimuthDegrees: 142, elevationDegrees: 11 },
};

/** How a board lies on the bench: no two are put down alike under the window. */
export type Lay = {
  /** How far the board is turned, degrees. */
  turn: number;
  /** How far off the middle the window is mirrored, as slopes towards it and across. */
  near: number;
  aside: number;
  /** Where the window's bars cross, as slopes from its middle. */
  bar: number;
  crossBar: number;
  /**
   * Borders of lit and dark things in the room: their direction (x, y), place and step in brightness, four a border.
   */
  edges: Float64Array;
};

const EDGES = 3;
const STEP = 0.65;

export const STRAIGHT: Lay = {
  turn: 0,
  near: 0,
  aside: 0,
  bar: 0.036,
  crossBar: 1,
  edges: new Float64Array(4 * EDGES),
};

/** A lay of its own for each start. */
export const layFrom = (from: number): Lay => {
  const next = random(from);
  const edges = new Float64Array(4 * EDGES);
  for (let n = 0; n < EDGES; n++) {
    // Walls, doors and shelves stand upright or level, and look a little askew.
    const turn = (n === 0 ? 0 : Math.PI / 2) + between(next, -0.3, 0.3);
    edges.set([Math.cos(turn), Math.sin(turn), between(next, 0.08, 0.24), between(next, -STEP, STEP)], 4 * n);
    if (n > 0) edges[4 * n + 2] = between(next, -0.09, 0.09);
  }
  return {
    turn: between(next, -24, 16),
    near: between(next, -0.035, 0.03),
    aside: between(next, -0.07, 0.07),
    bar: between(next, -0.03, 0.04),
    crossBar: between(next, -0.08, 0.08),
    edges,
  };
};

/** A window beside the board, as the eye above the board meets it. Lengths in board widths, tilts as slopes. */
export type Light = {
  /** Unit vector in the board's plane towards the window; y runs down the picture. */
  towardX: number;
  towardY: number;
  sine: number;
  cosine: number;
  tangent: number;
  /** Slope that mirrors the window's middle into the eye at the near border, and its growth across the board. */
  nearTilt: number;
  tiltGrowth: number;
  halfAlong: number;
  halfAcross: number;
  /** The glazing bars that part the window: their slopes from the window's middle, and half their width. */
  bar: number;
  crossBar: number;
  halfBar: number;
  /** How far aside of the middle the window is mirrored. */
  aside: number;
  edges: Float64Array;
  /** Brightness of the window, and of the room, as mirrored. */
  window: number;
  room: number;
  /** Brightness of the wall around the window. */
  wall: number;
  /** A small bright lamp above the window: how much farther the film must lean to mirror it, and its brightness. */
  lampTilt: number;
  lamp: number;
  /** Light on the body of the film: share from all sides, level, and fall across the board. */
  ambient: number;
  level: number;
  fall: number;
  /** Cosine of the angle at which the eye meets the mirrored window. */
  incidence: number;
};

const LOW = 11;
const HIGH = 58;

/** @param choice elevation is held between 6° and 85° */
export const lightFrom = (choice: LightChoice, lay: Lay = STRAIGHT): Light => {
  const { azimuthDegrees, elevationDegrees } = typeof choice === 'string' ? NAMED_LIGHTS[choice] : choice;
  const azimuth = ((azimuthDegrees + lay.turn) * Math.PI) / 180;
  const elevation = (Math.min(85, Math.max(6, elevationDegrees)) * Math.PI) / 180;
  const high = Math.min(1, Math.max(0, (elevationDegrees - LOW) / (HIGH - LOW)));
  const mixed = (low: number, top: number) => low + (top - low) * high;
  return {
    towardX: Math.cos(azimuth),
    towardY: -Math.sin(azimuth),
    sine: Math.sin(elevation),
    cosine: Math.cos(elevation),
    tangent: Math.tan(elevation),
    nearTilt: mixed(-0.045, -0.03) + lay.near,
    tiltGrowth: 0.24,
    halfAlong: mixed(0.075, 0.06),
    halfAcross: mixed(0.17, 0.15),
    bar: lay.bar,
    crossBar: lay.crossBar,
    halfBar: 0.0045,
    aside: lay.aside,
    edges: lay.edges,
    window: mixed(2.1, 4.4),
    lampTilt: mixed(0.2, 0.3),
    lamp: mixed(60, 60),
    room: mixed(0.13, 0.18),
    wall: mixed(0.15, 0.8),
    ambient: mixed(0.24, 0.62),
    level: mixed(0.88, 0.98),
    fall: mixed(0.72, 0.16),
    incidence: mixed(0.47, 0.9),
  };
};
