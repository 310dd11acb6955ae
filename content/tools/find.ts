/** `npm run find -- "<words>" [--json]`; with `-` one query a line from standard input. Ranks as the page does. */
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { say } from '#engine/faults/say.ts';
import { find, type Hit } from '#engine/find.ts';
import { linkedKnowledge } from './knowledge.ts';
import { FOUND } from './near.ts';
import { readIndex } from './said.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { json: { type: 'boolean', default: false } },
});
const words = positionals.join(' ').trim();
const root = process.cwd();
const { known, issues } = linkedKnowledge(root);

const print = (query: string, hits: readonly Hit[]) => {
  if (values.json) return console.log(JSON.stringify({ query, hits }));
  console.log(
    hits.length ? `"${query}"` : `"${query}" lists nothing; start from what you see: npm start, then /see/`,
  );
  if (hits[0]?.perhaps) console.log('  nothing fits well; perhaps:');
  for (const [index, hit] of hits.entries()) {
    console.log(`  ${index + 1}. ${hit.title} (${hit.kind} ${hit.id}, ${hit.score.toFixed(2)})`);
    console.log(`     ${hit.matched.length ? `fits ${hit.matched.join(', ')}: ` : ''}${hit.says}`);
  }
};

if (!known) {
  console.error(`the content does not link:\n${issues.map(say).join('\n')}`);
  process.exitCode = 1;
} else if (!words) {
  console.error(
    'what are you looking for? npm run find -- "cloudy over black", or - to read one query a line',
  );
  process.exitCode = 1;
} else {
  const index = readIndex(known, root);
  const queries =
    words === '-'
      ? readFileSync(0, 'utf8')
          .split('\n')
          .filter((line) => line.trim())
      : [words];
  for (const query of queries) print(query, find(index, query, { limit: FOUND }));
}
