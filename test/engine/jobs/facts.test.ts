import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerOf } from '#engine/case/answers.ts';
import { type Case, withAnswer } from '#engine/case/case.ts';
import { clockNow } from '#engine/clock.ts';
import { factsOfCard, type JobCard, laidCoatOf } from '#engine/jobs.ts';
import { FACTS } from '#engine/model/facts.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import { walk } from '#engine/walk/walk.ts';
import { THOROUGH, WHOLE } from '../../thorough.ts';
import { anyCard, card, coat, HOUR, known, MINUTE, products, START } from './cards.ts';

const OF_A_COAT = [
  'coat-number',
  'air-celsius',
  'surface-celsius',
  'relative-humidity',
  'applicator',
  'hours-since-coat',
  'film-micrometers',
  'stage',
];
const full = (): JobCard =>
  card({
    coats: [1, 2, 3].map((number) =>
      coat({
        id: `c${number}`,
        laidAt: START + number * 8 * HOUR,
        amount: { milliliters: 80, squareMeters: 1 },
      }),
    ),
  });
const valuesOf = (on: Case) =>
  Object.fromEntries(Object.entries(on).map(([name, { value }]) => [name, value]));

describe('the facts of a card', () => {
  it('are all that it holds', () => {
    const one = full();
    const last = one.coats[2] ?? coat();
    const now = last.laidAt + 10 * MINUTE;
    const reading = clockNow(products[last.product] as never, laidCoatOf(one, last), now);
    expect(valuesOf(factsOfCard(one, products, now))).toEqual({
      piece: 'furniture',
      base: 'latex-paint',
      'base-tone': 'dark',
      sheen: 'satin',
      age: 'since-1993',
      family: 'water-based',
      'coat-number': 3,
      'air-celsius': 23,
      'relative-humidity': 0.5,
      applicator: 'brush',
      'hours-since-coat': 10 / 60,
      // Three coats of 80 µm wet at 0.28 to 0.35 solids, the middle: 3 × 80 × 0.315.
      'film-micrometers': 76,
      stage: reading.kind === 'running' ? reading.stage : undefined,
    });
  });

  it('answer what a walk would ask: color, sheen, tool, family, coat and piece', () => {
    const now = START + 25 * HOUR;
    const on = factsOfCard(full(), products, now);
    const told = {
      'over-dark-color': 'yes',
      'can-says-satin-or-matte': 'yes',
      'was-sprayed': 'no',
      'was-rolled': 'no',
      'cleans-up-with-water': 'yes',
      'is-shellac': 'no',
      'is-wax-or-oil': 'no',
      'three-coats-or-more': 'yes',
      'first-coat-on-bare-wood': 'no',
      'stain-not-paint-below': 'no',
      'old-and-valuable': 'no',
      'water-based-and-fresh': 'yes',
    };
    for (const [question, answer] of Object.entries(told))
      expect([question, answerOf(known, on, question)]).toEqual([question, answer]);
  });

  it('let no walk ask for the stage, nor for anything that they answer, down every tree', () => {
    const answers = fc.infiniteStream(fc.constantFrom('yes', 'no'));
    const when = fc.integer({ min: 1, max: 60 * 24 * 40 });
    fc.assert(
      fc.property(answers, when, fc.boolean(), (stream, minutes, forCause) => {
        const one = full();
        for (const { id } of known.defects) {
          let on = factsOfCard(one, products, (one.coats[2]?.laidAt ?? 0) + minutes * MINUTE);
          for (let step = 0; ; step++) {
            const met = walk(known, on, id, { forCause });
            expect(met.kind).not.toBe('stage');
            if (met.kind !== 'question') break;
            expect(answerOf(known, on, met.question)).toBeUndefined();
            expect(step).toBeLessThan(60);
            on = withAnswer(on, met.question as QuestionId, stream.next().value);
          }
        }
      }),
      { numRuns: THOROUGH ? 40 : WHOLE ? 10 : 4 },
    );
  });

  it('claim nothing that the card does not hold', () => {
    fc.assert(
      fc.property(anyCard, fc.integer({ min: START, max: START + 2e10 }), (one, now) => {
        const on = valuesOf(factsOfCard(one, products, now));
        expect(Object.keys(on).filter((name) => !(name in FACTS))).toEqual([]);
        const last = [...one.coats].sort((a, b) => a.laidAt - b.laidAt).at(-1)?.laidAt;
        const tops = one.coats.filter(({ laidAt }) => laidAt === last);
        const among = (values: unknown[], name: string) => {
          if (name in on) expect(values).toContain(on[name]);
        };
        for (const name of OF_A_COAT) if (!tops.length) expect(name in on).toBe(false);
        among(
          tops.map(({ celsius }) => celsius),
          'air-celsius',
        );
        among(
          tops.map(({ relativeHumidity }) => relativeHumidity),
          'relative-humidity',
        );
        among(
          tops.map(({ applicator }) => applicator),
          'applicator',
        );
        among(
          tops.map(({ surfaceCelsius }) => surfaceCelsius),
          'surface-celsius',
        );
        among([one.sheen], 'sheen');
        among([one.age === 'none' ? 'since-1993' : one.age], 'age');
        among([one.base], 'base');
        among([one.coats.length], 'coat-number');
        const families = (tops.length ? tops : [one]).map(({ product = '' }) => products[product]?.family);
        among(families, 'family');
        // A film needs solids: those of the product, or of the can.
        const unknown = one.coats.some(({ product, label }) => !products[product] && !label?.volumeSolids);
        if (unknown) expect('film-micrometers' in on).toBe(false);
        for (const name of [
          'air-celsius',
          'surface-celsius',
          'relative-humidity',
          'film-micrometers',
        ] as const)
          if (name in on) {
            expect(on[name]).toBeGreaterThanOrEqual(FACTS[name].min);
            expect(on[name]).toBeLessThanOrEqual(FACTS[name].max);
          }
      }),
      { numRuns: WHOLE ? 500 : 200 },
    );
  });

  it('leave out a film that is only supposed', () => {
    const { applicator: _brush, ...untold } = coat();
    expect('film-micrometers' in factsOfCard(card({ coats: [untold] }), products, START)).toBe(false);
  });

  it('tell the family of the planned product before the first coat, and no stage', () => {
    const on = valuesOf(factsOfCard(card({ coats: [] }), products, START));
    expect(on['family']).toBe('water-based');
    expect('stage' in on).toBe(false);
  });

  it('tell no stage of a coat that would be laid later than now, nor in weather that promises nothing', () => {
    expect('stage' in factsOfCard(card(), products, START - HOUR)).toBe(false);
    const cold = card({ coats: [coat({ celsius: 2 })] });
    expect('stage' in factsOfCard(cold, products, START + HOUR)).toBe(false);
  });

  it('make a piece for children or food of what is done with it, and a crib stays one', () => {
    const piece = (more: Partial<JobCard>) => valuesOf(factsOfCard(card(more), products, START))['piece'];
    expect(piece({ trials: ['child', 'food'] })).toBe('childs-item');
    expect(piece({ trials: ['food'] })).toBe('food-surface');
    expect(piece({ kind: 'crib', trials: [] })).toBe('crib');
    expect(piece({ kind: 'tabletop' })).toBe('tabletop');
  });
});
