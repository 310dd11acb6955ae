/** Faults of a page against WCAG 2.2 AA and good practice, as far as the axe engine can see them. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

type Axe = {
  run: (
    root: Document | Element,
    options: object,
  ) => Promise<{ violations: { id: string; nodes: { html: string; target: string[] }[] }[] }>;
};
type Rules = { readonly type: 'tag' | 'rule'; readonly values: readonly string[] };

/** The engine as a script: run once on each page before `axeFaults`. */
export const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const ALL_RULES: Rules = {
  type: 'tag',
  values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
};
/** Nothing else hangs on the colors: the pages are the same but for them. */
export const COLOR_RULES: Rules = { type: 'rule', values: ['color-contrast', 'link-in-text-block'] };

/**
 * A bar that stays at the lower edge covers in part whatever is just being scrolled past it: such a target is measured
 * where it stands once it is scrolled to, as its focus does (WCAG 2.2, 2.4.11).
 */
export const axeFaults = (page: Page, rules: Rules = ALL_RULES): Promise<string[]> =>
  page.evaluate(async (runOnly) => {
    const { axe } = window as unknown as { axe: Axe };
    // No sheet of styles is fetched a second time.
    const how = { resultTypes: ['violations'], preload: false };
    const { violations } = await axe.run(document, { ...how, runOnly });
    const still: string[] = [];
    for (const { id, nodes } of violations)
      for (const { html, target } of nodes) {
        const element = id === 'target-size' && document.querySelector(target.join(' '));
        if (element) {
          element.scrollIntoView({ block: 'nearest' });
          const there = await axe.run(element, { ...how, runOnly: { type: 'rule', values: [id] } });
          if (!there.violations.length) continue;
        }
        still.push(`${id}: ${html}`);
      }
    return still;
  }, rules);
