/** What stands once for many files is filled in, and told where it is not there. */
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { say } from '#engine/faults/say.ts';
import { filled } from '#engine/knowledge/fill.ts';
import { link } from '#engine/link.ts';
import type { RawEntry } from '#engine/model/knowledge.ts';
import { parseFrontMatter } from '../../content/tools/read.ts';
import { sharedFaults } from '../../content/tools/shared.ts';

const act = (does: string) => ({ do: does, say: `Usually ${does} it for now.`, not: 'Do not touch it.' });
const shared = {
  acts: {
    film: {
      wet: act('leave'),
      setting: act('leave'),
      'dry-to-touch': act('wait'),
      recoatable: { do: 'repair' },
    },
    oil: { wet: act('wipe-back') },
  },
  steps: {
    dust: [
      { kind: 'look', say: 'one' },
      { kind: 'look', say: 'two' },
    ],
  },
};
const entry = (kind: RawEntry['kind'], id: string, yaml: string): RawEntry => ({
  kind,
  id,
  file: `content/${id}.mdx`,
  ...parseFrontMatter(`---\n${yaml}---\n`),
});
const dataOf = (entries: readonly RawEntry[], id: string) =>
  filled(entries, shared).find((one) => one.id === id)?.data as Record<string, unknown>;

describe('a remedy', () => {
  const rub = entry(
    'remedy',
    'rub',
    `now:
  wet: { not: Do not brush it. }
  recoatable: { say: Sand it., not: Do not hurry. }
steps:
  - { kind: wait, say: first }
  - dust
  - { kind: sand, say: last }
`,
  );
  const data = dataOf([rub], 'rub');
  const now = data['now'] as Record<string, unknown>;

  it('takes what it does not say of a stage from the usual act', () => {
    expect(now['wet']).toEqual({ ...act('leave'), not: 'Do not brush it.' });
    expect(now['setting']).toEqual(act('leave'));
    expect(now['recoatable']).toEqual({ do: 'repair', say: 'Sand it.', not: 'Do not hurry.' });
    expect(now['cured']).toEqual(now['recoatable']);
  });

  it('keeps an act that says what to do as it is, faults and all', () => {
    const own = entry('remedy', 'own', 'now:\n  wet: { do: lift }\n');
    expect((dataOf([own], 'own')['now'] as Record<string, unknown>)['wet']).toEqual({ do: 'lift' });
  });

  it('has the steps of a name in its place, and the lines of the file', () => {
    expect((data['steps'] as { say: string }[]).map((step) => step.say)).toEqual([
      'first',
      'one',
      'two',
      'last',
    ]);
    const { lineOf } = filled([rub], shared)[0] as RawEntry;
    expect([0, 1, 2, 3].map((index) => lineOf(['steps', index]))).toEqual([6, 7, 7, 8]);
  });

  it('is told of a step and of a kind of repair that are not there', () => {
    const slip = entry('remedy', 'slip', 'now: { as: oyl }\nsteps: [dusk]\n');
    const linked = link(filled([slip], shared));
    const told = linked.ok ? [] : linked.issues.filter(({ code }) => code === 'unknown-name').map(say);
    expect(told).toEqual([
      'content/slip.mdx:2: there is no kind of repair "oyl"; did you mean "oil"? Change it here (content/acts.yaml has them all)',
      'content/slip.mdx:3: there is no shared step "dusk"; did you mean "dust"? Change it here (content/steps.yaml has them all)',
    ]);
  });
});

describe('a flaw', () => {
  const all = [
    entry('question', 'sticky', 'every-flaw: no\n'),
    entry('question', 'rare', 'usually: no\n'),
    entry('defect', 'spot', 'signs: {}\nlook-alikes: [thread]\n'),
    entry('defect', 'thread', 'signs: { sticky: yes }\nlook-alikes: []\n'),
  ];

  it('shows what every flaw shows that says nothing of it', () => {
    expect(dataOf(all, 'spot')['signs']).toEqual({ sticky: 'no' });
    expect(dataOf(all, 'thread')['signs']).toEqual({ sticky: 'yes' });
  });

  it('is a look-alike of what names it', () => {
    expect(dataOf(all, 'thread')['look-alikes']).toEqual(['spot']);
    expect(dataOf(all, 'spot')['look-alikes']).toEqual(['thread']);
  });
});

it('takes a claim with a source as published, one without as it is, and the oldest change as the first version', () => {
  const rule = entry(
    'rule',
    'dust',
    `claims: [{ says: a, source: book }, { says: b }, { says: c, grade: from-memory, source: book }]
changes: [{ on: 2026-11-28, what: More, why: Better }, { on: 2026-11-25 }]
`,
  );
  const data = dataOf([rule], 'dust');
  expect((data['claims'] as { grade?: string }[]).map(({ grade }) => grade)).toEqual([
    'published',
    undefined,
    'from-memory',
  ]);
  expect(data['changes']).toEqual([
    { on: '2026-11-28', what: 'More', why: 'Better' },
    { on: '2026-11-25', what: 'First version.', why: 'New page.' },
  ]);
});

it('tells a shared act or step that nothing uses', () => {
  expect(sharedFaults(join(process.cwd(), 'test/content/unused')).map(say)).toEqual([
    'content/acts.yaml:4: no remedy uses the kind of repair "varnish"; write as: varnish below "now:" in the remedy it is for, or delete this entry',
    'content/steps.yaml:3: no remedy uses the shared step "polish-up"; write - polish-up under "steps:" in the remedy it is for, or delete this entry',
  ]);
});
