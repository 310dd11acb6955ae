/** A seed that nobody can foresee, 0 to 2³¹ − 1. */
export const newSeed = (): number => (crypto.getRandomValues(new Uint32Array(1))[0] ?? 0) >>> 1;
