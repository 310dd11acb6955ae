import { readFileSync } from 'node:fs';
import { expect } from 'vitest';
import type { Issue } from '#engine/faults/issue.ts';
import { say } from '#engine/faults/say.ts';
import { FOLDERS } from '#engine/model/index.ts';
import type { EntryKind } from '#engine/model/kinds.ts';
import { type ContentRoot, filesIn } from '../../../content/tools/files.ts';

export const folder = process.cwd();

/** A line that is changed, and what must be told of it. */
export type Slip = readonly [
  line: RegExp,
  after: string | ((line: string) => string),
  told: RegExp,
  below?: number,
];

export type Done = {
  readonly file: string;
  readonly line: number;
  readonly told: RegExp;
  readonly slip: string;
};

/** Puts each slip into a file of its own kind that has none yet. */
export const slipped = (
  slips: Partial<Record<EntryKind, readonly Slip[]>>,
): { root: ContentRoot; done: Done[] } => {
  const texts = new Map<string, string>();
  const done: Done[] = [];
  for (const [kind, list] of Object.entries(slips) as [EntryKind, readonly Slip[]][]) {
    const files = filesIn(folder, `content/${FOLDERS[kind]}`, '.mdx').map(
      (name) => `content/${FOLDERS[kind]}/${name}`,
    );
    for (const [pattern, after, told, below = 0] of list) {
      const free = files.find(
        (file) =>
          !texts.has(file) &&
          readFileSync(file, 'utf8')
            .split('\n')
            .some((line) => pattern.test(line)),
      );
      if (!free) {
        done.push({ file: 'no file', line: 0, told, slip: `${pattern}` });
        continue;
      }
      const lines = readFileSync(free, 'utf8').split('\n');
      const at = lines.findIndex((line) => pattern.test(line));
      const was = lines[at] ?? '';
      lines[at] = typeof after === 'string' ? after : after(was);
      expect(lines[at], `${pattern}`).not.toBe(was);
      texts.set(free, lines.join('\n'));
      done.push({ file: free, line: at + 1 + below, told, slip: `${was} → ${lines[at]}` });
    }
  }
  return { root: { folder, texts }, done };
};

/** Slips that are not told in their file, on their line (or the next, where a parser stops), in these words. */
export const missed = (done: readonly Done[], issues: readonly Issue[]): string[] =>
  done.flatMap(({ file, line, told, slip }) => {
    const own = issues.filter((issue) => issue.file === file);
    const hit = own.some((issue) => Math.abs(issue.line - line) <= 1 && told.test(say(issue)));
    return hit
      ? []
      : [`${file}:${line} ${slip}\n  wanted ${told}\n  told ${own.map(say).join('\n       ') || 'nothing'}`];
  });
