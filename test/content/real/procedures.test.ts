/** Every procedure that a remedy can come to, over all that its steps hang on. */
import { expect, it } from 'vitest';
import { factsIn } from '#engine/case/condition.ts';
import { asksOf, type Case, resolve } from '#engine/index.ts';
import { FACTS } from '#engine/model/facts.ts';
import { rulesForStep } from '#engine/rules/rules.ts';
import { CONTRADICTIONS } from '#engine/steps/contradictions.ts';
import { takingOf } from '#engine/steps/resolve.ts';
import { known } from './knowledge.ts';

type Remedy = (typeof known.remedies)[number];

/** The values that a fact can have: a choice's, an answer's, or one below and one above each bound; `undefined` is not told. */
const valuesOf = (fact: string): readonly (string | undefined)[] => {
  const shape = Object.hasOwn(FACTS, fact) ? FACTS[fact as keyof typeof FACTS] : undefined;
  if (shape?.kind === 'number') return [undefined];
  return [undefined, ...(shape ? shape.values : ['yes', 'no'])];
};

const factsOf = (remedy: Remedy): readonly string[] => [
  ...new Set(
    remedy.steps.flatMap((step) => [
      ...[step.when, step.except].flatMap((one) => (one ? [...factsIn(one)].map(({ fact }) => fact) : [])),
      ...CONTRADICTIONS.filter((one) => one.step(step)).flatMap(({ told }) => Object.keys(told)),
    ]),
  ),
];

const casesOf = (remedy: Remedy): readonly Case[] =>
  factsOf(remedy).reduce<readonly Case[]>(
    (cases, fact) =>
      cases.flatMap((on) =>
        valuesOf(fact).map((value) => (value ? { ...on, [fact]: { value, how: 'told' as const } } : on)),
      ),
    [{}],
  );

it('never tells a step that something told speaks against', () => {
  const counts = new Map<string, number>();
  const wrong: string[] = [];
  for (const remedy of known.remedies) {
    const procedures = new Set<string>();
    const against = remedy.steps.map((step) => CONTRADICTIONS.filter((one) => one.step(step)));
    for (const on of casesOf(remedy)) {
      const told = [...remedy.steps.keys()].filter((at) => {
        const step = remedy.steps[at];
        return step && takingOf(known, on, step) !== 'no';
      });
      procedures.add(told.join(' '));
      for (const at of told)
        for (const one of against[at] ?? [])
          for (const [fact, values] of Object.entries(one.told))
            if ([values].flat().includes((on[fact]?.value ?? '') as never))
              wrong.push(`${remedy.id} ${at + 1}, told ${fact} ${on[fact]?.value}: ${one.why}`);
    }
    counts.set(remedy.id, procedures.size);
  }
  const all = [...counts.values()].sort((a, b) => a - b);
  console.log(
    `${counts.size} remedies, ${all.reduce((sum, one) => sum + one, 0)} distinct procedures; ` +
      `median ${all[Math.floor(all.length / 2)]}, most ${all.at(-1)}, only one in ${all.filter((one) => one === 1).length}`,
  );
  expect(wrong).toEqual([]);
  expect(all.filter((one) => one > 1).length).toBeGreaterThan(all.length / 2);
});

/** Rules of the step that hangs on what is told of the can, by the ids of the steps that lack it. */
const lacking = (rule: string, on: Case, step: (step: Remedy['steps'][number]) => boolean): string[] =>
  known.remedies.flatMap((remedy) =>
    remedy.steps.flatMap((one, at) =>
      step(one) && !rulesForStep(known, on, one).some(({ id }) => id === rule)
        ? [`${remedy.id} ${at + 1}`]
        : [],
    ),
  );
const told = (fact: string, value: string): Case => ({ [fact]: { value, how: 'told' } });
const HER_OWN = ['same', 'same-in-gloss', 'tinted-same', 'mist-of-same'];

it('says at each coat from a spray can that its own hours count, and at none from a brush', () => {
  const herCoat = (step: Remedy['steps'][number]) =>
    step.kind === 'coat' && HER_OWN.includes(step.product) && step.by !== 'hand';
  expect(lacking('hours-on-the-can', told('applicator', 'aerosol'), herCoat)).toEqual([]);
  const byBrush = told('applicator', 'brush');
  expect(lacking('hours-on-the-can', byBrush, herCoat).length).toBeGreaterThan(50);
});

it('opens no spray can for a fresh start, and says what is done with one', () => {
  const fresh = (applicator: string) =>
    resolve(known, 'discard-the-can', told('applicator', applicator))
      .map(({ say }) => say)
      .filter((say) => /fresh can/.test(say));
  expect(fresh('aerosol')).toEqual(['Shake a fresh can for two minutes and try it on cardboard first.']);
  expect(fresh('brush')).toEqual(['Open a fresh can, stir it and try a smear on glass first.']);
});

it('says at each step that makes dust that a film with isocyanate waits for its full cure', () => {
  const sands = (step: Remedy['steps'][number]) => step.kind === 'sand';
  expect(lacking('not-sanded-before-full-cure', told('hardener', 'isocyanate'), sands)).toEqual([]);
  expect(lacking('not-sanded-before-full-cure', told('hardener', 'none'), sands).length).toBeGreaterThan(50);
});

it('says at each step that surely sprays that isocyanate is not sprayed at home', () => {
  const sprays = (step: Remedy['steps'][number]) =>
    (step.kind === 'coat' || step.kind === 'test-patch' || step.kind === 'wipe') && step.by === 'spray';
  expect(lacking('not-sprayed-at-home', told('hardener', 'isocyanate'), sprays)).toEqual([]);
  expect(lacking('not-sprayed-at-home', told('hardener', 'none'), sprays).length).toBeGreaterThan(5);
});

const PARTS = FACTS.part.values;
const onPart = (part: string): Case => told('part', part);
const takenOn = (remedy: Remedy, part: string) =>
  resolve(known, remedy.id, onPart(part)).flatMap(({ at }) => remedy.steps[at] ?? []);

it('has another step of the same kind and the same cautions for each that gives way to a part of the piece', () => {
  let gaveWay = 0;
  const wrong: string[] = [];
  for (const remedy of known.remedies)
    for (const step of remedy.steps)
      for (const part of [step.except?.['part'] ?? []].flat() as string[]) {
        if (step.kind === 'look') continue;
        gaveWay++;
        const cautions = (one: Remedy['steps'][number]) =>
          rulesForStep(known, onPart(part), one).map(({ id }) => id);
        const instead = takenOn(remedy, part).filter((one) => one.kind === step.kind && one.when?.['part']);
        const held = new Set(instead.flatMap(cautions));
        const missing = cautions(step).filter((id) => !held.has(id));
        if (!instead.length || missing.length) wrong.push(`${remedy.id}, ${part}: ${step.say} ${missing}`);
      }
  expect(wrong).toEqual([]);
  expect(gaveWay).toBeGreaterThan(150);
});

/** Common practice, no source: what takes the film off an edge, and what reaches into no hollow and round no leg. */
it('tells of no block off the flat face, of no paper in carving, and of a drip only while the coat is wet', () => {
  const composed = known.remedies.filter(({ steps }) => steps.some(({ except }) => except?.['part']));
  expect(composed.length).toBeGreaterThan(18);
  for (const remedy of composed) {
    const says = (part: string, kind: string) =>
      takenOn(remedy, part).flatMap((step) => (step.kind === kind ? [step.say] : []));
    for (const part of PARTS.filter((one) => one !== 'flat'))
      for (const say of says(part, 'sand'))
        expect(say, `${remedy.id} ${part}`).not.toMatch(/\b(on|round) (a|the) [\w, ]*block\b(?!.*no block)/i);
    for (const say of says('leg', 'coat'))
      if (/drip/.test(say)) expect(say).toMatch(/only if the clock still says wet/);
  }
  const sandedIn = (part: string) =>
    resolve(known, 'shave-the-run', onPart(part)).filter(({ kind }) => kind === 'sand');
  expect(sandedIn('flat').map(({ grit }) => grit)).toEqual(['P240', 'P320']);
  expect(sandedIn('edge')).toMatchObject([{ strokes: 1, only: false }]);
  expect(sandedIn('carving')[0]?.say).toMatch(/^In place of paper/);
  expect(sandedIn('leg')[0]?.say).toMatch(/strip of cloth-backed paper/);
});

it('tells the flat way plainly where the part is not told, and each other way as what it is for', () => {
  const { steps } = known.get('remedy', 'full-panel-recoat');
  const untold = resolve(known, 'full-panel-recoat', { family: { value: 'shellac', how: 'told' } });
  for (const { at, only } of untold)
    expect(only, steps[at]?.say).toBe(steps[at]?.when?.['part'] !== undefined);
  expect(untold.filter(({ only }) => only).length).toBeGreaterThan(8);
});

it('asks for the part of the piece where a step hangs on it, and nowhere else', () => {
  const asks = (remedy: string) => [...asksOf(known, remedy, resolve(known, remedy, {})).values()].flat();
  expect(asks('shave-the-run')).toContain('part');
  expect(asks('warm-it-and-buff')).not.toContain('part');
});
