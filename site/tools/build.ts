/** `npm run build`: checks Node, proves the content, builds dist/ from nothing. */
import { rmSync } from 'node:fs';
import { build } from 'astro';
import { say } from '#engine/say.ts';
import { provenKnowledge, readRetired } from '../../content/tools/knowledge.ts';
import { allBoards } from '../lib/boards.ts';
import { renderAll } from './boards.ts';
import { finish } from './finish.ts';
import { oldNode } from './node-version.ts';

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

// Astro leaves some old files in place, so that pages would survive their content.
// Under a test runner it would be 'test', and the pages would keep what only the preview needs.
process.env['NODE_ENV'] = 'production';
/** The folder that is built, in place of dist/. */
const out = process.env['OUT'] ?? 'dist';
rmSync(out, { recursive: true, force: true });
await build({ logLevel: 'warn', outDir: out });
await renderAll(allBoards(known), `${out}/boards`);
try {
  await finish(out, known, readRetired(process.cwd()));
} catch (error) {
  // A site that lost an address must not lie there ready to be published.
  rmSync(out, { recursive: true, force: true });
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
