/** Which top coat is named for a piece, by the rows of the tables read plainly here again. */
import { describe, expect, it } from 'vitest';
import { chooseCoat, judgeLaying, type Wanted } from '#engine/fitness.ts';
import { FACTS } from '#engine/model/facts.ts';
import { WEARS } from '#engine/model/plan.ts';
import { planData } from '../../../site/shared/plan-data.ts';
import { planRules } from '../../../site/shared/plan-rules.ts';
import { known, plan } from '../schedule/sheet.ts';
import { day, orNot } from './layings.ts';

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
