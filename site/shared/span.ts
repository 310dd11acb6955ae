/** From–to with a unit, or one number where both are the same. */
export const span = ([from, to]: readonly [number, number], unit: string): string =>
  from === to ? `${from} ${unit}` : `${from}–${to} ${unit}`;

/** A wait in the unit that people say it in: minutes up to an hour, days from two days on. */
export const waitWords = ([from, to]: readonly [number, number]): string => {
  if (from === 0)
    return `up to ${to > 48 ? span([Math.ceil(to / 24), Math.ceil(to / 24)], 'days') : `${to} h`}`;
  if (to <= 1) return span([Math.round(from * 60), Math.round(to * 60)], 'min');
  if (from < 1) return `${Math.round(from * 60)} min–${to} h`;
  if (to <= 48 || from < 24) return span([from, to], 'h');
  return span([Math.round(from / 24), Math.round(to / 24)], 'days');
};
