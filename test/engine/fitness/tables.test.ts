/**
 * What is judged of a coat, beside the rows of the tables read plainly: every product over every base, with every wear,
 * tone, sheen and trial; and the words of each kind of no. The tables name their grounds (content/plan.yaml).
 */
import { describe, expect, it } from 'vitest';
import { riskOfFilm } from '#engine/fitness/film-risk.ts';
import { madeReadyBy, rubOf, washOf } from '#engine/fitness/judge.ts';
import { baseHoursOf, baseWait, fitnessOf } from '#engine/fitness/rows.ts';
import { chooseCoat, judgeLaying, type Laying, noesOfAll, underCan, type Wanted } from '#engine/fitness.ts';
import { FACTS } from '#engine/model/facts.ts';
import { TRIALS, WEARS } from '#engine/model/plan.ts';
import { planData } from '../../../site/shared/plan-data.ts';
import { planRules } from '../../../site/shared/plan-rules.ts';
import { HOUR, known, plan, productOf } from '../schedule/sheet.ts';

const day = { celsius: 21, relativeHumidity: 0.5 };
const products = known.products.map(({ id }) => productOf(id));
const orNot = <T>(values: readonly T[]): readonly (T | undefined)[] => [undefined, ...values];

/** Every piece that the rows can tell apart. */
const layings: readonly Laying[] = orNot(WEARS).flatMap((wear) =>
  orNot(FACTS.base.values).flatMap((base) =>
    orNot(FACTS['base-tone'].values).flatMap((tone) =>
      orNot(FACTS.sheen.values).map((sheen) => ({ wear, base, tone, sheen, day })),
    ),
  ),
);

describe('the rows of fitness', () => {
  it('speak where all that they name is told, and nowhere else; a no first', () => {
    const wrong: string[] = [];
    for (const [index, laying] of layings.entries()) {
      const trials = index % 2 ? [] : [TRIALS[(index / 2) % TRIALS.length] ?? 'water'];
      const one = { ...laying, trials };
      for (const product of products.filter((_, at) => (at + index) % 4 === 0)) {
        const told: Readonly<Record<string, string | undefined>> = {
          families: product.family,
          products: product.id,
          wear: one.wear,
          bases: one.base,
          tones: one.tone,
          sheens: one.sheen,
        };
        const wanted = plan.fitness.filter(
          (row) =>
            Object.entries(told).every(([name, value]) => {
              const list = row[name as 'wear'] as readonly (string | undefined)[] | undefined;
              return list === undefined || list.includes(value);
            }) &&
            (row.trials === undefined || row.trials.some((trial) => trials.includes(trial))),
        );
        const found = fitnessOf(plan, one, product);
        const noes = found.map(({ verdict }) => verdict).lastIndexOf('no');
        const cares = found.findIndex(({ verdict }) => verdict === 'care');
        const inOrder = cares < 0 || noes < cares;
        if (
          !inOrder ||
          new Set([...found, ...wanted]).size !== wanted.length ||
          found.length !== wanted.length
        )
          wrong.push(`${product.id} ${JSON.stringify(one)}`);
      }
    }
    expect(wrong).toEqual([]);
  });

  it('speak of no trial where none is told', () => {
    for (const product of products)
      expect(fitnessOf(plan, { day }, product).filter(({ trials }) => trials)).toEqual([]);
  });
});

describe('the wait for a base', () => {
  it('is that of the first row that names base and finish', () => {
    for (const product of products)
      for (const base of FACTS.base.values) {
        const wanted = plan.waits.find(
          ({ bases, families }) => bases.includes(base) && (!families || families.includes(product.family)),
        );
        expect([base, product.id, baseWait(plan, { base, day }, product)]).toEqual([
          base,
          product.id,
          wanted,
        ]);
      }
    expect(products.map((product) => baseWait(plan, { day }, product))).toEqual(
      products.map(() => undefined),
    );
  });

  it('is twice as long for each 10 °C below 20 under an oil, and never shorter; half of the air is the night’s', () => {
    const hours = (base: Laying['base'], celsius: number, night?: number) =>
      baseHoursOf(
        {
          base,
          day: { celsius, relativeHumidity: 0.5 },
          ...(night !== undefined && { night: { celsius: night } }),
        },
        { hours: 24 } as never,
      );
    for (const base of ['stain', 'oil-paint'] as const) {
      expect([20, 10, 0, 30].map((celsius) => hours(base, celsius))).toEqual([24, 48, 96, 24]);
      expect(hours(base, 20, 0)).toBeCloseTo(48, 9);
      expect(hours(base, 15, 5)).toBeCloseTo(48, 9);
    }
    for (const base of ['latex-paint', 'chalk-paint', undefined] as const) expect(hours(base, 0)).toBe(24);
  });
});

describe('the judgement', () => {
  const judge = (id: string, more: Partial<Laying>, at?: number) =>
    judgeLaying(plan, known, { day, ...more }, productOf(id), at === undefined ? {} : { at });
  const WATER = 'water-based-polyurethane';

  it('names the tools that a product is laid with, where it is not laid with this one', () => {
    const { noes, verdict } = judge('shellac', { applicator: 'roller' });
    expect(verdict).toBe('no');
    const tools = Object.keys(productOf('shellac')['wet-film-micrometers']).join(', ');
    expect(noes).toEqual([
      {
        code: 'tool',
        says: `${productOf('shellac').name} is not laid with this tool.`,
        instead: `Take one of these: ${tools}.`,
      },
    ]);
    expect(
      judge('shellac', { applicator: 'roller', label: { minutes: {}, squareMetersPerLiter: 10 } }).noes,
    ).toEqual([]);
    expect(judge('shellac', {}).noes).toEqual([]);
  });

  it('goes from go over care and wait to no', () => {
    expect(judge(WATER, {}).verdict).toBe('go');
    expect(judge(WATER, { sheen: 'matte', tone: 'dark' }).verdict).toBe('care');
    const muggy = judge(WATER, { day: { celsius: 21, relativeHumidity: 0.75 } });
    expect([muggy.verdict, muggy.care, muggy.noes]).toEqual(['care', [], []]);
    expect(muggy.weatherCare.length).toBeGreaterThan(0);
    const waits = judge(WATER, { base: 'latex-paint', baseHours: 20 });
    expect([waits.verdict, waits.wait?.hours]).toEqual(['wait', 4]);
    expect(waits.wait?.row.bases).toContain('latex-paint');
    expect(judge(WATER, { base: 'latex-paint', baseHours: 20, sheen: 'matte', tone: 'dark' }).verdict).toBe(
      'wait',
    );
  });

  it('waits no half hour, and not for a base that is long dry or covered', () => {
    expect(judge(WATER, { base: 'latex-paint', baseHours: 23.4 }).wait?.hours).toBeCloseTo(0.6, 9);
    expect(judge(WATER, { base: 'latex-paint', baseHours: 23.5 }).wait?.hours).toBeCloseTo(0.5, 9);
    expect(judge(WATER, { base: 'latex-paint', baseHours: 23.6 }).wait).toBeUndefined();
    expect(judge(WATER, { base: 'latex-paint', baseHours: 24 }).wait).toBeUndefined();
    expect(judge(WATER, { base: 'latex-paint' }).wait).toBeUndefined();
    expect(judge(WATER, { base: 'latex-paint', baseHours: 1, onOwnCoat: true }).wait).toBeUndefined();
  });

  it('refuses over what is too fresh where the row says so, with the time from which it would do', () => {
    const early = judge(WATER, { base: 'stain', baseHours: 60 }, 5 * HOUR);
    expect(early.noes).toEqual([
      {
        code: 'base',
        says: baseWait(plan, { base: 'stain', day }, productOf(WATER))?.why,
        instead: 'Wait, or take another product.',
        earliest: 17 * HOUR,
      },
    ]);
    const [untimed] = judge(WATER, { base: 'stain', baseHours: 60 }).noes;
    expect(untimed).not.toHaveProperty('earliest');
    expect(judge(WATER, { base: 'stain', baseHours: 72 }, 0).noes).toEqual([]);
  });

  it('refuses over a coat of her own that is not ready, and says from when on it is', () => {
    const below = (readyAt: number | undefined, hours = 1) => ({
      onOwnCoat: true,
      ownBelow: { family: 'water-based' as const, hours, readyAt },
    });
    const early = judge(WATER, below(9 * HOUR), 8 * HOUR);
    expect(early.noes).toEqual([
      { code: 'coat-below', says: expect.stringMatching(/not ready for another/), earliest: 9 * HOUR },
    ]);
    expect(judge(WATER, below(9 * HOUR), 9 * HOUR).noes).toEqual([]);
    // Without a time, or where none can be told, nothing is refused.
    expect(judge(WATER, below(9 * HOUR)).noes).toEqual([]);
    expect(judge(WATER, below(undefined), 8 * HOUR).noes).toEqual([]);
    // A row over another finish: until its hours are over, and no later.
    const oil = (hours: number, at?: number) =>
      judge(WATER, { onOwnCoat: true, ownBelow: { family: 'oil', hours, readyAt: undefined } }, at).noes;
    expect(oil(71, 3 * HOUR)).toMatchObject([{ code: 'coat-below', earliest: 4 * HOUR }]);
    expect(oil(71)[0]).not.toHaveProperty('earliest');
    expect(oil(72, 3 * HOUR)).toEqual([]);
    // Wax bears no film, however long it lies there.
    const [never] = judge(
      WATER,
      { onOwnCoat: true, ownBelow: { family: 'wax', hours: 9999, readyAt: 0 } },
      HOUR,
    ).noes;
    expect(never).toMatchObject({ code: 'coat-below', instead: expect.stringMatching(/^[A-Z].+/) });
    expect(never).not.toHaveProperty('earliest');
  });

  it('says of a flaw that is open, or was repaired, what to do first', () => {
    const [open] = judge(WATER, { openFlaw: 'open' }).noes;
    expect(open).toMatchObject({
      code: 'flaw',
      instead: 'Mend it first, or note on the card that it is gone.',
    });
    expect(open?.says).toMatch(/^A flaw is open on the card of this piece/);
    const [repaired] = judge(WATER, { openFlaw: 'repaired' }).noes;
    expect(repaired).toEqual({
      code: 'flaw',
      says: 'A flaw of this piece was repaired.',
      instead: 'Look first whether it is gone, and note it on the card.',
    });
  });

  it('leaves a film that is thick enough to cure, whatever lies below it', () => {
    const film = { micrometers: 126, families: ['water-based' as const] };
    const { noes } = judge(
      WATER,
      { film, onOwnCoat: true, ownBelow: { family: 'wax', hours: 1, readyAt: 9 } },
      0,
    );
    expect(noes).toEqual([
      { code: 'film', says: plan.sanding['too-thick'].at(-1)?.say, instead: 'Leave it to cure.' },
    ]);
    expect(judge(WATER, { film: { ...film, micrometers: 125 } }).noes).toEqual([]);
  });

  it('names the rule that forbids, in its own title and words', () => {
    const [first] = judge(WATER, { kind: 'crib' }).noes;
    const rule = known.rules.find(({ id }) => id === 'not-a-crib');
    if (!rule) throw new Error('the rule is gone');
    const mark = /[.?!]$/.test(rule.title) ? '' : '.';
    expect(first).toEqual({ code: 'rule', says: `${rule.title}${mark} ${rule.say}`, rule: 'not-a-crib' });
    // Old paint: making the base ready forbids it, a rub between her own coats does not.
    const old: Partial<Laying> = { base: 'old-finish', age: 'unknown', kind: 'furniture' };
    expect(judge(WATER, old).noes.map(({ code }) => code)).toEqual(['rule']);
    expect(judge(WATER, { ...old, onOwnCoat: true }).noes.map(({ code }) => code)).toEqual([]);
  });

  it('tells each caution once, and no adjustment among them', () => {
    for (const product of products)
      for (const base of FACTS.base.values) {
        const { cautions } = judge(product.id, { base, applicator: 'brush' });
        expect(new Set(cautions).size).toBe(cautions.length);
        expect(cautions.filter(({ kind }) => kind === 'adjustment')).toEqual([]);
      }
  });

  it('refuses in weather that is a no in so many words, and minds what is not quite right', () => {
    const cold = judge(WATER, { day: { celsius: 4, relativeHumidity: 0.5 } });
    expect(cold.noes.map(({ code }) => code)).toContain('weather');
    for (const { says } of cold.noes) expect(says).toMatch(/^[A-Z].+\.$/);
    const impossible = judge(WATER, { day: { celsius: 90, relativeHumidity: 0.5 } });
    expect(impossible.noes).toEqual([
      { code: 'weather', says: expect.stringMatching(/^The air temperature was given as 90 °C/) },
    ]);
    expect(impossible.weatherCare).toEqual([]);
    expect(
      judge(WATER, { inSun: true })
        .noes.map(({ says }) => says)
        .join(),
    ).toMatch(/The sun is on the piece/);
  });
});

describe('what all products of a kind are refused for', () => {
  const lacquers = products.filter(({ family }) => family === 'lacquer');
  it('is what each of them is refused for, whatever else speaks against some', () => {
    const codes = (more: Partial<Laying>) =>
      noesOfAll(plan, known, { day, ...more }, lacquers).map(({ code }) => code);
    // A brush suits one lacquer of the three; over wax none holds.
    expect(lacquers.length).toBeGreaterThan(2);
    expect(codes({ base: 'wax' })).toEqual(['use']);
    expect(codes({ base: 'wax', applicator: 'brush' })).toEqual(['use']);
    expect(codes({ applicator: 'brush' })).toEqual([]);
    expect(codes({ base: 'wax', applicator: 'cloth' })).toEqual(['use', 'tool']);
  });
});

describe('the steps that make a base ready', () => {
  it('are those of the tables: what washes it, what rubs it, and what rubs the film between', () => {
    for (const product of products)
      for (const base of orNot(FACTS.base.values))
        for (const onOwnCoat of [false, true]) {
          const wash = onOwnCoat ? [] : plan.wash.filter(({ bases }) => base && bases.includes(base));
          const rubs = [
            ...(onOwnCoat
              ? []
              : plan.prepare.filter(({ bases }) => base && bases.includes(base)).slice(0, 1)),
            ...(onOwnCoat || base
              ? plan.between.filter(({ families }) => families.includes(product.family)).slice(0, 1)
              : []),
          ];
          expect(madeReadyBy(plan, { base, onOwnCoat, day }, product)).toEqual([
            ...wash.map(({ say, does }) => ({
              kind: 'wipe',
              with: 'damp-cloth',
              say,
              ...(does && { does }),
            })),
            ...rubs.flatMap(({ say, does, grit }) =>
              grit ? [{ kind: 'sand', grit, say, ...(does && { does }) }] : [],
            ),
          ]);
        }
    expect(washOf({ say: 'Wash it.', does: undefined })).toEqual({
      kind: 'wipe',
      with: 'damp-cloth',
      say: 'Wash it.',
    });
    expect(rubOf({ say: 'Rub it.', does: ['mist'] }, 320)).toEqual({
      kind: 'sand',
      grit: 320,
      say: 'Rub it.',
      does: ['mist'],
    });
  });

  it('warn of the vapor that an old finish is washed with', () => {
    const { cautions } = judgeLaying(
      plan,
      known,
      { base: 'old-finish', age: 'none', day },
      productOf('water-based-polyurethane'),
    );
    expect(cautions.flatMap(({ hazards }) => hazards)).toContain('vapor');
  });
});

describe('the can', () => {
  const water = productOf('water-based-polyurethane');
  it('has its own limits go before those of its kind, each for itself', () => {
    expect(underCan(water, { label: undefined })).toBe(water);
    expect(underCan(water, { label: { minutes: {} } })).toBe(water);
    const warm = underCan(water, { label: { minutes: {}, limits: { celsius: { from: 8, to: 30 } } } });
    expect(warm.limits).toEqual({ celsius: [8, 30], humidity: water.limits.humidity });
    // A can that names its least temperature knows its film.
    expect(warm).not.toHaveProperty('film-formation-celsius');
    const damp = underCan(water, {
      label: { minutes: {}, limits: { relativeHumidity: { from: 0.1, to: 0.7 } } },
    });
    expect(damp.limits).toEqual({ celsius: water.limits.celsius, humidity: [0.1, 0.7] });
    expect(damp['film-formation-celsius']).toEqual(water['film-formation-celsius']);
    expect(water['film-formation-celsius']).toBeDefined();
  });
});

describe('the risk of a rub', () => {
  it('is high below two coats or 25 µm, some below 50 µm, else low', () => {
    const risk = (coats: number, film: number) => riskOfFilm(plan.sanding, coats, film);
    expect([risk(1, 500), risk(2, 24.9), risk(2, 25), risk(2, 49.9), risk(2, 50), risk(9, 24)]).toEqual([
      'high',
      'high',
      'some',
      'some',
      'low',
      'high',
    ]);
  });
});

describe('the top coat that is named', () => {
  const data = planData(known, plan);
  const rules = planRules(data);
  const KINDS = ['furniture', 'tabletop'] as const;
  const pieces: readonly Wanted[] = KINDS.flatMap((kind) =>
    orNot(WEARS).flatMap((wear) =>
      orNot(FACTS.base.values).flatMap((base) =>
        orNot(FACTS['base-tone'].values).map((tone) => ({
          kind,
          wear,
          base,
          tone,
          trials: [],
          age: 'none' as const,
        })),
      ),
    ),
  );

  it('is of a row that speaks of the piece: of those with the least to mind the first', () => {
    const wrong: string[] = [];
    for (const wanted of pieces) {
      const speaking = plan.picks.filter(
        ({ wear, bases, tones }) =>
          (!wear || (wear as readonly unknown[]).includes(wanted.wear)) &&
          (!bases || (bases as readonly unknown[]).includes(wanted.base)) &&
          (!tones || (tones as readonly unknown[]).includes(wanted.tone)),
      );
      const fit = speaking.flatMap((row) => {
        const product = data.products.find(({ id }) => id === row.product);
        if (!product) return [];
        const { noes, care } = judgeLaying(plan, rules, { ...wanted, day }, product);
        // What is minded with each kind of product is no reason against one.
        return noes.length
          ? []
          : [{ row, minded: care.filter((one) => one.families || one.products).length }];
      });
      const least = Math.min(...fit.map(({ minded }) => minded));
      const best = fit.find(({ minded }) => minded === least);
      const { chosen, noes } = chooseCoat(plan, rules, wanted, data.products);
      if (
        chosen?.why !== best?.row.why ||
        chosen?.product.id !== best?.row.product ||
        (chosen && noes.length)
      )
        wrong.push(JSON.stringify(wanted));
      const wait = plan.waits.find(
        ({ bases, families }) =>
          wanted.base &&
          bases.includes(wanted.base) &&
          chosen &&
          (!families || families.includes(chosen.product.family)),
      );
      if (chosen && chosen.wait !== wait?.why) wrong.push(`wait of ${JSON.stringify(wanted)}`);
    }
    expect(wrong).toEqual([]);
  });

  it('is none where no product that is told of is sold, and nothing is said against it', () => {
    expect(chooseCoat(plan, rules, { kind: 'furniture' }, [])).toEqual({
      chosen: undefined,
      noes: [],
      others: [],
    });
  });

  it('minds what one row names by its product alone', () => {
    // Invented: nothing else to mind, so that the first of the list would be taken.
    const [first, ...more] = plan.picks.filter(({ wear, bases, tones }) => !wear && !bases && !tones);
    const [next] = more;
    if (!first || !next) throw new Error('two that speak of any piece');
    const [some] = plan.fitness;
    if (!some) throw new Error('a row');
    const row = (products: readonly string[] | undefined) =>
      ({
        why: 'Invented for this test alone.',
        instead: 'Take another.',
        grade: 'invented',
        verdict: 'care',
        products,
      }) as never;
    const chosen = (fitness: never[]) =>
      chooseCoat(
        { ...plan, fitness },
        rules,
        { kind: 'furniture', base: 'bare-wood', tone: 'dark', age: 'none' },
        data.products,
      ).chosen?.product.id;
    expect(chosen([])).toBe(first.product);
    expect(chosen([row([first.product])])).toBe(next.product);
    // What is minded with every product speaks against none.
    expect(chosen([row(undefined)])).toBe(first.product);
  });

  it('stands beside at most four that it is not, what one would think of first', () => {
    for (const wanted of pieces.filter((_, at) => at % 5 === 0)) {
      const { chosen, others } = chooseCoat(plan, rules, wanted, data.products);
      expect(others.length).toBeLessThanOrEqual(4);
      for (const { families, why } of others) {
        expect(why.length).toBeGreaterThan(19);
        expect(families.length).toBeGreaterThan(0);
        expect(families).not.toContain(chosen?.product.family);
      }
      const often = plan.picks.map(
        ({ product }) => data.products.find(({ id }) => id === product)?.family as string,
      );
      const isOften = others.map(({ families }) => families.some((family) => often.includes(family)));
      expect(isOften).toEqual(isOften.toSorted((one, two) => Number(two) - Number(one)));
    }
  });
});
