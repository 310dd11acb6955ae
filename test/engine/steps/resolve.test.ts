import { describe, expect, it } from 'vitest';
import { emptyCase, resolve, withFact } from '#engine/index.ts';
import { takingOf } from '#engine/steps/resolve.ts';
import { defect, known, question, remedy } from '../small.ts';

const knowledge = known(
  question('soft'),
  remedy('wait-then-coat', undefined, {
    steps: [
      { kind: 'wait', hours: [24, 72], from: 'coat', say: 'Let the coat dry one to three days.' },
      { kind: 'wait', hours: [1, 2], say: 'Let the wood dry an hour more.' },
      { kind: 'wait', until: 'recoatable', hours: [8, 24], from: 'coat', say: 'Wait until it makes powder.' },
      { kind: 'mix', what: 'stir', say: 'Stir it from the bottom up.' },
      { kind: 'coat', product: 'stain', say: 'Stain the pale spot.' },
      { kind: 'coat', product: 'same', say: 'Lay one thin coat.' },
    ],
  }),
  remedy('other'),
  defect('streaks', {
    ask: 'soft',
    yes: { remedy: 'wait-then-coat', cause: 'Soft' },
    no: { remedy: 'other', cause: 'Hard' },
  }),
);

const told = (hours: number) => withFact(emptyCase(), 'hours-since-coat', hours);
const waits = (hours: number) =>
  resolve(knowledge, 'wait-then-coat', told(hours)).flatMap(({ at, kind, hours: left }) =>
    kind === 'wait' ? [[at, left]] : [],
  );

describe('a wait that counts from the coat', () => {
  it('is told whole where nobody knows how old the coat is', () => {
    const steps = resolve(knowledge, 'wait-then-coat', emptyCase());
    expect(steps[0]?.hours).toEqual([24, 72]);
  });

  it('has what has passed taken off, and other waits keep their hours', () => {
    expect(waits(20)).toEqual([
      [0, [4, 52]],
      [1, [1, 2]],
      [2, [0, 4]],
    ]);
    expect(waits(30)[0]).toEqual([0, [0, 42]]);
  });

  it('goes when all of it has passed, but for what a touch must show', () => {
    expect(waits(80)).toEqual([
      [1, [1, 2]],
      [2, undefined],
    ]);
  });
});

describe('a wait for the film that lies there', () => {
  const steps = [
    { kind: 'look', say: 'Look at it in low light.' },
    { kind: 'wait', until: 'recoatable', say: 'Wait until it sands to powder.' },
    { kind: 'wait', until: 'cured', hours: [24, 72], from: 'coat', say: 'Wait until it is cured.' },
    { kind: 'wait', until: 'recoatable', hours: [24, 24], say: 'Let it rest for a day.' },
    { kind: 'wait', until: 'recoatable', does: ['heat'], say: 'Warm the room until it is hard.' },
    { kind: 'coat', product: 'same', say: 'Lay one thin coat.' },
    { kind: 'wait', until: 'recoatable', say: 'Wait until that sands to powder.' },
  ] as const;
  const shaped = known(
    remedy('waits', undefined, { steps: [...steps] }),
    remedy('waits-alone', undefined, { steps: steps.slice(0, 2) }),
    defect('streaks', { remedy: 'waits', cause: 'Soft' }),
    defect('bands', { remedy: 'waits-alone', cause: 'Soft' }),
  );
  const at = (on: Parameters<typeof resolve>[2], of = 'waits') =>
    resolve(shaped, of, on).map((step) => step.at);
  const cured = withFact(emptyCase(), 'stage', 'cured');

  it('is over once that is told to be cured; one of its own hours, with warmth or behind a coat is not', () => {
    expect(at(cured)).toEqual([0, 3, 4, 5, 6]);
    expect(at(withFact(cured, 'hours-since-coat', 80))).toEqual([0, 3, 4, 5, 6]);
    expect(at(withFact(cured, 'hours-since-coat', 48))).toContain(2);
  });

  it('stays at every stage before, and where it is the repair', () => {
    for (const stage of ['wet', 'setting', 'dry-to-touch', 'recoatable'] as const)
      expect(at(withFact(emptyCase(), 'stage', stage))).toEqual([0, 1, 2, 3, 4, 5, 6]);
    expect(at(emptyCase())).toHaveLength(7);
    expect(at(cured, 'waits-alone')).toEqual([0, 1]);
  });
});

describe('a step that something told speaks against', () => {
  it('is left out: a spray can is not stirred, and paint is not stained', () => {
    const kinds = (on: Parameters<typeof resolve>[2]) =>
      resolve(knowledge, 'wait-then-coat', on).map(({ at }) => at);
    expect(kinds(emptyCase())).toEqual([0, 1, 2, 3, 4, 5]);
    expect(kinds(withFact(emptyCase(), 'applicator', 'aerosol'))).not.toContain(3);
    expect(kinds(withFact(emptyCase(), 'base', 'latex-paint'))).not.toContain(4);
    expect(kinds(withFact(emptyCase(), 'base', 'stain'))).toContain(4);
  });
});

it('tells a step for some facts, where they are not known, as one that may apply; and one with an exception as it stands', () => {
  const shaped = known(
    question('soft'),
    remedy('by-part', undefined, {
      steps: [
        { kind: 'look', when: { part: ['leg'] }, say: 'Look along the leg.' },
        { kind: 'look', except: { part: ['leg'] }, say: 'Look across the face.' },
      ],
    }),
    defect('streaks', { remedy: 'by-part', cause: 'Soft' }),
  );
  const steps = (on: Parameters<typeof resolve>[2]) =>
    resolve(shaped, 'by-part', on).map(({ at, only }) => [at, only]);
  expect(steps(emptyCase())).toEqual([
    [0, true],
    [1, false],
  ]);
  expect(steps(withFact(emptyCase(), 'part', 'leg'))).toEqual([[0, false]]);
  expect(steps(withFact(emptyCase(), 'part', 'flat'))).toEqual([[1, false]]);
});

it('tells a wait that names no hours, however old the coat is', () => {
  const dull = known(
    remedy('wait-for-it', undefined, {
      steps: [
        { kind: 'wait', until: 'recoatable', say: 'Wait until it sands to powder.' },
        { kind: 'wait', of: 'stain', hours: [1, 2], say: 'Let the stain dry.' },
        { kind: 'wait', hours: [1, 2], from: 'coat', say: 'Let the coat dry.' },
      ],
    }),
    defect('streaks', { remedy: 'wait-for-it', cause: 'Soft' }),
  );
  const at = (hours: number) =>
    resolve(dull, 'wait-for-it', told(hours)).map((step) => [step.at, step.hours]);
  expect(at(900)).toEqual([
    [0, undefined],
    [1, [1, 2]],
  ]);
  // To the hour: two hours after it was laid nothing of it is left.
  expect(at(1.5)[2]).toEqual([2, [0, 1]]);
  expect(at(2)).toHaveLength(2);
  const bare = { kind: 'wait', say: 'Wait until it is dull.' } as const;
  expect(takingOf(dull, told(900), bare)).toBe('yes');
});
