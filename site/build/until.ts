import { FAMILIES, type Family } from '#engine/model/family.ts';
import { choices } from '../shared/choices.ts';
import { knowledge } from './knowledge.ts';

const SOON_MINUTES = 60;
/** From an evening's last stroke to the next morning. */
const NIGHT_MINUTES = 12 * 60;
const DAY_MINUTES = 24 * 60;

/** When the slowest can of a kind is dry to the touch at 73 °F and 50 %, minutes. */
const latestTouch = (family: Family): number =>
  Math.max(
    ...knowledge.products.filter((one) => one.family === family).map((one) => one['touch-minutes'][1]),
  );

const named = (families: readonly Family[]): string => {
  const names = families
    .map((family) => choices.family.values[family].split(',')[0]?.toLowerCase())
    .join(', ');
  return names.charAt(0).toUpperCase() + names.slice(1);
};

/**
 * Until when hands stay off a coat that is still wet, where nothing tells which it is but `families`, none of them being
 * any: the night bounds most; what is surely sooner, or takes longer, is named.
 */
export const untilTouch = (families: readonly Family[]): string => {
  const all = families.length ? families : FAMILIES;
  const soon = all.filter((family) => latestTouch(family) <= SOON_MINUTES);
  const late = all.filter((family) => latestTouch(family) > NIGHT_MINUTES);
  if (soon.length === all.length)
    return 'In a warm room mostly within the hour; by tomorrow morning at the latest.';
  const days = Math.ceil(Math.max(...late.map(latestTouch)) / DAY_MINUTES);
  return [
    late.length < all.length && 'In a warm room by tomorrow morning.',
    soon.length > 0 && `${named(soon)}: mostly within the hour.`,
    late.length > 0 && `${named(late)}: in up to ${days === 1 ? 'a day' : `${days} days`}.`,
  ]
    .filter(Boolean)
    .join(' ');
};
