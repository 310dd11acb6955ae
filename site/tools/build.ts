/** `npm run build`: checks Node, proves the content, builds dist/ from nothing. */
import { rmSync } from 'node:fs';
import { build } from 'astro';
import { say } from '#engine/faults/say.ts';
import { provenKnowledge, readRetired } from '../../content/tools/knowledge.ts';
import { FOLDER, spoken } from '../build/address.ts';
import { allBoards } from '../build/boards.ts';
import { copyBoards, missingBoards } from '../build/pictures/boards.ts';
import { allCards, copyCards, missingCards } from '../build/pictures/cards.ts';
import { drawAll } from '../build/pictures/drawing.ts';
import { finish } from './finish.ts';
import { oldNode } from './node-version.ts';
import { setAside } from './set-aside.ts';

const complaint = oldNode(process.versions.node);
if (complaint) {
  console.error(complaint);
  process.exit(1);
}

const { known, issues } = provenKnowledge(process.cwd());
if (!known || issues.length) {
  for (const issue of issues) console.error(say(issue));
  console.error(`\n${issues.length} faults in content/; nothing was built.`);
  process.exit(1);
}

// The pages are made of just this (`site/build/knowledge.ts`).
Object.assign(globalThis, { halfdryProven: known });
// Astro leaves some old files in place, so that pages would survive their content.
// Under a test runner it would be 'test', and the pages would keep what only the preview needs.
process.env['NODE_ENV'] = 'production';
// Nothing is told to the framework's makers of whoever builds this.
process.env['ASTRO_TELEMETRY_DISABLED'] = '1';
/** The folder that is built, in place of dist/. */
const out = process.env['OUT'] ?? 'dist';
const deleted = setAside(out);
const boards = allBoards(known);
const cards = allCards(known, (path) => spoken(FOLDER + path.slice(1)));
// Pages keep one core busy; what the cache lacks of the pictures is drawn meanwhile.
const drawn = drawAll([...missingBoards(boards), ...missingCards(cards)]);
await Promise.all([build({ logLevel: 'warn', outDir: out }), drawn]);
await copyBoards(boards, `${out}/boards`);
await copyCards(cards, out);
await deleted;
try {
  await finish(out, readRetired(process.cwd()));
} catch (error) {
  // A site that lost an address must not lie there ready to be published.
  rmSync(out, { recursive: true, force: true });
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
