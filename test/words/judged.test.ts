/**
 * Whether what the ear takes as told would stand before a strict judge: true of the coat in question, now, and said by the
 * text. `judged.jsonl` holds what may be claimed of 85 posts (README.md); it was written before the ear was mended.
 */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { hear, SURE } from '#engine/hear.ts';
import { readHearing } from '../../content/tools/hear.ts';
import { known } from '../content/real/knowledge.ts';
import { readPosts } from './words.ts';

const Numbers = z.union([z.tuple([z.number(), z.number()]), z.null(), z.literal('open')]);
const Choices = z.union([z.array(z.string()), z.null(), z.literal('open')]);
const Judged = z.strictObject({
  id: z.string(),
  hash: z.string(),
  'hours-since-coat': Numbers,
  stage: Choices,
  'coat-number': Numbers,
  family: Choices,
});
const FACTS = ['hours-since-coat', 'stage', 'coat-number', 'family'] as const;

const rows = readFileSync(new URL('judged.jsonl', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .map((line) => Judged.parse(JSON.parse(line)));
const posts = new Map(readPosts('open').map((post) => [post.id, post]));

describe('what is taken as told', () => {
  const hearing = readHearing(known, fileURLToPath(new URL('../..', import.meta.url)));
  const judged = rows.flatMap((row) => {
    const { text = '' } = posts.get(row.id) ?? {};
    const heard = hear(hearing, text).facts.filter(({ sure }) => sure >= SURE);
    return FACTS.flatMap((fact) => {
      const may = row[fact];
      if (may === 'open') return [];
      const value = heard.find((one) => one.fact === fact)?.value;
      const [low, high] = may ?? [];
      const stands =
        typeof low === 'number'
          ? low <= Number(value) && Number(value) <= Number(high)
          : may?.some((one) => one === value);
      return [
        {
          isClaimed: value !== undefined,
          canBeTold: may !== null,
          stands: value !== undefined && stands === true,
        },
      ];
    });
  });
  const standing = judged.filter(({ stands }) => stands).length;

  it('is judged by the text as it is', () => {
    const other = rows.filter(({ id, hash }) => {
      const sum = createHash('sha1')
        .update(posts.get(id)?.text ?? '')
        .digest('hex');
      return !sum.startsWith(hash);
    });
    expect(other).toEqual([]);
  });
  it('stands', () =>
    expect(standing / judged.filter(({ isClaimed }) => isClaimed).length).toBeGreaterThanOrEqual(0.84));
  it('is what could be told', () =>
    expect(standing / judged.filter(({ canBeTold }) => canBeTold).length).toBeGreaterThanOrEqual(0.68));
});
