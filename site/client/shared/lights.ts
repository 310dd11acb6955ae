import type { LightAngles } from '#engine/board/light.ts';

/** The lights of the two pictures that the site shows everywhere. */
const LOW: LightAngles = { azimuthDegrees: 142, elevationDegrees: 14 };
const FACING: LightAngles = { azimuthDegrees: 118, elevationDegrees: 58 };

/** @param turn 0 low from the side, 1 facing */
export const lightAt = (turn: number): LightAngles => ({
  azimuthDegrees: LOW.azimuthDegrees + (FACING.azimuthDegrees - LOW.azimuthDegrees) * turn,
  elevationDegrees: LOW.elevationDegrees + (FACING.elevationDegrees - LOW.elevationDegrees) * turn,
});
