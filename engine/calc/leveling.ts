import { answer, outside, type Result } from './quantity.ts';
import { water } from './water.ts';

/** Acceleration of free fall, m/s². */
export const GRAVITY = 9.80665;

export type Ripple = {
  /** Mean wet film, 1 to 2000 µm. */
  readonly filmMicrometers: number;
  /** Crest to crest (brush-mark spacing), 0.1 to 100 mm. */
  readonly spacingMillimeters: number;
  /** At low shear, 0.0002 (boiling water) to 1000 Pa·s. */
  readonly viscosityPascalSeconds: number;
  /** 0.01 to 0.08 N/m. */
  readonly surfaceTensionNewtonsPerMeter: number;
  /** Leave out to neglect gravity; 500 to 2500 kg/m³. */
  readonly densityKilogramsPerCubicMeter?: number;
};

/**
 * Seconds until brush marks have sunk to 1/e (37 %) of their height.
 * Orchard's leveling: 3 η (λ/2π)⁴ ÷ (σ h³); with a density gravity helps: 1/τ = h³ (σ k⁴ + ρ g k²) / 3 η.
 * For small ripples on a film that stays liquid: no drying, no change of viscosity.
 */
export const levelingSeconds = (ripple: Ripple): Result<number> => {
  const {
    filmMicrometers: film,
    spacingMillimeters: spacing,
    viscosityPascalSeconds: viscosity,
    surfaceTensionNewtonsPerMeter: tension,
    densityKilogramsPerCubicMeter: density,
  } = ripple;
  const refused = outside(
    ['wet film', film, 1, 2000, 'µm'],
    ['spacing of the marks', spacing, 0.1, 100, 'mm'],
    ['viscosity', viscosity, 0.0002, 1000, 'Pa·s'],
    ['surface tension', tension, 0.01, 0.08, 'N/m'],
    ['density', density ?? 1000, 500, 2500, 'kg/m³'],
  );
  if (refused) return refused;
  const h = film * 1e-6;
  const k = (2 * Math.PI) / (spacing * 1e-3);
  const pull = tension * k ** 4 + (density ?? 0) * GRAVITY * k ** 2;
  return answer((3 * viscosity) / (h ** 3 * pull));
};

/**
 * Seconds below which the brush marks of no water-based coat can sink: those of plain water as warm as the film. Resin
 * thickens water and soap lowers its surface tension, and both only slow it. Film and spacing as above, 1 to 100 °C.
 */
export const quickestLevelingSeconds = (
  filmMicrometers: number,
  spacingMillimeters: number,
  celsius: number,
): Result<number> => {
  const liquid = water(celsius);
  if (!liquid.ok) return liquid;
  return levelingSeconds({ ...liquid.value, filmMicrometers, spacingMillimeters });
};
