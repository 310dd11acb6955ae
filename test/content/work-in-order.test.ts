/** The order in which the trade works: one repair that breaks it a rule, told in exactly these words. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { link } from '#engine/link.ts';
import { prove } from '#engine/prove/index.ts';
import { WORK_IN_ORDER } from '#engine/prove/work-in-order.ts';
import { say } from '#engine/say.ts';
import { parseFrontMatter, readContent } from '../../content/tools/read.ts';

const root = process.cwd();
const sound = readContent(join(root, 'test/content/sound'));
const doings = readContent(root).filter(({ kind }) => kind === 'doing');
const frame = readFileSync(join(root, 'test/content/faults/against-the-trade.mdx'), 'utf8').replace(
  /^# .*\n/gm,
  '',
);

const WAIT = '{ kind: wait, until: recoatable, say: Wait until it is hard. }';
const SAND = '{ kind: sand, grit: 320, say: Sand by hand with the grain. }';
const VACUUM = '{ kind: wipe, with: vacuum, say: Take the dust off with a vacuum. }';
const CLOTH = '{ kind: wipe, with: dry-cloth, say: Wipe with a clean dry cloth. }';
const COAT = '{ kind: coat, product: same, say: Lay one thin coat. }';
const LOOK = '{ kind: look, say: Look along it in low light. }';

/** What is told of a repair with these steps, from line 11 on, one a line. */
const told = (steps: readonly string[]): string[] => {
  const text = frame.replace(
    /^steps:\n(?: .*\n)*/m,
    `steps:\n${steps.map((step) => `  - ${step}\n`).join('')}`,
  );
  const broken = { kind: 'remedy', id: 'broken', file: 'broken.mdx', ...parseFrontMatter(text) } as const;
  const linked = link([...sound, ...doings, broken]);
  if (!linked.ok) throw new Error(linked.issues.map(say).join('\n'));
  return prove(linked.value)
    .filter(({ code }) => code === 'against-the-trade')
    .map(say);
};

const SOUND = [WAIT, SAND, VACUUM, CLOTH, COAT, WAIT, LOOK];

const BROKEN: Readonly<Record<string, readonly [steps: readonly string[], sentence: string]>> = {
  'hours since the coat was laid, after other work': [
    [
      WAIT,
      SAND,
      VACUUM,
      CLOTH,
      '{ kind: wait, hours: [24, 72], from: coat, say: Give the coat a full day. }',
      COAT,
      WAIT,
      LOOK,
    ],
    'broken.mdx:15: "Give the coat a full day." counts from the day the coat was laid, but stands after other work; move it up to be the first step, or delete "from: coat" on this line',
  ],
  'a wait over sanding dust': [
    [WAIT, SAND, '{ kind: wait, until: recoatable, say: Wait once more. }', VACUUM, CLOTH, COAT, WAIT, LOOK],
    'broken.mdx:13: "Wait once more." comes while the sanding dust still lies; wipe the dust off before it, or wait before you sand',
  ],
  'a cloth over dust': [
    [WAIT, SAND, CLOTH, VACUUM, COAT, WAIT, LOOK],
    'broken.mdx:14: the vacuum comes after a cloth has gone over the dust: "Take the dust off with a vacuum."; put the vacuum first',
  ],
  'a vacuum before there is dust': [
    [WAIT, VACUUM, SAND, CLOTH, COAT, WAIT, LOOK],
    'broken.mdx:12: "Take the dust off with a vacuum." comes before anything has made dust; put it after the sanding',
  ],
  'coarse paper after fine': [
    [WAIT, SAND, '{ kind: sand, grit: 240, say: Sand it flat. }', SAND, VACUUM, CLOTH, COAT, WAIT, LOOK],
    'broken.mdx:13: P240 comes after P320: it cuts its scratches in again; sand with the coarser paper first',
  ],
  'scraping what is sanded': [
    [
      WAIT,
      SAND,
      '{ kind: scrape, tool: plastic-scraper, say: Lift off what is loose. }',
      VACUUM,
      CLOTH,
      COAT,
      WAIT,
      LOOK,
    ],
    'broken.mdx:13: "Lift off what is loose." comes after the sanding; scrape off what stands first, then sand level',
  ],
  'a trial too late': [
    [
      WAIT,
      SAND,
      VACUUM,
      COAT,
      WAIT,
      '{ kind: test-patch, tries: same, hours: [2, 24], say: Try it on a hidden spot. }',
      LOOK,
    ],
    'broken.mdx:16: "Try it on a hidden spot." comes when the finish is on the piece already; move the trial above the step that lays it',
  ],
  'a trial on dust': [
    [
      WAIT,
      SAND,
      '{ kind: test-patch, tries: stain, hours: [2, 24], say: Try it on a hidden spot. }',
      VACUUM,
      COAT,
      WAIT,
      LOOK,
    ],
    'broken.mdx:13: "Try it on a hidden spot." lays the trial on sanding dust; wipe the dust off first',
  ],
  'oil that stays on': [
    [
      WAIT,
      '{ kind: coat, product: oil, say: Spread a very thin film of oil. }',
      '{ kind: wait, hours: [24, 48], say: Let it dry for a day. }',
      CLOTH,
    ],
    'broken.mdx:12: what "Spread a very thin film of oil." lays on is not wiped off in the next step; wipe the surplus off right after it',
  ],
  'once more before once': [
    [WAIT, '{ kind: scrape, tool: razor, say: Shave it once more. }', SAND, VACUUM, COAT, WAIT, LOOK],
    'broken.mdx:12: "Shave it once more." comes before it was done once; put it after the first time',
  ],
  'a wait after the last look': [
    [WAIT, SAND, VACUUM, CLOTH, COAT, WAIT, LOOK, WAIT],
    'broken.mdx:18: the repair ends in "Wait until it is hard.", after the last look; look once more after it',
  ],
  'stirred too early': [
    [WAIT, SAND, '{ kind: mix, what: stir, say: Stir for two minutes. }', VACUUM, COAT, WAIT, LOOK],
    'broken.mdx:13: "Take the dust off with a vacuum." comes between the stirring and the coat; stir last: what makes it satin sinks meanwhile',
  ],
  'dust left on': [
    [WAIT, SAND, LOOK],
    'broken.mdx:12: the dust of "Sand by hand with the grain." is never taken off; wipe it off after it',
  ],
  'a coat over what is wet': [
    [
      WAIT,
      SAND,
      VACUUM,
      '{ kind: wipe, with: mineral-spirits, say: Wipe with mineral spirits. }',
      COAT,
      WAIT,
      LOOK,
    ],
    'broken.mdx:14: "Lay one thin coat." comes on top of what is still wet; say how long it dries after "Wipe with mineral spirits.", or add a wait',
  ],
  'a wait for nothing': [
    [
      WAIT,
      LOOK,
      '{ kind: wait, hours: [12, 24], say: Leave it overnight. }',
      SAND,
      VACUUM,
      CLOTH,
      COAT,
      WAIT,
      LOOK,
    ],
    'broken.mdx:13: "Leave it overnight." waits for nothing: nothing wet was laid since the last wait; put it right after what has to dry',
  ],
};

it('finds nothing in a repair that keeps to it', () => {
  expect(told(SOUND)).toEqual([]);
});

for (const [name, [steps, sentence]] of Object.entries(BROKEN))
  it(`tells ${name}`, () => {
    expect(told(steps)).toEqual([sentence]);
  });

it('has a broken repair for every rule', () => {
  expect(Object.keys(BROKEN).length).toBe(WORK_IN_ORDER.length);
});
