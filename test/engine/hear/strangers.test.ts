/**
 * Facts of whole posts, whose answers were written beside them by hand (test/words/README.md): what the ear had right of
 * each stays right, a few posts at a time, so that one that is lost is named; and what tells nothing beside a post changes
 * nothing of what it tells.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Heard, SURE } from '#engine/hear.ts';
import { oneInSo } from '../../thorough.ts';
import { readPosts } from '../../words/words.ts';
import { heard } from './hearing.ts';

const kept = JSON.parse(
  readFileSync(new URL('../../words/kept.table.json', import.meta.url), 'utf8'),
) as Readonly<Record<string, string>>;
const PART = 16;
const all = readPosts('open');
const parts = Array.from({ length: Math.ceil(all.length / PART) }, (_, at) => {
  const posts = all.slice(at * PART, (at + 1) * PART);
  return { from: posts[0]?.id, posts };
});

const isRight = ({ facts }: Heard, name: string, told: string | number): boolean => {
  const found = facts.find(({ fact, sure }) => fact === name && sure >= SURE);
  const [least = Number.NaN, most = Number.NaN] = found?.range ?? [];
  return found?.value === told || (typeof told === 'number' && least - 1e-9 <= told && told <= most + 1e-9);
};

/** What is taken as told, without its places. */
const taken = ({ facts, signs }: Heard): string[] =>
  [
    ...facts
      .filter(({ sure }) => sure >= SURE)
      .map(({ fact, value, range = [] }) => `${fact} ${value} ${range}`),
    ...signs.filter(({ sure }) => sure >= SURE).map(({ question, answer }) => `${question} ${answer}`),
  ].sort();

describe.each(oneInSo(2, parts))('posts from $from on', ({ posts }) => {
  it('tell the facts that were right of them', () => {
    const lost = posts.flatMap(({ id, text, facts }) => {
      const right = kept[id]?.split(', ') ?? [];
      const told = heard(text);
      return Object.entries(facts).flatMap(([name, value]) =>
        right.includes(name) && !isRight(told, name, value) ? [`${id} ${name}`] : [],
      );
    });
    expect(lost).toEqual([]);
  });
  it('tell the same beside what tells nothing', () => {
    for (const { text } of posts.filter((_, at) => at % 5 === 0)) {
      const alone = taken(heard(text));
      expect(taken(heard(`Hello to you out there. ${text}`))).toEqual(alone);
      expect(taken(heard(`${text} Thank you for your help.`))).toEqual(alone);
    }
  });
});
