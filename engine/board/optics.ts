/** Refractive index of a clear coat; 1.5 gives the 4 % of the films here. */
export const FILM_INDEX = 1.5;

/**
 * Share of unpolarized light that a smooth surface throws back (Fresnel).
 * @param cosine of the angle of incidence, 0–1
 */
export const fresnel = (cosine: number, index: number): number => {
  const c = Math.min(1, Math.max(0, cosine));
  const inside = Math.sqrt(1 - (1 - c * c) / (index * index));
  const s = (c - index * inside) / (c + index * inside);
  const p = (index * c - inside) / (index * c + inside);
  return (s * s + p * p) / 2;
};

/** What a clear colored film lets through on the way in and out (Beer–Lambert): density a µm, film µm. */
export const doublePass = (density: number, micrometers: number): number =>
  Math.exp(-2 * density * micrometers);

/**
 * Share of micro-surface slopes between two values in one direction: the GGX distribution, integrated.
 * @param spread square of the roughness (GGX α²)
 */
export const slopesBetween = (low: number, high: number, spread: number): number =>
  0.5 * (high / Math.sqrt(spread + high * high) - low / Math.sqrt(spread + low * low));

/** The same for a narrow range of ± `half` about a slope, where the density hardly changes: half the work. */
export const slopesNear = (slope: number, half: number, spread: number): number => {
  const sum = spread + slope * slope;
  return (half * spread) / (sum * Math.sqrt(sum));
};

/** Receptor of a 60° gloss meter: 4.4° in the plane, 11.7° across (ISO 2813 and ASTM D523). */
const IN_PLANE = (Math.PI / 180 / 2) * 2.2;
const ACROSS = (5.85 * Math.PI) / 180;
/** Index of the black glass that reads 100 (ISO 2813). */
const STANDARD_INDEX = 1.567;

/** 60° gloss units of a level film with slopes of this roughness. */
export const gloss60 = (roughness: number): number =>
  ((100 * fresnel(0.5, FILM_INDEX)) / fresnel(0.5, STANDARD_INDEX)) *
  slopesBetween(-IN_PLANE, IN_PLANE, roughness * roughness) *
  slopesBetween(-ACROSS, ACROSS, roughness * roughness);
