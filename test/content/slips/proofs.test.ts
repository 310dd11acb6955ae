/** Slips of an author's hand, made in memory: each is told with its file, its line and a way out. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { say } from '#engine/faults/say.ts';
import { link } from '#engine/link.ts';
import { FOLDERS } from '#engine/model/index.ts';
import type { EntryKind } from '#engine/model/kinds.ts';
import { prove } from '#engine/prove/prove.ts';
import { tooHard } from '../../../content/tools/hard-words.ts';
import { leftOver } from '../../../content/tools/left-over.ts';
import { toldOfTheNew } from '../../../content/tools/published.ts';
import { readContent } from '../../../content/tools/read.ts';
import { known, rawContent, retired } from '../real/knowledge.ts';
import { folder, missed, slipped } from './slipped.ts';

it('tells a slip that links by the proofs', () => {
  const { root, done } = slipped({
    question: [
      [
        /^ask: /,
        'ask: Is the discoloration predominantly superficial, notwithstanding considerable illumination?',
        /reads at US grade/,
      ],
      [
        /^how: /,
        'how: <One sentence - how a beginner checks this.>',
        /is what the template left; put your own words/,
      ],
    ],
    remedy: [
      [/^worked: /, 'worked: <How to know that it worked.>', /is what the template left/],
      [
        /^ {2}- \{ kind: wait, until: /,
        '  - { kind: coat, product: same, say: Lay one thin coat at once. }',
        /comes on a film that has not dried; add a step above it: - \{ kind: wait, until: recoatable/,
      ],
      [
        /^ {2}setting: \{/,
        '  setting: { do: lift, say: Lift it with a brush., not: No cloth at all. }',
        /"do: lift" is more than a film at the stage "setting" bears; write do: leave \(hands off\) or do: stop \(end all work\)/,
      ],
    ],
    defect: [
      [/^summary: /, 'summary: <What it is, in one or two plain sentences.>', /is what the template left/],
    ],
  });
  const linked = link(readContent(root), retired);
  expect(linked.ok ? [] : linked.issues.map(say)).toEqual([]);
  if (!linked.ok) return;
  expect(
    missed(done, [...prove(linked.value), ...tooHard(linked.value, root), ...leftOver(root)]).join('\n'),
  ).toBe('');
});

it('tells a name almost like another on the new one, or on either where none is published', () => {
  const near = (kind: EntryKind, id: string, like: string) => {
    const [one] = rawContent.filter((entry) => entry.kind === kind && entry.id === like);
    if (!one) throw new Error(`${like} is gone`);
    const file = `content/${FOLDERS[kind]}/${id}.mdx`;
    const linked = link([...rawContent, { ...one, id, file }], retired);
    if (!linked.ok) throw new Error('does not link');
    return toldOfTheNew(prove(linked.value), folder)
      .filter(({ code }) => code === 'near-name')
      .map(say);
  };
  const { name } = known.get('remedy', 'scrape-the-glue-off');
  expect(new Set(near('remedy', 'scrape-off-the-glue', 'scrape-the-glue-off'))).toEqual(
    new Set([
      `content/remedies/scrape-off-the-glue.mdx:1: there is a remedy almost of this name already, "scrape-the-glue-off" (${name}); use that one and delete this file, or rename this file by what tells it apart`,
    ]),
  );
  const { ask } = known.get('question', 'a-drop-landed');
  expect(new Set(near('question', 'drop-landed', 'a-drop-landed'))).toEqual(
    new Set([
      `content/questions/drop-landed.mdx:1: the question "drop-landed" is named almost like "a-drop-landed" (${ask}); keep the older one, and delete the newer file, or rename it by what tells it apart`,
    ]),
  );
});

it('leaves every flaw of the real content with a sign for each question that is asked of all', () => {
  const entries = readContent(process.cwd());
  const asked = entries.filter((one) => one.kind === 'question' && 'every-flaw' in (one.data as object));
  const flaws = entries.filter((one) => one.kind === 'defect');
  expect(asked.length).toBeGreaterThan(20);
  for (const { id, data } of flaws)
    for (const question of asked)
      expect((data as { signs: object }).signs, `${id} ${question.id}`).toHaveProperty(question.id);
  expect(readFileSync('content/defects/lap-marks.mdx', 'utf8')).not.toContain('thread-shaped: no');
});
