import type { Family } from '../model/family.ts';
import type { Product } from '../model/product.ts';
import { dewPointCelsius } from './dew-point.ts';
import { LEAST_MARGIN_CELSIUS } from './dew-point-margin.ts';
import { type Climate, outsideClimate, surfaceOf } from './drying/climate.ts';
import { answer, type Result } from './quantity.ts';
import { wetBulbCelsius } from './wet-bulb.ts';

/**
 * Gap between air and dew point, °C, for fast solvents that chill the film: below the first no spraying, below the
 * second only thin or retarded coats. A working rule drawn from two printed ones that disagree: air 20 °F (11.1 °C) above
 * the dew point; not above 65 % humidity. The first would warn of an ordinary warm room at 50 %, so a degree of it is left
 * to the meter.
 */
const SOLVENT_GAP_CELSIUS = { no: 7, care: 10 } as const;

const FAST_SOLVENT: readonly Family[] = ['shellac', 'lacquer'];

/** `surfaceCelsius` is the coldest place of the piece. */
export type Weather = Climate & { readonly warmingUp?: boolean; readonly inSun?: boolean };

export const VERDICTS = ['go', 'go-with-care', 'no'] as const;
type Verdict = (typeof VERDICTS)[number];

type Bound = { readonly value: number; readonly limit: number };

/** What speaks against coating, as data; `sayWeather` in say-weather.ts makes the sentence. */
export type WeatherReason = { readonly verdict: Exclude<Verdict, 'go'> } & (
  | ({
      readonly code:
        | 'near-dew-point'
        | 'solvent-gap'
        | 'too-cold'
        | 'too-hot'
        | 'too-humid'
        | 'too-dry'
        | 'below-film-formation'
        | 'film-chills';
    } & Bound)
  | { readonly code: 'warming-up' }
  | { readonly code: 'in-sun' }
);

export type WeatherVerdict = {
  readonly verdict: Verdict;
  readonly dewPointCelsius: number;
  /** Coldest surface above dew point. */
  readonly marginCelsius: number;
  readonly reasons: readonly WeatherReason[];
};

const atLeast = (
  code: 'too-cold' | 'too-dry',
  value: number,
  [limit]: readonly [number, number],
  [best]: readonly [number, number],
): WeatherReason[] => {
  if (value < limit) return [{ code, verdict: 'no', value, limit }];
  return value < best ? [{ code, verdict: 'go-with-care', value, limit: best }] : [];
};

const atMost = (
  code: 'too-hot' | 'too-humid',
  value: number,
  [, limit]: readonly [number, number],
  [, best]: readonly [number, number],
): WeatherReason[] => {
  if (value > limit) return [{ code, verdict: 'no', value, limit }];
  return value > best ? [{ code, verdict: 'go-with-care', value, limit: best }] : [];
};

const solventGap = (value: number): WeatherReason[] => {
  const { no, care } = SOLVENT_GAP_CELSIUS;
  if (value < no) return [{ code: 'solvent-gap', verdict: 'no', value, limit: no }];
  return value < care ? [{ code: 'solvent-gap', verdict: 'go-with-care', value, limit: care }] : [];
};

/** What the weather is judged against. */
export type WeatherProduct = Pick<Product, 'family' | 'limits' | 'best' | 'film-formation-celsius'>;

/**
 * Whether droplets can fuse into a film. Where they only may, damp air as well is a no: the water stays until they are too
 * stiff. Common practice, no source.
 */
const filmFormation = (
  product: WeatherProduct,
  surface: number,
  bulb: number,
  relativeHumidity: number,
): WeatherReason[] => {
  const formation = product['film-formation-celsius'];
  if (!formation) return [];
  const [least, sure] = formation;
  if (surface < sure && relativeHumidity > product.best.humidity[1])
    return [{ code: 'below-film-formation', verdict: 'no', value: surface, limit: sure }];
  if (surface < least) return [{ code: 'below-film-formation', verdict: 'no', value: surface, limit: least }];
  if (surface < sure)
    return [{ code: 'below-film-formation', verdict: 'go-with-care', value: surface, limit: sure }];
  return bulb < least ? [{ code: 'film-chills', verdict: 'go-with-care', value: bulb, limit: least }] : [];
};

/**
 * Whether the weather is fit for a coat, or for one that is drying now. The worst reason decides.
 * Air and surface from -30 to 50 °C, humidity 0 to 100 %; anything else is refused.
 */
export const weatherVerdict = (product: WeatherProduct, weather: Weather): Result<WeatherVerdict> => {
  const refused = outsideClimate(weather);
  if (refused) return refused;
  const { celsius, relativeHumidity, warmingUp, inSun } = weather;
  const surface = surfaceOf(weather);
  const dew = dewPointCelsius(weather);
  const marginCelsius = surface - dew;
  const { limits, best } = product;
  const reasons: WeatherReason[] = [
    ...(marginCelsius < LEAST_MARGIN_CELSIUS
      ? [
          {
            code: 'near-dew-point',
            verdict: 'no',
            value: marginCelsius,
            limit: LEAST_MARGIN_CELSIUS,
          } as const,
        ]
      : []),
    ...(FAST_SOLVENT.includes(product.family) ? solventGap(Math.min(celsius, surface) - dew) : []),
    ...atLeast('too-cold', Math.min(celsius, surface), limits.celsius, best.celsius),
    ...atMost('too-hot', Math.max(celsius, surface), limits.celsius, best.celsius),
    ...atMost('too-humid', relativeHumidity, limits.humidity, best.humidity),
    ...atLeast('too-dry', relativeHumidity, limits.humidity, best.humidity),
    ...filmFormation(product, surface, Math.min(surface, wetBulbCelsius(weather)), relativeHumidity),
    ...(warmingUp ? [{ code: 'warming-up', verdict: 'no' } as const] : []),
    ...(inSun ? [{ code: 'in-sun', verdict: 'no' } as const] : []),
  ];
  const verdict = reasons.some((reason) => reason.verdict === 'no')
    ? 'no'
    : reasons.length > 0
      ? 'go-with-care'
      : 'go';
  return answer({ verdict, dewPointCelsius: dew, marginCelsius, reasons });
};
