/** `npm run tell -- "<text>" | - [--json]`: what is understood of a text, the flaws, what to do, what to ask, a reply. */
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { say } from '#engine/faults/say.ts';
import { atOnceOf, mindOf, understand } from '#engine/hear.ts';
import { answerLinks } from './answer-links.ts';
import { readHearing } from './hear.ts';
import { linkedKnowledge } from './knowledge.ts';
import { readIndex } from './said.ts';
import { tellJson, tellLines } from './tell-lines.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { json: { type: 'boolean', default: false } },
});
const root = process.cwd();
const given = positionals.join(' ').trim();
const text = given === '-' ? readFileSync(0, 'utf8') : given;
const { known, issues } = linkedKnowledge(root);

if (!known) {
  console.error(`the content does not link:\n${issues.map(say).join('\n')}`);
  process.exitCode = 1;
} else if (!text.trim()) {
  console.error(
    'what happened? npm run tell -- "poly went cloudy over navy last night", or - to read a post',
  );
  process.exitCode = 1;
} else {
  const by = {
    hearing: readHearing(known, root),
    mind: mindOf(known),
    index: readIndex(known, root),
    atOnce: atOnceOf(known),
  };
  const { heard, considered, answer } = understand(by, { text }, answerLinks);
  console.log(
    values.json
      ? JSON.stringify(tellJson(heard, considered, answer))
      : tellLines(known, heard, considered, answer).join('\n'),
  );
}
