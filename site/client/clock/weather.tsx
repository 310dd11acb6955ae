import { sayWeatherReasons } from '#engine/calc/say-weather.ts';
import type { WeatherVerdict } from '#engine/calc/weather.ts';
import { clockWords } from '../../shared/clock-words.ts';
import type { Units } from '../shared/form/units.ts';

const VERDICTS = { go: 'fine for this coat', 'go-with-care': 'fine, with care', no: 'not now' } as const;

type Props = { readonly verdict: WeatherVerdict; readonly units: Units };

/** Whether the weather is fit for a coat, and each reason why not. */
export const Weather = ({ verdict, units }: Props) => (
  <>
    <b class={verdict.verdict === 'no' ? 'label stop' : 'label'}>Weather: {VERDICTS[verdict.verdict]}</b>
    {sayWeatherReasons(clockWords, verdict, 'before', units).map(({ reason, says }) => (
      <p key={reason.code}>{says}</p>
    ))}
  </>
);
