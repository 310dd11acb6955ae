/** Pages of walks opened with what was told of the piece kept in the browser. */
import { readChoices } from '../../content/tools/choices.ts';
import { openPage, PHONE } from './browser.ts';
import { builtPages } from './built.ts';

export const choices = readChoices(process.cwd());

/** Some page of a walk that ends in sanding, so old paint matters, and nothing else stops it. */
export const SANDING =
  builtPages().find(({ html }) => {
    const stops = [...html.matchAll(/class="?stop-rule"? data-rule="?([a-z-]+)/g)].map(([, id]) => id);
    return stops.length === 1 && stops[0] === 'is-there-old-paint-below';
  })?.address ?? '';
export const LEAD = '[data-rule=is-there-old-paint-below]';

export const opened = async (facts?: Record<string, unknown>) => {
  const one = await openPage(PHONE);
  if (facts)
    await one.page.addInitScript(
      (kept) => localStorage.setItem('halfdry.case', kept),
      JSON.stringify({ version: 1, facts }),
    );
  return one;
};
