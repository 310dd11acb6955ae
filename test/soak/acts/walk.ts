/** Walking through trees and through the search for the flaw. */
import { readdirSync } from 'node:fs';
import { type Act, oneOf, tap } from '../user.ts';

const flaws = (): readonly string[] =>
  readdirSync('dist/defects', { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .sort();

export const walk: readonly Act[] = [
  {
    name: 'flaw',
    weight: 3,
    run: async (user) => {
      await user.page.goto(`/defects/${oneOf(user, flaws())}/`);
      return true;
    },
  },
  { name: 'stage', weight: 4, run: (user) => tap(user, 'main a[href*="/stage-"]') },
  {
    name: 'answer',
    weight: 12,
    run: (user) => tap(user, 'main a:is([href*="-yes/"], [href*="-no/"], [href*="-unsure/"])'),
  },
  { name: "can't tell", weight: 3, run: (user) => tap(user, 'main a[href*="-unsure/"]') },
  { name: 'old paint', weight: 2, run: (user) => tap(user, '.ask-age summary, .ask-age button, .ask-age a') },
];
