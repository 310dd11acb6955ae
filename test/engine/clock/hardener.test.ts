/**
 * No word of the clock, a card or a reminder sands or dulls a film with isocyanate in it, at any moment of any product
 * that may have it; and where nobody has said, one line stands beside every such word. The rule and how it is known:
 * content/rules/not-sanded-before-full-cure.mdx. The pieces are invented.
 */
import { describe, expect, it } from 'vitest';
import { clockNow, dueOf, factsOf, type LaidCoat, remindersOf, sayNow } from '#engine/clock.ts';
import { filmToSand } from '#engine/jobs/advice.ts';
import { adviceOf, factsOfCard, laidCoatOf, layersOf } from '#engine/jobs.ts';
import { card, coat, DAY, HOUR, known, PRODUCTS, plan, products, START } from '../jobs/cards.ts';
import { productOf } from '../schedule/sheet.ts';
import { WORDS } from './words.ts';

const STYLE = { timeZone: 'America/Denver', hour12: true };
type Told = LaidCoat['hardener'];
/** An order to make dust: what is said not to be done, and what is to come, is taken out first. */
const ORDERS = /\bsand\b|\bsanded\b|\bdull\b|strokes?\b|powder|paper\b|\brub\b/i;
const without = (text: string): string =>
  text.replace(
    /Do not sand or coat yet\.|No dust[^.]*\.|No sanding[^.]*|no sanding before full cure|this finish is not sanded/g,
    '',
  );

const MAY = PRODUCTS.filter((id) => products[id]?.hardeners?.includes('isocyanate'));
const HOURS = [0.1, 0.5, 1, 2, 3, 6, 12, 20, 30, 50, 80, 200, 500, 900];

/** All that is said of the top of so many coats, by the hour. */
const spoken = (product: string, hardeners: readonly Told[]) => {
  const all = hardeners.map((hardener, at) =>
    coat({
      id: `c${at}`,
      product,
      applicator: undefined,
      laidAt: START + at * DAY,
      ...(hardener && { hardener }),
    }),
  );
  const top = all.at(-1) ?? coat();
  const on = card({ coats: all, product });
  return HOURS.flatMap((hours) => {
    const now = top.laidAt + hours * HOUR;
    const laid = laidCoatOf(on, top);
    const reading = clockNow(productOf(product), laid, now, products);
    const { verdict, why } = sayNow(WORDS, reading, now, STYLE);
    const rings =
      reading.kind === 'running'
        ? remindersOf(WORDS, reading, laid, now).map((one) => `${one.title} ${one.detail}`)
        : [];
    return [{ hours, texts: [`${verdict}. ${why}`, dueOf(WORDS, reading, now, STYLE).says, ...rings] }];
  });
};

it('is asked of the kinds of finish that the content names, and of no others', () => {
  expect(MAY).toContain('water-based-lacquer');
  for (const id of ['shellac', 'paste-wax', 'drying-oil']) expect(products[id]?.hardeners).toBeUndefined();
  expect(MAY.length).toBeGreaterThan(5);
});

describe('isocyanate in the film', () => {
  it.each(PRODUCTS)('%s: no moment has a word that makes dust of it', (product) => {
    for (const told of [
      ['isocyanate'],
      ['isocyanate', 'isocyanate'],
      ['isocyanate', 'none'],
      ['none', 'isocyanate', 'none'],
    ] as const)
      for (const { hours, texts } of spoken(product, told))
        for (const text of texts)
          expect(without(text), `${told.join()} at ${hours} h`).not.toMatch(
            product.includes('wax') ? /\bsand\b|\bdull it\b/i : ORDERS,
          );
  });

  it('says what to do instead: coat it unsanded while the can allows, else wait for full cure', () => {
    const first = { ...laidCoatOf(card(), coat()), hardener: 'isocyanate' } as const;
    const at = (hours: number) => {
      const now = START + hours * HOUR;
      const reading = clockNow(productOf('water-based-polyurethane'), first, now, products);
      return { ...sayNow(WORDS, reading, now, STYLE), due: dueOf(WORDS, reading, now, STYLE).says };
    };
    expect(at(1).why).toContain(WORDS['two-part'].soft);
    expect(at(6).verdict).toMatch(/^Ready for the next coat until .*, unsanded$/);
    expect(at(6).why).toContain(WORDS['two-part'].ready);
    expect(at(26).verdict).toBe('No sanding before full cure: coat it only if its can still allows');
    expect(at(26).why).toContain(WORDS['two-part'].late);
    expect(at(26)).toMatchObject({ doing: 'wait', due: 'no sanding before full cure' });
  });

  it('is a fact that no question asks again, of the whole film', () => {
    const laid = (hardener: Told, below?: Told): LaidCoat => ({
      ...laidCoatOf(card(), coat()),
      hardener,
      ...(below && { below: [{ ...laidCoatOf(card(), coat()), hardener: below }] }),
    });
    const fact = (one: LaidCoat) =>
      factsOf(productOf('water-based-polyurethane'), one, START + HOUR, products)['hardener']?.value;
    expect(fact(laid('isocyanate'))).toBe('isocyanate');
    expect(fact(laid('none', 'isocyanate'))).toBe('isocyanate');
    expect(fact(laid('none', 'acid'))).toBe('acid');
    expect(fact(laid('none', 'none'))).toBe('none');
    expect(fact(laid(undefined))).toBeUndefined();
    // What may lie below is not known: it is still asked.
    expect(fact({ ...laid('none'), below: [laid(undefined)] })).toBeUndefined();
    const on = card({ coats: [coat({ hardener: 'acid' })] });
    expect(factsOfCard(on, products, START + HOUR)['hardener']?.value).toBe('acid');
  });

  it('has the word on the film of a card and in a repair, thin or thick', () => {
    for (const count of [1, 3, 9]) {
      const coats = Array.from({ length: count }, (_, at) =>
        coat({ id: `c${at}`, laidAt: START + at * DAY, hardener: at ? 'none' : 'isocyanate' }),
      );
      const on = card({ coats });
      const { says } = adviceOf(plan.sanding, WORDS, layersOf(on, products), on.age);
      expect(says).toContain(WORDS['two-part'].film);
      expect(without(says)).not.toMatch(ORDERS);
      const walked = filmToSand(plan.sanding, WORDS, factsOfCard(on, products, START + 10 * DAY));
      expect(walked?.first).toBe(true);
      expect(without(walked?.says ?? 'sand')).not.toMatch(ORDERS);
    }
  });

  it('is said as its rule says it', () => {
    const rule = known.rules.find(({ id }) => id === 'not-sanded-before-full-cure');
    for (const words of ['unsanded', 'its can says fully cured', 'isocyanate'])
      for (const said of [rule?.say, WORDS['two-part'].ready]) expect(said).toContain(words);
    expect(rule?.claims.map(({ grade }) => grade)).toEqual(['common-practice', 'common-practice']);
  });
});

describe('not said', () => {
  it.each(MAY)('%s: one line stands beside every word that makes dust', (product) => {
    for (const told of [[undefined], ['none', undefined], [undefined, undefined, 'none']] as const)
      for (const { hours, texts } of spoken(product, told))
        for (const text of texts.filter((one) =>
          /A light stroke|[Ss]and (only|and recoat|or coat|before)|few light strokes/.test(without(one)),
        ))
          expect(text, `${told.join()} at ${hours} h`).toContain(WORDS['two-part'].perhaps);
  });

  it('is no line where it was said, nor of a kind that comes with none', () => {
    for (const told of ['none', 'acid'] as const)
      for (const product of MAY)
        for (const { texts } of spoken(product, [told]))
          expect(texts.join()).not.toMatch(/two parts|No dust/i);
    for (const product of PRODUCTS.filter((id) => !MAY.includes(id)))
      for (const { texts } of spoken(product, [undefined]))
        expect(texts.join()).not.toMatch(/two parts|No dust/i);
  });

  it('gives way to the lead below, which sands nothing at all', () => {
    const laid = { ...laidCoatOf(card(), coat()), age: 'unknown' as const };
    const now = START + 6 * HOUR;
    const { why } = sayNow(
      WORDS,
      clockNow(productOf('water-based-polyurethane'), laid, now, products),
      now,
      STYLE,
    );
    expect(why).toContain('may hold lead');
    expect(why).not.toContain('Two parts');
  });
});
