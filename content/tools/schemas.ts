/**
 * `npm run schemas`: what editors read. `content/schema/` for the tables, named in their first line; `.astro/collections/`
 * for the block above a page, with every id that is there, for editors with the Astro extension. `npm run dev` writes the latter too.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { ENTRY_KINDS, FOLDERS } from '#engine/model/index.ts';
import { committedSchemas, kindSchemaWithIds } from './editor-schemas.ts';
import { filesIn } from './files.ts';
import { linkedKnowledge } from './knowledge.ts';

/** Writes what an editor needs to complete front matter in `root`. Rewritten whole: nothing else stands there. */
export const writeFrontMatterSchemas = (known: Knowledge, root: string): void => {
  const folder = join(root, '.astro/collections');
  mkdirSync(folder, { recursive: true });
  const entries = ENTRY_KINDS.flatMap((kind) =>
    filesIn(root, `content/${FOLDERS[kind]}`, '.mdx').map((name): [string, string] => {
      const { href } = pathToFileURL(resolve(root, 'content', FOLDERS[kind], name));
      // The editor's server looks files up by their decoded address in lower case.
      return [decodeURIComponent(href).toLowerCase(), FOLDERS[kind]];
    }),
  );
  const collections = ENTRY_KINDS.map((kind) => ({ name: FOLDERS[kind], hasSchema: true }));
  for (const kind of ENTRY_KINDS)
    writeFileSync(
      join(folder, `${FOLDERS[kind]}.schema.json`),
      JSON.stringify(kindSchemaWithIds(kind, known)),
    );
  writeFileSync(
    join(folder, 'collections.json'),
    JSON.stringify({ collections, entries: Object.fromEntries(entries) }),
  );
};

if (import.meta.main) {
  const root = process.cwd();
  mkdirSync('content/schema', { recursive: true });
  for (const [name, text] of committedSchemas()) writeFileSync(`content/schema/${name}`, text);
  const { known } = linkedKnowledge(root);
  if (known) writeFrontMatterSchemas(known, root);
  console.log('Wrote content/schema for the tables and .astro/collections for the pages.');
}
