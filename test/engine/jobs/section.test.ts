import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adviceOf, type JobCard, layersOf, sectionOf } from '#engine/jobs.ts';
import { readChoices } from '../../../content/tools/choices.ts';
import { WORDS } from '../clock/words.ts';
import { anyCard, card, coat, known, plan, products } from './cards.ts';

const tables = { sanding: plan.sanding, words: WORDS, bases: readChoices(process.cwd()).base.values };
const drawn = (one: JobCard) => sectionOf(one, layersOf(one, products), tables);
const coats = (...amounts: number[]) =>
  card({
    coats: amounts.map((milliliters, index) =>
      coat({ id: `c${index}`, laidAt: coat().laidAt + index, amount: { milliliters, squareMeters: 1 } }),
    ),
  });

describe('the drawn section', () => {
  it('stacks the coats on the base without gap, from the lowest up, inside the drawing', () => {
    fc.assert(
      fc.property(anyCard, (one) => {
        const { rects, height, width, warn } = drawn(one);
        expect(rects[0]?.kind).toBe('base');
        let floor = rects[0]?.y ?? 0;
        for (const rect of rects.slice(1)) {
          expect(rect.y + rect.height).toBeCloseTo(floor, 6);
          expect(rect.height).toBeGreaterThanOrEqual(22 - 1e-6);
          expect([rect.x, rect.width]).toEqual([0, width]);
          floor = rect.y;
        }
        expect(floor).toBeGreaterThanOrEqual(-1e-6);
        if (warn) {
          expect(warn.y).toBeGreaterThanOrEqual(-1e-6);
          expect(warn.y).toBeLessThanOrEqual(rects[0]?.y ?? height);
        }
      }),
    );
  });

  it('draws a coat of twice the film twice as high', () => {
    const section = drawn(coats(50, 100));
    expect(section.inProportion).toBe(true);
    expect((section.rects[2]?.height ?? 0) / (section.rects[1]?.height ?? 1)).toBeCloseTo(2, 6);
  });

  it('draws a very thin coat high enough to read and says that it is out of proportion', () => {
    const section = drawn(coats(5, 200));
    expect(section.rects[1]?.height).toBe(22);
    expect(section.inProportion).toBe(false);
  });

  it('grows where there are too many coats for its height', () => {
    const section = drawn(coats(...Array.from({ length: 20 }, () => 80)));
    expect(section.rects.slice(1).every(({ height }) => height >= 22)).toBe(true);
    expect(section.height).toBeGreaterThan(240);
  });

  it('warns of sanding through on a thin film, and of cracks in a thick one', () => {
    // One varnish coat dries to about 25–50 µm, and the whole should not pass 125 µm: a maker's note and a finishing
    // company's note on dry film thickness, both undated. Sand only after the second coat: a magazine, 2010.
    expect(drawn(coats(80)).warn?.says).toMatch(/sand-through/i);
    expect(drawn(coats(80)).advice.risk).toBe('high');
    expect(drawn(coats(80, 80)).advice).toMatchObject({ risk: 'some', pastMost: undefined });
    const thick = drawn(coats(100, 100, 100, 100, 100));
    expect(thick.warn).toBeUndefined();
    expect(thick.advice).toMatchObject({ risk: 'low', pastMost: 125 });
    expect(thick.advice.says).toContain('125 µm');
  });

  it('does not call a film safe that it does not know, nor sand what makes no film', () => {
    const strange = card({ coats: [coat({ product: 'a' }), coat({ id: 'b', product: 'b' })] });
    expect(drawn(strange).advice.risk).toBe('unknown');
    expect(drawn(card({ coats: [coat({ product: 'soft-wax' })] })).advice.risk).toBe('no-film');
    expect(drawn(card({ coats: [] })).advice.risk).toBe('bare');
  });

  it('names only sources that are there', () => {
    fc.assert(
      fc.property(anyCard, (one) => {
        for (const { grade, source } of adviceOf(plan.sanding, WORDS, layersOf(one, products), one.age)
          .grounds) {
          expect(grade === 'published').toBe(source !== undefined);
          if (source) expect(known.has('source', source)).toBe(true);
        }
      }),
    );
  });
});
