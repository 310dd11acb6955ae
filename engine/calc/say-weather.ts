import type { ClockWords } from '../model/clock-words.ts';
import { entryOf } from '../plain/entry-of.ts';
import { filled } from '../plain/filled.ts';
import type { Problem } from './quantity.ts';
import { sayDegrees, sayValue } from './say-problem.ts';
import type { Units } from './units.ts';
import type { WeatherReason, WeatherVerdict } from './weather.ts';

/** What is said of weather. */
export type WeatherWords = Pick<ClockWords, 'weather' | 'weather-before' | 'weather-while'>;

/** Before a coat is laid, while one is drying, or where what to do is told beside it. */
export type Moment = 'before' | 'during' | 'told';

/** A difference of temperatures: 9 °F are 5 °C, whatever they begin from. */
const gap = (celsius: number, units: Units): string => {
  const [metric, us] = [celsius, (celsius * 9) / 5].map((value) => Number(value.toFixed(1)));
  return units === 'us' ? `${us} °F (${metric} °C)` : `${metric} °C (${us} °F)`;
};

const what = ({ weather: says }: WeatherWords, reason: WeatherReason, units: Units): string => {
  switch (reason.code) {
    case 'near-dew-point':
      return reason.value > 0
        ? filled(says[reason.code], { gap: gap(reason.value, units), wanted: gap(reason.limit, units) })
        : filled(says['below-dew-point'], { gap: gap(-reason.value, units) });
    case 'solvent-gap':
      return filled(says[reason.code], { gap: gap(reason.value, units), wanted: gap(reason.limit, units) });
    case 'too-humid':
    case 'too-dry':
      return filled(says[reason.code], {
        is: sayValue(reason.value, '0–1'),
        wanted: sayValue(reason.limit, '0–1'),
      });
    case 'too-cold':
    case 'too-hot':
    case 'below-film-formation':
    case 'film-chills':
      return filled(says[reason.code], {
        is: sayDegrees(reason.value, units, reason.limit),
        wanted: sayDegrees(reason.limit, units, reason.value),
      });
    case 'warming-up':
    case 'in-sun':
      return says[reason.code];
    default:
      return reason satisfies never;
  }
};

const remedy = (words: WeatherWords, { code, verdict }: WeatherReason, moment: Moment): string => {
  if (moment === 'told') return '';
  if (moment === 'during') return words['weather-while'][code === 'in-sun' ? code : 'room'];
  const before = words['weather-before'];
  if (code === 'warming-up' || code === 'in-sun') return before[code];
  return verdict === 'no' ? before.wait : before.care;
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
  words: WeatherWords,
  reason: WeatherReason,
  moment: Exclude<Moment, 'told'>,
  units: Units = 'metric',
): string => `${what(words, reason, units)} ${remedy(words, reason, moment)}`;

/**
 * Every reason of a verdict in words. Where the verdict is a no, what would only call for care tells no way of laying the
 * coat: two orders in one list would leave her to choose. What several reasons call for is said once.
 */
export const sayWeatherReasons = (
  words: WeatherWords,
  { verdict, reasons }: Pick<WeatherVerdict, 'verdict' | 'reasons'>,
  moment: Moment,
  units: Units = 'metric',
): readonly { readonly reason: WeatherReason; readonly says: string }[] =>
  reasons
    .map((reason) => ({
      reason,
      does:
        moment === 'before' && verdict === 'no' && reason.verdict !== 'no'
          ? ''
          : remedy(words, reason, moment),
    }))
    // What several call for is said once, behind the last of them.
    .map(({ reason, does }, at, all) => ({
      reason,
      says:
        does && all.findLastIndex((one) => one.does === does) === at
          ? `${what(words, reason, units)} ${does}`
          : what(words, reason, units),
    }));
