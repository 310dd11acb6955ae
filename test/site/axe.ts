/** Faults of a page against WCAG 2.2 AA and good practice, as far as the axe engine can see them. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

type Axe = {
  run: (
    root: Document,
    options: object,
  ) => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
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

export const axeFaults = (page: Page, rules: Rules = ALL_RULES): Promise<string[]> =>
  page.evaluate(async (runOnly) => {
    const { axe } = window as unknown as { axe: Axe };
    const { violations } = await axe.run(document, {
      runOnly,
      resultTypes: ['violations'],
      // No sheet of styles is fetched a second time.
      preload: false,
    });
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
  }, rules);
