/** What is told of looking-questions: one with no pair and no reason, and one with a reason it no longer needs. */
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { say } from '#engine/faults/say.ts';
import { link } from '#engine/link.ts';
import { boardsAreThere } from '#engine/prove/boards-are-there.ts';
import { readContent } from '../../content/tools/read.ts';

const root = process.cwd();
const entries = [
  ...readContent(join(root, 'test/content/sound')),
  ...readContent(root).filter(({ kind }) => kind === 'doing'),
];
const board = { base: { paint: 'white' }, alt: 'Invented for a test.' };

const toldOf = (change: Record<string, unknown>): string[] => {
  const changed = entries.map((entry) => {
    if (entry.id !== 'round') return entry;
    return { ...entry, data: { ...(entry.data as object), ...change }, lineOf: () => 9 };
  });
  const linked = link(changed);
  if (!linked.ok) throw new Error(linked.issues.map(say).join('\n'));
  return [...boardsAreThere(linked.value)].map(say).map((line) => line.replace(/^.*round\.mdx:/, ''));
};

describe('boards of questions', () => {
  it('wants a pair, or the reason why there is none, where the answer is seen', () => {
    expect(toldOf({ 'no-boards': undefined })).toEqual([
      '1: no picture is described for "round"; write above the second line --- of this file: boards: { yes: { base: { wood: oak }, features: [], alt: … }, no: { base: { wood: oak }, features: [], alt: … } }, with what tells it apart in place of the dots, and between the [ ] of features: what npm run board -- --sheet shows that comes nearest; or a line no-boards: with the reason why there is nothing to draw',
    ]);
  });

  it('wants none where the answer is felt', () => {
    expect(toldOf({ 'no-boards': undefined, by: 'touch' })).toEqual([]);
  });

  it('tells a reason that is no longer needed', () => {
    expect(toldOf({ boards: { yes: board, no: board } })).toEqual([
      '9: "round" has boards: now, so the reason after "no-boards:" is not needed; delete the line no-boards:',
    ]);
  });
});
