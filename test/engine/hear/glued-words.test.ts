/**
 * A law of hearing, over the sentences of pairs.yaml by the small lexicon: a word with letters glued to its front or its end
 * is another word, and tells no more than one that nobody knows.
 */
import { readFileSync } from 'node:fs';
import { load } from 'js-yaml';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { heardBySmall } from './small-ear.ts';

const GROUPS = Object.entries(
  z
    .record(z.string(), z.array(z.tuple([z.string(), z.string()])))
    .parse(load(readFileSync(new URL('pairs.yaml', import.meta.url), 'utf8'))),
);
/** Words of the air and of a name are known by a part of them, and what somebody did by its ending. */
const BY_A_PART = /^(?:poly|polyurethane|quickly|inside|degrees|says|air|humidity)$|ed$/;

const told = (text: string): string[] => {
  const { facts, signs } = heardBySmall(text);
  return [
    ...facts.map(({ fact, value, range = [], sure }) => (sure >= 0.7 ? `${fact} ${value} ${range}` : '')),
    ...signs.map(({ question, answer, sure }) => (sure >= 0.7 ? `${question} ${answer}` : '')),
  ]
    .filter(Boolean)
    .sort();
};

describe.each(GROUPS)('%s', (_, lines) => {
  it('no part of a word is heard', () => {
    for (const [text] of lines) {
      const words = text.split(' ');
      for (const [at, word] of words.entries()) {
        if (!/^[a-z]+$/i.test(word) || BY_A_PART.test(word)) continue;
        const put = (other: string) => words.with(at, other).join(' ');
        const unknown = told(put('zzqu'));
        for (const glued of [`${word}qu`, `qu${word}`]) expect(told(put(glued)), put(glued)).toEqual(unknown);
      }
    }
  });
});
