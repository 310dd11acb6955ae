import { answer, outside, type Result } from './quantity.ts';

export type Liquid = {
  readonly densityKilogramsPerCubicMeter: number;
  readonly viscosityPascalSeconds: number;
  readonly surfaceTensionNewtonsPerMeter: number;
};

const CRITICAL_KELVIN = 647.096;

/**
 * Surface tension of water against air, N/m: 235.8 τ^1.256 (1 − 0.625 τ) mN/m with τ = 1 − T/647.096 K
 * (IAPWS R1-76, 2014). Valid from 0.01 to 370 °C.
 */
export const waterSurfaceTension = (celsius: number): Result<number> => {
  const refused = outside(['water temperature', celsius, 0.01, 370, '°C']);
  if (refused) return refused;
  const tau = 1 - (celsius + 273.15) / CRITICAL_KELVIN;
  return answer(0.2358 * tau ** 1.256 * (1 - 0.625 * tau));
};

/** Coefficient and power of each term of the viscosity, µPa·s, in T / 300 K. */
const VISCOSITY_TERMS = [
  [280.68, -1.9],
  [511.45, -7.7],
  [61.131, -19.6],
  [0.45903, -40],
] as const;

/**
 * Density (Kell, J. Chem. Eng. Data 20, 1975, at one atmosphere), viscosity (IAPWS SR6-08, 0.1 MPa, good to 1 %) and
 * surface tension of water. Valid from 1 to 100 °C.
 */
export const water = (celsius: number): Result<Liquid> => {
  const refused = outside(['water temperature', celsius, 1, 100, '°C']);
  if (refused) return refused;
  const tension = waterSurfaceTension(celsius);
  if (!tension.ok) return tension;
  const t = celsius;
  const density =
    (999.83952 +
      16.945176 * t -
      7.9870401e-3 * t ** 2 -
      46.170461e-6 * t ** 3 +
      105.56302e-9 * t ** 4 -
      280.54253e-12 * t ** 5) /
    (1 + 16.87985e-3 * t);
  const reduced = (celsius + 273.15) / 300;
  const micropascals = VISCOSITY_TERMS.reduce((sum, [factor, power]) => sum + factor * reduced ** power, 0);
  return answer({
    densityKilogramsPerCubicMeter: density,
    viscosityPascalSeconds: micropascals * 1e-6,
    surfaceTensionNewtonsPerMeter: tension.value,
  });
};
