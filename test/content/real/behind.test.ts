/** A stop stops: where nothing is told of old paint, no step that breaks into an older layer lies open. */
import { expect, it } from 'vitest';
import { asksOf, nodesOf, remediesTold, resolve, stretches, walk, withFact } from '#engine/index.ts';
import type { Step } from '#engine/model/step.ts';
import { hazardsOf } from '#engine/rules/hazards.ts';
import { walkLines } from '../../../content/tools/walk-lines.ts';
import { known } from './knowledge.ts';

/** Ends at which steps are told, and what is said there. */
const ends = known.defects.flatMap(({ id }) =>
  [...nodesOf(known, id)].filter(({ walked }) => remediesTold(walked).length).map(({ on }) => ({ id, on })),
);

/** Cuts, scrapes, strips or sands, with however fine a paper. */
const disturbs = (on: (typeof ends)[number]['on'], step: Step | undefined) => {
  const does = step ? hazardsOf(known, on, step) : undefined;
  return does?.has('old-film') || does?.has('old-film-in-reach');
};

const openSteps = (remedy: string, on: (typeof ends)[number]['on'], id: string) => {
  const steps = resolve(known, remedy, on, walk(known, on, id).families);
  const all = stretches(known, remedy, steps);
  const closed = all.findIndex(({ stops }) => stops.length > 0);
  return (closed < 0 ? all : all.slice(0, closed)).flatMap((stretch) => stretch.steps);
};

it('opens no step that breaks into an older layer before the stop is settled', () => {
  const open = ends.flatMap(({ id, on }) =>
    [undefined, 'unknown', 'before-1993'].flatMap((age) => {
      const of = age ? withFact(on, 'age', age as 'unknown') : on;
      // A first coat on bare wood, with no old paint told of, has none below.
      if (!age && on['first-coat-on-bare-wood']?.value === 'yes') return [];
      return remediesTold(walk(known, of, id)).flatMap((remedy) =>
        openSteps(remedy, of, id)
          .map(({ at }) => known.get('remedy', remedy).steps[at])
          .filter((step) => disturbs(of, step))
          .map((step) => `${id}: ${remedy}, age ${age}: ${step?.say}`),
      );
    }),
  );
  expect(ends.length).toBeGreaterThan(500);
  expect(open).toEqual([]);
});

it('prints none of them in the terminal, but says for whom they are', () => {
  const told = ends.filter((_, at) => at % 7 === 0);
  for (const { id, on } of told) {
    const walked = walk(known, on, id);
    const lines = walkLines(known, on, walked).join('\n');
    for (const remedy of on['first-coat-on-bare-wood']?.value === 'yes' ? [] : remediesTold(walked)) {
      const shut = known.get('remedy', remedy).steps.filter((step) => disturbs(on, step));
      for (const { say } of shut) expect(lines, `${id}: ${remedy}`).not.toContain(`. ${say}`);
      if (shut.length) expect(lines).toMatch(/Closed from step \d+ of \d+ on\. (If|When) /);
    }
  }
});

it('asks what a stop or a caution hangs on at the first step that needs it, each once', () => {
  const steps = resolve(known, 'shave-and-recoat', {});
  const asks = asksOf(known, 'shave-and-recoat', steps);
  const facts = [...asks.values()].flat();
  expect(new Set(facts).size).toBe(facts.length);
  const kindAt = (fact: string) =>
    known.get('remedy', 'shave-and-recoat').steps[
      [...asks].find(([, list]) => list.includes(fact))?.[0] ?? -1
    ]?.kind;
  expect(kindAt('age')).toBe('scrape');
  expect(kindAt('applicator')).toBe('coat');
  expect(kindAt('piece')).toBe('coat');
});

// Dust of a film that is not cured still holds isocyanate (common practice, no source).
it('asks for a hardener before its film is sanded, and not only before the next coat', () => {
  const steps = resolve(known, 'sand-and-recoat', {});
  const [at] =
    [...asksOf(known, 'sand-and-recoat', steps)].find(([, facts]) => facts.includes('hardener')) ?? [];
  expect(known.get('remedy', 'sand-and-recoat').steps[at ?? -1]?.kind).toBe('sand');
});
