import { entryOf } from '../plain/entry-of.ts';
import type { Problem } from './quantity.ts';
import { sayDegrees, sayValue } from './say-problem.ts';
import type { Units } from './units.ts';
import type { WeatherReason, WeatherVerdict } from './weather.ts';

/** Before a coat is laid, while one is drying, or where what to do is told beside it. */
export type Moment = 'before' | 'during' | 'told';

/** A difference of temperatures: 9 °F are 5 °C, whatever they begin from. */
const gap = (celsius: number, units: Units): string => {
  const [metric, us] = [celsius, (celsius * 9) / 5].map((value) => Number(value.toFixed(1)));
  return units === 'us' ? `${us} °F (${metric} °C)` : `${metric} °C (${us} °F)`;
};

const what = (reason: WeatherReason, units: Units): string => {
  const degrees = (celsius: number) => gap(celsius, units);
  const apart = ({ value, limit }: { value: number; limit: number }) => [
    sayDegrees(value, units, limit),
    sayDegrees(limit, units, value),
  ];
  switch (reason.code) {
    case 'near-dew-point':
      return reason.value > 0
        ? `The coldest surface is only ${degrees(reason.value)} above the dew point; it should be at least ${degrees(reason.limit)} above.`
        : `The coldest surface is ${degrees(-reason.value)} below the dew point: water is condensing on it.`;
    case 'solvent-gap':
      return `Fast solvents chill the film, and the air is only ${degrees(reason.value)} above the dew point; ${degrees(reason.limit)} is wanted, or it may turn white.`;
    case 'too-cold':
      return `It is ${apart(reason)[0]}; this coat wants ${apart(reason)[1]} or more.`;
    case 'too-hot':
      return `It is ${apart(reason)[0]}; this coat wants ${apart(reason)[1]} or less, or it sets before it levels.`;
    case 'too-humid':
      return `The air is at ${sayValue(reason.value, '0–1')} humidity; this coat wants ${sayValue(reason.limit, '0–1')} or less.`;
    case 'too-dry':
      return `The air is at ${sayValue(reason.value, '0–1')} humidity; this coat wants ${sayValue(reason.limit, '0–1')} or more, or it sets before it levels.`;
    case 'below-film-formation':
      return `The surface is ${apart(reason)[0]}; below ${apart(reason)[1]} the droplets may not fuse into a clear, tough film.`;
    case 'film-chills':
      return `The wet film cools itself to about ${apart(reason)[0]} while water leaves; it must be back above ${apart(reason)[1]} before it sets.`;
    case 'warming-up':
      return 'The piece is warming up, so air in its pores swells and lifts bubbles into the film.';
    case 'in-sun':
      return 'The sun is on the piece: the skin dries first and bubbles rise under it.';
    default:
      return reason satisfies never;
  }
};

const remedy = (reason: WeatherReason, moment: Moment): string => {
  if (moment === 'told') return '';
  if (moment === 'during')
    return reason.code === 'in-sun'
      ? 'Shade it without touching the film.'
      : 'Leave the film alone and change the room, slowly: no heat or fan on the film itself.';
  if (reason.code === 'warming-up') return 'Wait until it is as warm as the room and no longer changing.';
  if (reason.code === 'in-sun') return 'Move it to the shade and let it cool first.';
  return reason.verdict === 'no'
    ? 'Wait for better weather or change the room first.'
    : 'Lay it thin and try a small piece first.';
};

/** What of the weather is no more than what a problem says already, by its code and what it is of. */
const SAID_BY: Readonly<Record<string, readonly WeatherReason['code'][]>> = {
  'air temperature': ['too-cold', 'too-hot'],
  'surface temperature': ['too-cold', 'too-hot'],
  'relative humidity': ['too-humid', 'too-dry'],
  'surface-below-dew-point': ['near-dew-point'],
  'below-film-formation': ['below-film-formation'],
};

/** What speaks against the weather beside a problem that is told already; all of it where there is none. */
export const besideProblem = (
  reasons: readonly WeatherReason[],
  problem: Pick<Problem, 'code' | 'quantity'> | undefined,
): readonly WeatherReason[] => {
  if (!problem) return reasons;
  const told = entryOf(SAID_BY, problem.code) ?? entryOf(SAID_BY, problem.quantity) ?? [];
  return reasons.filter(({ code }) => !told.includes(code));
};

/** Two short sentences for a reason: what the weather is against what is wanted, and what to do now. */
export const sayWeather = (
  reason: WeatherReason,
  moment: Exclude<Moment, 'told'>,
  units: Units = 'metric',
): string => `${what(reason, units)} ${remedy(reason, moment)}`;

/**
 * Every reason of a verdict in words. Where the verdict is a no, what would only call for care tells no way of laying the
 * coat: two orders in one list would leave her to choose. What several reasons call for is said once.
 */
export const sayWeatherReasons = (
  { verdict, reasons }: Pick<WeatherVerdict, 'verdict' | 'reasons'>,
  moment: Moment,
  units: Units = 'metric',
): readonly { readonly reason: WeatherReason; readonly says: string }[] =>
  reasons
    .map((reason) => ({
      reason,
      does: moment === 'before' && verdict === 'no' && reason.verdict !== 'no' ? '' : remedy(reason, moment),
    }))
    // What several call for is said once, behind the last of them.
    .map(({ reason, does }, at, all) => ({
      reason,
      says:
        does && all.findLastIndex((one) => one.does === does) === at
          ? `${what(reason, units)} ${does}`
          : what(reason, units),
    }));
