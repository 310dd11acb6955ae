/**
 * `node test/words/score.ts [open|sealed]`: the figures of the search, the ear and the belief on what people wrote. On the open part
 * the search has learned from the same words; only the sealed part says how it does with a stranger's. Score that once.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { find, pageName } from '#engine/find.ts';
import { consider, flawWords, hear, mindOf, SURE, type ToldFacts } from '#engine/hear.ts';
import { STAGES, type Stage } from '#engine/model/stage.ts';
import { readHearing } from '../../content/tools/hear.ts';
import { linkedKnowledge, readRetired } from '../../content/tools/knowledge.ts';
import { readIndex } from '../../content/tools/said.ts';

type Phrase = { q: string; kind: string; is: string[]; invented?: boolean };
type Post = {
  text: string;
  is: string[];
  facts: Record<string, string | number>;
  driest: Stage;
};

const part = process.argv[2] ?? 'open';
const root = process.cwd();
const { known } = linkedKnowledge(root);
if (!known) throw new Error('the content does not link: npm run check');
const retired = readRetired(root);
const now = (page: string): string => {
  const [kind, id] = page.includes('/') ? page.split('/') : ['defect', page];
  const moved = retired[`${kind}/${id}`];
  if (!moved) return page;
  return kind === 'defect' ? moved : `${kind}/${moved}`;
};
const lines = <T>(name: string): T[] =>
  readFileSync(join(root, 'test/words', `${name}.${part}.jsonl`), 'utf8')
    .trim()
    .split('\n')
    // The sealed part begins with a line that says so.
    .filter((line) => !line.startsWith('{"sealed"'))
    .map((line) => JSON.parse(line) as T);

const index = readIndex(known, root);
const hearing = readHearing(known, root);
const mind = mindOf(known);
const percent = (count: number, of: number): string => `${((100 * count) / Math.max(1, of)).toFixed(1)} %`;

const scorePhrases = (name: string, phrases: readonly Phrase[]): void => {
  const good = phrases.filter(({ is }) => is.length);
  const off = phrases.filter(({ is }) => !is.length);
  const ranks = good.map(({ q, is }) => {
    const hits = find(index, q, { limit: 8 });
    const right = is.map(now);
    return { none: !hits.length, rank: hits.findIndex((hit) => right.includes(pageName(hit))) };
  });
  const within = (places: number) => ranks.filter(({ rank }) => rank >= 0 && rank < places).length;
  const none = ranks.filter((one) => one.none).length;
  const quiet = off.filter(({ q }) => find(index, q, { limit: 8 }).every(({ perhaps }) => perhaps)).length;
  console.log(
    `${name.padEnd(20)} ${String(phrases.length).padStart(5)}: ` +
      (good.length
        ? `first ${percent(within(1), good.length)}, in three ${percent(within(3), good.length)}, nothing ${percent(none, good.length)}`
        : '') +
      (off.length ? ` silent or perhaps ${percent(quiet, off.length)}` : ''),
  );
};

const phrases = lines<Phrase>('phrases');
scorePhrases('all phrases', phrases);
scorePhrases(
  'not invented',
  phrases.filter(({ invented }) => !invented),
);
for (const kind of [...new Set(phrases.map((one) => one.kind))].sort())
  scorePhrases(
    kind,
    phrases.filter((one) => one.kind === kind),
  );

/** Whether a heard value is the one told; numbers may lie anywhere in the range heard. */
const agrees = (
  heard: { value: string | number; range?: readonly [number, number] },
  told: string | number,
): boolean =>
  typeof told === 'number' && heard.range
    ? told >= heard.range[0] - 1e-9 && told <= heard.range[1] + 1e-9
    : heard.value === told;

let first = 0;
let inThree = 0;
let flaws = 0;
let inText = 0;
let rightInText = 0;
let claimed = 0;
let rightClaimed = 0;
let drier = 0;
const asked: number[] = [];
const MOST = 15;

for (const post of lines<Post>('posts')) {
  const heard = hear(hearing, post.text);
  const words = flawWords(index, mind, post.text, heard);
  for (const [fact, told] of Object.entries(post.facts)) {
    inText++;
    const found = heard.facts.find((one) => one.fact === fact && one.sure >= SURE);
    if (!found) continue;
    claimed++;
    if (agrees(found, told)) {
      rightClaimed++;
      rightInText++;
    }
  }
  const stage = heard.facts.find((one) => one.fact === 'stage' && one.sure >= SURE);
  if (stage && STAGES.indexOf(stage.value as Stage) > STAGES.indexOf(post.driest)) drier++;
  const right = post.is.map(now).filter((page) => known.has('defect', page));
  const [true_] = right;
  if (!true_) continue;
  flaws++;
  let told: ToldFacts = {};
  let standing = consider(mind, { told, heard, words });
  const rank = standing.likely.findIndex(({ defect }) => right.includes(defect));
  if (rank === 0) first++;
  if (rank < 3) inThree++;
  const at = mind.matrix.defects.indexOf(true_);
  let count = 0;
  while (standing.next && count < MOST) {
    count++;
    const { next } = standing;
    if (next.kind === 'stage') told = { ...told, stage: post.facts['stage'] ?? post.driest };
    else if (next.kind === 'age') told = { ...told, age: post.facts['age'] ?? 'unknown' };
    else {
      const sign = mind.matrix.signs[mind.matrix.questions.indexOf(next.question)]?.charAt(at) ?? '2';
      const answer = '13'.includes(sign) ? 'yes' : '04'.includes(sign) ? 'no' : 'unsure';
      told = { ...told, [next.question]: answer };
    }
    standing = consider(mind, { told, heard, words });
  }
  asked.push(count);
}
asked.sort((a, b) => a - b);
console.log(
  `posts with a flaw    ${String(flaws).padStart(5)}: first ${percent(first, flaws)}, in three ${percent(inThree, flaws)}; ` +
    `questions to the verdict, answered by the signs of the flaw: median ${asked[asked.length >> 1]}, worst ${asked.at(-1)}`,
);
console.log(
  `facts: of those in the text right ${percent(rightInText, inText)}; of those said to be known right ${percent(rightClaimed, claimed)}; ` +
    `stage taken drier than the text allows in ${drier} posts`,
);
