import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DOINGS } from '#engine/model/remedy.ts';
import { TOOL_PAGES } from '#engine/model/said.ts';
import { STAGES } from '#engine/model/stage.ts';
import { known } from '../content/real/knowledge.ts';
import {
  type Part,
  readCollected,
  readPhrases,
  readPosts,
  readThreads,
  readTroubles,
  threadOf,
} from './words.ts';

const parts: Part[] = ['open', 'sealed'];
const phrases = parts.flatMap(readPhrases);
const posts = parts.flatMap(readPosts);
const troubles = parts.flatMap(readTroubles);
const collected = readCollected();
const threads = new Map(readThreads().map((thread) => [thread.thread, thread]));

const all = [...phrases, ...posts, ...troubles];
const imagined = readFileSync(new URL('../../content/hear/imagined.yaml', import.meta.url), 'utf8').split(
  '\n',
);
const texts = [
  ...imagined,
  ...phrases.map(({ q }) => q),
  ...posts.map(({ text }) => text),
  ...troubles.flatMap(({ title, says }) => [title, says]),
  ...collected.flatMap(({ title, story, says }) => [title, story, says]),
];

/** The first twelve hex digits of the SHA-256 of trade names, so that this file names none. */
const TRADE_NAMES = new Set([
  '3feab55cf610',
  '9e91fe092ab0',
  '4c2a95013547',
  'e817d9dfe800',
  '7b1de70a1976',
  'eb4aefe86abb',
  'adb44806425a',
  '8e261ebd7abe',
  'd2ea8fc4e318',
  'd498c8943860',
  'd3d0f0331fc9',
  '85770b1684dc',
  'fb4b3275e89d',
  '5daf812b4cad',
  '00aa47c8a6eb',
  '2118f18b1292',
  '81cff8868fc4',
  '46ccfd4f2f9b',
  '53eced923ea1',
  '033f3a99b64c',
  '16b21767dbbf',
  'cb9f2a7e2ca0',
  '9dd7dd220929',
  '4ff1ecdbdea7',
  '8ee9938e4b96',
  'b3dc38860576',
  '207dc25dd02f',
  '02d38d5db021',
  'acb8e280b959',
  '4cf1a5746be9',
  'ebbccfd35e88',
  '4645859ff99b',
  '5e5867bb8deb',
  '09e00b8de843',
  '22892c6a4147',
  'e402b2af1cff',
  '651b8ff3460b',
  'cc54c3f4370d',
  '00c04469a3f3',
  'fed94f6b4de2',
  '31b0465400e7',
  'd417a32def56',
  'b32cbd7a08db',
  'fbf4411c0651',
  'd746974e83fb',
  '3f16d318626e',
  '3c18bb9bd015',
]);

describe('the words that people wrote', () => {
  it('are many', () => {
    expect(phrases.length).toBeGreaterThanOrEqual(900);
    expect(posts.length).toBeGreaterThanOrEqual(160);
    expect(troubles.length).toBeGreaterThanOrEqual(80);
  });

  it('are split by thread', () => {
    for (const part of parts) {
      for (const { id } of readPhrases(part)) expect(threads.get(threadOf(id))?.part, id).toBe(part);
      for (const { id } of readPosts(part)) {
        const thread = threads.get(threadOf(id));
        expect(thread?.posts ?? thread?.part, id).toBe(part);
      }
      for (const { id } of readTroubles(part)) {
        const thread = threads.get(threadOf(id));
        expect(thread?.cases ?? thread?.part, id).toBe(part);
      }
    }
  });

  it('have each an id and a text of their own', () => {
    const twice = (list: string[]): string[] => list.filter((one, at) => list.indexOf(one) !== at);
    expect(twice(all.map(({ id }) => id))).toEqual([]);
    expect(twice(phrases.map(({ q }) => q.toLowerCase()))).toEqual([]);
    expect(twice(posts.map(({ text }) => text))).toEqual([]);
  });

  it('name no trade name', () => {
    const named = texts.filter((text) =>
      text
        .toLowerCase()
        .split(/[^a-z-]+/)
        .some((word) => TRADE_NAMES.has(createHash('sha256').update(word).digest('hex').slice(0, 12))),
    );
    expect(named).toEqual([]);
  });

  it('have an answer, except off topic and near it', () => {
    const off = phrases.filter(({ kind }) => kind === 'off topic' || kind === 'near topic');
    expect(off.filter(({ is }) => is.length > 0)).toEqual([]);
    expect(phrases.filter((phrase) => !off.includes(phrase) && phrase.is.length === 0)).toEqual([]);
  });

  it('never say a stage drier than the driest', () => {
    const at = (stage: unknown): number => STAGES.indexOf(stage as (typeof STAGES)[number]);
    expect(posts.filter(({ facts, driest }) => at(facts['stage']) > at(driest))).toEqual([]);
  });
});

describe('the answers', () => {
  const ids = (list: readonly { id: string }[]): Set<string> => new Set(list.map(({ id }) => id));
  const defects = ids(known.defects);
  const remedies = ids(known.remedies);
  const rules = ids(known.rules);
  const questions = ids(known.questions);
  const pages: Record<string, Set<string>> = {
    rule: rules,
    remedy: remedies,
    lesson: ids(known.lessons),
    term: ids(known.terms),
    product: ids(known.products),
    page: new Set<string>(TOOL_PAGES),
  };
  const isPage = (answer: string): boolean => {
    const [kind = '', id] = answer.split('/');
    return id === undefined ? defects.has(kind) : (pages[kind]?.has(id) ?? false);
  };

  it('are pages that exist', () => {
    const missing = [...phrases, ...posts, ...collected].flatMap(({ id, is }) =>
      is.filter((answer) => !isPage(answer)).map((answer) => `${id}: ${answer}`),
    );
    expect(missing).toEqual([]);
  });

  it('of the cases name questions, remedies and rules that exist', () => {
    const doings = new Set<string>(DOINGS);
    const missing = troubles.flatMap(({ id, defect, yes, no, acceptable, stops }) => [
      ...(defects.has(defect) ? [] : [`${id}: ${defect}`]),
      ...[...yes, ...no].filter((one) => !questions.has(one)).map((one) => `${id}: ${one}`),
      ...acceptable
        .filter((one) => !(doings.has(one) || remedies.has(one) || one.startsWith('does:')))
        .map((one) => `${id}: ${one}`),
      ...stops.filter((one) => !rules.has(one)).map((one) => `${id}: ${one}`),
    ]);
    expect(missing).toEqual([]);
  });
});
