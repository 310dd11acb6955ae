/** `npm run tell -- "<text>" | - [--json]`: what is understood of a text, the flaws, what to do, what to ask, a reply. */
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { say } from '#engine/faults/say.ts';
import { pageAsked } from '#engine/find/page-asked.ts';
import type { FindKind } from '#engine/find.ts';
import { namedFlaws } from '#engine/hear/named-flaws.ts';
import { withNamed } from '#engine/hear/with-named.ts';
import { consider, firstOfRule, flawWords, hear, mindOf, reply } from '#engine/hear.ts';
import type { Stage } from '#engine/model/stage.ts';
import { readHearing } from './hear.ts';
import { linkedKnowledge } from './knowledge.ts';
import { readIndex } from './said.ts';
import { tellJson, tellLines } from './tell-lines.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { json: { type: 'boolean', default: false } },
});
/** Where pages of each kind stand on the site. */
const ROOMS: Readonly<Partial<Record<FindKind, string>>> = { rule: '/safety', lesson: '/learn', page: '' };
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
  const mind = mindOf(known);
  const heard = hear(readHearing(known, root), text);
  const index = readIndex(known, root);
  const words = flawWords(index, mind, text, heard);
  const considered = consider(mind, { told: {}, heard, words });
  const page = pageAsked(index, text, heard.asksFor?.page);
  const room = page && ROOMS[page.kind];
  const linkTo = (defect: string, stage?: Stage) =>
    `/defects/${defect}/${stage && !considered.overdue ? `stage-${stage}/` : ''}`;
  const named = namedFlaws(mind, index, heard, considered.likely).filter(({ denied }) => !denied);
  const first = reply(considered, {
    heard,
    ruleAt: (rule) => `/safety/${rule}/`,
    tellAt: '/tell/',
    pageAt: (asked) => {
      const hit = pageAsked(index, text, asked);
      return hit && ROOMS[hit.kind] !== undefined ? `${ROOMS[hit.kind]}/${hit.id}/` : undefined;
    },
    ...(heard.asksWhich && considered.stage === undefined && { whichAt: '/which-coat/' }),
    ...(page &&
      room !== undefined && {
        page: {
          title: page.title,
          at: `${room}/${page.id}/`,
          says: page.kind === 'rule' ? firstOfRule(mind, page.id) : undefined,
        },
      }),
    linkTo,
  });
  const answer = withNamed(first, page ? [] : named, considered, linkTo);
  console.log(
    values.json
      ? JSON.stringify(tellJson(heard, considered, answer))
      : tellLines(known, heard, considered, answer).join('\n'),
  );
}
