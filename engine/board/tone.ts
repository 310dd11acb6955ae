const STEPS = 4096;
const SHOULDER = 0.62;

/** sRGB transfer (IEC 61966-2-1). @param linear 0–1 */
const encode = (linear: number): number =>
  linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;

/** Linear light, in steps of 1/2048 up to 2, to an sRGB byte; highlights roll off as on film. */
const TONE: Uint8Array = Uint8Array.from({ length: STEPS }, (_, n) => {
  const linear = n / (STEPS / 2);
  const rest = 1 - SHOULDER;
  const rolled = linear < SHOULDER ? linear : SHOULDER + rest * (1 - Math.exp(-(linear - SHOULDER) / rest));
  return Math.round(255 * encode(rolled));
});

export const toByte = (linear: number): number => {
  const n = (linear * (STEPS / 2) + 0.5) | 0;
  return TONE[n < 0 ? 0 : n >= STEPS ? STEPS - 1 : n]!;
};
