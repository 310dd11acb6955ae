/** Plan, clock, card and walk say the same of one coat: over base, wait, finish, piece and air. Demo data, ours. */

import { describe, expect, it } from 'vitest';
import { withFact } from '#engine/case/case.ts';
import { factsOf } from '#engine/clock.ts';
import { type Judgement, judgeLaying, layingOfCase, layingOfCoat, noesOfAll } from '#engine/fitness.ts';
import { factsOfCard, laidCoatOf, layingOfCard, trialsOf } from '#engine/jobs.ts';
import { FACTS } from '#engine/model/facts.ts';
import type { Job } from '#engine/schedule.ts';
import { THOROUGH } from '../../thorough.ts';
import { card, coat, HOUR, products, START } from '../jobs/cards.ts';
import { rulesIn } from '../schedule/scenario.ts';
import { job, known, outcome, plan, productOf } from '../schedule/sheet.ts';

const AIRS = [
  { celsius: 21, relativeHumidity: 0.5 },
  { celsius: 11, relativeHumidity: 0.8 },
  { celsius: 34, relativeHumidity: 0.25 },
  { celsius: 24, relativeHumidity: 0.9 },
];
const AGES = ['since-1993', 'unknown'] as const;
/** By turns, over the kinds that may have one. */
const HARDENERS = [undefined, 'none', 'isocyanate', 'acid'] as const;
const WAITS = [undefined, 1, 48, 1000];

type Row = {
  readonly base: Job['base'];
  readonly baseHours: number | undefined;
  readonly product: string;
  readonly applicator: Job['applicator'];
  readonly kind: Job['kind'];
  readonly age: Job['age'];
  readonly hardener?: Job['hardener'];
  readonly air: (typeof AIRS)[number];
};

const rows: readonly Row[] = FACTS.base.values.flatMap((base) =>
  WAITS.flatMap((baseHours) =>
    known.products.flatMap(({ id, hardeners, 'wet-film-micrometers': films }) =>
      FACTS.piece.values.flatMap((kind, at) =>
        AIRS.flatMap((air) =>
          AGES.map((age, turn) => ({
            base,
            baseHours,
            product: id as string,
            applicator: Object.keys(films)[0] as Job['applicator'],
            kind,
            age,
            ...(hardeners && { hardener: HARDENERS[(turn + at) % HARDENERS.length] }),
            air,
          })),
        ),
      ),
    ),
  ),
);

const jobOf = ({ air, ...row }: Row): Job => ({
  ...job(),
  ...row,
  wear: 'normal',
  trials: trialsOf({ kind: row.kind }),
  day: air,
  night: { celsius: air.celsius },
});

/** The same piece on a card, with the coat that is about to be laid. */
const cardOf = ({ base, baseHours, kind, product, applicator, age, hardener, air }: Row) => {
  const next = coat({ id: 'next', product, applicator, ...air, ...(hardener && { hardener }) });
  const on = card({
    base,
    kind,
    tone: 'dark',
    age,
    coats: [],
    product,
    ...(baseHours !== undefined && { baseLaidAt: START - baseHours * HOUR }),
  });
  return { on, next };
};

const said = ({ verdict, noes, wait, care, weatherCare, cautions }: Judgement) => ({
  verdict,
  noes: noes.map(({ code, says }) => `${code}: ${says}`),
  wait: wait && Math.round(wait.hours * 60),
  care: care.map(({ why }) => why),
  weatherCare,
  cautions: cautions.map(({ id }) => id as string).sort(),
});

const closedHours = ({ product }: Row): boolean => productOf(product)['no-coat-hours'] !== undefined;

const judged = (row: Row) => {
  const one = jobOf(row);
  const product = productOf(row.product);
  const { on, next } = cardOf(row);
  const judge = (laying: Parameters<typeof judgeLaying>[2]) =>
    said(judgeLaying(plan, known, laying, product));
  const laid = laidCoatOf(on, next);
  const facts = {
    ...factsOfCard(on, products, START),
    ...factsOf(product, laid, START),
  };
  const told = withFact(facts, 'base-tone', 'dark');
  const walked = layingOfCase(told, { trials: one.trials, baseHours: row.baseHours });
  if (!walked) throw new Error('no air');
  const { day: _day, ...piece } = layingOfCard(on, next);
  return {
    plan: judge(one),
    card: judge(layingOfCard(on, next)),
    clock: judge(layingOfCoat(laid, piece)),
    walk: judge(walked),
    outcome: outcome(one),
  };
};

it('agree on every row, and the schedule itself refuses what is judged a no', { timeout: 900_000 }, () => {
  const some = THOROUGH ? rows : rows.filter((_, index) => index % 29 === 0);
  const verdicts: Record<string, number> = {};
  for (const row of some) {
    const { plan: wanted, card: onCard, clock, walk, outcome: got } = judged(row);
    const what = JSON.stringify(row);
    expect(onCard, what).toEqual(wanted);
    expect(clock, what).toEqual(wanted);
    expect(walk, what).toEqual(wanted);
    const refused = got.kind === 'no' ? got.why.map(({ code, says }) => `${code}: ${says}`) : [];
    if (wanted.noes.length) expect(refused, what).toEqual(wanted.noes);
    else for (const reason of refused) expect(reason, what).toMatch(/^(hours|drying): /);
    // A coat that goes on before the hours in which none does lies on no sanded film.
    const sands = (got.kind === 'plan' && got.steps.some(({ kind }) => kind === 'sand')) || !closedHours(row);
    if (got.kind === 'plan')
      for (const id of wanted.cautions)
        if (sands || id !== 'sanding-dust') expect(rulesIn(got), what).toContain(id);
    verdicts[wanted.verdict] = (verdicts[wanted.verdict] ?? 0) + 1;
  }
  console.log(`${some.length} of ${rows.length} rows: ${JSON.stringify(verdicts)}`);
  for (const verdict of ['care', 'no']) expect(verdicts[verdict]).toBeGreaterThan(10);
});

describe('what a card once let pass', () => {
  const at = (over: Partial<Row>) => {
    const row: Row = {
      base: 'latex-paint',
      baseHours: 1000,
      product: 'water-based-polyurethane',
      applicator: 'brush',
      kind: 'furniture',
      age: 'since-1993',
      air: AIRS[0] as Row['air'],
      ...over,
    };
    const { on, next } = cardOf(row);
    return judgeLaying(plan, known, layingOfCard(on, next), productOf(row.product), { at: START });
  };

  it('a film over wax', () => {
    expect(
      at({ base: 'wax', baseHours: 1 })
        .noes.map(({ says }) => says)
        .join(),
    ).toContain('will peel');
  });

  it('a water-based coat on stain after an hour, with the time from which it would do', () => {
    const [no] = at({ base: 'stain', baseHours: 1 }).noes;
    expect(no).toMatchObject({ code: 'base', earliest: START + 71 * HOUR });
  });

  it('a crib, and an antique', () => {
    for (const kind of ['crib', 'valuable'] as const) {
      const [first] = at({ kind }).noes;
      expect(first?.code).toBe('rule');
      // Its own page leads on, and its title keeps its own mark.
      expect(known.rules.map(({ id }) => id)).toContain(first?.rule);
      expect(first?.says).not.toMatch(/[.?!]\./);
    }
  });

  it('oil on a cloth, and lacquer in the air', () => {
    const ids = (one: Judgement) => one.cautions.map(({ id }) => id as string);
    const oil = at({ base: 'bare-wood', product: 'drying-oil', applicator: 'cloth' });
    expect(ids(oil)).toContain('oily-rags');
    const lacquer = at({ base: 'bare-wood', product: 'sprayed-lacquer', applicator: 'spray-gun' });
    expect(ids(lacquer).join()).toMatch(/vapor/);
  });

  it('a second coat no longer waits for the base', () => {
    const { on, next } = cardOf({
      base: 'stain',
      baseHours: 1,
      product: 'water-based-polyurethane',
      applicator: 'brush',
      kind: 'furniture',
      age: 'since-1993',
      air: AIRS[0] as Row['air'],
    });
    const later = { ...next, laidAt: START + HOUR };
    const second = layingOfCard({ ...on, coats: [coat({ id: 'first', laidAt: START })] }, later);
    expect(judgeLaying(plan, known, second, productOf(next.product)).wait).toBeUndefined();
  });
});

it('of a kind of coat alone, what forbids every product of it is told', () => {
  const [day] = AIRS;
  if (!day) throw new Error('no air');
  const codesOf = (family: string, base: Row['base'], air: Row['air']) =>
    noesOfAll(
      plan,
      known,
      { base, day: air, onOwnCoat: true },
      known.products.filter((product) => product.family === family).map(({ id }) => productOf(id)),
    ).map(({ code }) => code);
  expect(codesOf('water-based', 'wax', day)).toEqual(['use']);
  expect(codesOf('water-based', 'bare-wood', day)).toEqual([]);
  expect(codesOf('water-based', 'bare-wood', { celsius: 5, relativeHumidity: 0.5 })).toContain('weather');
  expect(codesOf('no-such-kind', 'wax', day)).toEqual([]);
});
