/**
 * What is heard rests on whole words: with letters glued to the front or the end of what it rests on these are others, and
 * it rests on them no more. Tried on every line of told.yaml, in the short run on every third part of it.
 */
import { readFileSync } from 'node:fs';
import { load } from 'js-yaml';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { oneInSo } from '../../thorough.ts';
import { heard } from './hearing.ts';

const TOLD = z
  .record(z.string(), z.array(z.tuple([z.string(), z.string()])))
  .parse(load(readFileSync(new URL('told.yaml', import.meta.url), 'utf8')));
const texts = [...new Set(Object.values(TOLD).flatMap((lines) => lines.map(([text]) => text)))];

/** A dehumidifier tells of humidity, and so does what is humid. */
const PARTS_OF_WORDS = ['relative-humidity'];
const isLetter = (letter: string | undefined) => /[a-z]/i.test(letter ?? '');

type Told = { readonly name: string; readonly from: number; readonly to: number };
/** Each fact with its value, and each answer, with the first stretch that it rests on. */
const toldIn = (text: string): readonly Told[] => {
  const { facts, signs } = heard(text);
  return [
    ...facts.map(({ fact, value, rests }) => ({ name: `${fact}=${value}`, rests })),
    ...signs.map(({ question, answer, rests }) => ({ name: `${question} ${answer}`, rests })),
  ].flatMap(({ name, rests: [first] }) => (first ? [{ name, from: first.from, to: first.to }] : []));
};
const restsThere = (text: string, { name, from, to }: Told) =>
  toldIn(text).some((one) => one.name === name && one.from === from && one.to === to);

/** Few enough that one part is quick. */
const PART = 30;
const parts = Array.from({ length: Math.ceil(texts.length / PART) }, (_, at) => ({
  from: texts[at * PART],
  lines: texts.slice(at * PART, (at + 1) * PART),
}));

describe('words that are glued to others', () => {
  it.each(oneInSo(3, parts))('are not heard, from "$from" on', ({ lines }) => {
    for (const text of lines)
      for (const told of toldIn(text)) {
        if (PARTS_OF_WORDS.some((fact) => told.name.startsWith(fact))) continue;
        const { from, to } = told;
        const glued = (at: number) => `${text.slice(0, at)}qu${text.slice(at)}`;
        if (isLetter(text[from]))
          expect(restsThere(glued(from), { ...told, from: from + 2, to: to + 2 }), glued(from)).toBe(false);
        if (isLetter(text[to - 1])) expect(restsThere(glued(to), told), glued(to)).toBe(false);
      }
  });
});
