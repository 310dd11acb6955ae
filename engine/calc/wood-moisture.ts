import type { Air } from './air.ts';
import { answer, outside, type Range, type Result } from './quantity.ts';

const quadratic = (c0: number, c1: number, c2: number, t: number): number => c0 + c1 * t + c2 * t * t;

/**
 * Moisture that wood ends up with in steady air, per cent of its oven-dry mass.
 * Two-hydrate Hailwood–Horrobin equation, Celsius coefficients of Simpson, USDA Forest Products Laboratory,
 * Research Note FPL-RN-0268, 1998 (the equation behind the Wood Handbook's table).
 * Valid from -1.2 to 54.5 °C and 5 to 95 % relative humidity. All species in one: real wood differs by about 1 %.
 */
export const woodMoisturePercent = ({ celsius, relativeHumidity: h }: Air): Result<number> => {
  const refused = outside(
    ['air temperature', celsius, -1.2, 54.5, '°C'],
    ['relative humidity', h, 0.05, 0.95, '0–1'],
  );
  if (refused) return refused;
  const w = quadratic(349, 1.29, 0.0135, celsius);
  const k = quadratic(0.805, 0.000736, -0.00000273, celsius);
  const k1 = quadratic(6.27, -0.00938, -0.000303, celsius);
  const k2 = quadratic(1.91, 0.0407, -0.000293, celsius);
  const kh = k * h;
  const twoHydrate = (k1 * kh + 2 * k1 * k2 * kh * kh) / (1 + k1 * kh + k1 * k2 * kh * kh);
  return answer((1800 / w) * (kh / (1 - kh) + twoHydrate));
};

/** The same as a range to show: one per cent of moisture either way, for species and for drying or wetting. */
export const woodMoistureRange = (air: Air): Result<Range> => {
  const percent = woodMoisturePercent(air);
  if (!percent.ok) return percent;
  return answer({
    from: Math.max(0, percent.value - 1),
    to: percent.value + 1,
    unit: '%',
    reasons: ['species-differ', 'wetting-or-drying'],
  });
};
