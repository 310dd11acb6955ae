import { GRAVITY } from './leveling.ts';
import { answer, outside, type Result } from './quantity.ts';

export type UprightFilm = {
  /** 1 to 2000 µm. */
  readonly filmMicrometers: number;
  /** At low shear, 0.001 to 1000 Pa·s. */
  readonly viscosityPascalSeconds: number;
  /** 500 to 2500 kg/m³. */
  readonly densityKilogramsPerCubicMeter: number;
};

export type Flow = {
  readonly surfaceMicrometersPerSecond: number;
  readonly meanMicrometersPerSecond: number;
  /** Volume flowing past each meter of width, m²/s. */
  readonly squareMetersPerSecond: number;
  readonly wallStressPascals: number;
};

const outsideFluid = (viscosity: number, density: number) =>
  outside(['viscosity', viscosity, 0.001, 1000, 'Pa·s'], ['density', density, 500, 2500, 'kg/m³']);

/** How a film runs down an upright face: falling film of a Newtonian liquid (surface ρgh²/2η, flux ρgh³/3η). */
export const fallingFilm = (film: UprightFilm): Result<Flow> => {
  const { filmMicrometers, viscosityPascalSeconds: viscosity, densityKilogramsPerCubicMeter: density } = film;
  const refused = outside(['wet film', filmMicrometers, 1, 2000, 'µm']) ?? outsideFluid(viscosity, density);
  if (refused) return refused;
  const h = filmMicrometers * 1e-6;
  const weight = density * GRAVITY;
  return answer({
    surfaceMicrometersPerSecond: ((weight * h * h) / (2 * viscosity)) * 1e6,
    meanMicrometersPerSecond: ((weight * h * h) / (3 * viscosity)) * 1e6,
    squareMetersPerSecond: (weight * h ** 3) / (3 * viscosity),
    wallStressPascals: weight * h,
  });
};

/**
 * Thickest wet film, µm, whose surface creeps no farther than a distance before it sets.
 * The falling film solved for h, held over the open time. Distance 0.1 to 100 mm, time 1 s to 1 h.
 */
export const sagLimitMicrometers = (
  viscosityPascalSeconds: number,
  densityKilogramsPerCubicMeter: number,
  creepMillimeters: number,
  openSeconds: number,
): Result<number> =>
  outsideFluid(viscosityPascalSeconds, densityKilogramsPerCubicMeter) ??
  outside(['creep', creepMillimeters, 0.1, 100, 'mm'], ['open time', openSeconds, 1, 3600, 's']) ??
  answer(
    Math.sqrt(
      (2 * viscosityPascalSeconds * creepMillimeters * 1e-3) /
        (densityKilogramsPerCubicMeter * GRAVITY * openSeconds),
    ) * 1e6,
  );
