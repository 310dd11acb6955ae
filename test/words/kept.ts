/**
 * What is right of strangers' words today: the open part of `test/words`, an item a line, with what of its answers the
 * engine gives. `node test/words/kept.ts` writes `kept.table.json` anew; `kept.test.ts` holds the engine to it, so that
 * what was won is not lost unseen. The answers are those of the threads, not of the engine.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { find, pageName } from '#engine/find.ts';
import { consider, flawWords, hear, SURE } from '#engine/hear.ts';
import { STAGES, type Stage } from '#engine/model/stage.ts';
import { advise, caseOf, forbiddenIn, isAcceptable, namesTheCause } from '../cases/advise.ts';
import type { TroubleCase } from '../cases/case-file.ts';
import { hearing, known, understanding } from '../engine/hear/hearing.ts';
import { readPhrases, readPosts, readTroubles } from './words.ts';

const { index, mind } = understanding;

const phrases = readPhrases('open');
const posts = readPosts('open');
const troubles = readTroubles('open');

type Post = (typeof posts)[number];
type Phrase = (typeof phrases)[number];
type Trouble = (typeof troubles)[number];

/** Whether a heard value is the one told; a number may lie anywhere in the range that was heard. */
const agrees = (
  heard: { readonly value: string | number; readonly range?: readonly [number, number] },
  told: string | number,
): boolean =>
  typeof told === 'number' && heard.range
    ? told >= heard.range[0] - 1e-9 && told <= heard.range[1] + 1e-9
    : heard.value === told;

const ofPost = ({ text, facts, driest, is }: Post): string[] => {
  const heard = hear(hearing, text);
  const sure = heard.facts.filter((one) => one.sure >= SURE);
  const right = Object.entries(facts).flatMap(([name, told]) => {
    const found = sure.find(({ fact }) => fact === name);
    return found && agrees(found, told) ? [name] : [];
  });
  const stage = sure.find(({ fact }) => fact === 'stage')?.value as Stage | undefined;
  if (!stage || STAGES.indexOf(stage) <= STAGES.indexOf(driest)) right.push('never drier');
  const { likely } = consider(mind, { told: {}, heard, words: flawWords(index, mind, text, heard) });
  const rank = likely.findIndex(({ defect }) => is.includes(defect));
  if (rank === 0) right.push('flaw first');
  if (rank >= 0 && rank < 3) right.push('flaw in three');
  return right;
};

const ofPhrase = ({ q, is }: Phrase): string[] => {
  const hits = find(index, q, { limit: 8 });
  if (!is.length) return hits.every(({ perhaps }) => perhaps) ? ['quiet'] : [];
  const rank = hits.findIndex((hit) => is.includes(pageName(hit)));
  return [...(rank === 0 ? ['first'] : []), ...(rank >= 0 && rank < 3 ? ['in three'] : [])];
};

const ofTrouble = (trouble: Trouble): string[] => {
  const one = { ...trouble, source: 'words', file: trouble.id } as unknown as TroubleCase;
  const advice = advise(known, one, one.defect, caseOf(one));
  const right = isAcceptable(known, advice, one.acceptable, one.stops);
  return [
    ...(right ? ['advice'] : []),
    ...(right || !forbiddenIn(known, advice, one.forbidden, one.stops).length ? ['no harm'] : []),
    ...(namesTheCause(known, one) ? ['cause'] : []),
  ];
};

/** Every item with what of it is right, to be asked for one at a time. */
export const ITEMS: readonly { readonly id: string; readonly right: () => string[] }[] = [
  ...posts.map((post) => ({ id: post.id, right: () => ofPost(post) })),
  ...troubles.map((trouble) => ({ id: trouble.id, right: () => ofTrouble(trouble) })),
  ...phrases.map((phrase) => ({ id: phrase.id, right: () => ofPhrase(phrase) })),
];

const FILE = new URL('kept.table.json', import.meta.url);

export const readKept = (): Readonly<Record<string, string>> =>
  JSON.parse(readFileSync(FILE, 'utf8')) as Record<string, string>;

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const rows = ITEMS.map(({ id, right }) => [id, right().join(', ')] as const).filter(([, right]) => right);
  writeFileSync(FILE, `${JSON.stringify(Object.fromEntries(rows), null, 1)}\n`);
  console.log(`${rows.length} of ${ITEMS.length} items have something right`);
}
