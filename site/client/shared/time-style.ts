import type { TimeStyle } from '#engine/clock.ts';
import { recall } from './storage.ts';

let ofDevice: boolean | undefined;

/** Whether this device counts to twelve twice; asked once, since the answer costs more than a line of a page. */
const deviceHour12 = (): boolean => {
  ofDevice ??= new Intl.DateTimeFormat(undefined, { hour: 'numeric' }).resolvedOptions().hour12 ?? true;
  return ofDevice;
};

/** What is chosen on the form of a coat: `12` or `24` hours, else as the region of the device has it. */
export const hour12Of = (chosen: string | undefined, device: () => boolean): boolean =>
  chosen === '12' || (chosen !== '24' && device());

/** Times as they are printed everywhere: on the clock, cards and plans, on paper and in calendars. */
export const timeStyle = (): TimeStyle => ({
  hour12: hour12Of(recall('clock-form')?.draft['hours'], deviceHour12),
});
