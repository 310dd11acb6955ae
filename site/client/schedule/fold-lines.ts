import { lower } from '#engine/plain/text.ts';
import { type Draft, unitsIn } from '../shared/form/form.ts';
import { sayLoose } from '../shared/say-both-faces.ts';
import { sayHardener } from '../shared/say-hardener.ts';

import { bothIn } from './both-faces.ts';

const DAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];

const clock = (time: string, hour12: boolean): string => {
  const [hour = 0, minute = 0] = time.split(':').map(Number);
  const minutes = minute ? `:${String(minute).padStart(2, '0')}` : '';
  return hour12 ? `${hour % 12 || 12}${minutes} ${hour < 12 ? 'AM' : 'PM'}` : `${hour}${minutes || ':00'}`;
};

const daysOf = (days: string): string => {
  const on = days.split(',').filter(Boolean);
  return on.length === DAYS.length ? 'any day' : on.map((day) => DAYS[Number(day)]).join(', ') || 'no day';
};

/** What the folded fields of weather and time hold, in one line. What is empty is not told. */
export const weatherLine = (draft: Draft, hour12: boolean): string => {
  const degrees = unitsIn(draft) === 'us' ? '°F' : '°C';
  const { air, humidity, night, days = '', from = '', to = '', sun, start, promised } = draft;
  return [
    air && `${air} ${degrees}`,
    humidity && `${humidity} %`,
    night && `nights ${night} ${degrees}`,
    sun && 'in the sun',
    start && `start ${start.replace('T', ', ')}`,
    promised && `promised for ${promised}`,
    `${daysOf(days)}, ${clock(from, hour12)} to ${clock(to, hour12)}`,
  ]
    .filter(Boolean)
    .join(', ');
};

/** The words of what is chosen in a field, as the form writes them. */
type WordsOf = (field: string) => readonly string[];

/** What the folded fields of the piece hold, as a sentence. */
export const pieceLine = (draft: Draft, wordsOf: WordsOf): string => {
  const { piece, 'base-age': age } = draft;
  const [tone = 'base'] = wordsOf('tone').map(lower);
  const a = tone === 'wood' ? '' : age ? 'a ' : 'an ';
  const below = `${a}${age ? `${tone}, dry for ${age} hours,` : `old ${tone}`} lies below.`;
  const loose = bothIn(draft);
  return `${piece ? `${piece}: ` : ''}${below}${loose.length ? ` Both faces of ${sayLoose(loose)}.` : ''}`;
};

/** What the folded fields of its use hold. */
export const useLine = (wordsOf: WordsOf): string => {
  const meets = wordsOf('trials').map(lower).join(', ');
  return `Used ${wordsOf('wear').map(lower).join()}${meets && `; will meet ${meets}`}`;
};

/** What the folded fields of the top coat hold, but for what the can says. */
export const coatLine = ({ hardener }: Draft, wordsOf: WordsOf): string =>
  [...wordsOf('sheen'), ...wordsOf('tool'), ...(hardener ? [sayHardener(hardener)] : [])]
    .map((text, place) => (place ? lower(text) : text))
    .join(', ');
