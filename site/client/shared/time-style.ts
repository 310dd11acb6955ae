import type { TimeStyle } from '#engine/clock.ts';

/** Times as this device prints them. */
export const timeStyle = (): TimeStyle => ({
  hour12: new Intl.DateTimeFormat(undefined, { hour: 'numeric' }).resolvedOptions().hour12 ?? true,
});
