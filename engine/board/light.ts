export type LightAngles = { azimuthDegrees: number; elevationDegrees: number };
export type LightChoice = LightAngles | 'facing' | 'raking';

/** Low light from the upper left, and light over the shoulder; relief reads as raised when lit from the upper left. */
const NAMED: Readonly<Record<'facing' | 'raking', LightAngles>> = {
  facing: { azimuthDegrees: 118, elevationDegrees: 58 },
  raking: { azimuthDegrees: 142, elevationDegrees: 14 },
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
  /** The glazing bar that parts the window: its slope from the window's middle, and half its width. */
  bar: number;
  halfBar: number;
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

const LOW = 14;
const HIGH = 58;

/** @param choice elevation is held between 6° and 85° */
export const lightFrom = (choice: LightChoice): Light => {
  const { azimuthDegrees, elevationDegrees } = typeof choice === 'string' ? NAMED[choice] : choice;
  const azimuth = (azimuthDegrees * Math.PI) / 180;
  const elevation = (Math.min(85, Math.max(6, elevationDegrees)) * Math.PI) / 180;
  const high = Math.min(1, Math.max(0, (elevationDegrees - LOW) / (HIGH - LOW)));
  const mixed = (low: number, top: number) => low + (top - low) * high;
  return {
    towardX: Math.cos(azimuth),
    towardY: -Math.sin(azimuth),
    sine: Math.sin(elevation),
    cosine: Math.cos(elevation),
    tangent: Math.tan(elevation),
    nearTilt: mixed(-0.03, 0.0),
    tiltGrowth: mixed(0.24, 0.24),
    halfAlong: mixed(0.085, 0.06),
    halfAcross: mixed(0.3, 0.13),
    bar: mixed(0.036, 0.024),
    halfBar: 0.0045,
    window: mixed(2.7, 5.5),
    lampTilt: mixed(0.2, 0.3),
    lamp: mixed(60, 60),
    room: mixed(0.12, 0.16),
    wall: mixed(0.3, 0.7),
    ambient: mixed(0.22, 0.45),
    level: mixed(0.62, 0.98),
    fall: mixed(0.5, 0.12),
    incidence: mixed(0.47, 0.9),
  };
};
