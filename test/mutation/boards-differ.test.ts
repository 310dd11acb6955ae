/**
 * No two boards of practice alike: ten thousand seeds over all levels, each drawn small, in the light in which it is
 * first shown. What a recipe says may differ and yet not be seen; pixels can not lie.
 */
import { createHash } from 'node:crypto';
import { expect, it } from 'vitest';
import { linkedKnowledge } from '../../content/tools/knowledge.ts';
import { readPractice } from '../../content/tools/practice.ts';
import { renderBoard } from '../../engine/board/render.ts';
import type { Knowledge } from '../../engine/index.ts';
import { dealPractice, PRACTICE_LEVELS } from '../../engine/practice.ts';

const SEEDS = 10_000;

it('draws no board of ten thousand seeds twice', { timeout: 900_000 }, () => {
  const { known: linked } = linkedKnowledge(process.cwd());
  const known = linked as Knowledge;
  const words = readPractice(known, process.cwd());
  const drawn = new Map<string, string>();
  const twice: string[] = [];
  for (let seed = 0; seed < SEEDS; seed++) {
    const { id, board } = dealPractice(known, words, {
      level: PRACTICE_LEVELS[seed % PRACTICE_LEVELS.length] ?? 'look',
      seed,
    });
    const { data } = renderBoard(board, { light: 'raking', width: 64, height: 48 });
    const hash = createHash('sha256').update(data).digest('base64');
    const before = drawn.get(hash);
    if (before) twice.push(`${before} = ${id}`);
    drawn.set(hash, id);
  }
  expect(twice).toEqual([]);
  expect(drawn.size).toBe(SEEDS);
});
