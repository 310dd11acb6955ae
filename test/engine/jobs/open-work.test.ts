/** What stands before the next coat of a card. That a coat of a repair dries like any other: common practice, no source. */
import { describe, expect, it } from 'vitest';
import {
  type CardFlaw,
  type CardRepair,
  coatOfRepair,
  coatOwed,
  isSameFlaw,
  type JobCard,
  openFlaw,
  productOfRepair,
  withoutItsCoat,
} from '#engine/jobs.ts';
import { card, coat, DAY, HOUR, known, products, START } from './cards.ts';

const lays = { recoat: 'same', seal: 'dewaxed-shellac' } as const;
const flaw = (more: Partial<CardFlaw> = {}): CardFlaw => ({
  id: 'flaw-1',
  foundAt: START + DAY,
  defect: 'cloudy-film',
  answers: [],
  coat: 'coat-1',
  ...more,
});
const repair = (more: Partial<CardRepair> = {}): CardRepair => ({
  id: 'repair-1',
  doneAt: START + DAY + HOUR,
  remedy: 'recoat',
  flaw: 'flaw-1',
  ...more,
});
const repaired = (more: Partial<JobCard> = {}): JobCard =>
  card({ flaws: [flaw()], repairs: [repair()], ...more });

describe('the coat of a repair', () => {
  it('is the top coat that the steps of the real remedies lay last, and none where they only rub or paint', () => {
    const steps = (id: string) => known.remedies.find((remedy) => remedy.id === id)?.steps ?? [];
    expect(coatOfRepair(steps('full-panel-recoat'))).toBe('same');
    expect(coatOfRepair(steps('full-panel-recoat').filter(({ kind }) => kind !== 'coat'))).toBeUndefined();
    expect(known.remedies.filter((remedy) => coatOfRepair(remedy.steps)).length).toBeGreaterThan(20);
  });

  it('is owed to the card until a coat lies over the one that the flaw was found in', () => {
    expect(coatOwed(repaired(), lays)?.id).toBe('repair-1');
    // Put on the clock as laid just now, or hours before: it is on top of that one all the same.
    for (const laidAt of [START + DAY + 2 * HOUR, START + DAY - 5 * HOUR])
      expect(coatOwed(repaired({ coats: [coat(), coat({ id: 'coat-2', laidAt })] }), lays)).toBeUndefined();
    // Flaw and repair are noted when all is done: its coat lay on top already.
    const after = coat({ id: 'coat-2', laidAt: START + DAY });
    expect(
      coatOwed(repaired({ coats: [coat(), after], flaws: [flaw({ coat: 'coat-2' })] }), lays),
    ).toBeUndefined();
    expect(coatOwed(repaired({ repairs: [repair({ remedy: 'rub' })] }), lays)).toBeUndefined();
  });

  it('of a second repair of one flaw goes by its time alone', () => {
    const twice = (laidAt: number) =>
      repaired({
        coats: [coat(), coat({ id: 'coat-2', laidAt })],
        repairs: [repair(), repair({ id: 'repair-2', doneAt: START + 5 * DAY })],
      });
    expect(coatOwed(twice(START + 2 * DAY), lays)?.id).toBe('repair-2');
    expect(coatOwed(twice(START + 5 * DAY - HOUR), lays)).toBeUndefined();
  });

  it('without a flaw is taken for one that was laid within the day before', () => {
    const alone = (doneAt: number) =>
      repaired({ flaws: [], repairs: [{ id: 'r', remedy: 'recoat', doneAt }] });
    expect(coatOwed(alone(START + HOUR), lays)).toBeUndefined();
    expect(coatOwed(alone(START + DAY + HOUR), lays)?.id).toBe('r');
  });

  it('is owed no more once she says that none was laid, also where the repair has a note', () => {
    for (const note of [undefined, 'Rub it out after a week.']) {
      const before = repaired({ repairs: [repair(note === undefined ? {} : { note })] });
      const after = withoutItsCoat(before, before.repairs[0] ?? repair(), START + 2 * DAY);
      expect(coatOwed(before, lays)?.id).toBe('repair-1');
      expect(coatOwed(after, lays)).toBeUndefined();
      expect(after.repairs[0]?.note).toBe(note);
    }
  });

  it('is of the product below, or of the one product of its kind', () => {
    expect(productOfRepair(card(), products, 'same')).toBe('water-based-polyurethane');
    expect(productOfRepair(card(), products, 'water-based')).toBe('water-based-polyurethane');
    expect(productOfRepair(card(), products, 'dewaxed-shellac')).toBe('shellac');
    // There are several waxes: she chooses.
    expect(productOfRepair(card(), products, 'wax')).toBeUndefined();
  });
});

it('tells the open flaw that was found last, with its repair', () => {
  const two = repaired({ flaws: [flaw(), flaw({ id: 'flaw-2', foundAt: START + 2 * DAY })] });
  expect(openFlaw(two)).toMatchObject({ flaw: { id: 'flaw-2' }, repair: undefined });
  expect(openFlaw(repaired())).toMatchObject({ flaw: { id: 'flaw-1' }, repair: { id: 'repair-1' } });
  expect(openFlaw(repaired({ flaws: [flaw({ settledAt: START + 2 * DAY })] }))).toBeUndefined();
});

it('takes two notes of one flaw for one unless they name two places', () => {
  expect(isSameFlaw({ defect: 'runs-and-sags' }, { defect: 'runs-and-sags', part: 'leg' })).toBe(true);
  expect(
    isSameFlaw({ defect: 'runs-and-sags', part: 'edge' }, { defect: 'runs-and-sags', part: 'leg' }),
  ).toBe(false);
  expect(isSameFlaw({ defect: 'runs-and-sags' }, { defect: 'cloudy-film' })).toBe(false);
});
