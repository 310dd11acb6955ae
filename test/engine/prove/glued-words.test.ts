/**
 * Words that proofs look for are whole words: with letters glued to their front or their end they are others. Sentences of
 * our own, each with the words that tell it.
 */
import { describe, expect, it } from 'vitest';
import type { Issue } from '#engine/faults/issue.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { checksCutNothing } from '#engine/prove/checks-cut-nothing.ts';
import { checksTouchNoWetFilm } from '#engine/prove/checks-touch-no-wet-film.ts';
import { chestsStand } from '#engine/prove/chests-stand.ts';
import { stepsTellWhatTheyDo } from '#engine/prove/steps-tell-what-they-do.ts';
import { timesAgree } from '#engine/prove/times-agree.ts';
import { whatComesOffIsTold } from '#engine/prove/what-comes-off-is-told.ts';
import { proved } from './proved.ts';

type Proof = (known: Knowledge) => Iterable<Issue>;
const remedy = (more: object) => ({
  id: 'mend',
  now: {},
  steps: [],
  prevent: [],
  'if-not': { say: 'Again.' },
  ...more,
});
const ofStep =
  (proof: Proof, kind: string, more: object = {}) =>
  (say: string) =>
    proved(proof, { remedies: [remedy({ steps: [{ kind, say, ...more }] })] }).length;
const ofCheck = (proof: Proof) => (how: string) =>
  proved(proof, { questions: [{ id: 'q', how, sure: '', 'safe-from': 'wet' }] }).length;
const ofAct = (say: string, again: string) =>
  proved(timesAgree, { remedies: [remedy({ now: { cured: { do: 'wait', say, again } } })] }).length;

const tells: readonly (readonly [
  name: string,
  count: (text: string) => number,
  rows: readonly (readonly [text: string, words: string])[],
])[] = [
  [
    'drawers that stand open',
    ofStep(chestsStand, 'wait'),
    [
      ['Leave it open with drawers in.', 'open'],
      ['Leave it opened with drawers in.', 'opened'],
      ['Leave it open with drawers in.', 'drawers'],
      ['Leave it wide with drawers in.', 'wide'],
      ['Leave drawers in and all open.', 'open'],
      ['Leave drawers in and all open.', 'drawers'],
      ['Leave everything open.', 'everything open'],
    ],
  ],
  [
    'what is soft as it comes off',
    ofStep(whatComesOffIsTold, 'wipe', { with: 'damp-cloth' }),
    [
      'slurry',
      'soft oil',
      'soft wax',
      'soft finish',
      'soft film',
      'soft shellac',
      'soft coat',
      'soft below',
      'rolls up soft',
      'sticky',
      'wax off',
      'skin out',
      'skin off',
      'free of wax',
    ].map((words) => [`Then ${words} there.`, words] as const),
  ],
  [
    'a check that cuts',
    ofCheck(checksCutNothing),
    [
      'sand it',
      'scrape a',
      'shave one',
      'slice off',
      'scuff some',
      'chip the',
      'cut it',
      'cut six',
      'cut through',
      'push a pin under',
    ].map((words) => [`Then ${words} there.`, words] as const),
  ],
  [
    'a check that touches',
    ofCheck(checksTouchNoWetFilm),
    ['cover', 'drag', 'draw', 'lay', 'mark', 'measure', 'press', 'put', 'set'].map(
      (words) => [`Look. ${words} one there.`, words] as const,
    ),
  ],
  [
    'a test with paper',
    ofStep(stepsTellWhatTheyDo, 'wait', { until: 'cured' }),
    ['sands to powder', 'makes powder', 'make dry powder'].map(
      (words) => [`Wait until it ${words} there.`, words] as const,
    ),
  ],
  [
    'the next day',
    (again) => ofAct('Give it two weeks.', again),
    [
      ['Look again tomorrow then.', 'tomorrow'],
      ['Look again the next day then.', 'the next day'],
      ['Look when it is dry to the touch then.', 'when it is dry to the touch'],
    ],
  ],
  [
    'days that are told',
    (say) => ofAct(say, 'Look tomorrow.'),
    [
      'two days',
      'three weeks',
      'some days',
      'several weeks',
      '12 days',
      'four more days',
      'a week',
      'one month',
      'another week',
      'full month',
      'weeks',
      'months',
    ].map((words) => [`Give it ${words} there.`, words] as const),
  ],
];

describe.each(tells)('words of %s', (_, count, rows) => {
  it.each(rows)('%s: %s', (text, words) => {
    expect(count(text)).toBe(1);
    expect(count(text.replace(words, `${words}qu`))).toBe(0);
    // A number of figures, and what weeks and months are alone, tell it from any word on.
    if (!/^\d|(?:week|month)s$/.test(words)) expect(count(text.replace(words, `qu${words}`))).toBe(0);
  });
});
