import { BASE } from '../../shared/urls.ts';

/** Whether this page was opened from another page of the site; not so for a link that somebody sent. */
export const cameFromHere = (): boolean => document.referrer.startsWith(location.origin + BASE);
