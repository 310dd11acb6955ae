/** Two sentences that differ in a word or two, and what each of them tells (pairs.yaml): a turn that counts is heard. */
import { readFileSync } from 'node:fs';
import { load } from 'js-yaml';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { SURE } from '#engine/hear.ts';
import { heard } from './hearing.ts';

const PAIRS = z
  .record(z.string(), z.array(z.tuple([z.string(), z.string()])).min(2))
  .parse(load(readFileSync(new URL('pairs.yaml', import.meta.url), 'utf8')));

describe.each(Object.entries(PAIRS))('%s', (_, lines) => {
  it.each(lines)('%s: %s', (text, told) => {
    const { facts, signs } = heard(text);
    for (const one of told.split(' ')) {
      const [name = '', value = ''] = one.split('=');
      const fact = facts.find((found) => found.fact === name && found.sure >= SURE);
      const sign = signs.find((found) => `?${found.question}` === name && found.sure >= SURE);
      const number = Number(value);
      if (Number.isNaN(number))
        expect(value.split('|'), one).toContain(String(fact?.value ?? sign?.answer ?? 'none'));
      else {
        expect(fact?.range?.[0], one).toBeLessThanOrEqual(number);
        expect(fact?.range?.[1], one).toBeGreaterThanOrEqual(number);
      }
    }
  });
});
