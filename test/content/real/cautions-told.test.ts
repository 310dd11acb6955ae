/** Nothing that fires is lost: at every end of every walk each caution stands before its step or by itself. */
import { describe, expect, it } from 'vitest';
import {
  type Case,
  cautionsApart,
  isOfSteps,
  nodesOf,
  remediesTold,
  resolve,
  walk,
  withFact,
} from '#engine/index.ts';
import { FAMILIES } from '#engine/model/family.ts';
import type { Hazard } from '#engine/model/hazard.ts';
import type { Stage } from '#engine/model/stage.ts';
import type { Step } from '#engine/model/step.ts';
import { hazardsOf } from '#engine/rules/hazards.ts';
import { rulesForStep } from '#engine/rules/rules.ts';
import { actOf } from '#engine/walk/act.ts';
import { hazardsSaid } from '../../../engine/prove/hazard-words.ts';
import { oneInSo } from '../../thorough.ts';
import { known } from './knowledge.ts';
import { told } from './told.ts';

/** What hangs on no step: it fires by what she tells of the piece, and a tree can not know it. */
const PIECES: readonly Readonly<Record<string, string | number>>[] = [
  {},
  { piece: 'food-surface', hardener: 'acid', family: 'lacquer', applicator: 'spray-gun' },
  { piece: 'furniture', age: 'before-1993', family: 'water-based' },
];

const ends = known.defects.flatMap(({ id }) =>
  [...nodesOf(known, id)]
    .filter(({ walked }) => walked.kind === 'outcome')
    .map(({ on }) => ({ defect: id as string, on })),
);

const WIPED_NOW: readonly string[] = ['wash-off', 'wipe-back', 'wick'];

/** The faults of one end, in words. */
const faultsAt = (defect: string, on: Case): string[] => {
  const walked = walk(known, on, defect);
  const before = remediesTold(walked).flatMap((remedy) =>
    resolve(known, remedy, on, walked.families).flatMap((step) => step.before.map(({ id }) => id as string)),
  );
  const apart = cautionsApart(known, on, walked).map(({ id }) => id as string);
  const { stage } = on as { stage?: { value: Stage } };
  const [first = new Set<Hazard>(), ...others] = walked.leaves.map(
    (leaf) => new Set(stage ? hazardsSaid(actOf(known, on, leaf, stage.value).say).keys() : []),
  );
  const saidNow = [...first].filter((hazard) => others.every((one) => one.has(hazard)));
  const where = `${defect} ${JSON.stringify(Object.entries(on).map(([name, { value }]) => `${name}=${value}`))}`;
  return [
    ...walked.fired.cautions
      .filter(({ id }) => !before.includes(id) && !apart.includes(id))
      .map(({ id }) => `${id} is told nowhere: ${where}`),
    ...[...before, ...apart]
      .filter((id, at, all) => all.indexOf(id) !== at)
      .map((id) => `${id} is told twice: ${where}`),
    // What is wiped or warmed now is no step of a remedy, so its caution stands beside the verdict.
    ...apart
      .filter((id) => !known.get('rule', id).hazards.some((hazard) => saidNow.includes(hazard)))
      .filter(() => walked.kind !== 'outcome' || !WIPED_NOW.includes(walked.action.do))
      .filter((id) => isOfSteps(known.get('rule', id)))
      .map((id) => `${id} stands without its step: ${where}`),
  ];
};

describe('the cautions', () => {
  it.each(PIECES)('are each told once where she has told %o', (piece) => {
    expect(ends.length).toBeGreaterThan(1000);
    const some = oneInSo(3, ends);
    expect(some.flatMap(({ defect, on }) => faultsAt(defect, { ...told(piece), ...on }))).toEqual([]);
  });

  it('warn of nothing that no kind of top coat which shows the flaw calls for', () => {
    const idle = oneInSo(3, ends).flatMap(({ defect, on }) => {
      const walked = walk(known, on, defect);
      const each = walked.families.map((family) => withFact(on, 'family', family));
      return remediesTold(walked).flatMap((remedy) => {
        const steps = known.get('remedy', remedy).steps;
        // What a step does for one kind of top coat at least, or for a tool or a base that is not told.
        const done = new Set(
          each.flatMap((of) => steps.flatMap((step) => [...hazardsOf(known, of, step).keys()] as string[])),
        );
        return resolve(known, remedy, on, walked.families)
          .flatMap((step) => step.before)
          .filter(({ hazards }) => !hazards.some((hazard) => done.has(hazard)))
          .map(({ id }) => `${id} before ${remedy} of ${defect}`);
      });
    });
    expect([...new Set(idle)]).toEqual([]);
  });

  it('stand by themselves where facts alone call for them, and nowhere else', () => {
    const idsAt = (facts: Record<string, string | number>) => {
      const on = told(facts);
      return cautionsApart(known, on, walk(known, on, 'cloudy-film')).map(({ id }) => id as string);
    };
    expect(idsAt({ stage: 'wet' })).toEqual([]);
    expect(idsAt({ stage: 'wet', piece: 'food-surface' })).toEqual(['food-surface']);
    expect(idsAt({ stage: 'wet', hardener: 'acid' })).toEqual(['hardener-acid']);
    expect(idsAt({ stage: 'dry-to-touch' })).toEqual(['cure-before-use']);
    expect(idsAt({ stage: 'dry-to-touch', piece: 'furniture' })).toEqual(['cure-before-use']);
  });

  it('stand beside what is done now, before any repair', () => {
    const idsAt = (defect: string, facts: Record<string, string | number>) =>
      walk(known, told(facts), defect).fired.cautions.map(({ id }) => id as string);
    const warmed = { stage: 'dry-to-touch', overdue: 'yes', 'worst-where-thick': 'yes', 'is-shellac': 'no' };
    expect(idsAt('tacky-film', warmed)).toContain('warm-without-a-flame');
    const young = { stage: 'dry-to-touch', family: 'oil', 'young-or-cold-oil': 'yes' };
    expect(idsAt('sticky-oil', young)).toContain('warm-without-a-flame');
    const washed = { stage: 'wet', 'within-wash-time': 'yes', 'layer-below-would-lift': 'no' };
    const spirits = idsAt('fisheyes', { ...washed, family: 'oil-based' });
    expect(spirits).toEqual(expect.arrayContaining(['vapor-and-flame', 'skin-and-spirits']));
    expect(idsAt('fisheyes', { ...washed, family: 'water-based' })).not.toContain('vapor-and-flame');
  });

  // Only air-fed breathing apparatus holds isocyanate back (a British agency); nobody tells of a hardener unasked.
  it('name the hardener before every coat that is surely sprayed, told of or not', () => {
    const spraying: Step = { kind: 'coat', product: 'same', thin: true, say: 'Spray one light coat.' };
    for (const applicator of ['aerosol', 'spray-gun'])
      for (const family of FAMILIES) {
        const rules = rulesForStep(known, told({ applicator, family }), spraying);
        expect(rules.map(({ say }) => say).join(' '), `${applicator} ${family}`).toMatch(
          /never spray [^.]*\bhardener\b/i,
        );
      }
  });

  it('stop her before a flame in a cold place', () => {
    const stops = (celsius: number) =>
      walk(known, told({ stage: 'setting', 'air-celsius': celsius }), 'cloudy-film').fired.stops.map(
        ({ id }) => id as string,
      );
    // The evidence on safety asks for it below about 15 °C (common practice, no source).
    expect(stops(12)).toEqual(['no-fuel-heater']);
    expect(stops(18)).toEqual([]);
  });
});
