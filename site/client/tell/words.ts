import { type HeardFact, SURE } from '#engine/hear.ts';
import type { Choices } from '#engine/model/choices.ts';
import { entryOf, isKeyOf } from '#engine/plain/entry-of.ts';
import { inUnit, sayLong } from '#engine/plain/say-span.ts';
import { HOUR_MIN } from '#engine/plain/time.ts';
import { STAGE_WORDS } from '../../shared/stages.ts';

/** The facts that are told by a choice, as the forms word them. */
type Lists = Partial<Record<keyof Choices, { readonly values: Readonly<Record<string, string>> }>>;

/** From this on, times longest by shortest, both ends of a range are told; a nearer guess is told as one time. */
const WIDE = 2;

/** From here on, hours, a guess is told in days. */
const DAYS_FROM = 36;

/** The most that a coat's age is told in hours: that long or longer. */
const YEAR_FROM = 8760;

/** So long ago, hours, as people say it: nobody means 1.6 to 2.6 hours, or 43 minutes. */
const ago = (from: number, to: number, hours: number): string => {
  if (from >= YEAR_FROM) return 'a year or more';
  const unit = hours < 1 ? 'min' : hours < DAYS_FROM ? 'h' : 'day';
  const step = unit === 'min' ? 5 : 1;
  const about = (time: number) => Math.max(step, Math.round(inUnit(time * HOUR_MIN, unit) / step) * step);
  const [least, most] = [about(from), about(to)];
  if (from > 0 && to / from > WIDE && least !== most) return `${least} to ${sayLong(most, unit)}`;
  return `about ${sayLong(about(hours), unit)}`;
};

/** A fact in the words of the forms; nothing for what has no words there. */
export const factWords = (
  lists: Lists,
  fact: string,
  value: string | number,
  range?: readonly [number, number],
): string | undefined => {
  const listed = isKeyOf(lists, fact) ? lists[fact]?.values : undefined;
  if (listed) return entryOf(listed, String(value));
  const [from, to] = range ?? [Number(value), Number(value)];
  switch (fact) {
    case 'stage':
      return isKeyOf(STAGE_WORDS, value) ? STAGE_WORDS[value].name : undefined;
    case 'overdue':
      return value === 'yes' ? 'Sticky long past its time' : undefined;
    case 'coat-number':
      return `Coat ${value}`;
    case 'hours-since-coat':
      return `Laid ${ago(from, to, Number(value))} ago`;
    case 'air-celsius':
      return `About ${Math.round(Number(value) * 1.8 + 32)} °F (${Math.round(Number(value))} °C)`;
    case 'relative-humidity':
      return `${Math.round(Number(value) * 100)} % humidity`;
    default:
      return undefined;
  }
};

/** Whether a heard fact is sure enough to be taken as told. */
export const isTaken = ({ sure }: HeardFact): boolean => sure >= SURE;

/** How likely, in words: a percentage would promise more than words of a post can carry. */
export const chanceSaid = (chance: number): string =>
  chance >= 0.9 ? 'almost surely' : chance >= 0.6 ? 'most likely' : chance >= 0.25 ? 'may be' : 'less likely';

/** Words that tell of somebody else's piece: an answer to send is what is wanted. */
const OF_ANOTHER =
  /\b(?:she|he|they) (?:has|had|put|used|says?|said|wrote|asks?|asked|did|applied|painted|coated|brushed|sprayed)\b|\bmy (?:follower|reader|client|customer|student|friend|neighbor|sister|brother|mom|mother|dad|father|daughter|aunt)\b/i;
export const tellsOfAnother = (text: string): boolean => OF_ANOTHER.test(text);

/** A post rather than a search: so many words. */
const POST = 12;
const ASKS = /\?|\bhelp\b|\bcan i\b|\bwhat (?:do|should|can) i\b/i;
/** Whoever greets or thanks speaks to people: nobody does so to a field of their own piece. */
const GREETS =
  /^\W*(?:hi|hello|hey|hiya|howdy|good (?:morning|afternoon|evening)|dear|help)\b|\b(?:thanks|thank you|thx|tia)\b|\b(?:hi|hello|hey),? (?:all|everyone|everybody|guys|ladies|there|friends)\b/i;
/** Whether an answer to send is what is wanted before anything is asked: of somebody else's piece, or of a post that asks and was pasted or greets. */
export const wantsReply = (text: string, pasted: boolean): boolean =>
  text.trim().split(/\s+/).length > POST &&
  (tellsOfAnother(text) || ((pasted || GREETS.test(text)) && ASKS.test(text)));
