/** What the check tells of a repair with given steps, linked beside the sound little knowledge. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Issue } from '#engine/faults/issue.ts';
import { say } from '#engine/faults/say.ts';
import { link } from '#engine/link.ts';
import { prove } from '#engine/prove/prove.ts';
import { parseFrontMatter, readContent } from '../../content/tools/read.ts';

const root = process.cwd();
const sound = readContent(join(root, 'test/content/sound'));
const doings = readContent(root).filter(({ kind }) => kind === 'doing');
const frame = readFileSync(join(root, 'test/content/faults/against-the-trade.mdx'), 'utf8').replace(
  /^# .*\n/gm,
  '',
);

export const WAIT = '{ kind: wait, until: recoatable, say: Wait until it is hard. }';
export const SAND = '{ kind: sand, grit: 320, say: Sand by hand with the grain. }';
export const VACUUM = '{ kind: wipe, with: vacuum, say: Take the dust off with a vacuum. }';
export const CLOTH = '{ kind: wipe, with: dry-cloth, say: Wipe with a clean dry cloth. }';
export const COAT = '{ kind: coat, product: same, say: Lay one thin coat. }';
export const LOOK = '{ kind: look, say: Look along it in low light. }';

/** The faults of one code that are told of a repair with these steps, from line 11 on, one a line. */
export const told = (steps: readonly string[], of: Issue['code'] = 'against-the-trade'): string[] => {
  const text = frame.replace(
    /^steps:\n(?: .*\n)*/m,
    `steps:\n${steps.map((step) => `  - ${step}\n`).join('')}`,
  );
  const broken = { kind: 'remedy', id: 'broken', file: 'broken.mdx', ...parseFrontMatter(text) } as const;
  const linked = link([...sound, ...doings, broken]);
  if (!linked.ok) throw new Error(linked.issues.map(say).join('\n'));
  return prove(linked.value)
    .filter(({ code }) => code === of)
    .map(say);
};
