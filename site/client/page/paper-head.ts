import { ownOrigin } from './own-host.ts';

const PRINTED: Intl.DateTimeFormatOptions = {
  weekday: 'short',
  month: 'short',
  day: 'numeric',
  year: 'numeric',
  hour: 'numeric',
  minute: '2-digit',
};

/**
 * The name of the page, which styles/print.css sets at the head of every sheet of paper after the first, the host that an
 * address on paper begins with, and when it was printed: a sheet that says “until 9:52 AM” is read on another day.
 */
addEventListener('beforeprint', () => {
  const name = document.title.replace(/ · Halfdry$/, '');
  const { style } = document.documentElement;
  style.setProperty('--sheet', JSON.stringify(name));
  style.setProperty('--printed', JSON.stringify(`Printed ${new Date().toLocaleString('en-US', PRINTED)}`));
  style.setProperty('--host', JSON.stringify(new URL(ownOrigin()).host));
});
