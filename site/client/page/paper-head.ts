import { ownOrigin } from './own-host.ts';

/**
 * The name of the page, which styles/print.css sets at the head of every sheet of paper after the first, and the host that
 * an address on paper begins with.
 */
addEventListener('beforeprint', () => {
  const name = document.title.replace(/ · Halfdry$/, '');
  const { style } = document.documentElement;
  style.setProperty('--sheet', JSON.stringify(name));
  style.setProperty('--host', JSON.stringify(new URL(ownOrigin()).host));
});
