import { STAGE_WORDS } from '../../shared/stages.ts';
import { ownOrigin } from '../shared/own-host.ts';

const PRINTED: Intl.DateTimeFormatOptions = {
  weekday: 'short',
  month: 'short',
  day: 'numeric',
  year: 'numeric',
  hour: 'numeric',
  minute: '2-digit',
};

/** How each stage is told, a line each, as a style writes the end of a line. */
const STAGES = Object.values(STAGE_WORDS).map(({ name, tell }) => `${name}: ${tell}`);

/**
 * The name of the page, which styles/print.css sets at the head of every sheet of paper after the first, the host that an
 * address on paper begins with, and when it was printed: a sheet that says “until 9:52 AM” is read on another day.
 * A verdict for one stage is pinned up: how each is told stands below it, since nobody can tap for it.
 */
addEventListener('beforeprint', () => {
  const name = document.title.replace(/ · Halfdry$/, '');
  const { style } = document.documentElement;
  style.setProperty('--sheet', JSON.stringify(name));
  style.setProperty('--printed', JSON.stringify(`Printed ${new Date().toLocaleString('en-US', PRINTED)}`));
  style.setProperty('--stages', `"${STAGES.join('\\A ')}"`);
  style.setProperty('--host', JSON.stringify(new URL(ownOrigin()).host));
});
