/**
 * A coat over one of another finish, or over one that is still soft. What must come out is what the trade's handbooks say
 * of each pair (nothing holds over wax; oil can not soak in through a film; three days for an oil below a water-based coat;
 * hot solvents lift an oil that is not hard); the sources stand at the rows of content/plan.yaml. The cards are invented.
 */

import { describe, expect, it } from 'vitest';
import { clockNow, sayNow } from '#engine/clock.ts';
import { judgeLaying, overCoat } from '#engine/fitness.ts';
import { laidCoatOf, layingOfCard } from '#engine/jobs.ts';
import { WORDS } from '../clock/words.ts';
import { card, coat, HOUR, products, START } from '../jobs/cards.ts';
import { known, plan, productOf } from '../schedule/sheet.ts';

const STYLE = { timeZone: 'America/Denver', hour12: true };

const judged = (below: string, above: string, hours: number) => {
  const first = coat({ product: below, laidAt: START, applicator: undefined });
  const at = START + hours * HOUR;
  const next = coat({ id: 'next', product: above, laidAt: at, applicator: undefined });
  const on = card({ coats: [first], product: above, base: 'bare-wood' });
  const laying = overCoat(layingOfCard(on, next), laidCoatOf(on, first), at, products);
  const { verdict, noes } = judgeLaying(plan, known, laying, productOf(above), { at });
  return { verdict, no: noes.find(({ code }) => code === 'coat-below'), at };
};

describe('a coat over another finish', () => {
  it.each([
    ['paste-wax', 'water-based-polyurethane', 80],
    ['soft-wax', 'oil-based-polyurethane', 2000],
    ['water-based-polyurethane', 'hardwax-oil', 500],
    ['oil-based-polyurethane', 'drying-oil', 500],
  ])('%s never bears %s', (below, above, hours) => {
    const { verdict, no } = judged(below, above, hours);
    expect(verdict).toBe('no');
    expect(no?.instead).toBeTruthy();
    expect(no?.earliest).toBeUndefined();
  });

  it.each([
    ['oil-based-polyurethane', 'sprayed-lacquer', 24, 504],
    ['oil-based-polyurethane', 'water-based-polyurethane', 30, 72],
    ['drying-oil', 'water-based-polyurethane', 24, 72],
    ['water-based-polyurethane', 'sprayed-lacquer', 72, 168],
  ])('%s bears %s not after %i but after %i hours', (below, above, hours, enough) => {
    const early = judged(below, above, hours);
    expect(early.verdict).toBe('no');
    expect(early.no?.earliest).toBe(early.at + (enough - hours) * HOUR);
    expect(judged(below, above, enough + 1).no).toBeUndefined();
  });

  it('of the same finish waits for its own time alone', () => {
    const soon = judged('water-based-polyurethane', 'water-based-polyurethane', 0.2);
    expect(soon.verdict).toBe('no');
    expect(soon.no?.says).toContain('not ready for another');
    expect(soon.no?.earliest).toBeGreaterThan(soon.at);
    expect(judged('water-based-polyurethane', 'water-based-polyurethane', 24).no).toBeUndefined();
  });

  it('says nothing where the product below is not known', () => {
    const on = card({ coats: [coat({ product: 'gone' })] });
    const laying = layingOfCard(on, coat({ id: 'next', laidAt: START + HOUR }));
    expect(overCoat(laying, laidCoatOf(on, coat({ product: 'gone' })), START + HOUR, products)).toEqual(
      laying,
    );
  });

  it('knows of old paint what the card has told, where the clock alone knows the piece', () => {
    const below = laidCoatOf(card({ age: 'none' }), coat());
    const bare = { base: undefined, day: { celsius: 23, relativeHumidity: 0.5 } };
    expect(overCoat(bare, below, START + HOUR, products).age).toBe('none');
    expect(overCoat({ ...bare, age: 'unknown' }, below, START + HOUR, products).age).toBe('unknown');
  });
});

describe('a coat over a flaw that is open', () => {
  const flaw = { id: 'f', defect: 'runs-and-sags', foundAt: START + HOUR, answers: [], coat: 'coat-1' };
  const repair = { id: 'r', remedy: 'shave-and-recoat', flaw: 'f', doneAt: START + 2 * HOUR };
  const noOf = (more: Partial<Parameters<typeof card>[0]>) => {
    const on = card({ base: 'bare-wood', flaws: [flaw], ...more });
    const at = START + 30 * HOUR;
    const laid = laidCoatOf(on, coat());
    const laying = overCoat(layingOfCard(on, coat({ id: 'next', laidAt: at })), laid, at, products);
    const { noes } = judgeLaying(plan, known, laying, productOf('water-based-polyurethane'), { at });
    const now = clockNow(productOf('water-based-polyurethane'), laid, at, products);
    return { no: noes.find(({ code }) => code === 'flaw'), said: sayNow(WORDS, now, at, STYLE) };
  };

  it('is a no in its form, and the clock says so, until the flaw is settled', () => {
    const open = noOf({});
    expect(open.no?.says).toContain('no coat over it');
    expect(open.said).toMatchObject({ doing: 'wait', verdict: 'First the flaw that is open' });
    const repaired = noOf({ repairs: [repair] });
    expect(repaired.no?.instead).toContain('whether it is gone');
    expect(repaired.said.verdict).toBe('Look: is the flaw gone?');
    const settled = noOf({ flaws: [{ ...flaw, settledAt: START + 3 * HOUR }] });
    expect(settled.no).toBeUndefined();
    expect(settled.said.doing).toBe('repair');
  });

  it('keeps hands off a film that sets, whatever is open', () => {
    const laid = laidCoatOf(card({ flaws: [flaw] }), coat());
    const at = START + 60_000;
    const said = sayNow(
      WORDS,
      clockNow(productOf('water-based-polyurethane'), laid, at, products),
      at,
      STYLE,
    );
    expect(said.doing).toBe('leave');
  });
});
