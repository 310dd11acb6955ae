import { sayWeather } from '#engine/calc/say-weather.ts';
import type { WeatherVerdict } from '#engine/calc/weather.ts';
import type { Units } from '../shared/form/units.ts';

const VERDICTS = { go: 'Go', 'go-with-care': 'Go, with care', no: 'Not now' } as const;

type Props = { readonly verdict: WeatherVerdict; readonly units: Units };

/** Whether the weather is fit for a coat, and each reason why not. */
export const Weather = ({ verdict: { verdict, reasons }, units }: Props) => (
  <>
    <b class={verdict === 'no' ? 'tape label stop' : 'tape label'}>The weather: {VERDICTS[verdict]}</b>
    {reasons.map((reason) => (
      <p key={reason.code}>{sayWeather(reason, 'before', units)}</p>
    ))}
  </>
);
