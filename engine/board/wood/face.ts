import { noise } from '../noise.ts';

/** The face of bare wood between its pores: bundles of fibers, light and dark, high and low, about −1 to 1. */
export const fiberAt = (x: number, y: number, seed: number): number => {
  const bent = y + 0.5 * noise(x / 17, y / 9, seed);
  return (
    0.55 * noise(x / 13, bent / 0.9, seed + 1) +
    0.5 * noise(x / 5, bent / 0.32, seed + 2) +
    0.4 * noise(x / 1.6, bent / 0.17, seed + 3)
  );
};
