import { touchBounds } from '#engine/clock.ts';
import { FAMILIES, type Family } from '#engine/model/family.ts';
import { sayLong } from '#engine/plain/say-span.ts';
import { upper } from '#engine/plain/text.ts';
import { choices } from '../shared/choices.ts';
import { knowledge } from './knowledge.ts';

const OR = new Intl.ListFormat('en-US', { type: 'disjunction' });
const named = (families: readonly Family[]): string => {
  const names = families
    .map((family) => choices.family.values[family].split(',')[0]?.toLowerCase())
    .join(', ');
  return upper(names);
};

/**
 * Until when hands stay off a coat that is still wet, where nothing tells which it is but `families`, none of them being
 * any: the night bounds most; what is surely sooner, or takes longer, is named.
 */
export const untilTouch = (families: readonly Family[]): string => {
  const all = families.length ? families : FAMILIES;
  const { soon, late, days } = touchBounds(knowledge.products, all);
  if (soon.length === all.length)
    return 'In a warm room mostly within the hour, else by tomorrow morning; longer where it is cold or damp.';
  const others = soon.length + late.length < all.length;
  return [
    // What most have comes first.
    soon.length > 0 && `${named(soon)}: mostly within the hour.`,
    late.length > 0 && `${named(late)}: in up to ${days === 1 ? 'a day' : sayLong(days, 'day')}.`,
    others && `${soon.length + late.length ? 'All others: in' : 'In'} a warm room by tomorrow morning.`,
    'Longer where it is cold or damp.',
  ]
    .filter(Boolean)
    .join(' ');
};

/** The same in one line, where it hangs on the kind; which kind takes how long is told below it. */
export const untilLine = (families: readonly Family[]): string => {
  const all = families.length ? families : FAMILIES;
  const { soon, late, days } = touchBounds(knowledge.products, all);
  const times = [
    soon.length > 0 && 'within the hour',
    soon.length + late.length < all.length && 'by tomorrow morning',
    late.length > 0 && `in up to ${days === 1 ? 'a day' : sayLong(days, 'day')}`,
  ].filter((time) => time !== false);
  if (times.length < 2) return untilTouch(families);
  const said = OR.format(times);
  return `${upper(said)} in a warm room, by its kind.`;
};
