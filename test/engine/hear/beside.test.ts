/**
 * What a sentence tells does not hang on what stands before and behind it, where that is of other matters. Every line of
 * told.yaml between sentences of our own that say nothing of a coat: the same facts, taken or not as before, resting on the same words.
 */
import { readFileSync } from 'node:fs';
import { load } from 'js-yaml';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { SURE } from '#engine/hear.ts';
import { oneInSo } from '../../thorough.ts';
import { heard } from './hearing.ts';

const TOLD = z
  .record(z.string(), z.array(z.tuple([z.string(), z.string()])))
  .parse(load(readFileSync(new URL('told.yaml', import.meta.url), 'utf8')));
const texts = [...new Set(Object.values(TOLD).flatMap((lines) => lines.map(([text]) => text)))];

const FRAMES: readonly (readonly [before: string, behind: string])[] = [
  [
    'So we went there with the kids, and all of them were on the road by then.',
    'My wife said that they had been in and out of it, but not for so long.',
  ],
  ['We live in a small town, and it is quiet there.', 'What do you think of it?'],
  [
    'First of all, thank you for having me here, and sorry if it was asked before.',
    'So we went there with the kids, and all of them were on the road by then.',
  ],
];

/** Facts and signs of a text whose first `off` letters count for nothing. */
const told = (text: string, off = 0) => {
  const { facts, signs } = heard(text);
  return {
    facts: facts
      .map(({ fact, value, range, sure, rests }) => ({
        fact,
        value,
        range,
        isTaken: sure >= SURE,
        rests: rests.map(({ from, to }) => [from - off, to - off]),
      }))
      .sort((one, two) => one.fact.localeCompare(two.fact, 'en')),
    signs: signs.map(({ question, answer }) => `${question}: ${answer}`).sort(),
  };
};

/** Few enough that one part is quick. */
const PART = 30;
const parts = Array.from({ length: Math.ceil(texts.length / PART) }, (_, at) => ({
  from: texts[at * PART],
  lines: texts.slice(at * PART, (at + 1) * PART),
}));

describe('among sentences of other matters', () => {
  it.each(oneInSo(3, parts))('the same is heard, from "$from" on', ({ lines }) => {
    for (const text of lines) {
      const alone = told(text);
      for (const [before, behind] of FRAMES) {
        const whole = `${before} ${text}${/[.!?]$/.test(text) ? '' : '.'} ${behind}`;
        expect(told(whole, before.length + 1), whole).toEqual(alone);
      }
    }
  });
});
