/** Drawing a board beside encoding its pixels: what the platform's own codec costs for the same picture. */
import sharp from 'sharp';
import { renderBoard } from '#engine/board/render.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { median, type Timed } from '../measure.ts';

const SIZE = { width: 480, height: 360 } as const;
const BOARDS = 24;

export const boardRace = async (known: Knowledge): Promise<readonly Timed[]> => {
  sharp.concurrency(1);
  const recipes = known.defects.flatMap(({ boards }) => boards.slice(0, 1)).slice(0, BOARDS);
  const drawn: number[] = [];
  const encoded: number[] = [];
  for (const recipe of recipes) {
    let began = performance.now();
    const { data, width, height } = renderBoard(recipe, { light: 'raking', ...SIZE });
    drawn.push((performance.now() - began) * 1e6);
    began = performance.now();
    await sharp(data, { raw: { width, height, channels: 4 } })
      .png()
      .toBuffer();
    encoded.push((performance.now() - began) * 1e6);
  }
  const ratios = drawn.map((time, at) => time / (encoded[at] ?? 1)).sort((a, b) => a - b);
  return [
    { name: 'its pixels as PNG', ns: median(encoded), ratio: [1, 1, 1] },
    { name: 'drawn', ns: median(drawn), ratio: [median(ratios), ratios[0] ?? 0, ratios.at(-1) ?? 0] },
  ];
};
