/**
 * Laws of hearing, over the sentences of pairs.yaml by the small lexicon: a text that is cut anywhere is heard without a
 * fault, what is heard lies within it; and what tells nothing beside it, in a sentence, a clause or behind a comma of its own,
 * changes nothing of what it tells.
 */
import { readFileSync } from 'node:fs';
import { load } from 'js-yaml';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import type { Heard } from '#engine/hear/words/heard.ts';
import { heardBySmall } from './small-ear.ts';

const GROUPS = Object.entries(
  z
    .record(z.string(), z.array(z.tuple([z.string(), z.string()])))
    .parse(load(readFileSync(new URL('pairs.yaml', import.meta.url), 'utf8'))),
);

/** All that begins or ends where a word does. */
const cuts = (text: string): string[] => {
  const words = text.split(' ');
  return words.flatMap((_, at) => [words.slice(0, at).join(' '), words.slice(at).join(' ')]);
};

const isSound = ({ facts, signs, among }: Heard, { length }: string): boolean =>
  [...facts, ...signs, ...among].every(
    ({ sure, rests, against }) =>
      sure >= 0 &&
      sure <= 1 &&
      [...rests, ...against].every(({ from, to }) => from >= 0 && from <= to && to <= length),
  ) &&
  facts.every(
    ({ value, range }) => range === undefined || (range[0] <= Number(value) && Number(value) <= range[1]),
  );

/** What is taken as told, without its places. */
const told = ({ facts, signs }: Heard): string[] =>
  [
    ...facts.map(({ fact, value, range = [], sure }) => (sure >= 0.7 ? `${fact} ${value} ${range}` : '')),
    ...signs.map(({ question, answer, sure }) => (sure >= 0.7 ? `${question} ${answer}` : '')),
  ]
    .filter(Boolean)
    .sort();

describe.each(GROUPS)('%s', (_, lines) => {
  it('cut anywhere', () => {
    for (const [text] of lines)
      for (const cut of cuts(text)) expect(isSound(heardBySmall(cut), cut), cut).toBe(true);
  });
  it('beside what tells nothing', () => {
    for (const [text] of lines) {
      const alone = told(heardBySmall(`${text}.`));
      for (const beside of [
        `Hello to you out there. ${text}.`,
        `${text}. Thank you for your help.`,
        `${text.toUpperCase()}.`,
        `Dear all, ${text}.`,
        `${text}, dear all.`,
        `${text} but you see.`,
        `${text} (you see).`,
        `${text}!`,
        `${text.replaceAll(', ', ' – ')}.`,
        // Only where a meal is no meal but its time does the ear need the short form.
        ...(text.includes('dinner')
          ? []
          : [text.replaceAll(/\bit is\b/g, 'its'), text.replaceAll(/\bit is\b/g, 'it’s')]),
      ])
        expect(told(heardBySmall(beside)), beside).toEqual(alone);
    }
  });
});
