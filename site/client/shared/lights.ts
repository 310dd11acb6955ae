import { type LightAngles, NAMED_LIGHTS } from '#engine/board/light.ts';

/** The lights of the two pictures that the site shows everywhere. */
const { raking: LOW, facing: FACING } = NAMED_LIGHTS;

/** @param turn 0 low from the side, 1 facing */
export const lightAt = (turn: number): LightAngles => ({
  azimuthDegrees: LOW.azimuthDegrees + (FACING.azimuthDegrees - LOW.azimuthDegrees) * turn,
  elevationDegrees: LOW.elevationDegrees + (FACING.elevationDegrees - LOW.elevationDegrees) * turn,
});
