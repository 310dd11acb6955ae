/** The order in which the trade works: one repair that breaks it a rule, told in exactly these words. */
import { expect, it } from 'vitest';
import { GROUND_IS_SPARED } from '#engine/prove/ground-is-spared.ts';
import { WORK_IN_ORDER } from '#engine/prove/work-in-order.ts';
import { CLOTH, COAT, LOOK, SAND, told, VACUUM, WAIT } from './broken-repair.ts';

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
    'broken.mdx:13: "Wait once more." comes while the sanding dust still lies; add a step above it that takes the dust off: - { kind: wipe, with: vacuum, say: … }, or move the wait above the sanding',
  ],
  'a cloth over dust': [
    [WAIT, SAND, CLOTH, VACUUM, COAT, WAIT, LOOK],
    'broken.mdx:14: the vacuum comes after a cloth has gone over the dust: "Take the dust off with a vacuum."; move this step above the one with the cloth',
  ],
  'a vacuum before there is dust': [
    [WAIT, VACUUM, SAND, CLOTH, COAT, WAIT, LOOK],
    'broken.mdx:12: "Take the dust off with a vacuum." comes before anything has made dust; move it below the sanding',
  ],
  'coarse paper after fine': [
    [WAIT, SAND, '{ kind: sand, grit: 240, say: Sand it flat. }', SAND, VACUUM, CLOTH, COAT, WAIT, LOOK],
    'broken.mdx:13: P240 comes after P320: it cuts its scratches in again; move the step with the coarser paper above the other, or mend its grit:',
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
    'broken.mdx:13: "Lift off what is loose." comes after the sanding; move it above the sanding',
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
    'broken.mdx:13: "Try it on a hidden spot." lays the trial on sanding dust; add a step above it that takes the dust off: - { kind: wipe, with: vacuum, say: … }',
  ],
  'oil that stays on': [
    [
      WAIT,
      '{ kind: coat, product: oil, say: Spread a very thin film of oil. }',
      '{ kind: wait, hours: [24, 48], say: Let it dry for a day. }',
      CLOTH,
    ],
    'broken.mdx:12: what "Spread a very thin film of oil." lays on is not wiped off in the next step; add a step below it that takes the surplus off: - { kind: wipe, with: dry-cloth, say: … }',
  ],
  'once more before once': [
    [WAIT, '{ kind: scrape, tool: razor, say: Shave it once more. }', SAND, VACUUM, COAT, WAIT, LOOK],
    'broken.mdx:12: "Shave it once more." says once more, but nothing above it does that; take "once more" out, or add the step that does it first above this one',
  ],
  'what repeats, below something else': [
    [
      WAIT,
      SAND,
      VACUUM,
      COAT,
      WAIT,
      '{ kind: wipe, with: dry-cloth, say: Do it again with a clean cloth. }',
      LOOK,
    ],
    'broken.mdx:16: "Do it again with a clean cloth." does not stand below what it repeats; move it right below that step',
  ],
  'what was to go at once, after a wait': [
    [
      WAIT,
      SAND,
      VACUUM,
      COAT,
      WAIT,
      '{ kind: wipe, with: dry-cloth, say: Wipe the extra off at once. }',
      COAT,
      WAIT,
      LOOK,
    ],
    'broken.mdx:16: "Wipe the extra off at once." comes after a wait; move it above the wait, right below what it takes off',
  ],
  'a look before what it repeats': [
    [
      WAIT,
      SAND,
      VACUUM,
      '{ kind: look, say: "A white cloth must stay clean; if not, rinse once more." }',
      '{ kind: wipe, with: damp-cloth, say: Rinse it with clean water and dry it. }',
      COAT,
      WAIT,
      LOOK,
    ],
    'broken.mdx:14: "A white cloth must stay clean; if not, rinse once more." asks to rinse once more before that was done once; move it below the step that does it first',
  ],
  'a wait after the last look': [
    [WAIT, SAND, VACUUM, CLOTH, COAT, WAIT, LOOK, WAIT],
    'broken.mdx:18: the repair ends in "Wait until it is hard.", after the last look; add a step below it: - { kind: look, say: … }, or move the last look below it',
  ],
  'stirred too early': [
    [WAIT, SAND, '{ kind: mix, what: stir, say: Stir for two minutes. }', VACUUM, COAT, WAIT, LOOK],
    'broken.mdx:13: "Take the dust off with a vacuum." comes between the stirring and the coat; move the stirring right above the coat: what makes it satin sinks meanwhile',
  ],
  'dust left on': [
    [WAIT, SAND, LOOK],
    'broken.mdx:12: the dust of "Sand by hand with the grain." is never taken off; add a step below it that takes the dust off: - { kind: wipe, with: vacuum, say: … }',
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
    'broken.mdx:14: "Lay one thin coat." comes on top of what is still wet; add a step above it: - { kind: wait, hours: [2, 4], say: … }, or say in "Wipe with mineral spirits." how long it dries',
  ],
  'paper over wet spirits': [
    [
      WAIT,
      '{ kind: wipe, with: naphtha, say: Wipe it twice with naphtha. }',
      SAND,
      VACUUM,
      CLOTH,
      COAT,
      WAIT,
      LOOK,
    ],
    'broken.mdx:12: "Sand by hand with the grain." comes on spirits that are still wet; say how long it dries after "Wipe it twice with naphtha.": paper clogs, and a vacuum lights vapor',
  ],
  'a wash after the sanding': [
    [
      WAIT,
      SAND,
      VACUUM,
      '{ kind: wipe, with: soapy-water, say: Wash it with a wrung-out cloth and let it dry. }',
      COAT,
      WAIT,
      LOOK,
    ],
    'broken.mdx:14: "Wash it with a wrung-out cloth and let it dry." comes after the sanding; wash first: paper rubs grease in',
  ],
  'water on bared color': [
    [
      WAIT,
      SAND,
      VACUUM,
      '{ kind: wipe, with: damp-cloth, say: Wipe with a barely damp cloth. }',
      '{ kind: coat, product: base-color, say: Touch the color in. }',
      WAIT,
      LOOK,
    ],
    'broken.mdx:15: "Wipe with a barely damp cloth." brings water to color that the sanding may have bared; write with: dry-cloth in that step, since water lifts chalk or milk paint at any age',
  ],
  'coarse paper on veneer': [
    [WAIT, '{ kind: sand, grit: 180, say: Sand the folds off. }', SAND, VACUUM, CLOTH, COAT, WAIT, LOOK],
    'broken.mdx:12: "Sand the folds off." takes P180 to what may be veneer; say in it, or in a step above it, what is done on veneer',
  ],
  'stripper on paint': [
    [
      WAIT,
      '{ kind: strip, with: stripper, say: Take it off with stripper. }',
      '{ kind: wipe, with: mineral-spirits, say: Wash the stripper off and let it dry for a day. }',
      COAT,
      WAIT,
      LOOK,
    ],
    'broken.mdx:12: "Take it off with stripper." brings stripper to paint that is to stay; say in it that over paint it is tried on a hidden spot first',
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
    'broken.mdx:13: "Leave it overnight." waits for nothing: nothing wet was laid since the last wait; move it right below what has to dry, or delete it',
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
  expect(Object.keys(BROKEN).length).toBe(WORK_IN_ORDER.length + GROUND_IS_SPARED.length);
});
