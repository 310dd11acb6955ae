import type { Span } from '../plain/span.ts';
import { GRAVITY } from './leveling.ts';
import { answer, outside, type Result } from './quantity.ts';

/** Density of air at room temperature, kg/m³. */
const AIR_DENSITY = 1.2;

export type Bubble = {
  /** 1 to 500 µm and no wider than the film. */
  readonly diameterMicrometers: number;
  /** 1 to 2000 µm. */
  readonly filmMicrometers: number;
  /** At low shear, 0.01 to 1000 Pa·s: thinner than that and Stokes' law no longer holds for wide bubbles. */
  readonly viscosityPascalSeconds: number;
  /** 500 to 2500 kg/m³. */
  readonly densityKilogramsPerCubicMeter: number;
};

export type Rise = {
  /** Surface stiffened by soap or resin (Stokes). */
  readonly rigidMicrometersPerSecond: number;
  /** Clean, mobile surface (Hadamard and Rybczynski): half as fast again. */
  readonly mobileMicrometersPerSecond: number;
  /** Through the whole film, slow and quick. */
  readonly seconds: Span;
  /** Below 0.1 everywhere inside the valid range, which Stokes' law asks for. */
  readonly reynolds: number;
};

/** How fast a bubble climbs through a wet film. A bubble wider than the film is refused: it is a dome, not a rise. */
export const bubbleRise = (bubble: Bubble): Result<Rise> => {
  const {
    diameterMicrometers: diameter,
    filmMicrometers: film,
    viscosityPascalSeconds: viscosity,
    densityKilogramsPerCubicMeter: density,
  } = bubble;
  const refused = outside(
    ['wet film', film, 1, 2000, 'µm'],
    ['bubble diameter', diameter, 1, Math.min(film, 500), 'µm'],
    ['viscosity', viscosity, 0.01, 1000, 'Pa·s'],
    ['density', density, 500, 2500, 'kg/m³'],
  );
  if (refused) return refused;
  const radius = (diameter / 2) * 1e-6;
  const pull = (radius * radius * (density - AIR_DENSITY) * GRAVITY) / viscosity;
  const rigid = (2 / 9) * pull;
  const mobile = pull / 3;
  return answer({
    rigidMicrometersPerSecond: rigid * 1e6,
    mobileMicrometersPerSecond: mobile * 1e6,
    seconds: { from: (film * 1e-6) / mobile, to: (film * 1e-6) / rigid },
    reynolds: (density * rigid * 2 * radius) / viscosity,
  });
};
