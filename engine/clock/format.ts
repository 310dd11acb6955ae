/** Instants whose offsets tell one zone of the device from another, in winter and in summer. */
const IN_WINTER = new Date(Date.UTC(2026, 0, 1));
const IN_SUMMER = new Date(Date.UTC(2026, 6, 1));

const kept = new Map<string, Intl.DateTimeFormat>();

/**
 * A way to print dates in American English. Making one takes longer than all that a page prints with it, so each is
 * kept; one for the zone of the device (without `timeZone`) only until the device goes to another zone.
 */
export const dateFormat = (options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat => {
  const zone = options.timeZone ?? `${IN_WINTER.getTimezoneOffset()} ${IN_SUMMER.getTimezoneOffset()}`;
  const key = `${zone} ${JSON.stringify(options)}`;
  const format = kept.get(key) ?? new Intl.DateTimeFormat('en-US', options);
  kept.set(key, format);
  return format;
};
