import { toCelsius } from '#engine/calc/units.ts';
import type { CareDates } from '#engine/jobs/care-dates.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { sayLongDate } from '../../shared/say-date.ts';

const numberIn = (plan: URLSearchParams, name: string): number | undefined => {
  const text = plan.get(name)?.trim().replace(',', '.');
  const value = text ? Number(text) : Number.NaN;
  return Number.isNaN(value) ? undefined : value;
};

/** The nights of a card: its own, or those of the plan that it was made of before cards held them. */
export const nightOfCard = ({ night, plan }: JobCard): JobCard['night'] => {
  if (night || !plan) return night;
  const draft = new URLSearchParams(plan);
  const told = numberIn(draft, 'night');
  if (told === undefined) return undefined;
  const celsius = draft.get('units') === 'us' ? toCelsius(told) : told;
  const humidity = numberIn(draft, 'night-humidity');
  if (!(celsius >= -30 && celsius <= 50)) return undefined;
  const known = humidity !== undefined && humidity >= 0 && humidity <= 100;
  return { celsius, ...(known && { relativeHumidity: humidity / 100 }) };
};

/** What the dates on a care card make of nights that are not on the card. */
export const sayNights = (
  { unknownNights, lightUse, fullUse }: Extract<CareDates, { kind: 'dates' }>,
  colderCelsius: number,
  us: boolean,
): string => {
  const [celsius, fahrenheit] = [`${colderCelsius} °C`, `${colderCelsius * 1.8} °F`];
  const by = us ? `${fahrenheit} (${celsius})` : `${celsius} (${fahrenheit})`;
  const colder = `${by} colder than when the last coat was laid`;
  return [
    `Light use may come as early as ${sayLongDate(lightUse.from)}, full use as early as ${sayLongDate(fullUse.from)}; the card promises the late end.`,
    'How cold the nights are is not on the card.',
    unknownNights === 'left-out'
      ? `The dates leave them out: in nights ${colder} this finish may not dry at all.`
      : `The late dates allow for nights ${colder}.`,
    'Note the coldest night under ‘More about the piece’, and they are reckoned with it.',
  ].join(' ');
};
