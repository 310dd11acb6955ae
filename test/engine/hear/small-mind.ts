/** A small invented mind: four flaws, five questions, and hands that hang on the stage. */

import type { Mind, ToldRule } from '#engine/hear/belief/mind.ts';
import type { Heard } from '#engine/hear/words/heard.ts';
import { STAGES } from '#engine/model/stage.ts';

export const heardOf = (more: Partial<Heard> = {}): Heard => ({
  text: '',
  facts: [],
  among: [],
  signs: [],
  names: [],
  named: [],
  dangers: [],
  urgent: [],
  asksWhich: false,
  asksWord: false,
  otherTongue: false,
  ...more,
});

export const rule = (id: string, more: Partial<ToldRule> = {}): ToldRule => ({
  id,
  title: `Title ${id}`,
  say: `Say ${id}.`,
  defers: 'The label wins.',
  isStop: false,
  ...more,
});

const words = (doing: string) => ({
  do: doing,
  verdict: `Verdict ${doing}`,
  say: `Say ${doing}.`,
  not: `Not ${doing}.`,
  again: 'Again.',
});

/** Signs by digits: 0 no, 1 yes, 2 either, 3 mostly yes, 4 mostly no. */
export const mind = (more: Partial<Mind> = {}): Mind => ({
  matrix: {
    defects: ['bubbles', 'cracks', 'dust', 'haze'],
    questions: ['round', 'long', 'gray', 'soft', 'sprayed'],
    prior: [0.4, 0.3, 0.2, 0.1],
    effort: [1, 1, 1, 1, 1],
    signs: ['1002', '0100', '0001', '2022', '3444'],
  },
  names: ['Bubbles', 'Cracks', 'Dust', 'Haze'],
  families: [['lacquer', 'oil'], ['lacquer'], ['oil'], ['lacquer', 'oil', 'wax']],
  questions: [
    { ask: 'Round?', how: 'Look.', safeFrom: 'wet', by: 'look', known: [] },
    { ask: 'Long?', how: 'Look on.', safeFrom: 'wet', by: 'look', known: [] },
    { ask: 'Gray?', how: 'Wipe.', safeFrom: 'recoatable', by: 'touch', known: [] },
    { ask: 'Soft?', how: 'Press.', safeFrom: 'cured', by: 'touch', known: [] },
    {
      ask: 'Sprayed?',
      how: 'Remember.',
      safeFrom: 'wet',
      by: 'remember',
      known: [
        { when: { applicator: 'spray-gun' }, answer: 'yes' },
        { when: { applicator: 'brush' }, answer: 'no' },
      ],
    },
  ] as Mind['questions'],
  acts: ['leave', 'repair:fill', 'repair:sand', 'wait', 'stop'],
  words: [words('leave'), words('repair'), words('repair'), words('wait'), words('stop')],
  // Wet: hands off all. Setting: dust is waited for. Then each has hands of its own; overdue: all are stopped.
  hands: [
    [[0], [0], [0], [0]],
    [[0], [0], [3], [0]],
    [[3], [3], [3], [3]],
    ...STAGES.slice(3).map(() => [[1], [2], [1, 2], [0]]),
    [[4], [4], [4], [4]],
  ],
  fresh: { wet: {}, setting: {} },
  fired: [],
  dangers: [],
  ...more,
});
