/** `npm run new -- <kind> <id>`: a new content file that already checks, bar what only the author knows. */
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { ENTRY_KINDS, type EntryKind, FOLDERS, ID_PATTERN } from '#engine/model/index.ts';
import { templates } from './templates.ts';

const [kind, id] = process.argv.slice(2);
const fail = (message: string) => {
  console.error(message);
  process.exitCode = 1;
};

if (!kind || !(kind in templates)) {
  fail(
    `npm run new -- <kind> <id>; kinds: ${Object.keys(templates).join(', ')} (of ${ENTRY_KINDS.length} in all)`,
  );
} else if (!id || !ID_PATTERN.test(id)) {
  fail(`"${id ?? ''}" is not a usable id; use lower-case words joined by hyphens, like drips-on-legs`);
} else {
  const file = join('content', FOLDERS[kind as EntryKind], `${id}.mdx`);
  if (existsSync(file)) fail(`${file} is there already; edit it or choose another id`);
  else {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, templates[kind as keyof typeof templates](id, new Date().toISOString().slice(0, 10)));
    console.log(`Wrote ${file}. Next: fill in what stands in <angle brackets>, then npm run check.`);
  }
}
