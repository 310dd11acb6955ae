/** A small invented knowledge for tests of the engine: just enough of every kind to link. */
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { link } from '#engine/link.ts';
import type { EntryKind } from '#engine/model/kinds.ts';
import type { RawEntry } from '#engine/model/knowledge.ts';

const raw = (kind: EntryKind, id: string, data: unknown): RawEntry => ({
  kind,
  id,
  file: `content/${kind}/${id}.mdx`,
  data,
  lineOf: () => 1,
});

export const question = (id: string, more: Record<string, unknown> = {}): RawEntry =>
  raw('question', id, {
    ask: `Is it ${id}?`,
    how: 'Look at it from the side.',
    by: 'look',
    'safe-from': 'wet',
    yes: 'It is so.',
    no: 'It is not so.',
    sure: 'Look again with a torch.',
    effort: 1,
    ...more,
  });

export const act = (doing: string, say = `Now ${doing}, for a reason.`) => ({
  do: doing,
  say,
  not: 'Not the other thing.',
});

export const remedy = (
  id: string,
  now: Record<string, unknown> = {},
  more: Record<string, unknown> = {},
): RawEntry =>
  raw('remedy', id, {
    name: `Do ${id}`,
    summary: 'Invented for a test of the engine.',
    now: {
      wet: act('leave'),
      setting: act('leave'),
      'dry-to-touch': act('wait'),
      recoatable: act('repair', `Repair by ${id}.`),
      cured: act('repair', `Repair by ${id}.`),
      ...now,
    },
    steps: [{ kind: 'look', say: 'Look at the surface.' }],
    worked: 'It cannot be seen any more.',
    'if-not': { say: 'Do it once more.' },
    prevent: ['Do better next time.'],
    claims: [{ says: 'Invented for the test.', grade: 'invented' }],
    ...more,
  });

export const defect = (id: string, tree: unknown, more: Record<string, unknown> = {}): RawEntry =>
  raw('defect', id, {
    name: `Flaw ${id}`,
    summary: 'Invented for a test of the engine.',
    'while-wet': 'Invented: it goes by itself, and touching makes it worse.',
    'while-wet-rests-on': { grade: 'invented' },
    also: ['one name', 'two names', 'three names', 'four names'],
    often: 'common',
    families: ['water-based'],
    looks: 'Like something invented for a test.',
    shows: 'At once or later.',
    signs: {},
    'look-alikes': [],
    tree,
    prevent: ['Do better next time.'],
    claims: [{ says: 'Invented for the test.', grade: 'invented' }],
    ...more,
  });

export const rule = (id: string, data: Record<string, unknown>): RawEntry =>
  raw('rule', id, {
    kind: 'caution',
    level: 'care',
    title: 'A caution',
    say: 'Take care with this, calmly.',
    why: 'Since it can hurt someone badly.',
    defers: 'The label wins.',
    claims: [{ says: 'Invented for the test.', grade: 'invented' }],
    ...data,
  });

const DOINGS = [
  'leave',
  'wait',
  'lift',
  'tip-off',
  'wick',
  'wash-off',
  'wipe-back',
  'repair',
  'accept',
  'stop',
  'unsure',
  'begin',
];
const doings = DOINGS.map((id) =>
  raw('doing', id, {
    verdict: `Verdict ${id}`,
    say: `General words for ${id}.`,
    not: `Not against ${id}.`,
    again: 'Look again later.',
  }),
);

/** Links or throws with the issues, so that a test's own mistake is told. */
export const known = (...entries: readonly RawEntry[]): Knowledge => {
  const linked = link([...entries, ...doings]);
  if (!linked.ok) throw new Error(JSON.stringify(linked.issues, null, 2));
  return linked.value;
};
