import type { TimeStyle } from '#engine/clock.ts';

let hour12: boolean | undefined;

/** Times as this device prints them; asked once, since the answer costs more than a line of a page. */
export const timeStyle = (): TimeStyle => {
  hour12 ??= new Intl.DateTimeFormat(undefined, { hour: 'numeric' }).resolvedOptions().hour12 ?? true;
  return { hour12 };
};
