/** What is judged of a coat, and the words of each kind of no. The tables name their grounds (content/plan.yaml). */
import { describe, expect, it } from 'vitest';
import { baseWait } from '#engine/fitness/rows.ts';
import { judgeLaying, type Laying, noesOfAll } from '#engine/fitness.ts';
import { FACTS } from '#engine/model/facts.ts';
import { HOUR, known, plan, productOf } from '../schedule/sheet.ts';
import { day, products } from './layings.ts';

/** A coat that is ready for another from a moment on, its touch long past. */
const bearsAt = (at: number) => ({ touch: { from: 0, to: 0 }, recoat: { from: at, to: at } });

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
      ownBelow: {
        family: 'water-based' as const,
        hours,
        bears:
          readyAt === undefined
            ? undefined
            : { touch: { from: 0, to: 0 }, recoat: { from: readyAt - HOUR, to: readyAt } },
      },
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
      judge(WATER, { onOwnCoat: true, ownBelow: { family: 'oil', hours, bears: undefined } }, at).noes;
    expect(oil(71, 3 * HOUR)).toMatchObject([{ code: 'coat-below', earliest: 4 * HOUR }]);
    expect(oil(71)[0]).not.toHaveProperty('earliest');
    expect(oil(72, 3 * HOUR)).toEqual([]);
    // Wax bears no film, however long it lies there.
    const [never] = judge(
      WATER,
      {
        onOwnCoat: true,
        ownBelow: {
          family: 'wax',
          hours: 9999,
          bears: bearsAt(0),
        },
      },
      HOUR,
    ).noes;
    expect(never).toMatchObject({ code: 'coat-below', instead: expect.stringMatching(/^[A-Z].+/) });
    expect(never).not.toHaveProperty('earliest');
  });

  it('says of a film over her own shellac that only dewaxed holds it, and of no other', () => {
    const over = (family: 'shellac' | 'water-based', product = WATER) =>
      judge(product, { onOwnCoat: true, ownBelow: { family, hours: 48, bears: bearsAt(0) } }, HOUR);
    // A maker's technical bulletin on shellac (content/sources/wax-h17): its wax keeps polyurethane from holding.
    expect(over('shellac').care.map(({ why }) => why)).toEqual([
      expect.stringMatching(/^Only dewaxed shellac/),
    ]);
    expect(over('shellac').verdict).toBe('care');
    expect(over('water-based').care).toEqual([]);
    expect(over('shellac', 'shellac').care).toEqual([]);
    expect(judge(WATER, {}).care).toEqual([]);
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
      { film, onOwnCoat: true, ownBelow: { family: 'wax', hours: 1, bears: bearsAt(9) } },
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
