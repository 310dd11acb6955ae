import { entryOf } from '../../plain/entry-of.ts';
import { isWayTo, type Reading, spanOf } from '../words/reading.ts';
import { OUTRIGHT, PLAINLY } from '../words/sure.ts';
import type { Span } from '../words/words.ts';

const SHARE =
  /(\d{1,3})(?:\s*(?:-|–|to|or|and)\s*(\d{1,3}))?\s*(?:%|percent)(?:\s*(?:plus|rh\b|relative|humid))?/gi;
/** "humidity is between 60 and 65", "RH never under 75", "the hygrometer jumped to 94" */
const NAMED =
  /\b(?:(?:de)?humidi(?:ty|fier)|hum|rh|hygrometer)\b[^.,;!?\d]{0,26}?\b(\d{2,3})(?:\s*(?:-|–|to|or|and)\s*(\d{2,3}))?(?!\d|\s*(?:-|–|to|or|and)\s*\d|\s*(?:%|percent|°|º|deg|f\b|c\b|year|hour|day|minute|coat|grit|['’]?s\b))/gi;
const NEAR = 40;
const nearHumidity = (text: string, { from, to }: Span): boolean =>
  /humid|\bhum\b|hygrometer|\brh\b|moist air|damp|weather station|\d\s*°?\s*[fc]\b|degrees/i.test(
    text.slice(Math.max(0, from - NEAR), to + NEAR),
  ) && !/retarder|thin|cut|water|mix|dilut|off/i.test(text.slice(to, to + 14));

/** "in the eighties", "in the high 80s", said of humidity. */
const DECADE =
  /humid[a-z]*[^.,;!?]{0,18}\b(?:in the )?(?:(low|mid|high|upper) )?(\d0['’]?s|sixties|seventies|eighties|nineties)\b/gi;
const TENS: Readonly<Record<string, number>> = { sixties: 60, seventies: 70, eighties: 80, nineties: 90 };

const decades = (text: string): Reading[] =>
  [...text.matchAll(DECADE)].flatMap((match) => {
    const low = entryOf(TENS, (match[2] ?? '').toLowerCase()) ?? Number.parseInt(match[2] ?? '', 10);
    return low >= 20 && low <= 90
      ? [{ ...spanOf(match), low: low / 100, high: Math.min(1, (low + 9) / 100), sure: PLAINLY }]
      : [];
  });

const shares = (text: string): Reading[] =>
  [...text.matchAll(SHARE), ...text.matchAll(NAMED)].flatMap((match) => {
    const [first, last] = [Number(match[1]), Number(match[2] ?? match[1])];
    const span = spanOf(match);
    // "down from 80 to 48 %", "went from 40 to 70 %": where it ended.
    const ended = last < first || isWayTo(text, match.index + match[0].indexOf(match[1] ?? ''));
    const [low, high] = ended ? [last, last] : [first, last];
    return low >= 15 && high <= 100 && nearHumidity(text, span)
      ? [{ ...span, low: low / 100 - 0.02, high: high / 100 + 0.02, sure: OUTRIGHT }]
      : [];
  });

/** The humidities that a text tells in numbers, 0 to 1. */
export const humidities = (text: string): Reading[] => [...shares(text), ...decades(text)];
